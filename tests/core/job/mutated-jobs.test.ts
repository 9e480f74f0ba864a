import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src-core/job';
import { mutateJob } from '../../support/mutate-job';
import { seededRandom } from '../../support/seeded-random';
import { smallJob } from '../../support/small-job';

const GALLEY: unknown = JSON.parse(
  readFileSync(new URL('../../../assets/jobs/boathouse-galley.json', import.meta.url), 'utf8'),
);

/** Problems of the file as a whole have no place in it. */
const PLACELESS = new Set(['not-an-object', 'too-large', 'more-problems']);

function judge(value: unknown): 'taken' | 'refused' {
  const reading = readJob(value);
  if (reading.ok) {
    expect(readJob(reading.job)).toEqual({ ok: true, job: reading.job, migratedFrom: null });
    return 'taken';
  }
  expect(reading.problems.length).toBeGreaterThan(0);
  for (const { code, path, sentence } of reading.problems) {
    expect(sentence.length).toBeGreaterThan(10);
    if (!PLACELESS.has(code)) expect(path).not.toBe('');
  }
  return 'refused';
}

describe('a job file broken at random is taken or refused with a place, never a crash', () => {
  test.each([
    ['the small job', smallJob() as unknown, 600],
    ['the Boathouse galley', GALLEY, 200],
  ])('%s', (_, job, runs) => {
    const verdicts = new Set<string>();
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 1, max: 6 }), (seed, count) => {
        verdicts.add(judge(mutateJob(job, seededRandom(seed), count).value));
      }),
      { numRuns: runs, seed: 20270426 },
    );
    expect([...verdicts].sort()).toEqual(['refused', 'taken']);
  });

  test('the same seed does the same damage, and the job itself stays whole', () => {
    const job = smallJob();
    const first = mutateJob(job, seededRandom(11), 4);
    expect(mutateJob(job, seededRandom(11), 4)).toEqual(first);
    expect(first.value).not.toEqual(job);
    expect(job).toEqual(smallJob());
  });
});
