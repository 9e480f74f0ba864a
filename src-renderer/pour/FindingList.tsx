import { Prose } from '../look/Prose';
import styles from './FindingList.module.css';
import { FindingMark } from './FindingMark';
import type { FindingRow } from './finding-rows';
import { PieceLink } from './PieceLink';

interface Props {
  readonly rows: readonly FindingRow[];
  readonly label: string;
}

/** What is said beside the numbers, each with its level by shape and word; nothing where there is nothing to say. */
export function FindingList({ rows, label }: Props) {
  if (rows.length === 0) return null;
  return (
    <ul className={styles.list} aria-label={label}>
      {rows.map(({ id, level, title, words, source, piece }) => (
        <li key={id} className={styles.finding}>
          <p className={styles.title}>
            <FindingMark level={level} /> {title}
            {piece !== null && (
              <span className={styles.piece}>
                <PieceLink {...piece} />
              </span>
            )}
          </p>
          <p>
            <Prose text={words} />
          </p>
          <p className={styles.source}>
            <Prose text={source} />
          </p>
        </li>
      ))}
    </ul>
  );
}
