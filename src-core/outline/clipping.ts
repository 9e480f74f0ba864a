/** Polygon offsets, unions and differences, and what of a line, strip or patch lies on the slab. */
import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import { isPointOnSlab } from './containment';
import type { Direction, Point, Region, Segment } from './point';
import { directionBetween, distanceIn, leftOf, moved, TOUCH_IN } from './point';
import { polygonAreaIn2, signedAreaIn2 } from './polygon-measure';
import type { Stretch } from './segments';
import { touchAlong } from './segments';

/** Decimals kept by the clipping library, which works in whole numbers: a hundred-millionth of an inch, finer than `TOUCH_IN`. */
const DECIMALS = 8;
/** A mitred corner reaches at most this multiple of the offset; sharper ones are cut off square. */
const MITRE_LIMIT = 10;
const ARC_TOLERANCE_IN = 0.002;

type Loops = readonly (readonly Point[])[];
type Path = { x: number; y: number }[];

/**
 * The polygon moved outward by `byIn` inches (inward where negative), its corners mitred or rounded. A narrow
 * polygon may fall apart into several or vanish. Openings that form come back clockwise.
 */
export function offsetPolygon(points: readonly Point[], byIn: number, join: 'mitre' | 'round'): Point[][] {
  const joinType = join === 'mitre' ? JoinType.Miter : JoinType.Round;
  const paths = [toPath(points, true)];
  return fromPaths(
    Clipper.inflatePathsD(paths, byIn, joinType, EndType.Polygon, MITRE_LIMIT, DECIMALS, ARC_TOLERANCE_IN),
  );
}

/** What two slabs share in plan: counter-clockwise outlines and clockwise openings. */
export function intersectRegions(first: Region, second: Region): Point[][] {
  return fromPaths(Clipper.intersectD(toPaths(first), toPaths(second), FillRule.Positive, DECIMALS));
}

/** What of the first slab lies outside the second: counter-clockwise outlines and clockwise openings. */
export function subtractRegion(first: Region, second: Region): Point[][] {
  return fromPaths(Clipper.differenceD(toPaths(first), toPaths(second), FillRule.Positive, DECIMALS));
}

/** Area that two slabs share in plan, in2. */
export function intersectionAreaIn2(first: Region, second: Region): number {
  return loopsAreaIn2(intersectRegions(first, second));
}

/** Area of the first slab that lies outside the second, in2. */
export function differenceAreaIn2(first: Region, second: Region): number {
  return loopsAreaIn2(subtractRegion(first, second));
}

/** Area within counter-clockwise loops less that of clockwise ones, in2. */
export function loopsAreaIn2(loops: Loops): number {
  return loops.reduce((sumIn2, loop) => sumIn2 + signedAreaIn2(loop), 0);
}

/** The parts of a patch (a polygon) that lie on the slab. */
export function clipPatchToRegion(patch: readonly Point[], region: Region): Point[][] {
  return intersectRegions({ outer: patch, holes: [] }, region);
}

/** The parts of a strip `widthIn` wide along a segment that lie on the slab; its ends are square. */
export function clipStripToRegion(centreLine: Segment, widthIn: number, region: Region): Point[][] {
  const across = leftOf(directionBetween(centreLine.a, centreLine.b));
  const half = widthIn / 2;
  const { a, b } = centreLine;
  return clipPatchToRegion(
    [moved(a, across, -half), moved(b, across, -half), moved(b, across, half), moved(a, across, half)],
    region,
  );
}

/** The parts of a segment that lie on the slab, from its start to its end. A part along an edge or lip is on the slab. */
export function clipSegmentToRegion(segment: Segment, region: Region): Segment[] {
  const lengthIn = distanceIn(segment.a, segment.b);
  if (lengthIn <= TOUCH_IN) return [];
  const direction = directionBetween(segment.a, segment.b);
  return stretchesOnSlab(segment.a, direction, region)
    .map(({ fromIn, toIn }) => ({ fromIn: Math.max(0, fromIn), toIn: Math.min(lengthIn, toIn) }))
    .filter(({ fromIn, toIn }) => toIn - fromIn > TOUCH_IN)
    .map(({ fromIn, toIn }) => ({
      a: moved(segment.a, direction, fromIn),
      b: moved(segment.a, direction, toIn),
    }));
}

/**
 * The stretches of the whole line through `origin` along the unit vector `direction` that lie on the slab, in order.
 * A stretch along an edge or a lip is on the slab; a line that only grazes a corner from outside is not.
 */
export function stretchesOnSlab(origin: Point, direction: Direction, region: Region): Stretch[] {
  const cuts = lineCuts(origin, direction, [region.outer, ...region.holes]);
  const stretches: Stretch[] = [];
  for (let i = 1; i < cuts.length; i++) {
    const fromIn = cuts[i - 1]!;
    const toIn = cuts[i]!;
    if (toIn - fromIn <= TOUCH_IN) continue;
    if (!isPointOnSlab(moved(origin, direction, (fromIn + toIn) / 2), region)) continue;
    const last = stretches.at(-1);
    if (last !== undefined && fromIn - last.toIn <= TOUCH_IN) {
      stretches[stretches.length - 1] = { fromIn: last.fromIn, toIn };
    } else stretches.push({ fromIn, toIn });
  }
  return stretches;
}

/** Distances at which a line meets the loops, sorted; both ends of an edge that lies along it. */
export function lineCuts(origin: Point, direction: Direction, loops: Loops): number[] {
  const cuts: number[] = [];
  for (const loop of loops) {
    for (let i = 0; i < loop.length; i++) {
      const a = loop[i]!;
      const b = loop[(i + 1) % loop.length]!;
      const touch = touchAlong(origin, direction, { a, b });
      if (touch === null) continue;
      cuts.push(touch.fromIn);
      if (touch.toIn > touch.fromIn) cuts.push(touch.toIn);
    }
  }
  return cuts.sort((p, q) => p - q);
}

function toPaths(region: Region): Path[] {
  return [toPath(region.outer, true), ...region.holes.map((hole) => toPath(hole, false))];
}

function toPath(points: readonly Point[], wantCounterClockwise: boolean): Path {
  const path = points.map(({ xIn, yIn }) => ({ x: xIn, y: yIn }));
  return signedAreaIn2(points) > 0 === wantCounterClockwise ? path : path.reverse();
}

function fromPaths(paths: readonly (readonly { x: number; y: number }[])[]): Point[][] {
  return paths
    .map((path) => path.map(({ x, y }) => ({ xIn: x, yIn: y })))
    .filter((loop) => polygonAreaIn2(loop) > 0);
}
