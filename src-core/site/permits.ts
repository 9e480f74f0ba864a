/** Work that needs a permit. */
import type { Job } from '../job';
import type { SiteFinding } from './finding';

/** Concerns a job that is bound to a permit. */
export function permits(job: Job): SiteFinding | null {
  if (!job.site.permitBound) return null;
  return {
    id: 'permits',
    title: 'Permit',
    level: 'engineer',
    words: 'This work needs a permit: what is printed here is planning arithmetic and no stamped drawing.',
    demand: null,
    capacity: null,
    workings: [],
    source: 'local code',
    cautions: ['Ask the building office before the forms go up; inspectors rule.'],
  };
}
