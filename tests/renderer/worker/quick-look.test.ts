import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { governingCheck } from '../../../src-core/checks';
import { readJobText } from '../../../src-core/job';
import { lookAtPiece } from '../../../src-core/verdict';
import { QUICK_LOOK } from '../../../src-renderer/worker/quick-look';

/** A piece this near a limit may fall to either side of it at a quick look. */
const NEAR_A_LIMIT = 0.1;

test.each(readdirSync('assets/jobs'))(
  '%s: a quick look names the rung of the whole check, but near a limit',
  (file) => {
    const reading = readJobText(readFileSync(`assets/jobs/${file}`, 'utf8'));
    if (!reading.ok) throw new Error(`${file} cannot be read`);
    const { job } = reading;
    for (const piece of job.pieces) {
      const whole = lookAtPiece(job, piece).result;
      const ratio = governingCheck(whole.checks)?.ratio ?? 0;
      if (Math.abs(ratio - 1) < NEAR_A_LIMIT) continue;
      const quick = lookAtPiece(job, piece, QUICK_LOOK).result;
      expect([piece.id, quick.verdict.level]).toEqual([piece.id, whole.verdict.level]);
    }
  },
);
