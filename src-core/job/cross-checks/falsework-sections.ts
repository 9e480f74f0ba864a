/** A falsework section is a polygon under the piece that it holds up. */
import type { JobInPlan } from '../in-plan';
import { areaOnSlabIn2, polygonFault } from '../in-plan';
import type { JobProblem } from '../problem';
import { jobProblem } from './problem-at';

/** Less overlap than this is a touch. */
const LEAST_IN2 = 1;

/** Names sections that cannot be drawn or lie beside their piece. */
export function falseworkSections({ job, pieces }: JobInPlan): JobProblem[] {
  return job.falsework.sections.flatMap((section, i) => {
    const path = ['falsework', 'sections', i, 'corners'];
    const called = `Falsework section "${section.name ?? section.id}"`;
    const fault = polygonFault(section.corners);
    if (fault !== null) return [jobProblem('section-astray', path, `${called} cannot be drawn: ${fault}`)];
    const at = pieces.find(({ piece }) => piece.id === section.pieceId);
    if (at === undefined || at.region === null) return [];
    if (areaOnSlabIn2(section.corners, at.region) >= LEAST_IN2) return [];
    return [jobProblem('section-astray', path, `${called} does not lie under "${at.piece.name}".`)];
  });
}
