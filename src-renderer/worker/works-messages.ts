/** What the window and the workers that take off and plan the pour say to each other. */
import type { Job } from '../../src-core/job';
import type { PourPlan } from '../../src-core/pour';
import type { JobTakeoff } from '../../src-core/takeoff';

export interface ToWorksWorker {
  /** The take-off without the falsework, which takes seconds to design; the whole take-off; the pour plan. */
  readonly kind: 'takeoff' | 'whole' | 'pour';
  readonly run: number;
  readonly job: Job;
}

export type FromWorksWorker =
  | { readonly kind: 'takeoff'; readonly run: number; readonly takeoff: JobTakeoff }
  | { readonly kind: 'pour'; readonly run: number; readonly pour: PourPlan }
  /** A bug, with what is known of it. */
  | { readonly kind: 'fault'; readonly run: number; readonly sentence: string };
