/** What is wrong with an outline as drawn: values with a path and a sentence, never exceptions. */
import { edgeOf } from './containment';
import type { Point } from './point';
import { distanceIn, TOUCH_IN, turnIn2 } from './point';
import { polygonAreaIn2 } from './polygon-measure';
import { segmentDistanceIn } from './segments';

export interface OutlineProblem {
  readonly code:
    | 'too-few-corners'
    | 'corners-coincide'
    | 'edges-cross'
    | 'no-area'
    | 'radius-does-not-fit'
    | 'rounding-crosses';
  /** Steps from the outline down to the field at fault, e.g. `['corners', 2, 'radiusIn']`. */
  readonly path: readonly (string | number)[];
  /** Without lengths: the outline knows no units to print them in. */
  readonly sentence: string;
  /** A radius that does not fit, and the largest that would. */
  readonly radius?: { readonly askedIn: number; readonly largestIn: number };
}

export interface CornerPair {
  readonly first: number;
  readonly second: number;
  readonly distanceIn: number;
}

/** Two edges that meet elsewhere than at a shared corner; edge i runs from corner i to corner i + 1. */
export interface EdgePair {
  readonly first: number;
  readonly second: number;
}

/** Corners nearer than this are one corner drawn twice. Common practice, no source: below any saw cut. */
export const SAME_CORNER_IN = 1 / 64;

/** Pairs of corners within `withinIn` inches of each other, neighbours or not. */
export function coincidingCorners(points: readonly Point[], withinIn: number): CornerPair[] {
  const pairs: CornerPair[] = [];
  for (let first = 0; first < points.length; first++) {
    for (let second = first + 1; second < points.length; second++) {
      const apart = distanceIn(points[first]!, points[second]!);
      if (apart <= withinIn) pairs.push({ first, second, distanceIn: apart });
    }
  }
  return pairs;
}

/** Pairs of edges that cross, touch or fold back on each other. Edges without length are passed over. */
export function crossingEdges(points: readonly Point[]): EdgePair[] {
  const n = points.length;
  const pairs: EdgePair[] = [];
  for (let first = 0; first < n; first++) {
    for (let second = first + 1; second < n; second++) {
      if (boxesApart(points, first, second)) continue;
      if (edgesMeet(points, first, second)) pairs.push({ first, second });
    }
  }
  return pairs;
}

/** True where no two edges meet but at their shared corner. */
export function isSimplePolygon(points: readonly Point[]): boolean {
  return points.length >= 3 && crossingEdges(points).length === 0;
}

/** Everything that keeps a list of corners from being the outline of a slab; none where it is sound. */
export function outlineProblems(points: readonly Point[]): OutlineProblem[] {
  if (points.length < 3) {
    const sentence = `An outline needs at least three corners; this one has ${points.length}.`;
    return [{ code: 'too-few-corners', path: ['corners'], sentence }];
  }
  const coinciding = coincidingCorners(points, SAME_CORNER_IN).map(
    ({ first, second }): OutlineProblem => ({
      code: 'corners-coincide',
      path: ['corners', second],
      sentence: `Corners ${first + 1} and ${second + 1} lie on the same spot.`,
    }),
  );
  if (coinciding.length > 0) return coinciding;
  const crossing = crossingEdges(points).map(
    ({ first, second }): OutlineProblem => ({
      code: 'edges-cross',
      path: ['corners', first],
      sentence: `Edge ${first + 1} and edge ${second + 1} cross or touch.`,
    }),
  );
  if (crossing.length > 0) return crossing;
  if (polygonAreaIn2(points) <= SAME_CORNER_IN * SAME_CORNER_IN) {
    return [{ code: 'no-area', path: ['corners'], sentence: 'The outline encloses no area.' }];
  }
  return [];
}

function edgesMeet(points: readonly Point[], first: number, second: number): boolean {
  const n = points.length;
  const one = edgeOf(points, first);
  const other = edgeOf(points, second);
  if (distanceIn(one.a, one.b) <= TOUCH_IN || distanceIn(other.a, other.b) <= TOUCH_IN) return false;
  if (second === first + 1) return foldsBack(one.a, one.b, other.b);
  if ((second + 1) % n === first) return foldsBack(other.a, other.b, one.b);
  return segmentDistanceIn(one, other) <= TOUCH_IN;
}

/** True where the path a, b, c comes back along itself at b. */
function foldsBack(a: Point, b: Point, c: Point): boolean {
  const dot = (a.xIn - b.xIn) * (c.xIn - b.xIn) + (a.yIn - b.yIn) * (c.yIn - b.yIn);
  if (dot <= 0) return false;
  const longerIn = Math.max(distanceIn(a, b), distanceIn(b, c));
  return Math.abs(turnIn2(a, b, c)) / longerIn <= TOUCH_IN;
}

function boxesApart(points: readonly Point[], first: number, second: number): boolean {
  const { a, b } = edgeOf(points, first);
  const { a: c, b: d } = edgeOf(points, second);
  return (
    Math.max(a.xIn, b.xIn) < Math.min(c.xIn, d.xIn) - TOUCH_IN ||
    Math.max(c.xIn, d.xIn) < Math.min(a.xIn, b.xIn) - TOUCH_IN ||
    Math.max(a.yIn, b.yIn) < Math.min(c.yIn, d.yIn) - TOUCH_IN ||
    Math.max(c.yIn, d.yIn) < Math.min(a.yIn, b.yIn) - TOUCH_IN
  );
}
