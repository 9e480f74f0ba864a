/** The outline and the shapes of the cutouts can be drawn, and are of a size that a worktop can have. */
import { printExactLength } from '../figures';
import type { JobInPlan } from '../in-plan';
import { polygonAreaIn2, polygonPerimeterIn } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** A strip narrower than this all over is a slip of the pen. Common practice, no source. */
const NARROWEST_IN = 1;

/** Names crossings, repeated corners, radii that do not fit, and outlines too small to be meant. */
export function outlines({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => {
    const faults = [at.outline, ...at.cutouts].flatMap((part) => (part.ok ? [] : part.problems));
    const problems = faults.map((fault) => ({ ...fault, path: `pieces[${at.index}].${fault.path}` }));
    if (!at.outline.ok) return problems;
    const { outer } = at.outline;
    const widthIn = (2 * polygonAreaIn2(outer)) / polygonPerimeterIn(outer);
    if (widthIn >= NARROWEST_IN - 1e-9) return problems;
    const sentence = `The outline of "${at.piece.name}" is only about ${printExactLength(widthIn, at)} wide; check its corners.`;
    return [...problems, pieceProblem(at, 'outline-degenerate', ['corners'], sentence)];
  });
}
