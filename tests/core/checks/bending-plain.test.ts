import { describe, expect, test } from 'vitest';
import { bendingPlain, factoredMoment, plainBendingRatio } from '../../../src-core/checks/bending-plain';
import { FREE_CORNER_RATIO, MID_RUN_RATIO, overhangStrip } from '../../../src-core/checks/strip-by-hand';
import { runCheckCase } from '../../support/check-harness';
import { COUNTER_E2, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';
import { bars, plank } from './plank';

const MESH_IN = 3;

describe('bending on concrete alone', () => {
  test('a 2-1/2 in plank over 84 in cracks at 1.33 times what plain concrete takes', () => {
    // q = 145 / 1728 * 2.5 + 50 / 144 = 0.5570 psi; M = q 84^2 / 8 = 491.3 lbf-in/in
    // (2/3) Mcr = (2/3) 7.5 sqrt(5000) 2.5^2 / 6 = 368.3; ratio 1.334
    const [check] = runCheckCase(bendingPlain, {
      says: 'plank 84',
      job: plank({ spanIn: 84, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { near: 1.334, within: 0.01 },
    });
    expect(check!.words).toContain('underneath');
    expect(check!.words).toContain('no steel is drawn');
    expect(check!.needs[0]).toBe('steel');
    expect(Math.abs(check!.where.kind === 'point' ? check!.where.at.xIn - 42.375 : 99)).toBeLessThan(4);
  });

  test('just inside the limit, at 70 in, it holds, and steel is recommended all the same', () => {
    // 491.3 (70/84)^2 / 368.3 = 0.926
    const [check] = runCheckCase(bendingPlain, {
      says: 'plank 70',
      job: plank({ spanIn: 70, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { near: 0.926, within: 0.01 },
    });
    expect(check!.words).toContain('Uncracked on paper');
    expect(check!.cautions.some((caution) => caution.startsWith('Put steel in all the same'))).toBe(true);
  });

  test('just outside, at 74 in, it cracks, and with bars in it stands on its steel', () => {
    // 491.3 (74/84)^2 / 368.3 = 1.035
    const ratio = { near: 1.035, within: 0.01 };
    const span = { spanIn: 74, thicknessIn: 2.5 };
    runCheckCase(bendingPlain, {
      says: 'plain',
      job: plank(span),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio,
    });
    const [check] = runCheckCase(bendingPlain, {
      says: 'with bars',
      job: plank({ ...span, steel: [bars(1.8125, 4)] }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio,
    });
    expect(check!.words).toContain('stands on its steel');
  });

  test('glass fabric counts nothing, and the words say so', () => {
    const [check] = runCheckCase(bendingPlain, {
      says: 'fabric',
      job: plank({
        spanIn: 84,
        thicknessIn: 2.5,
        steel: [{ kind: 'fabric', id: 'scrim', material: 'glass' }],
      }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { near: 1.334, within: 0.01 },
    });
    expect(check!.words).toContain('fabric or fibre counts nothing');
  });

  test('concrete whose strength nobody stated is taken at 3000 psi and says so', () => {
    // limit 368.3 sqrt(3000 / 5000) = 285.3; M 491.3 (60/84)^2 = 250.7; ratio 0.879
    const job = plank({ spanIn: 60, thicknessIn: 2.5 });
    const unstated = {
      ...job,
      mixes: job.mixes.map((mix) => ({ ...mix, strengthPsi: null, strengthFrom: 'assumed' as const })),
    };
    const [check] = runCheckCase(bendingPlain, {
      says: 'unstated',
      job: unstated,
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { near: 0.879, within: 0.01 },
    });
    expect(check!.cautions.some((caution) => caution.includes('3000 psi'))).toBe(true);
  });

  test('both stiffness bounds and both faces are printed, and the worst of the four governs', () => {
    const [check] = runCheckCase(bendingPlain, {
      says: 'E2',
      job: COUNTER_E2(),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0.7, to: 0.85 },
    });
    const moments = check!.workings.filter(({ symbol }) => symbol === 'M').map(({ value }) => value);
    expect(moments).toHaveLength(4);
    expect(check!.demand.value).toBe(Math.max(...moments));
  });

  test('the factored moment is 1.4 of what lasts, or 1.2 of it and 1.6 of the rest where that is more', () => {
    // ASCE 7-22 2.3.1, combinations 1 and 2: they meet where the live part is an eighth of the lasting one
    expect(factoredMoment.compute({ D: 100, S: 100 })).toBeCloseTo(140, 9);
    expect(factoredMoment.compute({ D: 100, S: 110 })).toBeCloseTo(140, 9);
    expect(factoredMoment.compute({ D: 100, S: 120 })).toBeCloseTo(152, 9);
  });

  test('a ratio is the moment over the limit: 100 over 132.6 is 0.754', () => {
    expect(plainBendingRatio.compute({ M: 100, Mlim: 132.6 })).toBeCloseTo(0.754, 3);
  });
});

describe('the strip by hand', () => {
  test('10 in of 2 in overhang with 250 lb at its edge gives 131.2 mid-run and 378 at a free corner', () => {
    // basis 2.5 and 2.6: q a^2 / 2 = 0.1678 * 50 = 8.39; 8.39 + 0.4912 * 250 = 131.2; 8.39 + 1.48 * 250 = 378.4
    const strip = { q: (145 / 1728) * 2, a: 10, P: 250 };
    expect(Math.abs(overhangStrip.compute({ ...strip, kP: MID_RUN_RATIO }) / 131.2 - 1)).toBeLessThan(0.005);
    expect(Math.abs(overhangStrip.compute({ ...strip, kP: FREE_CORNER_RATIO }) / 378 - 1)).toBeLessThan(0.04);
  });

  test('the plank by hand comes within 3 % of the plate where the plate is a plank', () => {
    const [check] = runCheckCase(bendingPlain, {
      says: 'plank 84',
      job: plank({ spanIn: 84, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { from: 1.3, to: 1.4 },
    });
    // free span between the faces of the walls, 83.25 in: 0.5570 * 83.25^2 / 8 = 482.6
    const line = check!.workings.find(({ symbol }) => symbol === 'Mstrip');
    expect(line?.value).toBeCloseTo(482.6, 0);
    expect(Math.abs(check!.demand.value / line!.value - 1)).toBeLessThan(0.03);
  });

  test('an overhang prints its strip mid-run and at the corner, with a sentence on the difference', () => {
    const [check] = runCheckCase(bendingPlain, {
      says: 'E1',
      job: LEDGE_E1(),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0.5, to: 0.9 },
    });
    const strips = check!.workings.filter(({ symbol }) => symbol === 'Mstrip');
    // 1.5 in: q 0.12587; 0.12587 * 11^2 / 2 = 7.62; + 0.4912 * 250 = 130.4; + 1.48 * 250 = 377.6
    expect(strips.map(({ value }) => Math.round(value * 10) / 10)).toEqual([130.4, 377.6]);
    expect(strips[0]!.label).toContain('the plate is');
  });

  test('an overhang shorter than two thicknesses prints no strip', () => {
    const [check] = runCheckCase(bendingPlain, {
      says: 'bedded',
      job: jobOf({
        corners: rectangle(30, 8),
        thicknessIn: 2,
        supports: [wallAlongX('wall', 0, 30, 4, 6)],
      }),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0, to: 0.5 },
    });
    expect(check!.workings.some(({ symbol }) => symbol === 'Mstrip')).toBe(false);
  });
});
