import { memo } from 'react';
import type { UnitSystem } from '../../src-core/units';
import type { Frame } from './frame';
import { planTransform } from './frame';
import styles from './Grid.module.css';
import { gridSteps } from './plan-steps';

interface Props {
  readonly frame: Frame;
  readonly system: UnitSystem;
}

/** The quiet grid of the paper, on a layer of its own: a drag draws over it and never draws it anew. */
export const Grid = memo(function Grid({ frame, system }: Props) {
  const { fineIn, coarseIn } = gridSteps(frame.pxPerIn, system);
  return (
    <svg className={styles.paper} aria-hidden="true">
      <defs>
        {[
          { id: 'plan-fine', stepIn: fineIn, name: styles.fine },
          { id: 'plan-coarse', stepIn: coarseIn, name: styles.coarse },
        ].map(({ id, stepIn, name }) => (
          <pattern
            key={id}
            id={id}
            width={stepIn}
            height={stepIn}
            patternUnits="userSpaceOnUse"
            patternTransform={planTransform(frame)}
          >
            <path
              d={`M0 ${stepIn}V0H${stepIn}`}
              className={name}
              style={{ strokeWidth: 1 / frame.pxPerIn }}
            />
          </pattern>
        ))}
      </defs>
      <rect width={frame.widthPx} height={frame.heightPx} fill="url(#plan-fine)" />
      <rect width={frame.widthPx} height={frame.heightPx} fill="url(#plan-coarse)" />
    </svg>
  );
});
