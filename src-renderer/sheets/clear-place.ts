/** Where a new piece goes. */
import { planBounds } from '../../src-core/drawing';
import type { Job } from '../../src-core/job';
import type { Point } from '../../src-core/outline';

/** Room between a new piece and what is drawn already, in. Wide enough to tell the two apart in the whole plan. */
const BESIDE_IN = 12;

/** Front left corner for a new piece: to the right of all that is drawn, its front in line with the rest. */
export function clearPlace(job: Job): Point {
  const { maxXIn } = planBounds(job);
  const frontIn = Math.min(...job.pieces.flatMap(({ corners }) => corners.map(({ yIn }) => yIn)));
  return { xIn: Math.ceil(maxXIn) + BESIDE_IN, yIn: frontIn };
}
