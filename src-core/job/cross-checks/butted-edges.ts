/** An edge butts against another piece of the job. */
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** Names butted edges whose neighbour is missing or is the piece itself. */
export function buttedEdges({ job, pieces }: JobInPlan): JobProblem[] {
  const known = new Set(job.pieces.map(({ id }) => id));
  return pieces.flatMap((at) =>
    (at.piece.edges ?? []).flatMap((edge, i) => {
      if (edge.kind !== 'butted') return [];
      const isItself = edge.toPieceId === at.piece.id;
      if (known.has(edge.toPieceId) && !isItself) return [];
      const why = isItself
        ? 'the piece itself'
        : `the piece "${edge.toPieceId}", which the job does not have`;
      const sentence = `Edge ${i + 1} of "${at.piece.name}" butts against ${why}.`;
      return [pieceProblem(at, 'butted-to-nothing', ['edges', i, 'toPieceId'], sentence)];
    }),
  );
}
