import { useMemo } from 'react';
import type { DayLine } from '../../src-core/sequence';
import { xOfDay } from './day-scale';
import styles from './Knots.module.css';
import type { Knot } from './knots';
import { leaderFromPx, placeLabels } from './place-labels';
import { FOLDED_HEIGHT_PX, LABEL_LEVELS, labelY, STRING_Y_PX, wordsWidthPx } from './string-levels';

interface Props {
  readonly line: DayLine;
  readonly knots: readonly Knot[];
  readonly day: number | null;
  readonly widthPx: number;
  readonly isFolded: boolean;
}

/** The playhead of the finished job stands at the end of the string; words keep so far from it, px. */
const END_CLEAR_PX = 4;
const OWN_PX = 5;
const OTHER_PX = 3;
/** From the foot of the words down to where their leader begins, px. */
const BELOW_WORDS_PX = 4;
/** A label this near over its knot needs no leader, px. */
const OVER_PX = 12;

/** The string and its knots: those of the selected piece large and with words, the others small. */
export function Knots({ line, knots, day, widthPx, isFolded }: Props) {
  const y = isFolded ? FOLDED_HEIGHT_PX / 2 : STRING_Y_PX;
  const x = (of: number) => xOfDay(line, of, widthPx);
  const labels = useMemo(() => {
    const wishes = knots.map((knot) => ({
      xPx: xOfDay(line, knot.day, widthPx),
      texts: knot.labels,
      count: knot.count,
    }));
    const room = { fromPx: -8, toPx: widthPx - END_CLEAR_PX, levels: LABEL_LEVELS, widthOf: wordsWidthPx };
    return isFolded ? [] : placeLabels(wishes, room);
  }, [line, knots, widthPx, isFolded]);
  return (
    <>
      <line className={styles.string} x1={0} x2={widthPx} y1={y} y2={y} />
      {labels.map((label) => {
        const { leftPx, widthPx: wordsPx, level, knotsPx } = label;
        const middlePx = leftPx + wordsPx / 2;
        return knotsPx
          .filter((knotPx) => level > 0 || knotsPx.length > 1 || Math.abs(knotPx - middlePx) > OVER_PX)
          .map((knotPx) => (
            <line
              key={`${leftPx} ${level} ${knotPx}`}
              className={styles.leader}
              x1={leaderFromPx(label, knotPx)}
              x2={knotPx}
              y1={labelY(level) + BELOW_WORDS_PX}
              y2={y - OWN_PX}
            />
          ));
      })}
      {labels.map(({ text, leftPx, widthPx: wordsPx, level }) => (
        <text key={`${leftPx} ${level}`} className={styles.words} x={leftPx + wordsPx / 2} y={labelY(level)}>
          {text}
        </text>
      ))}
      {knots.map((knot) => (
        <rect
          key={knot.day}
          className={`${knot.isOwn ? styles.own : styles.other} ${knot.day === day ? styles.reached : ''}`}
          transform={`translate(${x(knot.day)} ${y}) rotate(45)`}
          {...square(knot.isOwn ? OWN_PX : OTHER_PX)}
        >
          <title>{knot.details.join('\n')}</title>
        </rect>
      ))}
    </>
  );
}

/** A square round the origin whose corners are this far out once it stands on one. */
function square(cornerPx: number) {
  const half = cornerPx / Math.SQRT2;
  return { x: -half, y: -half, width: 2 * half, height: 2 * half };
}
