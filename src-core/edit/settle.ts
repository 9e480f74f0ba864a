/** Ends every command: the new job read as a file is, or refused with what is wrong with it. */
import type { Job, JobProblem, ProblemCode } from '../job';
import { readJob } from '../job';
import type { Edited } from './command';
import { keepIdentity } from './keep-identity';

/**
 * What a command gives, but for the steps of a drag. The draft goes through the very reading that a file does, so nothing that
 * a command makes is refused when it is opened again; what the command did not touch stays the same object, and a command that
 * changes nothing gives the same job.
 */
export function settle(
  before: Job,
  draft: unknown,
  title: string,
  mergeKey: string | null = null,
  madeId?: string,
): Edited {
  const reading = readJob(draft);
  if (!reading.ok) return { ok: false, problems: reading.problems };
  const job = keepIdentity(before, reading.job);
  return { ok: true, job, title, mergeKey, ...(madeId === undefined ? {} : { madeId }) };
}

/** A refusal in one sentence, before any job was built. */
export function refuse(code: ProblemCode, path: string, sentence: string, pieceId?: string): Edited {
  const problem: JobProblem = { code, path, sentence, ...(pieceId === undefined ? {} : { pieceId }) };
  return { ok: false, problems: [problem] };
}
