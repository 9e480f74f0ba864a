/** A job with other steps for one piece's swap, its supports and sections standing on the days that those give them. */
import type { Job, Piece, Support, SwapStep } from '../job';
import type { PieceStep } from './swap-steps';

/**
 * The job with `steps` in the place of the piece's own. What a step brings in stands from its day, what one takes out until its day,
 * so that the load check of a day agrees with the swap. Steps of other pieces stay. `props` are those that the steps need; what the
 * piece has of them already stays as it is.
 */
export function withSwapSteps(
  job: Job,
  pieceId: string,
  steps: readonly SwapStep[],
  props: readonly Support[] = [],
): Job {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return job;
  const others = withoutPiece(job, piece);
  const added = props.filter(({ id }) => piece.supports.every((support) => support.id !== id));
  const propped = { ...piece, supports: [...piece.supports, ...added] };
  return {
    ...job,
    pieces: job.pieces.map((one) => (one === piece ? onTheirDays(propped, steps) : one)),
    falsework: {
      ...job.falsework,
      sections: job.falsework.sections.map((section) => {
        const out = steps.find(({ sectionsOut }) => sectionsOut.includes(section.id));
        return out === undefined ? section : { ...section, lastDay: Math.max(section.firstDay, out.day) };
      }),
    },
    swap: { ...job.swap, steps: [...others, ...steps].sort((a, b) => a.day - b.day) },
  };
}

/** Days of what comes and goes; what is out for a move and straight back goes by its last step. */
function onTheirDays(
  piece: Piece,
  steps: readonly Pick<PieceStep, 'day' | 'supportsIn' | 'supportsOut'>[],
): Piece {
  return {
    ...piece,
    supports: piece.supports.map((support) => {
      const comes = steps.find(
        ({ supportsIn, supportsOut }) => supportsIn.includes(support.id) && !supportsOut.includes(support.id),
      );
      const goes = steps.findLast(
        ({ supportsIn, supportsOut }) => supportsOut.includes(support.id) && !supportsIn.includes(support.id),
      );
      const firstDay = comes?.day ?? support.firstDay;
      return {
        ...support,
        firstDay,
        lastDay: goes === undefined ? support.lastDay : Math.max(firstDay, goes.day),
      };
    }),
  };
}

/** Every step with what it does to the piece left out; gone where it does nothing else. */
function withoutPiece(job: Job, piece: Piece): SwapStep[] {
  const own = new Set([
    ...piece.supports.map(({ id }) => id),
    ...job.falsework.sections.filter(({ pieceId }) => pieceId === piece.id).map(({ id }) => id),
  ]);
  const rest = (ids: readonly string[]) => ids.filter((id) => !own.has(id));
  return job.swap.steps.flatMap((step) => {
    const sectionsOut = rest(step.sectionsOut);
    const supportsOut = rest(step.supportsOut);
    const supportsIn = rest(step.supportsIn);
    const does = sectionsOut.length + supportsOut.length + supportsIn.length;
    return does === 0 ? [] : [{ ...step, sectionsOut, supportsOut, supportsIn }];
  });
}
