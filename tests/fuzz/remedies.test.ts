import { expect, test } from 'vitest';
import { keepPromises } from '../support/kept-promises';

const COUNT = Math.ceil(Number(process.env.FUZZ_COUNT ?? 10_000) * 0.03);
const SEED = Number(process.env.FUZZ_SEED ?? 100_000);

test(`no change offered to ${COUNT} random failing jobs from seed ${SEED} fails when it is made`, () => {
  const report = keepPromises(COUNT, SEED);
  console.log(`${report.jobs} failing jobs, ${report.changes} changes made and checked again`);
  expect(report.jobs).toBe(COUNT);
});
