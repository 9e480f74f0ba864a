/** What of a pour is ticked off in the job. */
import type { Job } from '../../src-core/job';

/** Ids of the ticks that are set. */
export function ticksOf({ ticks }: Pick<Job, 'ticks'>): ReadonlySet<string> {
  return new Set(ticks.filter(({ done }) => done).map(({ id }) => id));
}
