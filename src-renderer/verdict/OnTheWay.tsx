import { printRatio } from '../../src-core/report';
import type { OnTheWay as Moment } from '../../src-core/verdict';
import { Heading } from '../look/Heading';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import styles from './OnTheWay.module.css';

interface Props {
  readonly moment: Moment;
}

/** The worst moment between pour and hand-over. */
export function OnTheWay({ moment: { day, level, ratio, words } }: Props) {
  return (
    <section aria-labelledby="way-heading">
      <Heading id="way-heading">Worst on the way</Heading>
      <p className={styles.line}>
        <VerdictMark level={level} size={14} />
        <span>
          {`Day ${day}, ${printRatio(ratio)} of the limit. `}
          <Prose text={words} />
        </span>
      </p>
    </section>
  );
}
