/** Temporary supports that hold an overhang: they go last. */
import type { Piece } from '../job';
import { bearingPatches } from '../job';
import { convexHull, signedDistanceToHullIn } from '../outline';
import { centreOfPlan } from './bays';
import type { PieceStep } from './swap-steps';
import { isTemporary } from './swap-steps';

/** Ids of the temporary supports whose middle lies outside all that stays. None where nothing stays. */
export function overhangSupports(piece: Piece, steps: readonly PieceStep[]): string[] {
  const [temporary, lasting] = [true, false].map((wanted) =>
    piece.supports.filter((support) => isTemporary(support, steps) === wanted),
  ) as [Piece['supports'], Piece['supports']];
  const hull = convexHull(
    lasting.flatMap((support) => bearingPatches(support, piece.corners).flatMap(({ corners }) => corners)),
  );
  if (hull.length < 3) return [];
  return temporary
    .filter((support) => {
      const centre = centreOfPlan(support, piece);
      return centre !== null && signedDistanceToHullIn(centre, hull) < 0;
    })
    .map(({ id }) => id);
}
