/** Openings: sinks, hobs, taps and drains added, moved and sized. */
import type { CutoutShape, Job } from '../job';
import type { Point } from '../outline';
import { addPart, wordOf } from './added-part';
import { atPiece, findIn, refuseAt, replaced, settlePiece } from './at-piece';
import type { Command, Edited } from './command';
import { centredShape, resizedShape } from './cutout-shapes';

interface CutoutArgs {
  readonly pieceId: string;
  readonly id: string;
}

/** Cuts an opening from a draft. */
export const addCutout: Command<{ pieceId: string; cutout: unknown }> = {
  id: 'add-cutout',
  perform: (job, { pieceId, cutout }) => {
    const purpose = wordOf(cutout, 'purpose', 'other');
    const what = purpose === 'other' ? 'cutout' : purpose;
    return addPart(job, pieceId, 'cutouts', cutout, what, `Add ${what}`);
  },
};

/** Puts the middle of an opening on a point of the plan. */
export const moveCutout: Command<CutoutArgs & { to: Point }> = {
  id: 'move-cutout',
  perform: (job, { pieceId, id, to }) =>
    reshape(job, pieceId, id, (shape) => centredShape(shape, to), 'Move cutout', 'move-cutout'),
};

/** Gives an opening another size about its middle. */
export const resizeCutout: Command<CutoutArgs & { widthIn: number; depthIn: number }> = {
  id: 'resize-cutout',
  perform: (job, { pieceId, id, widthIn, depthIn }) =>
    reshape(
      job,
      pieceId,
      id,
      (shape) => resizedShape(shape, widthIn, depthIn),
      'Resize cutout',
      'resize-cutout',
    ),
};

function reshape(
  job: Job,
  pieceId: string,
  id: string,
  change: (shape: CutoutShape) => CutoutShape,
  title: string,
  keyStem: string,
): Edited {
  return atPiece(job, pieceId, (at) => {
    const { cutouts, name } = at.piece;
    const found = findIn(cutouts, id);
    if (found === null) {
      return refuseAt(at, 'reference-unknown', 'cutouts', `"${name}" has no cutout "${id}".`);
    }
    const cutout = { ...found.thing, shape: change(found.thing.shape) };
    const piece = { ...at.piece, cutouts: replaced(cutouts, found.index, cutout) };
    return settlePiece(at, piece, title, `${keyStem}:${pieceId}:${id}`);
  });
}
