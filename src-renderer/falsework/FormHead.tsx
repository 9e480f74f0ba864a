import type { FalseworkDesign } from '../../src-core/falsework';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import styles from './FormHead.module.css';
import { countWords, inventedWords, worstWords } from './head-words';

interface Props {
  readonly design: FalseworkDesign;
}

/** What the design comes to, after what cannot be built, and what else is to know about it. */
export function FormHead({ design }: Props) {
  const { refusals, remarks, level } = design;
  const [worst, invented] = [worstWords(design), inventedWords(design)];
  return (
    <div className={styles.head}>
      {refusals.length > 0 && (
        <ul className={styles.refusals} aria-label="Cannot be built so">
          {refusals.map((words) => (
            <li key={words} className={styles.marked}>
              <VerdictMark level={level} size={14} />
              <p>
                <Prose text={words} />
              </p>
            </li>
          ))}
        </ul>
      )}
      <div className={styles.marked}>
        {refusals.length === 0 && <VerdictMark level={level} size={14} />}
        <p>
          <strong className={styles.count}>{countWords(design)}</strong>{' '}
          {worst !== null && <Prose text={worst} />}{' '}
          {invented !== null && <span className={styles.invented}>{invented}</span>}
        </p>
      </div>
      {remarks.map((words) => (
        <p key={words} className={styles.remark}>
          <Prose text={words} />
        </p>
      ))}
    </div>
  );
}
