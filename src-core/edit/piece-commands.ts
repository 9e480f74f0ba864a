/** Whole pieces: added, drawn, taken out, doubled, moved and turned. */
import type { Job, Piece } from '../job';
import type { Point } from '../outline';
import { boundingBox } from '../outline';
import type { StarterId } from '../starters';
import { newId, starterPiece } from '../starters';
import { atPiece, settlePiece, withPiece } from './at-piece';
import type { Command, Edited } from './command';
import { copiedPiece } from './copied-piece';
import { numberedName } from './numbered-name';
import type { Motion } from './placement';
import { movedFalsework, movedPiece, quarterTurn, shift } from './placement';
import { refuse, settle } from './settle';
import { withoutPiece } from './without';

/** Thickness of a piece drawn by hand, in. Common practice, no source. */
const DRAWN_THICKNESS_IN = 1.5;
/** Room between a piece and its copy, in. */
const BESIDE_IN = 12;

/** Adds a piece from a draft: a missing id is made up, and a missing mix is the job's first. */
export const addPiece: Command<{ piece: unknown }> = {
  id: 'add-piece',
  perform: (job, { piece }) => addDraft(job, piece, 'Add piece'),
};

/** Adds a starter with its front left corner at a point. */
export const addStarter: Command<{ starterId: StarterId; at: Point }> = {
  id: 'add-starter',
  perform: (job, { starterId, at }) => addDraft(job, starterPiece(starterId, { at, job }), 'Add piece'),
};

/** Adds a free slab drawn corner by corner, with nothing under it yet. */
export const drawPiece: Command<{ corners: readonly Point[]; name?: string }> = {
  id: 'draw-piece',
  perform: (job, { corners, name }) => {
    const piece = {
      name: name ?? numberedName('Piece', namesOf(job)),
      use: 'counter',
      corners: corners.map(({ xIn, yIn }) => ({ xIn, yIn })),
      thicknessIn: DRAWN_THICKNESS_IN,
    };
    return addDraft(job, piece, 'Draw piece');
  },
};

/** Takes a piece out, with its falsework and its place in the swap; edges that butted against it become free. */
export const removePiece: Command<{ pieceId: string }> = {
  id: 'remove-piece',
  perform: (job, { pieceId }) =>
    atPiece(job, pieceId, ({ piece }) => {
      if (job.pieces.length > 1) return settle(job, withoutPiece(job, piece), 'Remove piece');
      const sentence = `"${piece.name}" is the only piece; add another before it is taken out.`;
      return refuse('wrong-length', 'pieces', sentence, pieceId);
    }),
};

/** Puts a copy of a piece to its right, with ids of its own; falsework and swap are not copied. */
export const duplicatePiece: Command<{ pieceId: string }> = {
  id: 'duplicate-piece',
  perform: (job, { pieceId }) =>
    atPiece(job, pieceId, ({ piece, index }) => {
      const box = boundingBox(piece.corners);
      const beside = movedPiece(piece, shift(box.maxXIn - box.minXIn + BESIDE_IN, 0));
      const copy = { ...copiedPiece(job, beside), name: numberedName(piece.name, namesOf(job)) };
      const draft = { ...job, pieces: job.pieces.toSpliced(index + 1, 0, copy) };
      return settle(job, draft, 'Duplicate piece', null, copy.id);
    }),
};

/** Moves a piece, with all that belongs to it, by so much from where it is. */
export const movePiece: Command<{ pieceId: string; dxIn: number; dyIn: number }> = {
  id: 'move-piece',
  perform: (job, { pieceId, dxIn, dyIn }) =>
    moveWhole(job, pieceId, () => shift(dxIn, dyIn), 'Move piece', `move-piece:${pieceId}`),
};

/** Turns a piece, with all that belongs to it, a quarter turn counter-clockwise about the middle of its outline. */
export const turnPiece: Command<{ pieceId: string }> = {
  id: 'turn-piece',
  perform: (job, { pieceId }) =>
    moveWhole(job, pieceId, ({ corners }) => quarterTurn(middleOf(corners)), 'Turn piece', null),
};

function moveWhole(
  job: Job,
  pieceId: string,
  motionOf: (piece: Piece) => Motion,
  title: string,
  mergeKey: string | null,
): Edited {
  return atPiece(job, pieceId, (at) => {
    const motion = motionOf(at.piece);
    const moved = movedPiece(at.piece, motion);
    if (job.falsework.sections.every((section) => section.pieceId !== pieceId)) {
      return settlePiece(at, moved, title, mergeKey);
    }
    const falsework = movedFalsework(job.falsework, pieceId, motion);
    return settle(job, { ...(withPiece(at, moved) as Job), falsework }, title, mergeKey);
  });
}

function addDraft(job: Job, draft: unknown, title: string): Edited {
  if (typeof draft !== 'object' || draft === null) {
    return refuse('wrong-type', 'pieces', 'A piece must be an object in braces.');
  }
  const fields = draft as Readonly<Record<string, unknown>>;
  const id = typeof fields.id === 'string' ? fields.id : newId(job, stemOf(fields));
  const piece = { mixId: job.mixes[0]!.id, ...fields, id };
  return settle(job, { ...job, pieces: [...job.pieces, piece] }, title, null, id);
}

function stemOf({ use }: Readonly<Record<string, unknown>>): string {
  return typeof use === 'string' && use !== 'other' ? use : 'piece';
}

function namesOf(job: Job): string[] {
  return job.pieces.map(({ name }) => name);
}

function middleOf(corners: readonly Point[]): Point {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(corners);
  return { xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 };
}
