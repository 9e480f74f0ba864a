/** Whether a design can still be drawn in the job, and what the button says. */
import type { FalseworkDesign } from '../../src-core/falsework';
import { useFalsework as useFalseworkCommand } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';

export type DrawState =
  | { readonly kind: 'new' }
  /** Another falsework of this piece gives way to it. */
  | { readonly kind: 'instead' }
  /** The job holds this very falsework. */
  | { readonly kind: 'drawn' }
  | { readonly kind: 'refused'; readonly sentence: string };

/** Tries the command and keeps nothing of it. */
export function drawState(job: Job, design: FalseworkDesign): DrawState {
  const edited = useFalseworkCommand.perform(job, { design });
  if (!edited.ok) return { kind: 'refused', sentence: edited.problems[0]!.sentence };
  if (edited.job === job) return { kind: 'drawn' };
  const has = job.falsework.sections.some(({ pieceId }) => pieceId === design.pieceId);
  return { kind: has ? 'instead' : 'new' };
}

/** What drawing it does, or why it cannot be drawn. */
export function drawWords(state: DrawState, design: FalseworkDesign): string {
  const left =
    design.refusals.length > 0
      ? ' What cannot be built so is left as it is: the checks of the job will say what then hangs free.'
      : '';
  switch (state.kind) {
    case 'new':
      return `Sections, legs and ledgers go into the job with their days, as one step of undo.${left}`;
    case 'instead':
      return `Sections, legs and ledgers go into the job in place of those drawn there, as one step of undo.${left}`;
    case 'drawn':
      return 'The job holds these sections, legs and ledgers.';
    case 'refused':
      return state.sentence;
  }
}
