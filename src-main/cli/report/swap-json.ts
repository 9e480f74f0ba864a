/** The swap as JSON in core units: inch, pound-force, psi, pound, day. */
import type { Job } from '../../../src-core/job';
import { NOTICE } from '../../../src-core/report';
import type { CheckedMoment, NoSwap, SwapResult } from '../../../src-core/sequence';
import { SIZE_CAUTION } from '../../../src-core/sequence';
import { finite } from './finite';

export interface SwapFacts {
  readonly version: string;
  readonly seconds: number;
}

/** Every piece's swap. Checks come without their workings: the load check of the day prints those. */
export function swapJson(
  job: Job,
  results: readonly (SwapResult | NoSwap)[],
  { version, seconds }: SwapFacts,
): string {
  const report = {
    tool: 'ledgewright',
    version,
    jobId: job.id,
    name: job.name,
    workingLoadPsf: job.swap.workingLoadPsf,
    pieces: results.map(pieceOf),
    sizeCaution: SIZE_CAUTION,
    units: 'inch, pound-force, psi, pound, day',
    shownIn: job.shownIn,
    seconds: Math.round(seconds * 1000) / 1000,
    notice: NOTICE,
  };
  return `${JSON.stringify(report, finite, 2)}\n`;
}

function pieceOf(result: SwapResult | NoSwap): object {
  if ('sentence' in result) return result;
  const { check, steps, ...rest } = result;
  return {
    ...rest,
    steps: steps.map(({ step, worst, heights }) => ({
      ...step,
      level: worst.level,
      ratio: worst.ratio,
      worstPhase: worst.phase,
      words: worst.words,
      heights,
    })),
    moments: check.moments.map(momentOf),
    worstMoment: check.worst,
  };
}

function momentOf({ checks, ...moment }: CheckedMoment): object {
  return { ...moment, checks: checks.map(({ workings: _, ...check }) => check) };
}
