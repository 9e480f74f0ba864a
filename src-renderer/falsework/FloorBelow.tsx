import type { FormFloorLoad } from '../../src-core/falsework';
import { printForce, type UnitSystem } from '../../src-core/units';
import { Fold } from '../look/Fold';
import { Prose } from '../look/Prose';
import { VerdictMark } from '../look/VerdictMark';
import { Workings } from '../verdict/Workings';
import styles from './FloorBelow.module.css';

interface Props {
  readonly load: FormFloorLoad;
  readonly system: UnitSystem;
}

/** What slab, falsework and people put on the floor or deck below, against what that may carry. */
export function FloorBelow({ load: { totalLbf, words, level, lines }, system }: Props) {
  return (
    <div>
      <h3 className={styles.title}>
        <VerdictMark level={level} size={14} /> The floor below
      </h3>
      <p className={styles.words}>
        <Prose text={`${printForce(Math.ceil(totalLbf), { system, digits: 4 })} in all. ${words}`} />
      </p>
      <Fold title="How the load on the floor is worked">
        {system === 'metric' && (
          <p className={styles.note}>
            Workings stay in inch, pound-force and psi, as their formulas are written.
          </p>
        )}
        <Workings lines={lines} />
      </Fold>
    </div>
  );
}
