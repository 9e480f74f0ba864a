/** Sink data belong to a sink. */
import type { JobInPlan } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** Names cutouts with sink data that are cut for something else. */
export function sinkData({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) =>
    at.piece.cutouts.flatMap((cutout, i) => {
      if (cutout.sink === null || cutout.purpose === 'sink') return [];
      const sentence = `Cutout "${cutout.name ?? cutout.id}" of "${at.piece.name}" has sink data, but its purpose is ${cutout.purpose}.`;
      return [pieceProblem(at, 'sink-data-astray', ['cutouts', i, 'sink'], sentence)];
    }),
  );
}
