import { Check, TriangleAlert } from 'lucide-react';
import { Prose } from '../look/Prose';
import styles from './FindingList.module.css';

interface Props {
  /** Those that ask for attention first. */
  readonly findings: readonly {
    readonly id: string;
    readonly level: 'ok' | 'attention';
    readonly words: string;
    readonly source: string;
  }[];
}

/** What was looked at about forms and boards: in order, or asking for attention, by shape and by word. */
export function FindingList({ findings }: Props) {
  return (
    <ul className={styles.findings}>
      {findings.map(({ id, level, words, source }) => (
        <li key={id} className={level === 'ok' ? styles.finding : styles.attention}>
          {level === 'ok' ? (
            <Check size={14} className={styles.ok} role="img" aria-label="In order:" />
          ) : (
            <TriangleAlert size={14} className={styles.alert} role="img" aria-label="Mind:" />
          )}
          <div>
            <p>
              <Prose text={words} />
            </p>
            <p className={styles.source}>{source}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}
