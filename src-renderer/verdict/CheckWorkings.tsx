import type { Check } from '../../src-core/checks';
import type { UnitSystem } from '../../src-core/units';
import { Button } from '../look/Button';
import { Prose } from '../look/Prose';
import { useStore } from '../state/store-context';
import styles from './CheckWorkings.module.css';
import { comparedWords } from './check-rows';
import { Workings } from './Workings';

interface Props {
  readonly check: Check;
  readonly system: UnitSystem;
}

/** What stands under an open check: its sentence, what is asked and what it can take, cautions, and every line of workings. */
export function CheckWorkings({ check, system }: Props) {
  const store = useStore();
  const compared = comparedWords(check, system);
  return (
    <div className={styles.open}>
      <p>
        <Prose text={check.words} />
      </p>
      {compared !== null && (
        <dl className={styles.compared}>
          <dt>Demand</dt>
          <dd>{compared.demand}</dd>
          <dt>Capacity</dt>
          <dd>{compared.capacity}</dd>
        </dl>
      )}
      {check.cautions.length > 0 && (
        <ul className={styles.cautions} aria-label="Cautions">
          {check.cautions.map((caution) => (
            <li key={caution}>
              <Prose text={caution} />
            </li>
          ))}
        </ul>
      )}
      {check.workings.length > 0 && system === 'metric' && (
        <p className={styles.note}>
          Workings stay in inch, pound-force and psi, as their formulas are written.
        </p>
      )}
      <Workings lines={check.workings} />
      <Button weight="quiet" onPress={() => store.getState().openSheet({ kind: 'manual', id: check.id })}>
        What this check means
      </Button>
    </div>
  );
}
