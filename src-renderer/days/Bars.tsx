import type { Job } from '../../src-core/job';
import type { DayLine } from '../../src-core/sequence';
import styles from './Bars.module.css';
import type { BarRow } from './bar-rows';
import { axisMarks, xOfDay } from './day-scale';
import { AXIS_Y_PX, BAR_PX, rowY, STRING_Y_PX } from './string-levels';

interface Props {
  readonly job: Job;
  readonly line: DayLine;
  readonly rows: readonly BarRow[];
  readonly widthPx: number;
}

/** A bar that is only one of many still shows, px. */
const THINNEST_PX = 2;

/** Rows of bars below the string, the thicker the more stands, and the scale of days below them. */
export function Bars({ job, line, rows, widthPx }: Props) {
  const x = (day: number) => xOfDay(line, day, widthPx);
  return (
    <>
      {axisMarks(line, job.site.calendar, widthPx).map(({ day, xPx, words }) => (
        <g key={day}>
          <line className={styles.mark} x1={xPx} x2={xPx} y1={STRING_Y_PX + 6} y2={AXIS_Y_PX - 12} />
          <text className={styles.day} x={xPx} y={AXIS_Y_PX} textAnchor={xPx < 16 ? 'start' : 'middle'}>
            {words}
          </text>
        </g>
      ))}
      {rows.map(({ id, spans, details }, index) => (
        <g key={id} className={styles[id]}>
          <title>{details}</title>
          {spans.map(({ fromDay, toDay, share, isWet }) => {
            const heightPx = Math.max(THINNEST_PX, BAR_PX * share);
            return (
              <rect
                key={fromDay}
                className={isWet ? styles.wet : styles.bar}
                x={x(fromDay)}
                y={rowY(index) - heightPx / 2}
                width={x(toDay + 1) - x(fromDay)}
                height={heightPx}
              />
            );
          })}
        </g>
      ))}
    </>
  );
}
