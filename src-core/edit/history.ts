/** Undo and redo: every job that was, under the name of what was done to it. */
import type { Job } from '../job';
import type { Edited } from './command';

/** Steps that are kept; the oldest goes first. */
const MOST_STEPS = 400;

export interface HistoryStep {
  /** The job before it was done. */
  readonly before: Job;
  readonly title: string;
  readonly mergeKey: string | null;
}

export interface History {
  readonly job: Job;
  /** Oldest first. */
  readonly past: readonly HistoryStep[];
  /** Next to be done again first; `before` holds the job after it. */
  readonly future: readonly HistoryStep[];
}

/** A history that begins with a job. */
export function beginHistory(job: Job): History {
  return { job, past: [], future: [] };
}

/** The history with one more step; a run of steps with the same key stays one. What was undone is forgotten. */
export function recordStep(history: History, edited: Extract<Edited, { ok: true }>): History {
  const { job, title, mergeKey } = edited;
  if (job === history.job) return history;
  const last = history.past.at(-1);
  const merges = mergeKey !== null && last?.mergeKey === mergeKey && history.future.length === 0;
  const past = merges ? history.past : [...history.past, { before: history.job, title, mergeKey }];
  return { job, past: past.slice(-MOST_STEPS), future: [] };
}

/** Closes the last step, so that a further drag of the same thing is a step of its own. */
export function sealStep(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined || last.mergeKey === null) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, mergeKey: null }] };
}

/** The history one step back; the same where there is none. */
export function undoStep(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    job: last.before,
    past: history.past.slice(0, -1),
    future: [{ ...last, before: history.job, mergeKey: null }, ...history.future],
  };
}

/** The history one step forward again; the same where there is none. */
export function redoStep(history: History): History {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return {
    job: next.before,
    past: [...history.past, { ...next, before: history.job }],
    future: rest,
  };
}
