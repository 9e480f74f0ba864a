/** Everything that a check found, as JSON in core units: inch, pound-force, psi, pound, day. */

import type { Job } from '../../../src-core/job';
import { NOTICE } from '../../../src-core/report';
import type { JobResult } from '../../../src-core/verdict';
import type { Progress } from '../progress';
import { finite } from './finite';

export interface JsonContext {
  readonly version: string;
  readonly job: Pick<Job, 'shownIn'>;
  readonly seconds: number;
  readonly progress: Pick<Progress, 'secondsOf'>;
}

/** The result as JSON text. Keys keep the order in which the results name them; only the seconds differ between runs. */
export function jsonReport(result: JobResult, { version, job, seconds, progress }: JsonContext): string {
  const report = {
    tool: 'ledgewright',
    version,
    ...result,
    pieces: result.pieces.map((piece, index) => ({ ...piece, seconds: rounded(progress.secondsOf(index)) })),
    units: 'inch, pound-force, psi, pound, day',
    shownIn: job.shownIn,
    seconds: rounded(seconds),
    notice: NOTICE,
  };
  return `${JSON.stringify(report, plain, 2)}\n`;
}

/** Typed arrays as plain ones, every number finite. */
function plain(key: string, value: unknown): unknown {
  if (value instanceof Float64Array || value instanceof Uint8Array || value instanceof Int32Array) {
    return Array.from(value);
  }
  return finite(key, value);
}

function rounded(seconds: number | null): number | null {
  return seconds === null ? null : Math.round(seconds * 1000) / 1000;
}
