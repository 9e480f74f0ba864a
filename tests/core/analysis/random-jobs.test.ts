import { expect, test } from 'vitest';
import { checkRandomJobs } from '../../support/fuzz-engine';

test('80 random jobs at a coarse mesh are checked without an exception or a number that is not finite', () => {
  const report = checkRandomJobs(80, 1);
  expect(report.analysed).toBeGreaterThan(50);
  expect(report.worstImbalance).toBeLessThan(1e-6);
  expect(Object.keys(report.levels)).toEqual(expect.arrayContaining(['holds', 'change', 'engineer']));
}, 600_000);
