/** Fixed equipment stands on the slab. */
import type { JobInPlan } from '../in-plan';
import { areaBeyondIn2, areaOnSlabIn2, patchOutline, polygonAreaIn2 } from '../in-plan';
import type { JobProblem } from '../problem';
import { pieceProblem } from './problem-at';

/** A footprint this little beyond the edge is a rounding of the tape. */
const SLACK_SHARE = 0.005;

/** Names fixed loads that reach beyond the outline or stand over an opening. */
export function fixedLoads({ pieces }: JobInPlan): JobProblem[] {
  return pieces.flatMap((at) => {
    const { region, piece } = at;
    if (region === null) return [];
    return piece.loads.fixed.flatMap((load, i) => {
      const footprint = patchOutline(
        load.centre,
        load.widthIn,
        load.depthIn,
        (load.angleDeg * Math.PI) / 180,
      );
      const slackIn2 = SLACK_SHARE * polygonAreaIn2(footprint);
      const called = `The fixed load "${load.name}" on "${piece.name}"`;
      const path = ['loads', 'fixed', i];
      if (areaBeyondIn2(footprint, region) > slackIn2) {
        return [pieceProblem(at, 'load-outside', path, `${called} reaches beyond the outline.`)];
      }
      if (areaOnSlabIn2(footprint, region) > slackIn2) return [];
      return [pieceProblem(at, 'load-outside', path, `${called} stands over an opening.`)];
    });
  });
}
