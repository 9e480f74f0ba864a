import { expect } from 'vitest';
import type { Check, CheckRule, Level } from '../../src-core/checks';
import { DEFAULT_LIMITS } from '../../src-core/checks';
import type { Job } from '../../src-core/job';
import { analyse } from './pieces';
import { recompute, recomputeTolerance } from './recompute';

export interface CheckCase {
  /** A sentence of the trade; the test's title. */
  readonly says: string;
  readonly job: Job;
  readonly day?: number | null;
  readonly meshSizeIn?: number;
  readonly level: Level;
  /** Expected ratio of the first check and its relative tolerance; a range where only that is known. */
  readonly ratio:
    | { readonly near: number; readonly within: number }
    | { readonly from: number; readonly to: number };
}

/**
 * Runs one rule on one case the strict way: the input must come back unchanged, the ratio finite, every printed line must
 * recompute, level and ratio must be as expected. Returns the checks for further questions.
 */
export function runCheckCase(rule: CheckRule, check: CheckCase): readonly Check[] {
  const analysis = analyse(check.job, { day: check.day ?? null, meshSizeIn: check.meshSizeIn ?? null });
  const jobBefore = JSON.stringify(check.job);
  const checks = rule.run({ job: check.job, analysis, limits: DEFAULT_LIMITS });
  expect(JSON.stringify(check.job)).toBe(jobBefore);
  const first = checks[0];
  if (first === undefined) throw new Error(`${rule.id} gave no check for: ${check.says}`);
  for (const one of checks) assertSoundCheck(rule.id, one);
  expect(first.level).toBe(check.level);
  if ('near' in check.ratio) {
    expect(Math.abs(first.ratio - check.ratio.near)).toBeLessThanOrEqual(
      check.ratio.within * check.ratio.near,
    );
  } else {
    expect(first.ratio).toBeGreaterThanOrEqual(check.ratio.from);
    expect(first.ratio).toBeLessThanOrEqual(check.ratio.to);
  }
  return checks;
}

/** What holds for every check, whatever the rule. */
export function assertSoundCheck(ruleId: string, check: Check): void {
  expect(check.id).toBe(ruleId);
  expect(Number.isFinite(check.ratio) && check.ratio >= 0).toBe(true);
  expect(Number.isFinite(check.demand.value)).toBe(true);
  expect(Number.isFinite(check.capacity.value)).toBe(true);
  expect(check.words.length).toBeGreaterThan(10);
  if (check.level === 'change') expect(check.needs.length).toBeGreaterThan(0);
  else expect(check.needs).toEqual([]);
  for (const line of check.workings) {
    expect(line.source.length).toBeGreaterThan(3);
    if (line.formula === '') continue;
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
  }
}
