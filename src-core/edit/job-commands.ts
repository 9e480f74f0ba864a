/** Changes to the job as a whole: how it is shown, and remedies that were tried and pass. */
import type { Change } from '../remedies';
import { applyPatch } from '../remedies';
import type { Command } from './command';
import { settle } from './settle';

/** Shows the job in inches and pounds or in metric units; its numbers stay as they are. */
export const setUnits: Command<{ system: 'imperial' | 'metric' }> = {
  id: 'set-units',
  perform: (job, { system }) => settle(job, { ...job, shownIn: system }, 'Change units'),
};

/** Makes a change that was offered for this very job; refuses it where the job has moved on. */
export const useChange: Command<{ change: Change }> = {
  id: 'use-change',
  perform: (job, { change }) => {
    const patched = applyPatch(job, change.patch);
    if (patched.ok) return settle(job, patched.job, `Use: ${change.title}`);
    const problems = patched.problems.map(({ path, sentence }) => ({
      code: 'reference-unknown' as const,
      path,
      pieceId: change.pieceId,
      sentence,
    }));
    return { ok: false, problems };
  },
};
