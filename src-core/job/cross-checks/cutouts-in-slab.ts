/** Cutouts lie inside the outline with concrete left all round, and apart from each other. */
import { printExactLength } from '../figures';
import type { JobInPlan, PieceInPlan } from '../in-plan';
import { cutoutClearance, cutoutGaps } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** Less concrete than this beside an opening cannot be cast and stripped whole. Common practice, no source. */
const LEAST_RIB_IN = 1;
/** Keeps a rib of exactly the least width on the right side of rounding. */
const ROUNDING_IN = 1e-6;

/** Names cutouts that leave the outline, come too near to it, or to each other. */
export function cutoutsInSlab({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => [...againstOutline(at), ...againstEachOther(at)]);
}

function againstOutline(at: PieceInPlan): JobProblem[] {
  const { outline, piece } = at;
  if (!outline.ok) return [];
  return at.cutouts.flatMap((cutout, i) => {
    if (!cutout.ok) return [];
    const { isInside, clearanceIn } = cutoutClearance(outline.outer, cutout.points);
    const called = `Cutout "${piece.cutouts[i]!.name ?? piece.cutouts[i]!.id}" of "${piece.name}"`;
    if (!isInside) {
      const sentence = `${called} is not wholly inside the outline; draw a notch as part of the outline.`;
      return [pieceProblem(at, 'cutout-outside', ['cutouts', i, 'shape'], sentence)];
    }
    if (clearanceIn >= LEAST_RIB_IN - ROUNDING_IN) return [];
    const sentence = `${called} leaves ${printExactLength(clearanceIn, at)} of concrete to the edge; leave at least ${printExactLength(LEAST_RIB_IN, at)}.`;
    return [pieceProblem(at, 'cutout-near-edge', ['cutouts', i, 'shape'], sentence)];
  });
}

function againstEachOther(at: PieceInPlan): JobProblem[] {
  const drawn = at.cutouts.flatMap((cutout, index) => (cutout.ok ? [{ index, points: cutout.points }] : []));
  return cutoutGaps(drawn.map(({ points }) => points)).flatMap(({ first, second, gapIn }) => {
    if (gapIn >= LEAST_RIB_IN - ROUNDING_IN) return [];
    const [one, other] = [drawn[first]!.index, drawn[second]!.index];
    const [a, b] = [at.piece.cutouts[one]!, at.piece.cutouts[other]!];
    const pair = `Cutouts "${a.name ?? a.id}" and "${b.name ?? b.id}" of "${at.piece.name}"`;
    const sentence =
      gapIn > 0
        ? `${pair} leave ${printExactLength(gapIn, at)} of concrete between them; leave at least ${printExactLength(LEAST_RIB_IN, at)}.`
        : `${pair} overlap.`;
    return [pieceProblem(at, 'cutouts-overlap', ['cutouts', other, 'shape'], sentence)];
  });
}
