/** Whether points lie in polygons and slabs, and how far from the edge. */
import type { Point, Region, Segment } from './point';
import { distanceIn, TOUCH_IN } from './point';
import { nearestBetween, nearestOnSegment } from './segments';

export interface EdgePoint {
  /** Edge i runs from corner i to corner i + 1. */
  readonly edge: number;
  readonly at: Point;
  readonly distanceIn: number;
}

/** Edge i of a closed polygon, from corner i to corner i + 1. */
export function edgeOf(points: readonly Point[], edge: number): Segment {
  return { a: points[edge]!, b: points[(edge + 1) % points.length]! };
}

/** All edges of a closed polygon in order. */
export function edgesOf(points: readonly Point[]): Segment[] {
  return points.map((_, i) => edgeOf(points, i));
}

/** The nearest point of a polygon's boundary, its edge and its distance, in. */
export function nearestOnOutline(point: Point, points: readonly Point[]): EdgePoint {
  let best: EdgePoint | null = null;
  for (let edge = 0; edge < points.length; edge++) {
    const at = nearestOnSegment(point, edgeOf(points, edge));
    const distance = distanceIn(point, at);
    if (best === null || distance < best.distanceIn) best = { edge, at, distanceIn: distance };
  }
  if (best === null) throw new Error('No nearest point of a polygon without corners');
  return best;
}

/** Where a point lies to a closed polygon; within `TOUCH_IN` of an edge it is on the edge. */
export function whereInPolygon(point: Point, points: readonly Point[]): 'inside' | 'edge' | 'outside' {
  let inside = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const p = points[j]!;
    const q = points[i]!;
    if (touchesSegment(point, p, q)) return 'edge';
    if (p.yIn > point.yIn !== q.yIn > point.yIn) {
      const xIn = p.xIn + ((q.xIn - p.xIn) * (point.yIn - p.yIn)) / (q.yIn - p.yIn);
      if (point.xIn < xIn) inside = !inside;
    }
  }
  return inside ? 'inside' : 'outside';
}

/** True inside a polygon or on its edge. */
export function isPointInPolygon(point: Point, points: readonly Point[]): boolean {
  return whereInPolygon(point, points) !== 'outside';
}

/** True on the slab: inside the outline and in no opening; the edge and the lip of an opening belong to the slab. */
export function isPointOnSlab(point: Point, region: Region): boolean {
  if (!isPointInPolygon(point, region.outer)) return false;
  return region.holes.every((hole) => whereInPolygon(point, hole) !== 'inside');
}

/** Distance from a point to a polygon's boundary, in: positive inside, negative outside. */
export function signedDistanceIn(point: Point, points: readonly Point[]): number {
  const distance = nearestOnOutline(point, points).distanceIn;
  return isPointInPolygon(point, points) ? distance : -distance;
}

/** Distance from a point to the nearest edge or cutout lip of a slab, in: positive on the slab, negative off it. */
export function slabDistanceIn(point: Point, region: Region): number {
  const loops = [region.outer, ...region.holes];
  const distance = Math.min(...loops.map((loop) => nearestOnOutline(point, loop).distanceIn));
  return isPointOnSlab(point, region) ? distance : -distance;
}

/** The shortest link between two boundaries: its ends, its edges and its length (0 where they cross), in. */
export function nearestOutlines(
  first: readonly Point[],
  second: readonly Point[],
): { readonly onFirst: EdgePoint; readonly onSecond: EdgePoint; readonly distanceIn: number } {
  let best: { onFirst: EdgePoint; onSecond: EdgePoint; distanceIn: number } | null = null;
  for (let i = 0; i < first.length; i++) {
    for (let j = 0; j < second.length; j++) {
      const link = nearestBetween(edgeOf(first, i), edgeOf(second, j));
      if (best !== null && link.distanceIn >= best.distanceIn) continue;
      best = {
        onFirst: { edge: i, at: link.onFirst, distanceIn: link.distanceIn },
        onSecond: { edge: j, at: link.onSecond, distanceIn: link.distanceIn },
        distanceIn: link.distanceIn,
      };
    }
  }
  if (best === null) throw new Error('No link between polygons without corners');
  return best;
}

function touchesSegment(point: Point, a: Point, b: Point): boolean {
  const dx = b.xIn - a.xIn;
  const dy = b.yIn - a.yIn;
  const px = point.xIn - a.xIn;
  const py = point.yIn - a.yIn;
  const lengthSquared = dx * dx + dy * dy;
  const ratio = lengthSquared === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / lengthSquared));
  const ex = px - ratio * dx;
  const ey = py - ratio * dy;
  return ex * ex + ey * ey <= TOUCH_IN * TOUCH_IN;
}
