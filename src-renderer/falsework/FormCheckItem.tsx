import type { FormCheck } from '../../src-core/falsework';
import { printRatio } from '../../src-core/report';
import type { UnitSystem } from '../../src-core/units';
import { Prose } from '../look/Prose';
import { comparedWords } from '../verdict/check-rows';
import { levelWords } from '../verdict/level-words';
import { TapeRow } from '../verdict/TapeRow';
import { Workings } from '../verdict/Workings';
import styles from './FormCheckItem.module.css';

interface Props {
  readonly check: FormCheck;
  readonly endRatio: number;
  readonly system: UnitSystem;
}

/** One check of a section as a tape, with its workings below once it is opened. */
export function FormCheckItem({ check, endRatio, system }: Props) {
  const { title, ratio, level, words, workings } = check;
  const compared = comparedWords(check, system);
  return (
    <TapeRow
      title={title}
      ratioWords={printRatio(ratio)}
      ratio={ratio}
      level={level}
      levelWords={levelWords(level)}
      endRatio={endRatio}
      headingLevel={5}
    >
      <div className={styles.open}>
        <p>
          <Prose text={words} />
        </p>
        {compared !== null && (
          <dl className={styles.compared}>
            <dt>Demand</dt>
            <dd>{compared.demand}</dd>
            <dt>Capacity</dt>
            <dd>{compared.capacity}</dd>
          </dl>
        )}
        {workings.length > 0 && system === 'metric' && (
          <p className={styles.note}>
            Workings stay in inch, pound-force and psi, as their formulas are written.
          </p>
        )}
        <Workings lines={workings} />
      </div>
    </TapeRow>
  );
}
