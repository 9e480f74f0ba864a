/** A rectangle of falsework and its own directions: along its front, and from its front to its back. */
import type { Direction, Point } from '../outline';
import { leftOf, moved } from '../outline';

/** p runs along the front from the left, q from the front to the back, in. */
export interface SectionFrame {
  readonly origin: Point;
  readonly along: Direction;
  readonly widthIn: number;
  readonly depthIn: number;
}

/** A rectangle in a section's own measures. */
export interface Patch {
  readonly p0: number;
  readonly p1: number;
  readonly q0: number;
  readonly q1: number;
}

/** The place in plan of a place in a section. */
export function placeInPlan({ origin, along }: SectionFrame, pIn: number, qIn: number): Point {
  return moved(moved(origin, along, pIn), leftOf(along), qIn);
}

/** The place in a section's own measures of a place in plan. */
export function placeInSection({ origin, along }: SectionFrame, point: Point): { p: number; q: number } {
  const [dx, dy] = [point.xIn - origin.xIn, point.yIn - origin.yIn];
  const back = leftOf(along);
  return { p: dx * along.x + dy * along.y, q: dx * back.x + dy * back.y };
}

/** Corners of a section in plan, counter-clockwise from its front left. */
export function sectionCorners(frame: SectionFrame): Point[] {
  const { widthIn: w, depthIn: d } = frame;
  return [
    placeInPlan(frame, 0, 0),
    placeInPlan(frame, w, 0),
    placeInPlan(frame, w, d),
    placeInPlan(frame, 0, d),
  ];
}

/** The upright box of a polygon in a section's own measures. */
export function patchOf(frame: SectionFrame, points: readonly Point[]): Patch {
  const places = points.map((point) => placeInSection(frame, point));
  const ps = places.map(({ p }) => p);
  const qs = places.map(({ q }) => q);
  return { p0: Math.min(...ps), p1: Math.max(...ps), q0: Math.min(...qs), q1: Math.max(...qs) };
}
