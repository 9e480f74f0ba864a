import { useMemo, useRef } from 'react';
import type { FalseworkDesign } from '../../src-core/falsework';
import type { Piece } from '../../src-core/job';
import { useWidth } from '../days/use-width';
import styles from './FormPlan.module.css';
import { drawnKinds, formPlan } from './form-plan';
import { PlanKey } from './PlanKey';

interface Props {
  readonly design: FalseworkDesign;
  readonly piece: Piece;
}

/** The sections in plan with their sticks, and the legs by their numbers. What it shows stands in the tables as well. */
export function FormPlan({ design, piece }: Props) {
  const frame = useRef<HTMLElement>(null);
  const widthPx = useWidth(frame);
  const plan = useMemo(() => formPlan(design, piece, widthPx), [design, piece, widthPx]);
  return (
    <figure ref={frame}>
      {plan !== null && (
        <>
          <svg
            className={styles.plan}
            width={plan.widthPx}
            height={plan.heightPx}
            role="img"
            aria-label={`Plan of the falsework, front at the bottom: ${plan.sections.map(({ letter, name }) => `${letter}, ${name}`).join('; ')}`}
          >
            {plan.sections.map(({ id, outline, openings, sticks }) => (
              <g key={id}>
                <path className={styles.section} d={outline} />
                {openings.map((opening) => (
                  <path key={opening} className={styles.opening} d={opening} />
                ))}
                {sticks.map(({ key, kind, from, to }) => (
                  <line key={key} className={styles[kind]} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
                ))}
              </g>
            ))}
            <path className={styles.slab} d={plan.slab} />
            {plan.sections.map(({ id, letter, letterAt, legs }) => (
              <g key={id}>
                <text className={styles.letter} x={letterAt.x} y={letterAt.y}>
                  {letter}
                </text>
                {legs.map(({ id: leg, at, label, anchor, number }) => (
                  <g key={leg}>
                    <circle className={styles.leg} cx={at.x} cy={at.y} r={3.5} />
                    <text className={styles.number} x={label.x} y={label.y} textAnchor={anchor}>
                      {number}
                    </text>
                  </g>
                ))}
              </g>
            ))}
          </svg>
          <figcaption className={styles.caption}>
            <PlanKey kinds={drawnKinds(plan)} />
            Front at the bottom.
          </figcaption>
        </>
      )}
    </figure>
  );
}
