import type { HostApi } from '../../src-core/host-contract';
import { NOTICE } from '../../src-core/report';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { useJob } from '../state/store-context';
import styles from './AboutSheet.module.css';
import { LICENCE, NOT_COVERED, undecidable } from './about-words';
import { SheetBody } from './SheetBody';
import { useAnswer } from './use-answer';

interface Props {
  readonly host: HostApi;
  readonly onClose: () => void;
}

/** Name, version, and what the tool may not decide. */
export function AboutSheet({ host, onClose }: Props) {
  const { shownIn } = useJob();
  const about = useAnswer(host, 'about', {});
  return (
    <SheetBody title="Ledgewright" isText onClose={onClose} foot={<Button onPress={onClose}>Close</Button>}>
      <p>
        For worktops that are cast in place: will every slab stand, and at every step until it does.
        {about.state === 'answered' && (
          <span className={styles.version}>
            {` Version ${about.reply.version}, in ${about.reply.host === 'desktop' ? 'its own window' : 'a browser window'}.`}
          </span>
        )}
      </p>
      <p className={styles.notice}>{NOTICE}</p>
      <section aria-labelledby="may-not-decide">
        <Heading id="may-not-decide">What this tool may not decide</Heading>
        <p className={styles.lead}>For these it says that an engineer is needed, whatever the numbers say:</p>
        <ul className={styles.list}>
          {undecidable(shownIn).map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="not-covered">
        <Heading id="not-covered">Not looked at</Heading>
        <p>{NOT_COVERED}</p>
      </section>
      <p className={styles.lead}>{LICENCE}</p>
    </SheetBody>
  );
}
