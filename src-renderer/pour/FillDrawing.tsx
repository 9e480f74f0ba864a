import { useMemo } from 'react';
import type { Piece } from '../../src-core/job';
import type { Bucket, ScreedRail } from '../../src-core/pour';
import styles from './FillDrawing.module.css';
import { fillPlan } from './fill-plan';

interface Props {
  readonly piece: Piece;
  readonly buckets: readonly Bucket[];
  readonly rails: readonly ScreedRail[];
  readonly widthPx: number;
}

/** A slab in plan with the way from bucket to bucket. The words beside it say where it begins and ends. */
export function FillDrawing({ piece, buckets, rails, widthPx }: Props) {
  const plan = useMemo(
    () =>
      fillPlan(
        piece,
        buckets,
        rails.map(({ line }) => line),
        widthPx,
      ),
    [piece, buckets, rails, widthPx],
  );
  if (plan === null) return null;
  return (
    <svg
      className={styles.drawing}
      width={plan.widthPx}
      height={plan.heightPx}
      role="img"
      aria-label={`Plan of ${piece.name}: the way its ${buckets.length} buckets go`}
    >
      <path className={styles.slab} d={plan.slab} />
      {plan.rails.map(({ from, to }) => (
        <line
          key={`${from.x} ${from.y} ${to.x} ${to.y}`}
          className={styles.rail}
          x1={from.x}
          y1={from.y}
          x2={to.x}
          y2={to.y}
        />
      ))}
      <path className={styles.way} d={plan.way} />
      {plan.dots.map(({ id, x, y, label }) =>
        label === '' ? (
          <circle key={id} className={styles.dot} cx={x} cy={y} r={2.5} />
        ) : (
          <g key={id}>
            <circle className={styles.dot} cx={x} cy={y} r={9} />
            <text className={styles.label} x={x} y={y}>
              {label}
            </text>
          </g>
        ),
      )}
    </svg>
  );
}
