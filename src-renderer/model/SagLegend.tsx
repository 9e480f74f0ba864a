import type { DeflectedShape } from '../../src-core/field-map';
import type { UnitSystem } from '../../src-core/units';
import { sagTicks } from './legend-ticks';
import styles from './MapLegend.module.css';
import { ScaleBar } from './ScaleBar';

interface Props {
  readonly shape: DeflectedShape;
  readonly exaggeration: number;
  readonly system: UnitSystem;
}

/** What the bent slab shows: how far it goes down, under which load, and how much larger it is drawn. */
export function SagLegend({ shape, exaggeration, system }: Props) {
  const times =
    exaggeration === 1
      ? 'drawn at its true size'
      : `drawn ${exaggeration.toLocaleString('en-US')} times larger`;
  return (
    <figure className={styles.legend} aria-label="Legend of the sag">
      <figcaption className={styles.head}>
        <span className={styles.title}>Sag, {times}</span>
      </figcaption>
      <p className={styles.words}>
        Uncracked, under {shape.words}
        {shape.asIfHeld ? '; it would turn over, and is drawn as if it were held down.' : '.'}
      </p>
      <ScaleBar ticks={sagTicks(shape.mostIn, system)} overWords={null} />
    </figure>
  );
}
