/** What the workers have answered about forming, buying and pouring the job. Filled by the works loop; views read it. */
import { create } from 'zustand';
import type { Job } from '../../src-core/job';
import type { PourPlan } from '../../src-core/pour';
import type { JobTakeoff, ShoppingList } from '../../src-core/takeoff';

export interface WorksState {
  /** The job that the answers are of; they may be a moment behind the drawing. */
  readonly job: Job | null;
  readonly pour: PourPlan | null;
  /** Without the falsework until that has been designed: its `falseworkCuts` are then null. */
  readonly takeoff: JobTakeoff | null;
  /** The last list with the falsework in it, which may be of an earlier drawing. */
  readonly wholeList: ShoppingList | null;
  readonly isWorking: boolean;
  readonly fault: string | null;
}

export const NO_WORKS: WorksState = {
  job: null,
  pour: null,
  takeoff: null,
  wholeList: null,
  isWorking: false,
  fault: null,
};

export const useWorks = create<WorksState>()(() => NO_WORKS);

/** What changes nothing of the work. */
const WITHOUT_EFFECT: readonly (keyof Job)[] = ['ticks', 'name', 'note'];

/** Whether two jobs ask for the same work. */
export function isSameWork(one: Job | null, other: Job): boolean {
  if (one === null) return false;
  const fields = Object.keys(other) as (keyof Job)[];
  return fields.every((field) => WITHOUT_EFFECT.includes(field) || one[field] === other[field]);
}
