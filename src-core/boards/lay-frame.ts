/**
 * The directions in which boards are laid. Everything is laid out in a frame whose x runs to the right as nearly as
 * it can and whose y runs from the front to the back, so that the front of every part is its low side.
 */
import type { Direction, Point, Region } from '../outline';
import { leftOf, pieceDirection } from '../outline';

/** Directions nearer than this are one (a sine). */
const SAME_DIRECTION = 1e-9;

/** The axes to try: the drawing's own, and along the longest edge turned to within an eighth of a turn of it. */
export function layAxes(outer: readonly Point[]): readonly Direction[] {
  const straight = { x: 1, y: 0 };
  const own = rightward(pieceDirection(outer));
  return Math.abs(own.y) < SAME_DIRECTION ? [straight] : [straight, own];
}

/** The quarter turn of a direction that runs most to the right. */
function rightward(direction: Direction): Direction {
  const left = leftOf(direction);
  const turns = [direction, left, { x: -direction.x, y: -direction.y }, { x: -left.x, y: -left.y }];
  return turns.reduce((best, next) => (next.x > best.x + SAME_DIRECTION ? next : best));
}

/** A point of the plan in a frame with this x axis, in. */
export function toFrame({ xIn, yIn }: Point, { x, y }: Direction): Point {
  return { xIn: xIn * x + yIn * y, yIn: yIn * x - xIn * y };
}

/** A point of such a frame in the plan, in. */
export function toPlan({ xIn, yIn }: Point, { x, y }: Direction): Point {
  return { xIn: xIn * x - yIn * y, yIn: yIn * x + xIn * y };
}

/** A slab in a frame with this x axis. */
export function regionInFrame({ outer, holes }: Region, axis: Direction): Region {
  const turn = (points: readonly Point[]) => points.map((point) => toFrame(point, axis));
  return { outer: turn(outer), holes: holes.map(turn) };
}
