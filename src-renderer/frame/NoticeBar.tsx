import { X } from 'lucide-react';
import { Button } from '../look/Button';
import { useStore, useWindow } from '../state/store-context';
import styles from './NoticeBar.module.css';

/** One sentence on what happened, until it is read. */
export function NoticeBar() {
  const notice = useWindow(({ notice: said }) => said);
  const store = useStore();
  return (
    <div className={styles.place} role="status">
      {notice !== null && (
        <div className={styles.notice} data-tone={notice.tone}>
          <div>
            <p>{notice.sentence}</p>
            {notice.details !== undefined && notice.details.length > 0 && (
              <ul className={styles.details}>
                {notice.details.map((detail) => (
                  <li key={detail}>{detail}</li>
                ))}
              </ul>
            )}
          </div>
          <Button weight="quiet" isIcon aria-label="Read it" onPress={() => store.getState().say(null)}>
            <X size={16} aria-hidden />
          </Button>
        </div>
      )}
    </div>
  );
}
