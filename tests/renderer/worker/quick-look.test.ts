import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { governingCheck } from '../../../src-core/checks';
import { readJobText } from '../../../src-core/job';
import { lookAtPiece } from '../../../src-core/verdict';
import { QUICK_LOOK } from '../../../src-renderer/worker/quick-look';

/** A quick look's bending may differ from the whole check's by so much of it. */
const BENDING_WITHIN = 1 / 7;
/** A piece this near a limit may fall to either side of it at a quick look. */
const NEAR_A_LIMIT = 0.1;

function mustRead(file: string) {
  const reading = readJobText(readFileSync(`assets/jobs/${file}`, 'utf8'));
  if (!reading.ok) throw new Error(`${file} cannot be read`);
  return reading;
}

test.each(readdirSync('assets/jobs'))(
  '%s: a quick look bends as the whole check does within a seventh, and names its rung but near a limit',
  (file) => {
    const { job } = mustRead(file);
    for (const piece of job.pieces) {
      const whole = lookAtPiece(job, piece).result;
      const quick = lookAtPiece(job, piece, QUICK_LOOK).result;
      const [seen, worked] = [quick, whole].map(
        ({ checks }) => checks.find(({ id }) => id === 'bending-plain')!.ratio,
      );
      expect(Math.abs(seen! / worked! - 1), piece.id).toBeLessThan(BENDING_WITHIN);
      const ratio = governingCheck(whole.checks)?.ratio ?? 0;
      if (Math.abs(ratio - 1) < NEAR_A_LIMIT) continue;
      expect([piece.id, quick.verdict.level]).toEqual([piece.id, whole.verdict.level]);
    }
  },
);

test('panels of neighbouring cabinets that share a node at a quick look each carry their own part, and all of it is the weight', () => {
  const { job } = mustRead('straight-counter.json');
  const quick = lookAtPiece(job, job.pieces[0]!, QUICK_LOOK).result;
  const whole = lookAtPiece(job, job.pieces[0]!).result;
  const dead = quick.reactions.filter(({ bound }) => bound === 'high').map(({ deadLbf }) => deadLbf);
  expect(dead).toHaveLength(4);
  expect(dead.reduce((sum, lbf) => sum + lbf, 0)).toBeCloseTo(quick.weightLb, 6);
  const [first, second] = dead;
  const ofWhole = whole.reactions.filter(({ bound }) => bound === 'high').map(({ deadLbf }) => deadLbf);
  expect(Math.abs(first! / ofWhole[0]! - 1)).toBeLessThan(0.1);
  expect(Math.abs(second! / ofWhole[1]! - 1)).toBeLessThan(0.1);
});
