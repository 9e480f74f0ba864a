import type { UnitSystem } from '../../src-core/units';
import type { Frame } from './frame';
import { planTransform } from './frame';
import styles from './Grid.module.css';
import { gridSteps } from './plan-steps';

interface Props {
  readonly frame: Frame;
  readonly system: UnitSystem;
}

/** The quiet grid of the paper, and the hatches that shapes are filled with. */
export function Grid({ frame, system }: Props) {
  const { fineIn, coarseIn } = gridSteps(frame.pxPerIn, system);
  return (
    <>
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
        <pattern
          id="plan-hatch"
          width={7}
          height={7}
          patternUnits="userSpaceOnUse"
          patternTransform={`scale(${1 / frame.pxPerIn}) rotate(45)`}
        >
          <path d="M0 0V7" className={styles.hatch} />
        </pattern>
      </defs>
      <rect width={frame.widthPx} height={frame.heightPx} fill="url(#plan-fine)" />
      <rect width={frame.widthPx} height={frame.heightPx} fill="url(#plan-coarse)" />
    </>
  );
}
