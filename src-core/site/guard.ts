/** A top that keeps people from falling. */
import type { Job } from '../job';
import type { SiteFinding } from './finding';

/** Concerns a job of which a piece acts as a guard over a drop of more than 30 in. */
export function guard(job: Job): SiteFinding | null {
  if (!job.site.actsAsGuard) return null;
  return {
    id: 'guard',
    title: 'A piece acts as a guard',
    level: 'engineer',
    words:
      'A piece keeps people from falling more than 30 in, so it and its wall must take 200 lbf pushed any way at the top: that is not checked here.',
    demand: null,
    capacity: null,
    workings: [],
    source: 'IRC R312.1 and Table R301.5, ASCE 7-22 4.5.1, from memory, verify',
    cautions: ["Height, gaps and the push sideways are the inspector's to judge."],
  };
}
