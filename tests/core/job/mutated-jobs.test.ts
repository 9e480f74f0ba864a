import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob, readJobText } from '../../../src-core/job';
import { mutateJob } from '../../support/mutate-job';
import { diceOf, seededRandom } from '../../support/seeded-random';
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

describe('a job text broken at random', () => {
  test('is placed by line and column wherever it is no JSON, and read as its value where it is', () => {
    const text = JSON.stringify(smallJob(), null, 1);
    const seen = { broken: 0, whole: 0 };
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const dice = diceOf(seededRandom(seed));
        const at = dice.whole(0, text.length);
        const inserted = dice.pick([
          '',
          '',
          ',',
          '}',
          ']',
          '"',
          '\\',
          ':',
          '0',
          '.',
          '-',
          'e',
          '\n',
          'null',
          '\u00e9',
        ]);
        const damaged = text.slice(0, at) + inserted + text.slice(at + dice.whole(0, 2));
        const reading = readJobText(damaged);
        const value = parsed(damaged);
        seen[value === undefined ? 'broken' : 'whole'] += 1;
        if (value !== undefined) expect(reading).toEqual(readJob(value));
        else {
          expect(reading).toMatchObject({ ok: false, problems: [{ code: 'not-json' }] });
          expect(reading.ok ? '' : reading.problems[0]!.sentence).toMatch(/: at line \d+, column \d+, /);
        }
      }),
      { numRuns: 600, seed: 20270426 },
    );
    expect(Math.min(seen.broken, seen.whole)).toBeGreaterThan(50);
  });
});

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
