import { describe, expect, test } from 'vitest';
import { steelLayers, tensionLayers } from '../../../src-core/analysis';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { anchorage } from '../../../src-core/checks/anchorage';
import { bendingReinforced } from '../../../src-core/checks/bending-reinforced';
import { heldSection, neededMoment } from '../../../src-core/checks/steel-section';
import type { Job } from '../../../src-core/job';
import { assertSoundCheck, runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, rectangle } from '../../support/pieces';
import { bars, lightMesh, plank, tiedLedge } from './plank';

const MESH_IN = 3;
const SPAN = { spanIn: 84, thicknessIn: 2.5 };

function checksOf(job: Job, meshSizeIn = MESH_IN) {
  return bendingReinforced.run({ job, analysis: analyse(job, { meshSizeIn }), limits: DEFAULT_LIMITS });
}

describe('bending with steel', () => {
  test('#3 bars at 4 in low in a 2-1/2 in plank over 84 in use 0.30 of what they carry', () => {
    // MD = 0.20978 * 84^2 / 8 = 185.0; ML = 0.34722 * 882 = 306.3; Mu = 1.2 * 185.0 + 1.6 * 306.3 = 712
    // As = 0.0275 in2/in, d = 1.8125, a = 0.0275 * 60000 / (0.85 * 5000) = 0.3882; Mn = 1650 (1.8125 - 0.1941) = 2670
    // phi Mn = 2403; Mcr = 552.4 < Mu, so needed = 712; ratio 0.296
    const [check] = runCheckCase(bendingReinforced, {
      says: '#3 at 4',
      job: plank({ ...SPAN, steel: [bars(1.8125, 4)] }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { near: 0.296, within: 0.02 },
    });
    expect(check!.capacity.value).toBeCloseTo(2403, 0);
    expect(check!.words).toContain('runs lengthways carries it');
  });

  test('just inside, at 14 in, the bars carry it, and just outside, at 15 in, they fall short', () => {
    // 14 in: As 0.007857, a 0.1109, Mn 471.4 (1.8125 - 0.0555) = 828.3, phi Mn 745.5; 712 / 745.5 = 0.955
    // 15 in: As 0.007333, a 0.1035, Mn 440.0 (1.8125 - 0.0518) = 774.7, phi Mn 697.3; 712 / 697.3 = 1.021
    runCheckCase(bendingReinforced, {
      says: '#3 at 14',
      job: plank({ ...SPAN, steel: [bars(1.8125, 14)] }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { near: 0.955, within: 0.02 },
    });
    const [check] = runCheckCase(bendingReinforced, {
      says: '#3 at 15',
      job: plank({ ...SPAN, steel: [bars(1.8125, 15)] }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { near: 1.021, within: 0.02 },
    });
    expect(check!.needs).toEqual(['steel', 'thickness', 'support', 'corbel']);
  });

  test('light mesh at mid-depth of a 2-1/2 in slab cannot catch the crack, and near the underside it would', () => {
    // basis 4.1: phi Mn = 4422 / 12 = 368.5 lbf-in/in, below Mcr = 5929 / 12 = 494.1
    const [check] = runCheckCase(bendingReinforced, {
      says: 'basis 4.1',
      job: plank({ spanIn: 70, thicknessIn: 2.5, strengthPsi: 4000, steel: [lightMesh(1.25)] }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { from: 1.3, to: 1.5 },
    });
    expect(check!.capacity.value).toBeCloseTo(368.5, 0);
    expect(check!.demand.value).toBeGreaterThan(494.1 * 0.999);
    expect(check!.cautions.some((caution) => caution.includes('above the underside would do'))).toBe(true);
  });

  test('the same wire at mid-depth of a 1-1/2 in slab serves', () => {
    // f'c 3000, 43 in: As 0.005249, a 0.1338, d 0.75, Mn 341.2 (0.75 - 0.0669) = 233.1, phi Mn 209.8
    // MD = 0.12587 * 43^2 / 8 = 29.1, ML = 0.34722 * 231.1 = 80.3; Mu = 163.3 > Mcr 154.0; ratio 0.778, the plate's
    // Wood-Armer moment in the middle of its width is some 7 % above the beam's
    runCheckCase(bendingReinforced, {
      says: '1-1/2 in',
      job: plank({ spanIn: 43, thicknessIn: 1.5, strengthPsi: 3000, steel: [lightMesh(0.75)] }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { near: 0.81, within: 0.05 },
    });
  });

  test('steel that hardly stretches counts 0.65 of its strength against 4/3 of the moment, with a caution', () => {
    // basis 4.4: #4 at 4 in at d 1.0 in 2 in: Mn 16 865 / 12 = 1405, 0.65 Mn = 913.5 lbf-in/in
    // 60 in: MD = 0.16782 * 450 = 75.5, ML = 156.25; Mu = 340.6; 4/3 Mu = 454.1; ratio 0.497
    const [check] = runCheckCase(bendingReinforced, {
      says: 'basis 4.4',
      job: plank({
        spanIn: 60,
        thicknessIn: 2,
        strengthPsi: 4000,
        steel: [bars(1, 4, { barIn: 0.5, areaIn2: 0.2 })],
      }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { near: 0.497, within: 0.02 },
    });
    expect(check!.capacity.value).toBeCloseTo(913.5, 0);
    expect(check!.cautions.some((caution) => caution.includes('7.3.3.1'))).toBe(true);
  });

  test('steel that stretches some, yet not enough, counts no more than 0.65 of its strength either', () => {
    // basis 4.5: #3 at 4 in at d 1.0 in 2 in, f'c 4000: strain 0.00226 at the bars, below fy / Es + 0.003 = 0.00507, so phi
    // would lie between 0.65 and 0.90 (ACI 318-19 Table 21.2.2), at 0.666
    // As 0.0275, a = 0.0275 * 60000 / (0.85 * 4000) = 0.4853, Mn = 1650 (1 - 0.2426) = 1249.6; 0.65 Mn = 812.3
    // 4/3 Mu = 454.1 as above; ratio 0.559
    const [check] = runCheckCase(bendingReinforced, {
      says: 'basis 4.5',
      job: plank({ spanIn: 60, thicknessIn: 2, strengthPsi: 4000, steel: [bars(1, 4)] }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { near: 0.559, within: 0.02 },
    });
    expect(check!.capacity.value).toBeCloseTo(812.3, 0);
  });

  test('a square slab on four walls bends both ways alike, and its bars are judged both ways', () => {
    // Simply supported on four sides: M = 0.0479 q a^2 each way at nu 0.3 (Timoshenko & Woinowsky-Krieger, Table 8), less at 0.2.
    // q = 0.2098 + 250 / 144 = 1.946 psi, a = 72: some 440 lbf-in/in, past the 368.3 that plain concrete takes uncracked
    const side = 72.75;
    const wall = (id: string, x0: number, y0: number, x1: number, y1: number) => ({
      kind: 'wall' as const,
      build: 'block' as const,
      id,
      from: { xIn: x0, yIn: y0 },
      to: { xIn: x1, yIn: y1 },
      widthIn: 0.75,
    });
    const near = 0.375;
    const far = side - near;
    const job = jobOf({
      corners: rectangle(side, side),
      thicknessIn: 2.5,
      loads: { roving: { setting: 'none' }, spreadPsf: 250 },
      reinforcement: [
        { ...bars(1.8125, 4), id: 'along' },
        { ...bars(1.8125, 4, { angleDeg: 90 }), id: 'across' },
      ],
      supports: [
        wall('left', near, 0, near, side),
        wall('right', far, 0, far, side),
        wall('front', 0, near, side, near),
        wall('back', 0, far, side, far),
      ],
    });
    const underneath = checksOf(job).filter(({ words }) => words.includes('underneath'));
    expect(underneath).toHaveLength(2);
    expect(underneath.map(({ words }) => words.includes('runs lengthways')).sort()).toEqual([false, true]);
  });

  test('bars in the wrong face hold nothing, and the sheet shows what they would do in the right one', () => {
    const [check] = checksOf(plank({ ...SPAN, steel: [bars(0.6875, 4)] }));
    assertSoundCheck('bending-reinforced', check!);
    expect(check!.level).toBe('change');
    expect(check!.capacity.value).toBe(0);
    expect(check!.ratio).toBeGreaterThan(1);
    expect(check!.words).toContain('no steel that runs lengthways');
    expect(check!.cautions.some((caution) => caution.includes('1/2 in above the underside would do'))).toBe(
      true,
    );
  });

  test('a plank that stays uncracked, and one with fabric alone, are not asked', () => {
    expect(checksOf(plank({ spanIn: 40, thicknessIn: 2.5, steel: [bars(1.8125, 4)] }))).toEqual([]);
    const fabric = plank({ ...SPAN, steel: [{ kind: 'fabric', id: 'scrim', material: 'glass' }] });
    expect(checksOf(fabric)).toEqual([]);
  });

  test('a ledge wants its bars in the top: low ones fall short where high ones carry', () => {
    const rootCheck = (depthIn: number) => {
      const checks = checksOf(tiedLedge(14, 1.5, [bars(depthIn, 4, { angleDeg: 90 })]), 2);
      return checks.find(({ words }) => words.includes('at the top') && words.includes('front to back'));
    };
    const high = rootCheck(0.6875);
    const low = rootCheck(0.8125);
    expect(high?.level).toBe('steel');
    expect(low?.level).toBe('change');
    expect(low?.cautions.some((caution) => caution.includes('under the top would do'))).toBe(true);
  });

  test('the moment needed is the factored one, and enough to catch the crack unless a third more is at hand', () => {
    expect(neededMoment.compute({ Mu: 700, Mcr: 552 })).toBe(700);
    expect(neededMoment.compute({ Mu: 500, Mcr: 552 })).toBe(552);
    expect(neededMoment.compute({ Mu: 300, Mcr: 552 })).toBe(400);
  });
});

describe('bars take hold', () => {
  const holdOf = (steel: ReturnType<typeof lightMesh>, xIn: number, yIn = 9) => {
    const analysis = analyse(plank({ spanIn: 47.25, thicknessIn: 2.5, strengthPsi: 4000, steel: [steel] }), {
      meshSizeIn: 6,
    });
    return anchorage(analysis, steelLayers(analysis.piece)[0]!, { xIn, yIn });
  };

  test('a #3 bar needs 14.2 in, so 8 in from the end of a 48 in plank a bit under half of it counts', () => {
    // basis 4.13: 60000 / (25 sqrt(4000)) * 0.375 = 14.23 in; at hand 8 - 1 = 7 in; 7 / 14.23 = 0.492
    const hold = holdOf(bars(1.8125, 4), 8);
    expect(hold.neededIn).toBeCloseTo(14.23, 2);
    expect(hold.atHandIn).toBeCloseTo(7, 6);
    expect(hold.shareRatio).toBeCloseTo(0.492, 3);
  });

  test('and no more than that carries: 1237 lbf-in in an inch instead of 2331', () => {
    // As = 0.0275 * 0.4919 = 0.01353; a = 0.01353 * 60000 / (0.85 * 4000) = 0.2387; Mn = 811.7 (1.8125 - 0.1194) = 1374; 0.9 Mn
    const analysis = analyse(
      plank({ spanIn: 47.25, thicknessIn: 2.5, strengthPsi: 4000, steel: [bars(1.8125, 4)] }),
      { meshSizeIn: 6 },
    );
    const momentAt = (xIn: number) => {
      const at = { xIn, yIn: 9 };
      const layers = tensionLayers(steelLayers(analysis.piece), 'bottom', 2.5, 0, at);
      return heldSection(analysis, layers, 'bottom', at)?.section.designMomentLbfInPerIn;
    };
    expect(momentAt(8)).toBeCloseTo(1237, -0.5);
    // a = 0.4853; 1650 (1.8125 - 0.2426) = 2590; 0.9 Mn = 2331
    expect(momentAt(24)).toBeCloseTo(2331, -0.5);
  });

  test('in the middle all of it counts', () => {
    expect(holdOf(bars(1.8125, 4), 24).shareRatio).toBe(1);
  });

  test('along the very edge of the slab a bar is measured as along any other line', () => {
    expect(holdOf(bars(1.8125, 4), 24, 0).atHandIn).toBeCloseTo(23, 6);
  });

  test('a hook takes hold in 6 in, and says that it must lie flat where it is taller than the slab', () => {
    // basis 4.14 with side cover short of six bars: 3.43 * 1.25 = 4.29, at least 6 in; 8 bar diameters = 3 in > 2.5 in
    const hold = holdOf(bars(1.8125, 4, { hooked: true }), 8);
    expect(hold.neededIn).toBe(6);
    expect(hold.shareRatio).toBe(1);
    expect(hold.cautions[0]).toContain('lay them flat');
  });

  test('a #4 hook without side cover needs 6.61 in, and closer than six bars together 10.57 in', () => {
    // ACI 318-19 25.4.3.1 and Table 25.4.3.2: psic = 4000 / 15000 + 0.6 = 0.8667, psio 1.25, psir 1 from 6 db on, else 1.6
    // 60000 * 1.25 * 0.8667 * 0.5^1.5 / (55 sqrt(4000)) = 6.607 in
    const hook = { barIn: 0.5, areaIn2: 0.2, hooked: true };
    expect(holdOf(bars(1.75, 3, hook), 24).neededIn).toBeCloseTo(6.607, 2);
    expect(holdOf(bars(1.75, 2.9, hook), 24).neededIn).toBeCloseTo(10.571, 2);
  });

  test('a bar with less cover than its own thickness needs half as much length again', () => {
    // basis 4.13, other cases: 21.35 in
    expect(holdOf(bars(2.2, 4), 24).neededIn).toBeCloseTo(21.35, 2);
  });

  test('bars that lie in a field end where the field ends', () => {
    const field = [
      { xIn: 20, yIn: 0 },
      { xIn: 30, yIn: 0 },
      { xIn: 30, yIn: 18 },
      { xIn: 20, yIn: 18 },
    ];
    expect(holdOf(bars(1.8125, 4, { corners: field }), 24).atHandIn).toBeCloseTo(4, 6);
  });

  test('W2.1 mesh takes hold within two cross wires: 6 in', () => {
    // basis 4.15 in kind: 0.27 * 0.021 / 4 * 65000 / sqrt(4000) = 1.46 in by strength, cross wires at 4 in + 2 in = 6 in
    expect(holdOf(lightMesh(1.25), 24).neededIn).toBe(6);
  });

  test('a wire of mesh is held by the wires that cross it: cross wires at 6 in ask 8 in of the main ones', () => {
    // ACI 318-19 25.4.7.2, from memory: outermost cross wire and one more, spacing + 2 in, at least 6 in
    const steel = { ...lightMesh(1.25), crossSpacingIn: 6 };
    const analysis = analyse(plank({ spanIn: 47.25, thicknessIn: 2.5, steel: [steel] }), { meshSizeIn: 6 });
    const needed = steelLayers(analysis.piece).map(
      (layer) => anchorage(analysis, layer, { xIn: 24, yIn: 9 }).neededIn,
    );
    expect(needed).toEqual([8, 6]);
  });
});
