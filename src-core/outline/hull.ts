/** Convex hull, and how far a point lies inside it: whether a centre of gravity is within its bearings. */
import { nearestOnOutline } from './containment';
import type { Point } from './point';
import { distanceIn, TOUCH_IN, turnIn2 } from './point';

/**
 * Convex hull, counter-clockwise from the leftmost (lowest of equals) point, without points along its sides.
 * Points on one line give its two ends, equal points one. Source: Andrew's monotone chain (1979).
 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((p, q) => p.xIn - q.xIn || p.yIn - q.yIn);
  const distinct = sorted.filter((p, i) => i === 0 || distanceIn(p, sorted[i - 1]!) > TOUCH_IN);
  if (distinct.length <= 2) return distinct;
  const lower = chain(distinct);
  const upper = chain([...distinct].reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

/** Distance from a point to the hull's boundary, in: positive inside, negative outside or where the hull has no area. */
export function signedDistanceToHullIn(point: Point, hull: readonly Point[]): number {
  const distance = nearestOnOutline(point, hull).distanceIn;
  if (hull.length < 3) return -distance;
  const isInside = hull.every((a, i) => turnIn2(a, hull[(i + 1) % hull.length]!, point) >= 0);
  return isInside ? distance : -distance;
}

function chain(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const p of points) {
    while (kept.length >= 2 && !turnsLeft(kept.at(-2)!, kept.at(-1)!, p)) kept.pop();
    kept.push(p);
  }
  return kept;
}

function turnsLeft(a: Point, b: Point, c: Point): boolean {
  return turnIn2(a, b, c) > TOUCH_IN * distanceIn(a, c);
}
