/** What stands at the head of the panel. */
import type { JobTakeoff } from '../../src-core/takeoff';

export interface TakeoffState {
  /** The drawing has changed since. */
  readonly isStale: boolean;
  readonly isWorking: boolean;
}

/** Whether the list is of the drawing as it is; empty where it is, falsework and all. */
export function stateWords(takeoff: JobTakeoff | null, { isStale, isWorking }: TakeoffState): string {
  if (takeoff === null) return isWorking ? 'Taking off the drawing.' : '';
  if (isStale) return 'Changed since; counting again.';
  if (takeoff.falseworkCuts !== null) return '';
  return isWorking ? 'The falsework is being designed.' : 'The falsework follows once the drawing rests.';
}

/** "1052.75 in all, at prices of which some are invented, without 22 lines that have no price." */
export function totalWords({ list, falseworkCuts }: JobTakeoff): string {
  const { total } = list;
  const without = falseworkCuts === null ? ' The falsework comes on top.' : '';
  return `${total.words}.${without}`;
}
