/** The softer bound of a stiffness is not above the stiffer, and a cabinet's feet have a range. */
import { printExactLength } from '../figures';
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import type { StiffnessBounds } from '../support';
import { pieceProblem, supportWords } from './problem-at';

/** Names bounds that are the wrong way round. */
export function stiffnessBounds({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) =>
    at.piece.supports.flatMap((support, i) => {
      const bounds: [string[], StiffnessBounds | null][] = [
        [['stiffness'], support.stiffness],
        [['hold', 'stiffness'], support.hold.kind === 'tied' ? support.hold.stiffness : null],
        [['railStiffness'], support.kind === 'cabinet' ? support.railStiffness : null],
      ];
      const reversed = bounds
        .filter(([, bound]) => bound !== null && bound.low > bound.high)
        .map(([path, bound]) => {
          const sentence = `The ${supportWords(support)} has a low stiffness of ${bound!.low} above its high one of ${bound!.high}.`;
          return pieceProblem(at, 'bounds-reversed', ['supports', i, ...path], sentence);
        });
      const feet = support.kind === 'cabinet' ? support.feet : null;
      if (feet === null || feet.shortestIn <= feet.longestIn) return reversed;
      const sentence = `The feet of the ${supportWords(support)} are at shortest ${printExactLength(feet.shortestIn, at)} and at longest ${printExactLength(feet.longestIn, at)}.`;
      return [...reversed, pieceProblem(at, 'bounds-reversed', ['supports', i, 'feet'], sentence)];
    }),
  );
}
