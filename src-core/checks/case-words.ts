/** Words for the load case that governs. */
import type { BoundState } from '../analysis';

/** The words of a case by its id. */
export function caseWords(state: Pick<BoundState, 'cases'>, caseId: string): string {
  return state.cases.find(({ id }) => id === caseId)?.words ?? caseId;
}

/** Two decimals for sentences; workings keep their own digits. */
export function round2(value: number): number {
  return Math.round(value * 100) / 100;
}
