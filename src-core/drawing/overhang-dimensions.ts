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

/**
 * The longest overhang of every free edge over the supports that stay: from the edge straight inward to the first bearing on the
 * slab, nearest to the middle of the edge where it is the same length in many places. The load check also looks slantwise round
 * the ends of bearings, so its overhang may be longer, never shorter.
 */
export function overhangDimensions(piece: Piece): Dimension[] {
  const region = pieceRegion(piece);
  if (!region.ok) return [];
  const bearings = piece.supports
    .filter((support) => stands(support, null))
    .flatMap((support) => bearingPatches(support, region.outer))
    .map(({ corners }) => corners);
  const edges = outlineEdges(piece.corners);
  return edges.flatMap((edge): Dimension[] => {
    if ((piece.edges?.[edge.edge]?.kind ?? 'free') !== 'free') return [];
    const slabEnds = [
      ...edges.filter((other) => other !== edge),
      ...region.holes.flatMap((hole) => edgesOf(hole)),
    ];
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

function longestReading(
  edge: OutlineEdge,
  bearings: readonly (readonly Point[])[],
  slabEnds: readonly Segment[],
): Reading | null {
  let longest: Reading | null = null;
  for (const atIn of placesIn(edge, bearings)) {
    const at = moved(edge.a, edge.direction, atIn);
    const overhangIn = reachIn(at, edge, bearings, slabEnds);
    if (overhangIn === null) continue;
    const reading = { at, overhangIn, offMiddleIn: Math.abs(atIn - edge.lengthIn / 2) };
    if (longest === null || isBefore(reading, longest)) longest = reading;
  }
  return longest;
}

function isBefore(one: Reading, other: Reading): boolean {
  if (Math.abs(one.overhangIn - other.overhangIn) > SAME_READING_IN) return one.overhangIn > other.overhangIn;
  return one.offMiddleIn < other.offMiddleIn;
}

/** Distances along an edge at which it is read: steps, and both sides of where each bearing begins and ends. */
function placesIn(edge: OutlineEdge, bearings: readonly (readonly Point[])[]): number[] {
  const steps = 2 * Math.max(1, Math.ceil(edge.lengthIn / MEASURE_STEP_IN / 2));
  const along = (p: Point) =>
    (p.xIn - edge.a.xIn) * edge.direction.x + (p.yIn - edge.a.yIn) * edge.direction.y;
  const ends = bearings.flat().flatMap((corner) => [along(corner) - BESIDE_IN, along(corner) + BESIDE_IN]);
  const even = Array.from({ length: steps + 1 }, (_, k) => (edge.lengthIn * k) / steps);
  return [...even, BESIDE_IN, edge.lengthIn - BESIDE_IN, ...ends].filter(
    (atIn) => atIn >= BESIDE_IN / 2 && atIn <= edge.lengthIn - BESIDE_IN / 2,
  );
}

/** From a point of the edge inward to the first bearing; null where the slab ends before one, or where one beside is the nearer by far. */
function reachIn(
  at: Point,
  edge: OutlineEdge,
  bearings: readonly (readonly Point[])[],
  slabEnds: readonly Segment[],
): number | null {
  if (bearings.some((corners) => isPointInPolygon(at, corners))) return 0;
  const hitIn = firstHitIn(
    at,
    edge.inward,
    bearings.flatMap((corners) => edgesOf(corners)),
  );
  if (hitIn === null) return null;
  const besideIn = Math.min(...bearings.map((corners) => nearestOnOutline(at, corners).distanceIn));
  if (besideIn < hitIn * BESIDE_SHARE) return null;
  const endIn = firstHitIn(at, edge.inward, slabEnds);
  return endIn === null || hitIn <= endIn + SAME_READING_IN ? hitIn : null;
}
