/** Everything that stands under, hangs in or lies on a slab, as solids. */
import type { Piece, Support } from '../job';
import { bearingPatches, pieceOutline } from '../job';
import type { Point } from '../outline';
import { bracketParts } from './bracket-solid';
import { cabinetParts } from './cabinet-solid';
import { carriedParts } from './carried-parts';
import { bedParts, ledgerParts, legParts, pierParts, wallParts } from './standing-parts';
import type { SupportPart } from './support-part';
import type { SupportSolid } from './types';

/**
 * The solids of a piece's supports, whatever day they stand on, from the floor at z = 0 up to its soffit less the gap
 * of each; then the sinks, hobs and fixed loads of the piece itself. A support of several materials gives one solid of
 * each.
 */
export function supportSolids(piece: Piece): readonly SupportSolid[] {
  const outline = pieceOutline(piece);
  const outer = outline.ok ? outline.outer : piece.corners;
  const soffitIn = piece.topElevationIn - piece.thicknessIn;
  const own = (supportId: string | null) => (part: SupportPart) => ({
    pieceId: piece.id,
    supportId,
    ...part,
  });
  return [
    ...piece.supports.flatMap((support) => partsOf(support, outer, soffitIn).map(own(support.id))),
    ...carriedParts(piece).map(own(null)),
  ].filter(({ solid }) => solid.triangles.length > 0);
}

function partsOf(support: Support, outer: readonly Point[], soffitIn: number): SupportPart[] {
  switch (support.kind) {
    case 'cabinet':
      return cabinetParts(support, soffitIn);
    case 'wall':
      return wallParts(support, soffitIn);
    case 'ledger':
      return ledgerParts(support, soffitIn);
    case 'pier':
      return pierParts(support, bearingPatches(support, outer)[0]!.corners, soffitIn);
    case 'leg':
      return legParts(bearingPatches(support, outer)[0]!.corners, support.gapIn, soffitIn);
    case 'bracket':
      return bracketParts(support, soffitIn);
    case 'full-bed':
      return bedParts(bearingPatches(support, outer)[0]!.corners, support.gapIn, soffitIn);
  }
}
