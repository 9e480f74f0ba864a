/** What the slab bears on: added, moved and sized. */
import type { Job, Support, SupportKind } from '../job';
import type { Point } from '../outline';
import { addPart, wordOf } from './added-part';
import { atPiece, findIn, refuseAt, replaced, settlePiece } from './at-piece';
import type { Command, Edited } from './command';
import { changedDiameterIn } from './cutout-shapes';
import { cleanPoint, movedSupport, shift } from './placement';

interface SupportArgs {
  readonly pieceId: string;
  readonly id: string;
}

const KIND_WORDS: { readonly [K in SupportKind]: string } = {
  cabinet: 'cabinet',
  wall: 'wall',
  ledger: 'ledger',
  pier: 'pier',
  leg: 'leg',
  bracket: 'brackets',
  'full-bed': 'full bed',
};

/** Puts a support under a piece from a draft. */
export const addSupport: Command<{ pieceId: string; support: unknown }> = {
  id: 'add-support',
  perform: (job, { pieceId, support }) => {
    const kind = wordOf(support, 'kind', 'support');
    const words = Object.hasOwn(KIND_WORDS, kind) ? KIND_WORDS[kind as SupportKind] : 'support';
    return addPart(job, pieceId, 'supports', support, kind, `Add ${words}`);
  },
};

/** Moves a support by so much from where it is. */
export const moveSupport: Command<SupportArgs & { dxIn: number; dyIn: number }> = {
  id: 'move-support',
  perform: (job, { pieceId, id, dxIn, dyIn }) =>
    changeSupport(job, pieceId, id, 'Move', 'move-support', (support) =>
      movedSupport(support, shift(dxIn, dyIn)),
    ),
};

/** Puts one end of a wall or ledger on a point of the plan. */
export const moveSupportEnd: Command<SupportArgs & { end: 'from' | 'to'; to: Point }> = {
  id: 'move-support-end',
  perform: (job, { pieceId, id, end, to }) =>
    changeSupport(job, pieceId, id, 'Move end of', `move-support-${end}`, (support) =>
      support.kind === 'wall' || support.kind === 'ledger'
        ? { ...support, [end]: cleanPoint({ xIn: to.xIn, yIn: to.yIn }) }
        : `A ${KIND_WORDS[support.kind]} has no ends to move.`,
    ),
};

/**
 * Gives a support another size. Width and depth of a cabinet, a leg or a square pier; the diameter of a round one; of a wall or
 * ledger the width of its strip, of brackets the width of the seat and their reach.
 */
export const resizeSupport: Command<SupportArgs & { widthIn: number; depthIn: number }> = {
  id: 'resize-support',
  perform: (job, { pieceId, id, widthIn, depthIn }) =>
    changeSupport(job, pieceId, id, 'Resize', 'resize-support', (support) =>
      resized(support, widthIn, depthIn),
    ),
};

function resized(support: Support, widthIn: number, depthIn: number): Support | string {
  switch (support.kind) {
    case 'cabinet':
    case 'leg':
      return { ...support, widthIn, depthIn };
    case 'wall':
    case 'ledger':
      return { ...support, widthIn };
    case 'pier': {
      const { footprint } = support;
      if (footprint.kind === 'rectangle')
        return { ...support, footprint: { ...footprint, widthIn, depthIn } };
      const diameterIn = changedDiameterIn(footprint.diameterIn, widthIn, depthIn);
      return { ...support, footprint: { ...footprint, diameterIn } };
    }
    case 'bracket':
      return { ...support, seatWidthIn: widthIn, reachIn: depthIn };
    case 'full-bed':
      return 'A full bed is as large as its corners, or as the piece.';
  }
}

/** Replaces one support by what `change` gives, or refuses with its sentence. */
function changeSupport(
  job: Job,
  pieceId: string,
  id: string,
  verb: string,
  keyStem: string,
  change: (support: Support) => Support | string,
): Edited {
  return atPiece(job, pieceId, (at) => {
    const { supports, name } = at.piece;
    const found = findIn(supports, id);
    if (found === null) {
      return refuseAt(at, 'reference-unknown', 'supports', `"${name}" has no support "${id}".`);
    }
    const changed = change(found.thing);
    if (typeof changed === 'string') return refuseAt(at, 'wrong-type', `supports[${found.index}]`, changed);
    const piece = { ...at.piece, supports: replaced(supports, found.index, changed) };
    return settlePiece(at, piece, `${verb} ${KIND_WORDS[changed.kind]}`, `${keyStem}:${pieceId}:${id}`);
  });
}
