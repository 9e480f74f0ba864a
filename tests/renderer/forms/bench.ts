import type { Command } from '../../../src-core/edit';
import type { Job, JobProblem } from '../../../src-core/job';

/** Runs commands as the window does, and keeps the job. */
export function bench(before: Job) {
  const held = { job: before };
  const run = <Args>(command: Command<Args>, args: Args): readonly JobProblem[] => {
    const edited = command.perform(held.job, args);
    if (!edited.ok) return edited.problems;
    held.job = edited.job;
    return [];
  };
  return { held, run };
}
