/** Plan points and directions. x runs to the right, y away from the viewer, both in inches. */

export interface Point {
  readonly xIn: number;
  readonly yIn: number;
}

/** A unit vector; its components are pure ratios. */
export interface Direction {
  readonly x: number;
  readonly y: number;
}

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

/** A slab in plan: its outline and the openings in it. Loops may run either way round. */
export interface Region {
  readonly outer: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
}

/** Two things nearer than this touch: far below any tape, far above rounding at 200 ft. */
export const TOUCH_IN = 1e-7;

/** Distance between two points, in. */
export function distanceIn(a: Point, b: Point): number {
  return Math.hypot(b.xIn - a.xIn, b.yIn - a.yIn);
}

/** Unit vector from `a` to `b`; the points must differ. */
export function directionBetween(a: Point, b: Point): Direction {
  const lengthIn = distanceIn(a, b);
  if (!(lengthIn > 0)) throw new Error(`No direction between equal points (${a.xIn}, ${a.yIn})`);
  return { x: (b.xIn - a.xIn) / lengthIn, y: (b.yIn - a.yIn) / lengthIn };
}

/** Unit vector at `angleRad` from the x axis, counter-clockwise. */
export function directionAt(angleRad: number): Direction {
  return { x: Math.cos(angleRad), y: Math.sin(angleRad) };
}

/** The direction a quarter turn counter-clockwise: the inward normal of an edge of a counter-clockwise outline. */
export function leftOf(direction: Direction): Direction {
  return { x: -direction.y, y: direction.x };
}

/** `point` moved `byIn` inches along `direction`. */
export function moved(point: Point, direction: Direction, byIn: number): Point {
  return { xIn: point.xIn + direction.x * byIn, yIn: point.yIn + direction.y * byIn };
}

/** `point` turned by `angleRad` counter-clockwise about the origin. */
export function turned(point: Point, angleRad: number): Point {
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  return { xIn: c * point.xIn - s * point.yIn, yIn: s * point.xIn + c * point.yIn };
}

/** The point a share `ratio` (0 to 1) of the way from `a` to `b`. */
export function between(a: Point, b: Point, ratio: number): Point {
  return { xIn: a.xIn + (b.xIn - a.xIn) * ratio, yIn: a.yIn + (b.yIn - a.yIn) * ratio };
}

/** Twice the signed area of triangle abc, in2: positive where c lies left of the line from a to b. */
export function turnIn2(a: Point, b: Point, c: Point): number {
  return (b.xIn - a.xIn) * (c.yIn - a.yIn) - (b.yIn - a.yIn) * (c.xIn - a.xIn);
}
