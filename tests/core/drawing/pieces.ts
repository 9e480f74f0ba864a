import type { Job, JobDraft, Piece } from '../../../src-core/job';
import { jobSchema } from '../../../src-core/job';

type PieceDraft = JobDraft['pieces'][number];

/** A job of these pieces, each with the fields that a test does not look at filled in. */
export function jobOf(...pieces: readonly Partial<PieceDraft>[]): Job {
  return jobSchema.parse({
    format: 'ledgewright-job',
    version: 1,
    id: 'job',
    name: 'Job',
    mixes: [{ id: 'mix', name: 'Worktop mix' }],
    pieces: pieces.map((piece, index) => ({
      id: `piece-${index + 1}`,
      name: `Piece ${index + 1}`,
      use: 'counter',
      thicknessIn: 1.5,
      mixId: 'mix',
      corners: rectangle(0, 0, 96, 25.5),
      ...piece,
    })),
  });
}

export function pieceOf(piece: Partial<PieceDraft>): Piece {
  return jobOf(piece).pieces[0]!;
}

export function rectangle(xIn: number, yIn: number, widthIn: number, depthIn: number) {
  return [
    { xIn, yIn },
    { xIn: xIn + widthIn, yIn },
    { xIn: xIn + widthIn, yIn: yIn + depthIn },
    { xIn, yIn: yIn + depthIn },
  ];
}
