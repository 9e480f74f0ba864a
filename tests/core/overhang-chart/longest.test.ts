import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findLongest } from '../../../src-core/overhang-chart/longest';

const RANGE = { least: 8, most: 128, first: 128 };

/** Searches with a ratio of its own on each mesh, and keeps what was asked. */
function searched(coarse: (step: number) => number, fine: (step: number) => number = coarse, range = RANGE) {
  const asked: { readonly step: number; readonly mesh: string }[] = [];
  const found = findLongest(range, (step, mesh) => {
    asked.push({ step, mesh });
    return { ratio: mesh === 'coarse' ? coarse(step) : fine(step) };
  });
  const fineRuns = asked.filter(({ mesh }) => mesh === 'fine').length;
  return { found, asked, fineRuns };
}

describe('the search for the longest overhang', () => {
  test('comes within 1 % of the limit on the fine mesh, in few runs', () => {
    const { found, asked, fineRuns } = searched((step) => (step / 61.3) ** 2);
    expect(found?.holds?.step).toBe(61);
    expect(asked.length).toBeLessThanOrEqual(8);
    expect(fineRuns).toBeLessThanOrEqual(3);
  });

  test('believes the fine mesh where the coarse one misjudges', () => {
    const { found } = searched(
      (step) => step / 80,
      (step) => step / 70,
    );
    expect(found?.holds?.step).toBe(70);
  });

  test('asks once a mesh where the longest holds', () => {
    const { found, asked } = searched((step) => step / 400);
    expect(found?.holds?.step).toBe(128);
    expect(found?.fails).toBeNull();
    expect(asked).toEqual([
      { step: 128, mesh: 'coarse' },
      { step: 128, mesh: 'fine' },
    ]);
  });

  test('says that none holds where the shortest fails', () => {
    const { found } = searched((step) => 1.2 + step / 400);
    expect(found?.holds).toBeNull();
    expect(found?.fails?.step).toBe(8);
  });

  test('ends on a long flat stretch, short of the step that fails', () => {
    const { found } = searched((step) => 0.9 + 0.1 * (step / 100) + (step > 100 ? 0.01 : 0));
    expect(found?.holds?.step).toBeGreaterThanOrEqual(90);
    expect(found?.holds?.step).toBeLessThanOrEqual(100);
  });

  test('finds the last step before a jump', () => {
    const { found } = searched((step) => (step <= 50 ? 0.4 : 7));
    expect(found?.holds?.step).toBeGreaterThanOrEqual(40);
    expect(found?.holds?.step).toBeLessThanOrEqual(50);
  });

  test('gives up when it is told to', () => {
    expect(findLongest(RANGE, () => null)).toBeNull();
  });

  test('never gives a step that fails, whatever the ratio does (200 random curves)', () => {
    const curve = fc.array(fc.double({ min: 0.2, max: 3, noNaN: true }), { minLength: 121, maxLength: 121 });
    fc.assert(
      fc.property(curve, fc.boolean(), fc.integer({ min: 8, max: 128 }), (values, isRising, first) => {
        const at = isRising ? [...values].sort((a, b) => a - b) : values;
        const ratio = (step: number) => at[step - 8]!;
        const { found, asked } = searched(ratio, ratio, { ...RANGE, first });
        const { holds, fails } = found!;
        expect(asked.length).toBeLessThan(60);
        if (holds !== null) expect(ratio(holds.step)).toBeLessThanOrEqual(1);
        if (fails !== null) expect(ratio(fails.step)).toBeGreaterThan(1);
        if (holds === null) expect(fails?.step).toBe(8);
        if (holds !== null && fails !== null) expect(fails.step).toBeGreaterThan(holds.step);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});
