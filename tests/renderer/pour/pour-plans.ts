import type { Job } from '../../../src-core/job';
import type { Pour, PourPlan } from '../../../src-core/pour';
import { pourPlan } from '../../../src-core/pour';
import { slabJob } from '../../core/pour/pour-jobs';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

export interface Planned {
  readonly job: Job;
  readonly plan: PourPlan;
  readonly pour: Pour;
}

/** A job with its plan and the first of its pours. */
export function planned(job: Job): Planned {
  const plan = pourPlan(job);
  return { job, plan, pour: plan.pours[0]! };
}

/**
 * A slab 60 x 24 x 2 in, 1.667 ft3, of bags that give .6 ft3: with .12 ft3 kept to top up it takes 1.787 ft3, three
 * bags, two of them in a full batch. Two people with one mixer take 8 minutes a batch and place 10 ft3 an hour.
 */
export const SLAB = planned(slabJob());

export const GALLEY = planned(EXAMPLE_JOBS.find(({ id }) => id === 'boathouse-galley')!);
