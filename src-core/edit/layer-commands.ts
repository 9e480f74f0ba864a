/** What lies in and on the slab: steel, joints and fixed loads. */
import type { Point } from '../outline';
import { addPart, wordOf } from './added-part';
import { atPiece, findIn, refuseAt, replaced, settlePiece } from './at-piece';
import type { Command } from './command';
import { cleanPoint } from './placement';

/** Lays mesh, bars, fabric or fibre into a piece from a draft. */
export const addSteel: Command<{ pieceId: string; layer: unknown }> = {
  id: 'add-steel',
  perform: (job, { pieceId, layer }) => {
    const kind = wordOf(layer, 'kind', 'steel');
    return addPart(job, pieceId, 'reinforcement', layer, kind, `Add ${kind}`);
  },
};

/** Draws a joint across a piece from a draft. */
export const addJoint: Command<{ pieceId: string; joint: unknown }> = {
  id: 'add-joint',
  perform: (job, { pieceId, joint }) => addPart(job, pieceId, 'joints', joint, 'joint', 'Add joint'),
};

/** Stands something heavy on a piece from a draft. */
export const addLoad: Command<{ pieceId: string; load: unknown }> = {
  id: 'add-load',
  perform: (job, { pieceId, load }) => addPart(job, pieceId, 'fixed', load, 'load', 'Add load'),
};

/** Puts the middle of a fixed load on a point of the plan. */
export const moveLoad: Command<{ pieceId: string; id: string; to: Point }> = {
  id: 'move-load',
  perform: (job, { pieceId, id, to }) =>
    atPiece(job, pieceId, (at) => {
      const { loads, name } = at.piece;
      const found = findIn(loads.fixed, id);
      if (found === null) {
        return refuseAt(at, 'reference-unknown', 'loads.fixed', `"${name}" has no fixed load "${id}".`);
      }
      const load = { ...found.thing, centre: cleanPoint({ xIn: to.xIn, yIn: to.yIn }) };
      const piece = { ...at.piece, loads: { ...loads, fixed: replaced(loads.fixed, found.index, load) } };
      return settlePiece(at, piece, 'Move load', `move-load:${pieceId}:${id}`);
    }),
};
