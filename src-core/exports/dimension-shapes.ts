/** A dimension of the plan at true scale: its line with oblique strokes, witness lines and figure. */
import type { Dimension } from '../drawing';
import type { Direction, Point } from '../outline';
import { between, directionBetween, leftOf, moved } from '../outline';
import type { PlanLayer } from './plan-layers';
import type { PlanShape } from './plan-shape';
import {
  FIGURE_HEIGHT_IN,
  FIGURE_OFF_IN,
  FIRST_ROW_IN,
  LEAST_DIMENSION_IN,
  ROW_IN,
  STROKE_HALF_IN,
  WITNESS_GAP_IN,
  WITNESS_PAST_IN,
} from './practice';

/** Lines and words of one dimension; none where it is too short to be read. */
export function dimensionShapes(dimension: Dimension, layer: PlanLayer, words: string): PlanShape[] {
  if (dimension.lengthIn < LEAST_DIMENSION_IN) return [];
  const { place } = dimension;
  const line = (from: Point, to: Point): PlanShape => ({ kind: 'line', layer, from, to });
  const offIn = place.kind === 'beside' ? FIRST_ROW_IN + place.row * ROW_IN : 0;
  const ends = [dimension.from, dimension.to];
  const [from, to] = (
    place.kind === 'beside' ? ends.map((end) => moved(end, place.outward, offIn)) : ends
  ) as [Point, Point];
  const witness =
    place.kind === 'beside'
      ? ends.map((end) =>
          line(moved(end, place.outward, WITNESS_GAP_IN), moved(end, place.outward, offIn + WITNESS_PAST_IN)),
        )
      : [];
  const direction = directionBetween(from, to);
  const turnDeg = readableDeg(from, to);
  const at = moved(between(from, to, 0.5), above(direction), FIGURE_OFF_IN);
  return [
    line(from, to),
    ...[from, to].map((end) => stroke(end, direction, line)),
    ...witness,
    { kind: 'words', layer, words, at, heightIn: FIGURE_HEIGHT_IN, turnDeg },
  ];
}

/** Turn of words along a line, above -90 and up to 90 degrees, so that they read from the front or from the right. */
export function readableDeg(from: Point, to: Point): number {
  const deg = (Math.atan2(to.yIn - from.yIn, to.xIn - from.xIn) * 180) / Math.PI;
  if (deg > 90 + 1e-6) return deg - 180;
  return deg <= -90 + 1e-6 ? deg + 180 : deg;
}

/** Across a line, to the upper side of words that stand along it. */
function above(direction: Direction): Direction {
  const isReversed = direction.x < -1e-8 || (Math.abs(direction.x) <= 1e-8 && direction.y < 0);
  const left = leftOf(direction);
  return isReversed ? { x: -left.x, y: -left.y } : left;
}

function stroke(end: Point, along: Direction, line: (from: Point, to: Point) => PlanShape): PlanShape {
  const left = leftOf(along);
  const slant = { x: (along.x + left.x) * Math.SQRT1_2, y: (along.y + left.y) * Math.SQRT1_2 };
  return line(moved(end, slant, -STROKE_HALF_IN), moved(end, slant, STROKE_HALF_IN));
}
