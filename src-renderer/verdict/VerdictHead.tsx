import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import type { PieceVerdict } from '../state/verdict-store';
import { answerWords } from './answer-words';
import { flagWords } from './level-words';
import { pieceLine } from './piece-line';
import styles from './VerdictHead.module.css';

interface Props {
  readonly name: string;
  /** undefined before the first answer. */
  readonly verdict: PieceVerdict | undefined;
  readonly system: UnitSystem;
}

/** The verdict in large words, why, and what else is worth knowing. Its places are kept while the answer is on its way. */
export function VerdictHead({ name, verdict, system }: Props) {
  const waiting = answerWords(verdict);
  return (
    <header className={styles.head}>
      <div className={styles.top}>
        <p className={styles.piece} title={name}>
          {name}
        </p>
        <p className={styles.answer} role="status">
          {waiting}
          {waiting === '' && verdict !== undefined && (
            <span className={styles.unseen}>{`${name}: ${verdict.result.verdict.words}.`}</span>
          )}
        </p>
      </div>
      {verdict === undefined ? (
        <div className={styles.skeleton} aria-hidden="true" />
      ) : (
        <h2 className={styles.words} style={{ color: `var(--${verdict.result.verdict.level})` }}>
          <span aria-hidden="true" className={styles.mark}>
            <VerdictMark level={verdict.result.verdict.level} size={28} />
          </span>
          {verdict.result.verdict.words}
        </h2>
      )}
      {verdict !== undefined && (
        <>
          <p>
            <Prose text={verdict.result.verdict.why} />
          </p>
          {verdict.result.verdict.flags.length > 0 && (
            <ul className={styles.flags} aria-label="Beside the verdict">
              {flagWords(verdict.result.verdict.flags).map((words) => (
                <li key={words}>
                  <Prose text={words} />
                </li>
              ))}
            </ul>
          )}
          <p className={styles.line}>
            <Prose text={pieceLine(verdict.result, system)} />
          </p>
        </>
      )}
    </header>
  );
}
