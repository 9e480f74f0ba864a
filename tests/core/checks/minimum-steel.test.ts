import { describe, expect, test } from 'vitest';
import { minimumSteelRule } from '../../../src-core/checks/minimum-steel';
import { runCheckCase } from '../../support/check-harness';
import { bars, lightMesh, plank } from './plank';

const run = (of: Parameters<typeof plank>[0], level: 'holds' | 'steel' = 'holds') =>
  runCheckCase(minimumSteelRule, {
    says: 'least steel',
    job: plank(of),
    meshSizeIn: 4,
    level,
    ratio: { from: 0, to: 0 },
  })[0]!;

describe('least steel', () => {
  test('a 2-1/2 in slab wants 0.054 in2/ft and 4x4 W2.1 mesh has 0.063', () => {
    // basis 4.7: 0.0018 * 2.5 * 12 = 0.0540; pi / 4 * 0.1635^2 / 4 * 12 = 0.0630
    const check = run({ spanIn: 40, thicknessIn: 2.5, steel: [lightMesh(1.25)] });
    expect(check.demand.value).toBeCloseTo(0.054, 6);
    expect(check.capacity.value).toBeCloseTo(0.063, 4);
    expect(check.words).toContain('steel enough');
  });

  test('just inside, at 2.9 in, the mesh is enough, and just outside, at 2.95 in, it is short and only warns', () => {
    // 0.0018 * 2.9 = 0.00522, 0.0018 * 2.95 = 0.00531; mesh 0.005249 in2/in
    expect(run({ spanIn: 40, thicknessIn: 2.9, steel: [lightMesh(1.25)] }).words).toContain('steel enough');
    const short = run({ spanIn: 40, thicknessIn: 2.95, steel: [lightMesh(1.25)] });
    expect(short.words).toContain('0.99 of the least');
    expect(short.cautions.some((caution) => caution.includes('24.4.3.2'))).toBe(true);
  });

  test('a piece that stands on too little steel keeps its rung', () => {
    const check = run({ spanIn: 84, thicknessIn: 2.5, steel: [bars(1.8125, 8)] }, 'steel');
    expect(check.words).toContain('No steel runs front to back');
  });

  test('bars further apart than 3 thicknesses where they carry, or 5 anywhere, get a caution', () => {
    // 2.5 in: 7-1/2 in where it carries, 12-1/2 in anywhere
    const carrying = run({ spanIn: 84, thicknessIn: 2.5, steel: [bars(1.8125, 8)] }, 'steel');
    expect(carrying.cautions.some((caution) => caution.includes('7-1/2 in or less'))).toBe(true);
    const idle = run({ spanIn: 40, thicknessIn: 2.5, steel: [bars(1.8125, 8)] });
    expect(idle.cautions.some((caution) => caution.includes('apart'))).toBe(false);
    const far = run({ spanIn: 40, thicknessIn: 2.5, steel: [bars(1.8125, 13)] });
    expect(far.cautions.some((caution) => caution.includes('12-1/2 in or less'))).toBe(true);
  });

  test('cover is told apart: common practice under a top, below it, and outdoors', () => {
    const coverOf = (depthIn: number, exposure: 'indoors' | 'outdoors') =>
      run({ spanIn: 40, thicknessIn: 2.5, exposure, steel: [bars(depthIn, 4)] }).cautions.find((caution) =>
        caution.includes('cover'),
      );
    expect(coverOf(1.8125, 'indoors')).toContain('common practice');
    expect(coverOf(2, 'indoors')).toContain('Only 5/16 in');
    expect(coverOf(1.8125, 'outdoors')).toContain('Only 1/2 in');
    expect(coverOf(1.25, 'indoors')).toBeUndefined();
    // 3/4 in outdoors and 1/2 in indoors: common practice, no source
    expect(coverOf(1.6, 'outdoors')).toContain('Only 11/16 in');
    expect(coverOf(1.5625, 'outdoors')).toContain('below the 1-1/2 in');
    expect(coverOf(1.85, 'indoors')).toContain('Only 7/16 in');
    // 1-1/16 in: enough for a thin top outdoors, and below the 1-1/2 in of ACI 318-19 Table 20.5.1.3.1
    expect(coverOf(1.25, 'outdoors')).toContain('below the 1-1/2 in');
  });

  test('bars at 45 degrees count a quarter each way', () => {
    // 0.11 / 4 * 12 = 0.33 in2/ft lengthways of themselves; mesh at mid-depth adds 0.063 * 2 * 0.25 across both
    const check = run({
      spanIn: 40,
      thicknessIn: 2.5,
      steel: [lightMesh(1.25), bars(1.8125, 4, { angleDeg: 45 })],
    });
    expect(check.capacity.value).toBeCloseTo(0.063 + 0.33 / 4, 3);
  });

  test('a plain piece is not asked', () => {
    expect(() => run({ spanIn: 40, thicknessIn: 2.5 })).toThrow('gave no check');
  });
});
