/** Straight segments: nearest points, meetings, and what a ray meets first. */
import type { Direction, Point, Segment } from './point';
import { between, distanceIn, TOUCH_IN, turnIn2 } from './point';

/** The point of a segment nearest to `point`. */
export function nearestOnSegment(point: Point, segment: Segment): Point {
  const { a, b } = segment;
  const dx = b.xIn - a.xIn;
  const dy = b.yIn - a.yIn;
  const lengthSquared = dx * dx + dy * dy;
  if (lengthSquared === 0) return a;
  const ratio = ((point.xIn - a.xIn) * dx + (point.yIn - a.yIn) * dy) / lengthSquared;
  return between(a, b, Math.min(1, Math.max(0, ratio)));
}

/** The shortest link between two segments: its ends on each and its length (0 where they meet), in. */
export function nearestBetween(
  first: Segment,
  second: Segment,
): { readonly onFirst: Point; readonly onSecond: Point; readonly distanceIn: number } {
  const crossing = properCrossing(first, second);
  if (crossing !== null) return { onFirst: crossing, onSecond: crossing, distanceIn: 0 };
  const links = [
    [first.a, nearestOnSegment(first.a, second)],
    [first.b, nearestOnSegment(first.b, second)],
    [nearestOnSegment(second.a, first), second.a],
    [nearestOnSegment(second.b, first), second.b],
  ] as const;
  let best = links[0] as readonly [Point, Point];
  for (const link of links) if (distanceIn(link[0], link[1]) < distanceIn(best[0], best[1])) best = link;
  return { onFirst: best[0], onSecond: best[1], distanceIn: distanceIn(best[0], best[1]) };
}

/** Distance between two segments, in; 0 where they cross. */
export function segmentDistanceIn(first: Segment, second: Segment): number {
  return nearestBetween(first, second).distanceIn;
}

/** Where two segments meet (touching counts), or null. Of segments that overlap, one shared point. */
export function segmentMeeting(first: Segment, second: Segment): Point | null {
  const link = nearestBetween(first, second);
  return link.distanceIn <= TOUCH_IN ? link.onFirst : null;
}

/**
 * Distance from `origin` along `direction` (a unit vector) to the first segment met, in; null where none is.
 * Touching an end counts. Of a segment that lies along the ray the nearest point counts, so a ray that starts
 * on it is at distance 0.
 */
export function firstHitIn(origin: Point, direction: Direction, segments: readonly Segment[]): number | null {
  let first: number | null = null;
  for (const segment of segments) {
    const touch = touchAlong(origin, direction, segment);
    if (touch === null || touch.toIn < -TOUCH_IN) continue;
    const hitIn = Math.max(0, touch.fromIn);
    if (first === null || hitIn < first) first = hitIn;
  }
  return first;
}

/** A stretch of a line, by distance from its origin, in. */
export interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
}

/**
 * The stretch of the whole line through `origin` that lies on a segment (one point where it crosses), or null.
 * Distances behind the origin are negative.
 */
export function touchAlong(origin: Point, direction: Direction, segment: Segment): Stretch | null {
  const sideA = sideIn(origin, direction, segment.a);
  const sideB = sideIn(origin, direction, segment.b);
  const alongA = alongIn(origin, direction, segment.a);
  const alongB = alongIn(origin, direction, segment.b);
  if (sideA === 0 && sideB === 0) {
    return { fromIn: Math.min(alongA, alongB), toIn: Math.max(alongA, alongB) };
  }
  if (sideA * sideB > 0) return null;
  const atIn = alongA + ((alongB - alongA) * sideA) / (sideA - sideB);
  return { fromIn: atIn, toIn: atIn };
}

/** Distance of `point` to the left of the line, in, snapped to 0 where it touches the line. */
export function sideIn(origin: Point, direction: Direction, point: Point): number {
  const side = direction.x * (point.yIn - origin.yIn) - direction.y * (point.xIn - origin.xIn);
  return Math.abs(side) <= TOUCH_IN ? 0 : side;
}

/** Distance of `point` along the line from its origin, in. */
export function alongIn(origin: Point, direction: Direction, point: Point): number {
  return direction.x * (point.xIn - origin.xIn) + direction.y * (point.yIn - origin.yIn);
}

function properCrossing(first: Segment, second: Segment): Point | null {
  const c = turnIn2(first.a, first.b, second.a);
  const d = turnIn2(first.a, first.b, second.b);
  if (c * d >= 0) return null;
  const a = turnIn2(second.a, second.b, first.a);
  const b = turnIn2(second.a, second.b, first.b);
  if (a * b >= 0) return null;
  return between(first.a, first.b, a / (a - b));
}
