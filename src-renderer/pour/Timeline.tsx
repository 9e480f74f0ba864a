import { useMemo, useRef } from 'react';
import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { useWidth } from '../days/use-width';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { BucketTable } from './BucketTable';
import { clockTime } from './clock-time';
import styles from './Timeline.module.css';
import { BAR_PX, timelineDrawing, timelineWords } from './timeline-drawing';

interface Props {
  readonly pour: Pour;
  readonly startMinutes: number;
  readonly system: UnitSystem;
}

/** Minute by minute: batches in their mixers, buckets in their forms, and when each batch turns stiff. Tables say the same. */
export function Timeline({ pour, startMinutes, system }: Props) {
  const frame = useRef<HTMLElement>(null);
  const widthPx = useWidth(frame);
  const drawing = useMemo(() => timelineDrawing(pour, widthPx), [pour, widthPx]);
  return (
    <section aria-labelledby="pour-minutes-heading">
      <Heading id="pour-minutes-heading">Minute by minute</Heading>
      <figure ref={frame} className={styles.figure}>
        {drawing !== null && (
          <svg
            className={styles.drawing}
            width={drawing.widthPx}
            height={drawing.heightPx}
            role="img"
            aria-label={timelineWords(pour)}
          >
            {drawing.ticks.map(({ minutes, x }) => (
              <g key={minutes}>
                <line className={styles.grid} x1={x} x2={x} y1={0} y2={drawing.axisY + 4} />
                <text className={styles.minutes} x={x} y={drawing.axisY + 14}>
                  {minutes === 0 ? '0 min' : minutes}
                </text>
                <text className={styles.clock} x={x} y={drawing.axisY + 30}>
                  {clockTime(startMinutes, minutes)}
                </text>
              </g>
            ))}
            <line
              className={styles.limitLine}
              x1={drawing.firstLimitX}
              x2={drawing.firstLimitX}
              y1={0}
              y2={drawing.axisY}
            />
            {drawing.rows.map(({ key, kind, label, labelY, barY, bars }) => (
              <g key={key}>
                {bars.map((bar) =>
                  kind === 'limit' ? (
                    <g key={bar.key}>
                      <line className={styles.limit} x1={bar.x} x2={bar.x} y1={barY} y2={barY + BAR_PX} />
                      <text className={styles.limitNumber} x={bar.x + 4} y={barY + BAR_PX / 2}>
                        {bar.label}
                      </text>
                    </g>
                  ) : (
                    <g key={bar.key}>
                      <rect
                        className={
                          kind === 'mixer' ? styles.batch : bar.batch % 2 === 1 ? styles.odd : styles.even
                        }
                        x={bar.x}
                        y={barY}
                        width={bar.widthPx}
                        height={BAR_PX}
                      />
                      <text className={styles.number} x={bar.x + bar.widthPx / 2} y={barY + BAR_PX / 2}>
                        {bar.label}
                      </text>
                    </g>
                  ),
                )}
                <text className={styles.label} x={0} y={labelY}>
                  {label}
                </text>
              </g>
            ))}
          </svg>
        )}
        <figcaption className={styles.caption}>
          A number is a batch; each block in a form is a bucket. What meets a batch must be placed before that
          batch is stiff; the dashed line is the first.
        </figcaption>
      </figure>
      <Fold title="Bucket by bucket">
        <BucketTable pour={pour} startMinutes={startMinutes} system={system} />
      </Fold>
    </section>
  );
}
