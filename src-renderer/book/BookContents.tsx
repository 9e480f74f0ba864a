import type { ContentsEntry } from '../../src-core/sheet';
import styles from './BookContents.module.css';

interface Props {
  readonly entries: readonly ContentsEntry[];
  readonly onGo: (id: string) => void;
}

/** Chapters of the book and what is in them, to jump to. */
export function BookContents({ entries, onGo }: Props) {
  return (
    <nav className={styles.contents} aria-label="Contents of the book">
      <ol className={styles.list}>
        {entries.map(({ id, words, level, page }) => (
          <li key={id}>
            <button
              type="button"
              className={`${styles.entry} ${level === 0 ? styles.chapter : styles.within}`}
              onClick={() => onGo(id)}
            >
              <span>{words}</span>
              <span className={styles.page}>
                <span className={styles.unseen}>page </span>
                {page}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
