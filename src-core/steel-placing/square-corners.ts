/** The slab as mesh is cut to it. */
import type { Piece } from '../job';
import { pieceOutline } from '../job';
import type { Region } from '../outline';
import { insideCorners } from '../outline';
import { INSIDE_TURN_RAD, SHARP_RADIUS_IN } from './practice';

/**
 * The slab with its inside corners square where they are but little rounded: no mesh is cut to a fillet of some square
 * inches. The rounding adds concrete there, so what is left is all slab. As it is where squaring it cannot be built.
 */
export function withSquareCorners(piece: Piece, region: Region): Region {
  const inside = new Set(insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ corner }) => corner));
  const corners = piece.corners.map((corner, k) =>
    inside.has(k) && corner.radiusIn <= SHARP_RADIUS_IN ? { ...corner, radiusIn: 0 } : corner,
  );
  const squared = pieceOutline({ ...piece, corners });
  return squared.ok ? { outer: squared.outer, holes: region.holes } : region;
}
