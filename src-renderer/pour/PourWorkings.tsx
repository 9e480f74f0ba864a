import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { Fold } from '../look/Fold';
import { Workings } from '../verdict/Workings';
import styles from './PourWorkings.module.css';

interface Props {
  readonly pour: Pour;
  readonly system: UnitSystem;
}

/** Every formula behind a pour, folded away. */
export function PourWorkings({ pour: { pieces, volumes, bags, clock, weather }, system }: Props) {
  return (
    <div>
      <Fold title="How the volumes and bags are worked">
        {system === 'metric' && (
          <p className={styles.note}>Workings stay in inch, foot and pound, as their formulas are written.</p>
        )}
        {pieces.map(({ pieceId, name, lines }) => (
          <div key={pieceId}>
            <h4 className={styles.piece}>{name}</h4>
            <Workings lines={lines} />
          </div>
        ))}
        <h4 className={styles.piece}>The whole pour</h4>
        <Workings lines={[...volumes.lines, ...(bags?.lines ?? [])]} />
      </Fold>
      <Fold title="How the minutes and the drying are worked">
        <Workings lines={[...(clock?.lines ?? []), ...weather.lines]} />
      </Fold>
    </div>
  );
}
