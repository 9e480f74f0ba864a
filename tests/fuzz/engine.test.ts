import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkRandomJobs, readBrokenFiles } from '../support/fuzz-engine';

const COUNT = Number(process.env.FUZZ_COUNT ?? 10_000);
const SEED = Number(process.env.FUZZ_SEED ?? 100_000);
const SLOWEST_MS = 5_000;

test(`${COUNT} random valid jobs from seed ${SEED}: no NaN, no exception, none over 5 s`, () => {
  const chunk = 250;
  let analysed = 0;
  for (let done = 0; done < COUNT; done += chunk) {
    const report = checkRandomJobs(Math.min(chunk, COUNT - done), SEED + done);
    analysed += report.analysed;
    console.log(
      `${done + report.jobs} jobs, ${analysed} pieces; slowest of the last ${report.jobs}: ${Math.round(report.slowestMs)} ms (seed ${report.slowestSeed}); imbalance ${report.worstImbalance.toExponential(1)}`,
    );
    expect(report.slowestMs).toBeLessThan(SLOWEST_MS);
  }
  expect(analysed).toBeGreaterThan(COUNT / 2);
});

test(`${COUNT} broken copies of the Boathouse galley: each accepted or refused with a place`, () => {
  const galley: unknown = JSON.parse(
    readFileSync(new URL('../../assets/jobs/boathouse-galley.json', import.meta.url), 'utf8'),
  );
  const { taken, refused } = readBrokenFiles(galley, COUNT, SEED);
  console.log(`${taken} accepted, ${refused} refused`);
  expect(taken + refused).toBe(COUNT);
  expect(refused).toBeGreaterThan(COUNT / 10);
});
