/** The job without a piece or a support, and without what elsewhere in the job speaks of it. */
import type { Job, Piece, SwapStep } from '../job';
import { FREE_EDGE } from './copied-piece';

/** Without a piece, its falsework sections and its supports in the swap; edges butted against it become free. */
export function withoutPiece(job: Job, piece: Piece): Job {
  const gone = job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id).map(({ id }) => id);
  return {
    ...job,
    pieces: job.pieces.filter(({ id }) => id !== piece.id).map((other) => unhooked(other, piece.id)),
    falsework: {
      ...job.falsework,
      sections: job.falsework.sections.filter(({ pieceId }) => pieceId !== piece.id),
    },
    swap: withoutIds(job.swap, [...gone, ...piece.supports.map(({ id }) => id)]),
  };
}

/** The swap without steps' mention of supports or sections; a step that has nothing left to do and no note goes too. */
export function withoutIds(swap: Job['swap'], ids: readonly string[]): Job['swap'] {
  const left = (list: readonly string[]) => list.filter((id) => !ids.includes(id));
  const steps = swap.steps.flatMap((step): SwapStep[] => {
    const kept = {
      ...step,
      sectionsOut: left(step.sectionsOut),
      supportsOut: left(step.supportsOut),
      supportsIn: left(step.supportsIn),
    };
    return countOf(kept) === 0 && countOf(step) > 0 && step.note === '' ? [] : [kept];
  });
  return { ...swap, steps };
}

function countOf({ sectionsOut, supportsOut, supportsIn }: SwapStep): number {
  return sectionsOut.length + supportsOut.length + supportsIn.length;
}

function unhooked(piece: Piece, fromId: string): Piece {
  const { edges } = piece;
  if (edges === null) return piece;
  const isHooked = edges.some((edge) => edge.kind === 'butted' && edge.toPieceId === fromId);
  if (!isHooked) return piece;
  return {
    ...piece,
    edges: edges.map((edge) => (edge.kind === 'butted' && edge.toPieceId === fromId ? FREE_EDGE : edge)),
  };
}
