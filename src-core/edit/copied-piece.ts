/** A piece with ids of its own, so that it can stand beside the one it was copied from. */
import type { Job, Piece } from '../job';
import { idMaker } from '../starters';

/** The same piece with new ids for it and all its parts. Its butted edges become free: nothing lies beside the copy. */
export function copiedPiece(job: Job, piece: Piece): Piece {
  const make = idMaker(job);
  const renamed = <Thing extends { readonly id: string }>(list: readonly Thing[]): Thing[] =>
    list.map((thing) => ({ ...thing, id: make(thing.id) }));
  return {
    ...piece,
    id: make(piece.id),
    edges: piece.edges?.map((edge) => (edge.kind === 'butted' ? FREE_EDGE : edge)) ?? null,
    joints: renamed(piece.joints),
    cutouts: renamed(piece.cutouts),
    reinforcement: renamed(piece.reinforcement),
    supports: renamed(piece.supports),
    loads: { ...piece.loads, fixed: renamed(piece.loads.fixed) },
  };
}

/** An edge that has nothing beside it any more. */
export const FREE_EDGE: NonNullable<Piece['edges']>[number] = {
  kind: 'free',
  profile: { kind: 'eased', sizeIn: null, points: null },
  dripGroove: null,
};
