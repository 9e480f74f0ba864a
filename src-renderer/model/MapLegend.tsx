import { useState } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { PieceMap } from '../../src-core/field-map';
import type { UnitSystem } from '../../src-core/units';
import { momentTicks, shareTicks } from './legend-ticks';
import styles from './MapLegend.module.css';
import { ScaleBar } from './ScaleBar';

interface Props {
  readonly map: PieceMap;
  readonly system: UnitSystem;
}

/** What the colours of the bending map mean: shares of the cracking limit or, when asked, moments in the user's units. */
export function MapLegend({ map, system }: Props) {
  const [showsMoments, setShowsMoments] = useState(false);
  const moments = momentTicks(map.limitLbfInPerIn, system);
  const ticks = showsMoments ? moments.ticks : shareTicks();
  return (
    <figure className={styles.legend} aria-label="Legend of the bending map">
      <figcaption className={styles.head}>
        <span className={styles.title}>
          {showsMoments ? `Bending, ${moments.unit}` : 'Bending, share of cracking limit'}
        </span>
        <ToggleButton className={styles.units ?? ''} isSelected={showsMoments} onChange={setShowsMoments}>
          Numbers in {moments.unit}
        </ToggleButton>
      </figcaption>
      <ScaleBar ticks={ticks} overWords={showsMoments ? `over ${moments.ticks.at(-1)!.words}` : 'over 1'} />
    </figure>
  );
}
