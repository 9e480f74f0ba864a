/** Measured overhangs: from each edge inward to the first bearing. */
import type { Bearing, LineReading, Reach } from './bearings';
import { bearingAhead, readLine, slabAhead } from './bearings';
import { nearestOnOutline, whereInPolygon } from './containment';
import type { OutlineEdge } from './edges';
import { outlineEdges } from './edges';
import type { Point, Region } from './point';
import { moved, distanceIn as spanIn, TOUCH_IN } from './point';
import { alongIn, nearestOnSegment } from './segments';

export interface OverhangInput {
  readonly region: Region;
  readonly bearings: readonly Bearing[];
  /** Greatest step between sample points along an edge; the ends of every bearing are sampled besides. */
  readonly sampleIn: number;
  /** Edges of the outline to measure; all where left out. */
  readonly edges?: readonly number[];
}

export interface EdgeOverhang {
  readonly edge: number;
  /** Largest distance from the edge inward to the first bearing; null where no ray meets one on the slab. */
  readonly overhangIn: number | null;
  /** Point of the edge where that is, and the bearing met. */
  readonly at: Point | null;
  readonly bearing: number | null;
  /** Lengths of edge, from its start and its end, over which nothing behind it bears; null where nothing does at all. */
  readonly startCantileverIn: number | null;
  readonly endCantileverIn: number | null;
  /** Deepest slab behind a point of the edge that meets no bearing before the slab ends; null where every ray meets one. */
  readonly unmetDepthIn: number | null;
}

/** Where a bearing ends, the reading jumps: it is taken this far to either side as well, in. */
const BESIDE_IN = 1e-5;
/** Readings closer than this are one reading, in. */
const SAME_READING_IN = 1e-6;

const BESIDE_SHARE = 0.5;

interface Sample {
  readonly atIn: number;
  readonly distanceIn: number | null;
  readonly bearing: number | null;
  readonly depthIn: number;
}

/**
 * For each edge of the outline the largest overhang (in): over points along the edge, the distance along the inward
 * normal to the first bearing met before the slab ends, or to a bearing beside it less than half as far. A cutout ends the slab. A point that lies on a bearing is at
 * distance 0. Of points with the same overhang the one nearest the middle of the edge is named. Plane geometry.
 */
export function measureOverhangs(input: OverhangInput): EdgeOverhang[] {
  if (!(input.sampleIn > 0)) throw new Error(`Sample step ${input.sampleIn} in is not positive`);
  const wanted = input.edges === undefined ? null : new Set(input.edges);
  return outlineEdges(input.region.outer)
    .filter(({ edge }) => wanted === null || wanted.has(edge))
    .map((edge) => overhangOf(edge, input));
}

function overhangOf(edge: OutlineEdge, input: OverhangInput): EdgeOverhang {
  const extents = input.bearings.map((bearing) => extentAlong(edge, bearing));
  const samples = samplePlacesIn(edge, input).map((atIn) => sampleAt(edge, atIn, input, extents));
  const met = samples.filter(({ distanceIn }) => distanceIn !== null);
  const unmet = samples.filter(({ distanceIn }) => distanceIn === null);
  const largestIn = Math.max(...met.map(({ distanceIn }) => distanceIn!));
  const offMiddleIn = ({ atIn }: Sample) => Math.abs(atIn - edge.lengthIn / 2);
  const worst = met
    .filter(({ distanceIn }) => distanceIn! >= largestIn - SAME_READING_IN)
    .reduce<Sample | null>(
      (best, next) =>
        best === null || offMiddleIn(next) < offMiddleIn(best) - SAME_READING_IN ? next : best,
      null,
    );
  return {
    edge: edge.edge,
    overhangIn: met.length === 0 ? null : largestIn,
    at: worst === null ? null : moved(edge.a, edge.direction, worst.atIn),
    bearing: worst?.bearing ?? null,
    startCantileverIn: met[0]?.atIn ?? null,
    endCantileverIn: met.length === 0 ? null : edge.lengthIn - met.at(-1)!.atIn,
    unmetDepthIn: unmet.length === 0 ? null : Math.max(...unmet.map(({ depthIn }) => depthIn)),
  };
}

/** From where to where along an edge something reaches, as seen square to it. */
interface Extent {
  readonly fromIn: number;
  readonly toIn: number;
}

function extentAlong(edge: OutlineEdge, bearing: Bearing): Extent {
  const ends = bearing.kind === 'line' ? [bearing.a, bearing.b] : bearing.points;
  const placesIn = ends.map((end) => alongIn(edge.a, edge.direction, end));
  return { fromIn: Math.min(...placesIn), toIn: Math.max(...placesIn) };
}

/** How far a place along an edge lies outside an extent, 0 within it: never more than the distance in plan. */
function besideIn(atIn: number, { fromIn, toIn }: Extent): number {
  return Math.max(0, fromIn - atIn, atIn - toIn);
}

function sampleAt(edge: OutlineEdge, atIn: number, input: OverhangInput, extents: readonly Extent[]): Sample {
  const origin = moved(edge.a, edge.direction, atIn);
  const gapsIn = extents.map((extent) => besideIn(atIn, extent));
  const isMet = (bearing: number) => gapsIn[bearing]! <= TOUCH_IN;
  const reading: LineReading = readLine(origin, edge.inward, input.region, input.bearings, isMet);
  const depthIn = slabAhead(reading, 0)?.toIn ?? 0;
  const ahead = bearingAhead(reading, 0, depthIn);
  const reach = ahead === null ? null : nearestBearing(origin, ahead, input.bearings, gapsIn);
  return { atIn, distanceIn: reach?.distanceIn ?? null, bearing: reach?.bearing ?? null, depthIn };
}

/**
 * The bearing met straight ahead, or one beside the ray less than half as far off: a ray along a front strip, or between
 * two arms, runs past what carries the edge. Half is common practice, no source.
 */
function nearestBearing(
  origin: Point,
  ahead: Reach,
  bearings: readonly Bearing[],
  gapsIn: readonly number[],
): Reach {
  return bearings.reduce<Reach>((nearest, bearing, index) => {
    if (gapsIn[index]! >= Math.min(nearest.distanceIn, BESIDE_SHARE * ahead.distanceIn)) return nearest;
    const distanceIn =
      bearing.kind === 'line'
        ? spanIn(origin, nearestOnSegment(origin, bearing))
        : whereInPolygon(origin, bearing.points) === 'outside'
          ? nearestOnOutline(origin, bearing.points).distanceIn
          : 0;
    const isBeside = distanceIn < BESIDE_SHARE * ahead.distanceIn - SAME_READING_IN;
    return isBeside && distanceIn < nearest.distanceIn ? { distanceIn, bearing: index } : nearest;
  }, ahead);
}

/** Even steps from end to end with the middle among them, and the ends of the bearings as seen from the edge. */
function samplePlacesIn(edge: OutlineEdge, input: OverhangInput): number[] {
  const steps = 2 * Math.max(1, Math.ceil(edge.lengthIn / input.sampleIn / 2 - 1e-9));
  const placesIn = Array.from({ length: steps + 1 }, (_, k) => (edge.lengthIn * k) / steps);
  for (const bearing of input.bearings) {
    const ends = bearing.kind === 'line' ? [bearing.a, bearing.b] : bearing.points;
    for (const end of ends) {
      const atIn = alongIn(edge.a, edge.direction, end);
      placesIn.push(atIn - BESIDE_IN, atIn, atIn + BESIDE_IN);
    }
  }
  return placesIn
    .filter((atIn) => atIn >= -TOUCH_IN && atIn <= edge.lengthIn + TOUCH_IN)
    .map((atIn) => Math.min(edge.lengthIn, Math.max(0, atIn)))
    .sort((p, q) => p - q)
    .filter((atIn, i, sorted) => i === 0 || atIn - sorted[i - 1]! > TOUCH_IN);
}
