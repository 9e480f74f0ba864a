/** How far each edge reaches past what it bears on, square to the edge as a rule is laid. */
import { stands } from '../analysis';
import type { Piece } from '../job';
import { bearingPatches, pieceRegion } from '../job';
import type { OutlineEdge, Point, Segment } from '../outline';
import { edgesOf, firstHitIn, isPointInPolygon, moved, nearestOnOutline, outlineEdges } from '../outline';
import type { Dimension } from './dimension';

/** Step of the readings along an edge, as the load check takes it. */
const MEASURE_STEP_IN = 3;
/** Where a bearing ends the reading jumps, so it is taken this far to either side, in. */
const BESIDE_IN = 1e-5;
/** A bearing beside the point counts before one ahead where it is less than this share as far, as in the load check. */
const BESIDE_SHARE = 0.5;
/** A shorter overhang is a slab flush with its bearing. */
const LEAST_SHOWN_IN = 1 / 4;
/** Readings closer than this are one length, in. */
const SAME_READING_IN = 1e-6;

interface Reading {
  readonly at: Point;
  readonly overhangIn: number;
  readonly offMiddleIn: number;
}

interface Bearings {
  readonly loops: readonly (readonly Point[])[];
  readonly sides: readonly Segment[];
}

/**
 * The longest overhang of every free edge over the supports that stay: from the edge straight inward to the first bearing on the
 * slab, nearest to the middle of the edge where it is the same length in many places. The load check also looks slantwise round
 * the ends of bearings, so its overhang may be longer, never shorter.
 */
export function overhangDimensions(piece: Piece): Dimension[] {
  const region = pieceRegion(piece);
  if (!region.ok) return [];
  const loops = piece.supports
    .filter((support) => stands(support, null))
    .flatMap((support) => bearingPatches(support, region.outer))
    .map(({ corners }) => corners);
  const bearings = { loops, sides: loops.flatMap((loop) => edgesOf(loop)) };
  const lips = region.holes.flatMap((hole) => edgesOf(hole));
  const edges = outlineEdges(piece.corners);
  return edges.flatMap((edge): Dimension[] => {
    if ((piece.edges?.[edge.edge]?.kind ?? 'free') !== 'free') return [];
    const slabEnds = [...edges.filter((other) => other !== edge), ...lips];
    const longest = longestReading(edge, bearings, slabEnds);
    if (longest === null || longest.overhangIn < LEAST_SHOWN_IN) return [];
    return [
      {
        key: `overhang-${edge.edge}`,
        of: 'overhang',
        words: `Overhang of edge ${edge.edge + 1}`,
        from: longest.at,
        to: moved(longest.at, edge.inward, longest.overhangIn),
        lengthIn: longest.overhangIn,
        place: { kind: 'on' },
        sets: { kind: 'edge-place', index: edge.edge },
      },
    ];
  });
}

function longestReading(edge: OutlineEdge, bearings: Bearings, slabEnds: readonly Segment[]): Reading | null {
  let longest: Reading | null = null;
  for (const atIn of placesIn(edge, bearings)) {
    const at = moved(edge.a, edge.direction, atIn);
    const overhangIn = straightIn(at, edge, bearings);
    if (overhangIn === null) continue;
    const reading = { at, overhangIn, offMiddleIn: Math.abs(atIn - edge.lengthIn / 2) };
    // what can win is looked at closely, the rest need not be
    if (longest !== null && !isBefore(reading, longest)) continue;
    if (counts(reading, edge, bearings, slabEnds)) longest = reading;
  }
  return longest;
}

function isBefore(one: Reading, other: Reading): boolean {
  if (Math.abs(one.overhangIn - other.overhangIn) > SAME_READING_IN) return one.overhangIn > other.overhangIn;
  return one.offMiddleIn < other.offMiddleIn;
}

/** Distances along an edge at which it is read: steps, and both sides of where each bearing begins and ends. */
function placesIn(edge: OutlineEdge, { loops }: Bearings): Set<number> {
  const steps = 2 * Math.max(1, Math.ceil(edge.lengthIn / MEASURE_STEP_IN / 2));
  const along = (p: Point) =>
    (p.xIn - edge.a.xIn) * edge.direction.x + (p.yIn - edge.a.yIn) * edge.direction.y;
  // bearings in line end at the same places
  const ends = new Set(loops.flat().map((corner) => Math.round(along(corner) / BESIDE_IN) * BESIDE_IN));
  const even = Array.from({ length: steps + 1 }, (_, k) => (edge.lengthIn * k) / steps);
  const beside = [...ends].flatMap((atIn) => [atIn - BESIDE_IN, atIn + BESIDE_IN]);
  const all = [...even, BESIDE_IN, edge.lengthIn - BESIDE_IN, ...beside];
  return new Set(all.filter((atIn) => atIn >= BESIDE_IN / 2 && atIn <= edge.lengthIn - BESIDE_IN / 2));
}

/** From a point of the edge straight inward to the first bearing, slab or not; null where there is none. */
function straightIn(at: Point, edge: OutlineEdge, { loops, sides }: Bearings): number | null {
  const hitIn = firstHitIn(at, edge.inward, sides);
  return hitIn !== null && loops.some((loop) => isPointInPolygon(at, loop)) ? 0 : hitIn;
}

/** Whether a reading counts: the slab runs on to that bearing, and none beside it is nearer by far. */
function counts(
  { at, overhangIn }: Reading,
  edge: OutlineEdge,
  { loops }: Bearings,
  slabEnds: readonly Segment[],
): boolean {
  const endIn = firstHitIn(at, edge.inward, slabEnds);
  if (endIn !== null && endIn < overhangIn - SAME_READING_IN) return false;
  return loops.every((loop) => nearestOnOutline(at, loop).distanceIn >= overhangIn * BESIDE_SHARE);
}
