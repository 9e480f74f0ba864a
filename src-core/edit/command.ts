/** What a person can do to a job, as plain data: menu, keyboard, drag, forms, remedies and tests share it. */
import type { Job, JobProblem } from '../job';

/** A changed job under a name, or why it was refused; a refused command leaves the job as it was. */
export type Edited =
  | {
      readonly ok: true;
      readonly job: Job;
      /** What was done, as undo names it: "Move edge", "Add leg". */
      readonly title: string;
      /**
       * Commands in a row with the same key make one step of the history, so that a drag is undone as a whole; null keeps
       * each apart.
       */
      readonly mergeKey: string | null;
      /** Id of what was made, where something was; the views select it. */
      readonly madeId?: string;
    }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

export interface Command<Args> {
  /** Stable, kebab-case: "move-edge". */
  readonly id: string;
  readonly perform: (job: Job, args: Args) => Edited;
}
