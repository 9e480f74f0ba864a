/** A piece in plan as it was measured: overhangs, free span, extents, inside corners. */
import type { Piece } from '../job';
import type { Point, Region } from '../outline';
import { insideCorners, measureOverhangs, measureSpans, pieceDirection, turned } from '../outline';
import type { Bearing, PieceShape } from './types';

const MEASURE_STEP_IN = 3;

/** Measures a piece against what it bears on. Overhangs are those of its free edges. */
export function shapeOf(piece: Piece, region: Region, bearings: readonly Bearing[]): PieceShape {
  const drawn = { outer: piece.corners, holes: region.holes };
  const areas = bearings.map(({ corners }) => ({ kind: 'polygon' as const, points: corners }));
  const overhangs = measureOverhangs({ region: drawn, bearings: areas, sampleIn: MEASURE_STEP_IN }).flatMap(
    ({ edge, overhangIn, at }) =>
      overhangIn === null || at === null || !isFree(piece, edge) ? [] : [{ edge, overhangIn, at }],
  );
  const longest = overhangs.reduce<(typeof overhangs)[number] | null>(
    (most, one) => (most === null || one.overhangIn > most.overhangIn + 1e-9 ? one : most),
    null,
  );
  const span = measureSpans({ region: drawn, bearings: areas, sampleIn: MEASURE_STEP_IN });
  const direction = pieceDirection(region.outer);
  const axisRad = Math.atan2(direction.y, direction.x);
  const local = region.outer.map((p) => turned(p, -axisRad));
  const extent = (pick: (p: Point) => number) => Math.max(...local.map(pick)) - Math.min(...local.map(pick));
  return {
    outer: region.outer,
    holes: region.holes,
    overhangs,
    longestOverhang: longest,
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

/** A corner counts as an inside corner from this turn beyond straight. */
const INSIDE_TURN_RAD = 0.1;

function isFree(piece: Piece, edge: number): boolean {
  return piece.edges === null || piece.edges[edge]?.kind === 'free';
}
