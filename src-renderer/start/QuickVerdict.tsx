import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { Trouble } from '../sheets/Trouble';
import styles from './QuickVerdict.module.css';
import type { QuickVerdictState } from './use-quick-verdict';

interface Props {
  readonly verdict: QuickVerdictState;
  /** What is wrong with the fields; the verdict waits until they make a piece. */
  readonly problems: readonly string[];
}

/** The verdict of the quick check: its mark, the words, why, and what to change. Read out when it comes. */
export function QuickVerdict({ verdict, problems }: Props) {
  const { answer, isChecking, trouble } = verdict;
  return (
    <section className={styles.verdict} aria-label="Verdict" aria-busy={isChecking}>
      <p className={styles.wait} aria-hidden={!isChecking}>
        {isChecking ? 'Checking...' : ''}
      </p>
      <div
        aria-live="polite"
        aria-atomic="true"
        className={styles.answer}
        data-stale={isChecking || undefined}
      >
        {answer !== null && problems.length === 0 && (
          <>
            <p className={styles.words} style={{ color: `var(--${answer.level})` }}>
              <span aria-hidden="true" className={styles.mark}>
                <VerdictMark level={answer.level} size={32} />
              </span>
              {answer.words}
            </p>
            <p className={styles.why}>
              <Prose text={answer.why} />
            </p>
            {answer.change !== null && (
              <p>
                <strong>What to change:</strong> <Prose text={answer.change} />
              </p>
            )}
          </>
        )}
      </div>
      {problems.map((sentence) => (
        <Trouble key={sentence} sentence={sentence} />
      ))}
      {trouble !== null && <Trouble sentence={trouble} />}
    </section>
  );
}
