/** How far slab goes on from a point, and how far it is to something that bears. */
import type { PieceAnalysis } from '../analysis';
import type { Point, Region } from '../outline';
import { clipSegmentToRegion, directionAt, distanceIn, moved, TOUCH_IN } from '../outline';

/** Longer than any slab, in. */
const RAY_IN = 10_000;

/** From a point along `wayRad` to where the region ends, in; 0 where it does not lie on it. Along an edge counts as on it. */
export function regionAheadIn(region: Region, at: Point, wayRad: number): number {
  const ray = { a: at, b: moved(at, directionAt(wayRad), RAY_IN) };
  const first = clipSegmentToRegion(ray, region)[0];
  if (first === undefined || distanceIn(at, first.a) > TOUCH_IN) return 0;
  return distanceIn(first.a, first.b);
}

/** From a point along `wayRad` to where the slab of the piece ends at an edge or a cutout, in. */
export function slabAheadIn({ shape }: PieceAnalysis, at: Point, wayRad: number): number {
  return regionAheadIn({ outer: shape.outer, holes: shape.holes }, at, wayRad);
}

/** From a point along `wayRad` over the slab to the first of these contact areas, in; null where none is met. */
export function bearingAheadIn(
  analysis: PieceAnalysis,
  areas: readonly (readonly Point[])[],
  at: Point,
  wayRad: number,
): number | null {
  const slabIn = slabAheadIn(analysis, at, wayRad);
  if (slabIn <= TOUCH_IN) return null;
  const ray = { a: at, b: moved(at, directionAt(wayRad), slabIn) };
  let nearest: number | null = null;
  for (const outer of areas) {
    const first = clipSegmentToRegion(ray, { outer, holes: [] })[0];
    if (first === undefined) continue;
    const awayIn = distanceIn(at, first.a);
    if (nearest === null || awayIn < nearest) nearest = awayIn;
  }
  return nearest;
}
