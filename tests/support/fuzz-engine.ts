/** Long runs of random jobs and broken files, shared by the quick test and the long fuzz. */
import { analysePiece } from '../../src-core/analysis';
import { checkAnalysis, DEFAULT_LIMITS } from '../../src-core/checks';
import { readJob } from '../../src-core/job';
import { mutateJob } from './mutate-job';
import { randomJob } from './random-job';
import { seededRandom } from './seeded-random';

export interface FuzzReport {
  readonly jobs: number;
  readonly analysed: number;
  readonly levels: Readonly<Record<string, number>>;
  /** Processor time of the slowest job, so that a busy machine does not count. */
  readonly slowestMs: number;
  readonly slowestSeed: number;
  readonly worstImbalance: number;
}

/** Mesh of the random runs: coarse, because what is asked is soundness and not accuracy. */
const COARSE_IN = 3;

/**
 * Checks `count` random valid jobs, finished and on a day on the way. Throws with the seed at the first number that is not
 * finite, reaction that does not balance, or exception.
 */
export function checkRandomJobs(count: number, firstSeed: number): FuzzReport {
  const levels: Record<string, number> = {};
  let analysed = 0;
  let slowestMs = 0;
  let slowestSeed = firstSeed;
  let worstImbalance = 0;
  for (let seed = firstSeed; seed < firstSeed + count; seed++) {
    const reading = readJob(randomJob(seededRandom(seed)));
    if (!reading.ok) throw new Error(`seed ${seed}: ${reading.problems[0]?.sentence}`);
    const { job } = reading;
    const started = process.cpuUsage();
    for (const piece of job.pieces) {
      const day = seed % 4 === 0 ? piece.pourDay + 7 : null;
      try {
        const result = analysePiece(job, piece, { day, meshSizeIn: COARSE_IN });
        if (!result.ok) {
          levels[result.cannot.reason] = (levels[result.cannot.reason] ?? 0) + 1;
          continue;
        }
        analysed++;
        const { analysis } = result;
        for (const check of checkAnalysis(job, analysis, DEFAULT_LIMITS)) {
          levels[check.level] = (levels[check.level] ?? 0) + 1;
          if (![check.demand.value, check.capacity.value, check.ratio].every(Number.isFinite)) {
            throw new Error(`check ${check.id} has a number that is not finite`);
          }
        }
        const states = [analysis.elastic, ...(analysis.cracked === null ? [] : [analysis.cracked])];
        for (const state of states)
          for (const bound of [state.low, state.high])
            for (const one of bound.cases) {
              worstImbalance = Math.max(worstImbalance, one.imbalance);
              if (!(one.imbalance < 1e-6)) throw new Error(`${one.id} is out of balance by ${one.imbalance}`);
              if (!one.contactLbf.every(Number.isFinite))
                throw new Error(`${one.id} has a reaction that is not finite`);
            }
      } catch (cause) {
        throw new Error(`seed ${seed}, piece ${piece.id}: ${String(cause)}`, { cause });
      }
    }
    const { user, system } = process.cpuUsage(started);
    const ms = (user + system) / 1000;
    if (ms > slowestMs) {
      slowestMs = ms;
      slowestSeed = seed;
    }
  }
  return { jobs: count, analysed, levels, slowestMs, slowestSeed, worstImbalance };
}

/** Reads `count` broken copies of a job file; each is accepted or refused with a place. Returns how many of each. */
export function readBrokenFiles(
  file: unknown,
  count: number,
  firstSeed: number,
): { taken: number; refused: number } {
  let taken = 0;
  let refused = 0;
  for (let seed = firstSeed; seed < firstSeed + count; seed++) {
    const { value, changes } = mutateJob(file, seededRandom(seed), 1 + (seed % 5));
    const reading = readJob(value);
    if (reading.ok) taken++;
    else {
      refused++;
      if (reading.problems.length === 0)
        throw new Error(`seed ${seed} refused without a problem: ${changes.join('; ')}`);
    }
  }
  return { taken, refused };
}
