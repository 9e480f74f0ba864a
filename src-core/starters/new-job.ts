/** A job of one piece with everything else at its defaults. */
import type { Job, JobDraft } from '../job';
import { JOB_FORMAT, JOB_VERSION, readJob } from '../job';
import type { PieceDraft, Setting } from './drafts';
import { idMaker } from './fresh-ids';

type MixDraft = JobDraft['mixes'][number];

/** The mix of a new job: a generic bag, at the strength that such bags state. */
const NEW_MIX: MixDraft = {
  id: 'worktop-mix',
  name: 'Bagged countertop mix',
  strengthPsi: 5000,
  strengthFrom: 'bag',
  workingMinutes: 60,
  bag: { weightLb: 80, yieldFt3: 0.6, cementLb: 20, waterLeastLb: 6, waterMostLb: 7.5 },
};

/** Where a piece of a new job is drawn: its front left corner at the origin. */
export function newSetting(): Setting {
  return { at: { xIn: 0, yIn: 0 }, mixId: NEW_MIX.id, makeId: idMaker({}) };
}

/** A job of one piece. The piece must be sound: one that a job file would not take is a bug and throws. */
export function newJob(id: string, name: string, piece: PieceDraft): Job {
  const draft: JobDraft = {
    format: JOB_FORMAT,
    version: JOB_VERSION,
    id,
    name,
    mixes: [NEW_MIX],
    pieces: [piece],
  };
  const reading = readJob(draft);
  if (reading.ok) return reading.job;
  throw new Error(`A new job "${name}" does not fit together: ${reading.problems[0]?.sentence}`);
}
