/** Joints run over the slab: both ends on it, and some length between them. */
import type { JobInPlan } from '../in-plan';
import { distanceIn, signedDistanceIn } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** An end this little beyond the edge is a rounding of the tape. */
const SLACK_IN = 1 / 16;

/** Names joints that leave the outline or have no length. */
export function joints({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => {
    const { outline, piece } = at;
    if (!outline.ok) return [];
    return piece.joints.flatMap((joint, i) => {
      const called = `Joint "${joint.id}" of "${piece.name}"`;
      if (distanceIn(joint.from, joint.to) < SLACK_IN) {
        return [pieceProblem(at, 'joint-outside', ['joints', i, 'to'], `${called} has no length.`)];
      }
      return (['from', 'to'] as const)
        .filter((end) => signedDistanceIn(joint[end], outline.outer) < -SLACK_IN)
        .map((end) =>
          pieceProblem(
            at,
            'joint-outside',
            ['joints', i, end],
            `${called} ${end === 'from' ? 'starts' : 'ends'} outside the outline.`,
          ),
        );
    });
  });
}
