/** Anchorage against earthquakes. */
import type { Job } from '../job';
import type { SiteFinding } from './finding';

/** Concerns a job where local rules ask for seismic anchorage of heavy furniture. */
export function seismic(job: Job): SiteFinding | null {
  if (!job.site.seismicAnchorage) return null;
  return {
    id: 'seismic',
    title: 'Anchorage against earthquakes',
    level: 'engineer',
    words:
      'Local rules ask for anchorage against earthquakes: a heavy top slides and hammers sideways, and nothing here is checked for that.',
    demand: null,
    capacity: null,
    workings: [],
    source: 'ASCE 7-22 chapter 13, from memory, verify; local code',
    cautions: ['Ties that hold a slab down are not anchorage: ask for the sideways force as well.'],
  };
}
