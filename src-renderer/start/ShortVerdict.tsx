import { VerdictMark } from '../look/VerdictMark';
import type { QuickAnswer } from './quick-answer';
import styles from './ShortVerdict.module.css';

interface Props {
  /** null while there is none. */
  readonly answer: QuickAnswer | null;
}

/** Mark and words alone, in sight of the fields where the window has no room for the verdict beside them; that one is read out. */
export function ShortVerdict({ answer }: Props) {
  return (
    <p className={styles.short} aria-hidden="true">
      {answer !== null && (
        <span className={styles.words} style={{ color: `var(--${answer.level})` }}>
          <VerdictMark level={answer.level} size={20} />
          {answer.words}
        </span>
      )}
    </p>
  );
}
