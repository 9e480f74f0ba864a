/** Every support bears on its piece: it has length, and the slab lies over it and not an opening. */
import type { JobInPlan, PieceInPlan } from '../in-plan';
import { areaBeyondIn2, areaOnSlabIn2, polygonAreaIn2, polygonFault } from '../in-plan';
import type { JobProblem } from '../problem';
import type { Support } from '../support';
import type { BearingPatch } from '../support-plan';
import { bearingPatches } from '../support-plan';
import { pieceProblem, supportWords } from './problem-at';

/** Less bearing than this is a touch, not a support. Common practice, no source. */
const LEAST_BEARING_IN2 = 0.01;

/** Names supports under nothing, under an opening, or without length. */
export function supportsUnderSlab({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => at.piece.supports.flatMap((support, i) => underSlab(at, support, i)));
}

function underSlab(at: PieceInPlan, support: Support, index: number): JobProblem[] {
  if (at.region === null) return [];
  const path = ['supports', index];
  const called = `The ${supportWords(support)}`;
  if (support.kind === 'full-bed' && support.corners !== null) {
    const fault = polygonFault(support.corners);
    if (fault !== null) {
      const sentence = `${called} under "${at.piece.name}" cannot be drawn: ${fault}`;
      return [pieceProblem(at, 'support-outside', [...path, 'corners'], sentence)];
    }
  }
  const patches = bearingPatches(support, at.region.outer);
  if (patches.length === 0) {
    const sentence = `${called} under "${at.piece.name}" starts and ends on the same spot.`;
    return [pieceProblem(at, 'support-no-length', [...path, 'to'], sentence)];
  }
  if (support.kind === 'bracket') {
    return patches.flatMap((arm) =>
      misplaced(
        at,
        [arm],
        [...path, 'roots', arm.index],
        `Arm ${arm.index + 1} of the ${supportWords(support)}`,
      ),
    );
  }
  return misplaced(at, patches, path, called);
}

/** One problem where none of the patches carries any slab. */
function misplaced(
  at: PieceInPlan,
  patches: readonly BearingPatch[],
  path: readonly (string | number)[],
  called: string,
): JobProblem[] {
  const region = at.region!;
  if (patches.some(({ corners }) => areaOnSlabIn2(corners, region) >= LEAST_BEARING_IN2)) return [];
  const isUnderOpening = patches.some(
    ({ corners }) => polygonAreaIn2(corners) - areaBeyondIn2(corners, region) >= LEAST_BEARING_IN2,
  );
  if (isUnderOpening) {
    const sentence = `${called} stands under an opening of "${at.piece.name}" and carries nothing.`;
    return [pieceProblem(at, 'support-in-opening', path, sentence)];
  }
  const sentence = `${called} does not lie under "${at.piece.name}" at all.`;
  return [pieceProblem(at, 'support-outside', path, sentence)];
}
