/** All findings about the site, in the order in which a reader meets them. */
import type { Job } from '../job';
import { combustibles } from './combustibles';
import type { SiteFinding } from './finding';
import { floorLoad } from './floor-load';
import { guard } from './guard';
import { permits } from './permits';
import { seismic } from './seismic';

const FINDINGS: readonly ((job: Job) => SiteFinding | null)[] = [
  floorLoad,
  combustibles,
  guard,
  seismic,
  permits,
];

/** What stands beside the pieces: a finding that does not concern the job is left out. */
export function siteFindings(job: Job): SiteFinding[] {
  return FINDINGS.flatMap((find) => find(job) ?? []);
}
