/** Draws a design into the job, as one step that undo takes back whole. */
import type { Command } from '../edit';
import type { Job, JobProblem } from '../job';
import { applyPatch } from '../remedies';
import type { PieceDesign } from './design-falsework';
import { falseworkPatch } from './falsework-patch';

/**
 * Puts sections, legs and ledgers of a design into the job in place of those that the piece had. Gives the same job where they are
 * drawn already; refuses a design of a piece that the job no longer has, one without a section, and what no longer fits.
 */
export const useFalsework: Command<{ design: PieceDesign }> = {
  id: 'use-falsework',
  perform: (job, { design }) => {
    const { pieceId, pieceName, sections } = design;
    if (!job.pieces.some(({ id }) => id === pieceId)) {
      return refusedAt(pieceId, 'pieces', `The job no longer has "${pieceName}".`);
    }
    if (sections.length === 0) {
      return refusedAt(
        pieceId,
        'falsework.sections',
        `There is no section of falsework to draw under "${pieceName}".`,
      );
    }
    const patched = applyPatch(job, falseworkPatch(job, design));
    if (!patched.ok) {
      return {
        ok: false,
        problems: patched.problems.map(({ path, sentence }) => problem(pieceId, path, sentence)),
      };
    }
    const drawn = onlyTouched(job, patched.job, pieceId);
    return {
      ok: true,
      job: isSame(drawn, job) ? job : drawn,
      title: `Draw the falsework under ${pieceName}`,
      mergeKey: null,
    };
  },
};

/** The patched job, in which what the patch does not touch stays the same object, so that nothing else is checked anew. */
function onlyTouched(job: Job, patched: Job, pieceId: string): Job {
  return {
    ...job,
    falsework: patched.falsework,
    swap: patched.swap,
    pieces: job.pieces.map((piece, i) => (piece.id === pieceId ? patched.pieces[i]! : piece)),
  };
}

/** Both jobs went through the same reading, so their fields stand in one order. */
function isSame(a: Job, b: Job): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function problem(pieceId: string, path: string, sentence: string): JobProblem {
  return { code: 'reference-unknown', path, pieceId, sentence };
}

function refusedAt(pieceId: string, path: string, sentence: string) {
  return { ok: false as const, problems: [problem(pieceId, path, sentence)] };
}
