/** Edges, where given, are as many as the corners. */
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** Names the pieces whose edge list does not go round the outline. */
export function edgeCount({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => {
    const { corners, edges, name } = at.piece;
    if (edges === null || edges.length === corners.length) return [];
    const sentence = `"${name}" has ${corners.length} corners but ${edges.length} edges; give one edge a corner.`;
    return [pieceProblem(at, 'edge-count', ['edges'], sentence)];
  });
}
