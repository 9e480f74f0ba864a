/** A piece in plan as it was measured: overhangs, free span, extents, inside corners. */
import type { Piece } from '../job';
import type { Point, Region } from '../outline';
import { insideCorners, measureOverhangs, measureSpans, pieceDirection, turned } from '../outline';
import type { Bearing, EdgeOverhang, PieceShape } from './types';

const MEASURE_STEP_IN = 3;
/** Overhangs nearer to each other than this are one length, in. */
const SAME_LENGTH_IN = 1e-9;

/** Measures a piece against what it bears on. Overhangs are those of its free edges. */
export function shapeOf(piece: Piece, region: Region, bearings: readonly Bearing[]): PieceShape {
  const drawn = { outer: piece.corners, holes: region.holes };
  const overhangs = overhangsOf(piece, drawn, bearings);
  const others = bearings.filter(({ support }) => support.kind !== 'bracket');
  const withoutBrackets = others.length === bearings.length ? overhangs : overhangsOf(piece, drawn, others);
  const span = measureSpans({ region: drawn, bearings: bearings.map(areaOf), sampleIn: MEASURE_STEP_IN });
  const direction = pieceDirection(region.outer);
  const axisRad = Math.atan2(direction.y, direction.x);
  const local = region.outer.map((p) => turned(p, -axisRad));
  const extent = (pick: (p: Point) => number) => Math.max(...local.map(pick)) - Math.min(...local.map(pick));
  return {
    outer: region.outer,
    holes: region.holes,
    overhangs,
    longestOverhang: longestOf(overhangs),
    longestOverhangWithoutBrackets: longestOf(withoutBrackets),
    freeSpan:
      span === null
        ? null
        : { spanIn: span.spanIn, at: span.at, directionRad: Math.atan2(span.direction.y, span.direction.x) },
    lengthIn: extent((p) => p.xIn),
    depthIn: extent((p) => p.yIn),
    axisRad,
    insideCorners: insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ at }) => at),
  };
}

/** Overhang of every free edge over what it bears on. */
function overhangsOf(piece: Piece, drawn: Region, bearings: readonly Bearing[]): EdgeOverhang[] {
  return measureOverhangs({
    region: drawn,
    bearings: bearings.map(areaOf),
    sampleIn: MEASURE_STEP_IN,
  }).flatMap(({ edge, overhangIn, at }) =>
    overhangIn === null || at === null || !isFree(piece, edge) ? [] : [{ edge, overhangIn, at }],
  );
}

function longestOf(overhangs: readonly EdgeOverhang[]): EdgeOverhang | null {
  return overhangs.reduce<EdgeOverhang | null>(
    (most, one) => (most === null || one.overhangIn > most.overhangIn + SAME_LENGTH_IN ? one : most),
    null,
  );
}

function areaOf({ corners }: Bearing): { readonly kind: 'polygon'; readonly points: readonly Point[] } {
  return { kind: 'polygon', points: corners };
}

/** A corner counts as an inside corner from this turn beyond straight. */
const INSIDE_TURN_RAD = 0.1;

function isFree(piece: Piece, edge: number): boolean {
  return piece.edges === null || piece.edges[edge]?.kind === 'free';
}
