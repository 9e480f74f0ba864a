import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import { Prose } from '../look/Prose';
import { useJob } from '../state/store-context';
import styles from './KeysSheet.module.css';
import { keyGroups } from './key-table';
import { SheetBody } from './SheetBody';
import { useAnswer } from './use-answer';

interface Props {
  readonly host: HostApi;
  readonly onClose: () => void;
}

/** Every shortcut, as this computer's keyboard has it. */
export function KeysSheet({ host, onClose }: Props) {
  const system = useJob().shownIn;
  const about = useAnswer(host, 'about', {});
  const platform = about.state === 'answered' ? about.reply.platform : 'windows';
  const groups = keyGroups(platform, system);
  return (
    <SheetBody title="Keys" isText onClose={onClose} foot={<Button onPress={onClose}>Close</Button>}>
      <div className={styles.groups}>
        {groups.map(({ title, rows }) => (
          <table key={title} className={styles.table}>
            <caption className={styles.caption}>{title}</caption>
            <thead className={styles.unseen}>
              <tr>
                <th scope="col">Does</th>
                <th scope="col">Keys</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ does, keys }) => (
                <tr key={does}>
                  <th scope="row">
                    <Prose text={does} />
                  </th>
                  <td>
                    <kbd>{keys}</kbd>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
    </SheetBody>
  );
}
