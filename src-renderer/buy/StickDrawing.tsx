import { useMemo, useRef } from 'react';
import type { FormStick } from '../../src-core/edge-forms';
import { useWidth } from '../days/use-width';
import type { CutRow } from './form-rows';
import styles from './StickDrawing.module.css';
import { drawnStick } from './stick-drawing';

interface Props {
  readonly stick: FormStick;
  /** The longest stick of the list, in: all are drawn to one scale. */
  readonly longestIn: number;
  /** The same cuts as they are written below. */
  readonly rows: readonly CutRow[];
}

/** One stick with its cuts and mitres. What it shows stands in the list below as well. */
export function StickDrawing({ stick, longestIn, rows }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(frame);
  const drawn = useMemo(() => drawnStick(stick, longestIn, widthPx), [stick, longestIn, widthPx]);
  return (
    <div ref={frame} className={styles.frame} style={{ minHeight: drawn?.heightPx }}>
      {drawn !== null && (
        <svg className={styles.stick} width={drawn.widthPx} height={drawn.heightPx} aria-hidden="true">
          <path className={styles.bar} d={drawn.bar} />
          {drawn.cuts.map(({ key, outline, slabFace }) => (
            <g key={key}>
              <path className={styles.cut} d={outline} />
              <line
                className={styles.slabFace}
                x1={slabFace.from.x}
                y1={slabFace.from.y}
                x2={slabFace.to.x}
                y2={slabFace.to.y}
              />
            </g>
          ))}
          {drawn.cuts.map(({ key, number, middle, isWide }, i) => (
            <text key={key} className={styles.words} x={middle.x} y={middle.y}>
              {isWide ? `${number}: ${rows[i]?.length ?? ''}` : number}
            </text>
          ))}
        </svg>
      )}
    </div>
  );
}
