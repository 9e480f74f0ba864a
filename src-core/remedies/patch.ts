/** Job patches after RFC 6902: made from two states of a piece, applied to a copy, undone by their inverse. */
import jsonPatch from 'fast-json-patch';
import type { Job, Piece } from '../job';
import { readJob } from '../job';
import type { Change, PatchOperation } from './change';

export interface PatchProblem {
  /** Place in the job, or of the operation that does not fit. */
  readonly path: string;
  readonly sentence: string;
}

export type PatchedJob =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly PatchProblem[] };

/** The job with a patch applied to a copy of it and read again as a file is. RFC 6902; a failed `test` refuses the whole. */
export function applyPatch(job: Job, patch: readonly PatchOperation[]): PatchedJob {
  try {
    const { newDocument } = jsonPatch.applyPatch<unknown>(
      jsonPatch.deepClone(job),
      jsonPatch.deepClone(patch),
      true,
    );
    const reading = readJob(newDocument);
    return reading.ok ? { ok: true, job: reading.job } : { ok: false, problems: reading.problems };
  } catch (error) {
    if (!(error instanceof jsonPatch.JsonPatchError)) throw error;
    return { ok: false, problems: [misfit(error.operation as unknown)] };
  }
}

/** The job with an offered change made. The change must have been found for this job: another one throws with the reason. */
export function applyChange(job: Job, change: Change): Job {
  const patched = applyPatch(job, change.patch);
  if (patched.ok) return patched.job;
  const why = patched.problems.map(({ path, sentence }) => `${path}: ${sentence}`).join(' ');
  throw new Error(`change ${change.id} does not fit job ${job.id}: ${why}`);
}

/** The patch that leads back to `job` once `patch` has been applied to it. */
export function undoPatch(job: Job, patch: readonly PatchOperation[]): PatchOperation[] {
  const patched = applyPatch(job, patch);
  if (!patched.ok) throw new Error(`a patch that does not fit job ${job.id} cannot be undone`);
  return operationsBetween(patched.job, job, '');
}

/** The patch that puts `piece` in the place of the piece with its id. It tests what it replaces, so it fits no other job by chance. */
export function piecePatch(job: Job, piece: Piece): PatchOperation[] {
  const index = job.pieces.findIndex(({ id }) => id === piece.id);
  const before = job.pieces[index];
  if (before === undefined) throw new Error(`job ${job.id} has no piece ${piece.id}`);
  const path = `/pieces/${index}`;
  return [{ op: 'test', path: `${path}/id`, value: piece.id }, ...operationsBetween(before, piece, path)];
}

function operationsBetween(before: object, after: object, under: string): PatchOperation[] {
  return jsonPatch.compare(before, after, true).map((operation): PatchOperation => {
    const path = `${under}${operation.path}`;
    switch (operation.op) {
      case 'add':
      case 'replace':
      case 'test':
        return { op: operation.op, path, value: operation.value as unknown };
      case 'remove':
        return { op: 'remove', path };
      default:
        throw new Error(`comparing two jobs gave the operation ${operation.op}`);
    }
  });
}

function misfit(operation: unknown): PatchProblem {
  const { op, path } =
    typeof operation === 'object' && operation !== null
      ? (operation as { readonly op?: unknown; readonly path?: unknown })
      : {};
  const where = typeof path === 'string' ? path : '';
  const reason =
    op === 'test' ? 'the job has changed since the patch was made' : 'the patch does not fit this job';
  return { path: where, sentence: `The change cannot be made here: ${reason}.` };
}
