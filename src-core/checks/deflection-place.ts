/** Where a deflection is: in a span, at a bearing, or out at a tip, and how long that is. */
import type { PieceAnalysis } from '../analysis';
import type { Point } from '../outline';
import { convexHull, directionAt, distanceIn, nearestOnOutline } from '../outline';
import { bearingAheadIn } from './slab-ahead';

export interface DeflectionPlace {
  readonly kind: 'span' | 'bearing' | 'tip';
  /** Free span, or overhang from what holds the tip. */
  readonly lengthIn: number;
}

/**
 * Whether a point lies between bearings, on one, or out over one, along the piece or across it, and how far they are. Arms do
 * not count as bearings: slab and arm are judged together, from the wall. A point that sees no bearing either way is
 * measured from the nearest point of the line round all bearings, and takes the span there if that bridges one.
 */
export function placeOfDeflection(analysis: PieceAnalysis, at: Point): DeflectionPlace {
  const areas = analysis.bearings.filter(({ part }) => part !== 'arm').map(({ corners }) => corners);
  if (areas.length === 0) return { kind: 'tip', lengthIn: reachFromWallIn(analysis, at) };
  const seen = reachesOf(analysis, areas, at);
  if (seen.spanIn !== null) {
    const bridges = seen.spanIn > SHORTEST_SPAN * analysis.piece.thicknessIn;
    return { kind: bridges ? 'span' : 'bearing', lengthIn: seen.spanIn };
  }
  if (seen.tipIn !== null) {
    return { kind: seen.tipIn < analysis.piece.thicknessIn ? 'bearing' : 'tip', lengthIn: seen.tipIn };
  }
  const nearest = nearestOnOutline(at, convexHull(areas.flat()));
  const spanIn = reachesOf(analysis, areas, nearest.at).spanIn ?? 0;
  return spanIn > 0 ? { kind: 'span', lengthIn: spanIn } : { kind: 'tip', lengthIn: nearest.distanceIn };
}

/** Below this many thicknesses a gap between bearings is no span. */
const SHORTEST_SPAN = 2;

/** Shorter of the spans that bridge the point, and the nearest bearing seen at all, along the piece and across it, in. */
function reachesOf(
  analysis: PieceAnalysis,
  areas: readonly (readonly Point[])[],
  at: Point,
): { readonly spanIn: number | null; readonly tipIn: number | null } {
  const reach = (turn: number) =>
    bearingAheadIn(analysis, areas, at, analysis.shape.axisRad + (turn * Math.PI) / 2);
  const [ahead, left, behind, right] = [reach(0), reach(1), reach(2), reach(3)];
  const spans = [
    [ahead, behind],
    [left, right],
  ].flatMap(([one, other]) => (one == null || other == null ? [] : [one + other]));
  const tips = [ahead, left, behind, right].filter((reachIn) => reachIn !== null);
  return {
    spanIn: spans.length > 0 ? Math.min(...spans) : null,
    tipIn: tips.length > 0 ? Math.min(...tips) : null,
  };
}

/** Distance of a point from the wall face of the nearest arm, along that arm; for a slab that lies on arms alone. */
function reachFromWallIn({ bearings, piece }: PieceAnalysis, at: Point): number {
  let nearestIn = Infinity;
  let reachIn = 0;
  for (const { support } of bearings) {
    if (support.kind !== 'bracket') continue;
    const u = directionAt((support.directionDeg * Math.PI) / 180);
    for (const root of support.roots) {
      const awayIn = distanceIn(root, at);
      if (awayIn >= nearestIn) continue;
      nearestIn = awayIn;
      reachIn = Math.max(piece.thicknessIn, (at.xIn - root.xIn) * u.x + (at.yIn - root.yIn) * u.y);
    }
  }
  return reachIn;
}
