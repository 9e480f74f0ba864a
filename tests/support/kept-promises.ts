/** Whether changes that are offered pass when they are made: shared by the quick test and the long fuzz. */
import { checkPiece, DEFAULT_LIMITS, governingCheck, stands } from '../../src-core/checks';
import type { Job } from '../../src-core/job';
import { readJob } from '../../src-core/job';
import { polygonAreaIn2 } from '../../src-core/outline';
import type { Change, ChangeSearch } from '../../src-core/remedies';
import { applyChange, applyPatch, searchChanges, undoPatch } from '../../src-core/remedies';
import { randomJob } from './random-job';
import { seededRandom } from './seeded-random';

/** Mesh of the random searches: that of the trials, so that an offer is confirmed as it was tried. */
export const SEARCH_MESH_IN = 3;
/** A promise may differ by this share when it is checked again. */
const PROMISE_SHARE = 0.01;
/** A slab of about 80 by 20 in. */
const SMALL_IN2 = 1_600;

export function checksOf(job: Job, pieceId: string, meshSizeIn = SEARCH_MESH_IN) {
  const piece = job.pieces.find(({ id }) => id === pieceId)!;
  return checkPiece(job, piece, { day: null, meshSizeIn }, DEFAULT_LIMITS).checks;
}

/** Searches the first piece of a job; `most` limits the offers. */
export function search(job: Job, most?: number, meshSizeIn = SEARCH_MESH_IN): ChangeSearch {
  const { id } = job.pieces[0]!;
  const failing = checksOf(job, id, meshSizeIn).filter(({ level }) => !stands(level));
  return searchChanges(job, id, {
    failing,
    finalMeshSizeIn: meshSizeIn,
    limits: DEFAULT_LIMITS,
    ...(most === undefined ? {} : { most }),
  });
}

/** Applies a change as a file would be and checks the piece again. Gives what went wrong, or null where the promise is kept. */
export function brokenPromise(job: Job, change: Change, meshSizeIn = SEARCH_MESH_IN): string | null {
  const changed = applyChange(job, change);
  const again = readJob(JSON.parse(JSON.stringify(changed)));
  if (!again.ok) return `${change.id} makes a job that is refused: ${again.problems[0]?.sentence}`;
  const checks = checksOf(changed, change.pieceId, meshSizeIn);
  const failing = checks.find(({ level }) => !stands(level));
  if (failing !== undefined) return `${change.id} leaves ${failing.id} at ${failing.ratio}`;
  const governing = governingCheck(checks)!;
  if (Math.abs(governing.ratio - change.worstRatio) > PROMISE_SHARE * change.worstRatio) {
    return `${change.id} promises ${change.worstRatio} and gives ${governing.ratio} (${governing.id})`;
  }
  const back = applyPatch(changed, undoPatch(job, change.patch));
  return back.ok && JSON.stringify(back.job) === JSON.stringify(job) ? null : `${change.id} cannot be undone`;
}

export interface PromiseReport {
  readonly jobs: number;
  readonly changes: number;
}

/**
 * Searches random jobs whose first piece fails, `count` of them from `firstSeed` on, and makes the smallest change offered to
 * each. Throws at the first promise that is not kept, with its seed.
 */
export function keepPromises(count: number, firstSeed: number): PromiseReport {
  let jobs = 0;
  let changes = 0;
  for (let seed = firstSeed; jobs < count; seed++) {
    const reading = readJob(randomJob(seededRandom(seed)));
    if (!reading.ok) continue;
    const { job } = reading;
    const { id, supports, corners } = job.pieces[0]!;
    if (supports.some(({ lastDay }) => lastDay !== null) || polygonAreaIn2(corners) > SMALL_IN2) continue;
    if (checksOf(job, id).every(({ level }) => stands(level))) continue;
    jobs++;
    for (const change of search(job, 1).changes) {
      changes++;
      const broken = brokenPromise(job, change);
      if (broken !== null) throw new Error(`seed ${seed}: ${broken}`);
    }
  }
  return { jobs, changes };
}
