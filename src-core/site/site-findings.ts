/** All findings about the site, in the order in which a reader meets them. */
import type { PieceAnalysis } from '../analysis';
import type { Job } from '../job';
import { combustibles } from './combustibles';
import type { SiteFinding } from './finding';
import { floorLoad } from './floor-load';
import { guard } from './guard';
import { permits } from './permits';
import { seismic } from './seismic';
import { wallOverturningFinding } from './wall-overturning';

type Find = (job: Job, analyses: readonly PieceAnalysis[]) => SiteFinding | null;

const FINDINGS: readonly Find[] = [floorLoad, wallOverturningFinding, combustibles, guard, seismic, permits];

/**
 * What stands beside the pieces: a finding that does not concern the job is left out. `analyses` are those of the pieces that were
 * looked at; what walls must resist follows from them.
 */
export function siteFindings(job: Job, analyses: readonly PieceAnalysis[]): SiteFinding[] {
  return FINDINGS.flatMap((find) => find(job, analyses) ?? []);
}
