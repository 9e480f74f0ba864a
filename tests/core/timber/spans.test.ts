import { describe, expect, test } from 'vitest';
import {
  allowablePanelSpan,
  allowableSpan,
  beamExtremes,
  checkBeam,
  designShearLbf,
  PANEL_SPANS,
  PANELS,
  panelBendingSpan,
  panelDeflection,
  panelRatioSpan,
  panelSagSpan,
  panelShearSpan,
  panelValues,
  panelWidthFactor,
  solveBeam,
  spanCountOf,
  timberMember,
  UNIFORM_SPANS,
  uniformShearAtDepth,
} from '../../../src-core/timber';
import { expectWithin } from '../concrete/within';
import { uniformBeam } from './beam-cases';

const LIMITS = { spanLimit: 360, deflectionLimitIn: 1 / 16 };
const JOIST = timberMember({
  species: 'spf',
  size: '2x4',
  use: 'edge',
  service: { durationFactor: 1.25, isWet: false },
  repetition: { members: 6, spacingIn: 16 },
});
const w = 100 / 9;

function joistBeam(spansIn: readonly number[], ends: { leftEndIn?: number; rightEndIn?: number } = {}) {
  return uniformBeam({ spansIn, ...ends, loadLbfPerIn: w, stiffnessLbfIn2: JOIST.stiffnessLbfIn2 });
}

describe('joists and panels of worked slab forms', () => {
  // Temporary-structures lecture notes after ACI SP-4 (seen), 8 in slab, 158 psf: print 22.0, 20.8, 21.2 in and 48 in by shear.
  test('a 3/4 in panel under 158 psf spans 22.0 in by bending, 20.8 in by L/360, 21.2 in by 1/16 in, 48.8 in by shear', () => {
    const EI = 1_500_000 * 0.197;
    expectWithin(panelBendingSpan({ kb: 120, FbS: 1545 * 0.412, w: 158 }).value, 22.0, 2e-3);
    expectWithin(panelRatioSpan({ kp: 1743, EI, n: 360, w: 158 }).value, 20.8, 3e-3);
    expectWithin(panelSagSpan({ kp: 1743, EI, dmax: 1 / 16, w: 158 }).value, 21.2, 3e-3);
    expectWithin(panelShearSpan({ ks: 20, FsIbQ: 57 * 6.762, w: 158 }).value, 48.8, 1e-3);
  });

  // Peurifoy & Oberlender, Formwork for Concrete Structures, slab form of chapter 11: inputs seen, spans recomputed from its formulas
  // 10 Fb S / w (w lbf/in of a foot strip), 1743 EI / 360 w and 1743 EI / 16 w.
  test('a 3/4 in form panel under 150 psf spans 26.5 in by bending, 22.0 in by L/360, 22.1 in by 1/16 in', () => {
    const EI = 1_650_000 * 0.199;
    expectWithin(Math.sqrt((10 * 1930 * 0.455) / (150 / 12)), 26.5, 1e-3);
    expectWithin(panelBendingSpan({ kb: 120, FbS: 1930 * 0.455, w: 150 }).value, 26.5, 1e-3);
    expectWithin(panelRatioSpan({ kp: 1743, EI, n: 360, w: 150 }).value, 21.97, 1e-3);
    expectWithin(panelSagSpan({ kp: 1743, EI, dmax: 1 / 16, w: 150 }).value, 22.1, 1e-3);
    expectWithin(panelShearSpan({ ks: 20, FsIbQ: 72 * 7.187, w: 150 }).value, 69.0, 1e-3);
  });

  test('a panel sags as the continuous beam that a foot of it is', () => {
    for (const [spanCount, kp] of [
      [1, 921.6],
      [2, 2220],
      [3, 1743],
    ] as const) {
      const EI = 115_000;
      const strip = uniformBeam({
        spansIn: new Array<number>(spanCount).fill(16),
        loadLbfPerIn: 100 / 12,
        stiffnessLbfIn2: EI,
      });
      const sag = Math.max(...beamExtremes(solveBeam(strip)).deflections.map((part) => part.deflectionIn));
      expectWithin(panelDeflection({ w: 100, L: 16, kp, EI }).value, sag, 5e-3);
    }
  });
});

describe('panels', () => {
  // A foot of width and psf: w/12 lbf/in, so that kb = 12 km, ks = 12 / kv, kp = 12 kd.
  test.each([1, 2, 3] as const)(
    '%i spans have the coefficients of the beam that a foot of panel is',
    (spanCount) => {
      const [{ kb, ks, kp }, { km, kv, kd }] = [PANEL_SPANS[spanCount], UNIFORM_SPANS[spanCount]];
      expectWithin(kb, 12 * km, 1e-12);
      expectWithin(ks, 12 / kv, 1e-12);
      expectWithin(kp, 12 * kd, 2e-3);
    },
  );

  test('a wet panel keeps three quarters of its strength and 85 % of its stiffness', () => {
    const service = (isWet: boolean) => ({ durationFactor: 1.15, isWet });
    const [dry, wet] = [false, true].map((isWet) =>
      panelValues({ panel: 'span-32-16', service: service(isWet), stripWidthIn: 24 }),
    );
    expectWithin(wet!.bendingLbfInPerFt / dry!.bendingLbfInPerFt, 0.75, 1e-12);
    expectWithin(wet!.shearLbfPerFt / dry!.shearLbfPerFt, 0.75, 1e-12);
    expectWithin(wet!.stiffnessLbfIn2PerFt / dry!.stiffnessLbfIn2PerFt, 0.85, 1e-12);
    expectWithin(dry!.bendingLbfInPerFt, 370 * 1.15, 1e-12);
    expect(dry!.words).toBe('32/16 panel, 15/32 in');
  });

  test('a strip 24 in wide counts whole, 16 in three quarters, 8 in half, and no less', () => {
    expect([30, 24, 16, 8, 4].map((x) => panelWidthFactor({ x }).value)).toEqual([1, 1, 0.75, 0.5, 0.5]);
  });

  test('a better rated panel reaches further', () => {
    const reach = (Object.keys(PANELS) as (keyof typeof PANELS)[]).map(
      (panel) =>
        allowablePanelSpan({
          values: panelValues({
            panel,
            service: { durationFactor: 1.15, isWet: true },
            stripWidthIn: 25.5,
          }),
          loadPsf: 100,
          spanCount: 3,
          limits: LIMITS,
        }).spanIn,
    );
    expect(reach).toEqual([...reach].sort((a, b) => a - b));
    expect(reach[0]!).toBeGreaterThan(12);
  });
});

describe('a member against its beam', () => {
  test.each([1, 2, 3] as const)(
    '%i spans: at its allowable span the check that governs is just used up',
    (spanCount) => {
      const found = allowableSpan({ member: JOIST, loadLbfPerIn: w, spanCount, limits: LIMITS });
      const beam = solveBeam(joistBeam(new Array<number>(spanCount).fill(found.spanIn)));
      const { worst, liftsAt } = checkBeam(beam, JOIST, LIMITS);
      expect(worst.id).toBe('deflection');
      expect(worst.unit).toBe('in');
      expectWithin(worst.ratio, 1, 5e-3);
      expect(liftsAt).toEqual([]);
    },
  );

  test('at the span that bending alone allows, its share of bending is 1', () => {
    const found = allowableSpan({ member: JOIST, loadLbfPerIn: w, spanCount: 3, limits: LIMITS });
    const spanIn = found.limits.find(({ id }) => id === 'bending')!.spanIn;
    const { checks } = checkBeam(solveBeam(joistBeam([spanIn, spanIn, spanIn])), JOIST, LIMITS);
    expectWithin(checks[0].ratio, 1, 1e-9);
    expectWithin(checks[0].capacity, JOIST.momentLbfIn, 1e-12);
    expect(checks[0].lines[0]!.label).toBe('largest moment, over a support');
  });

  // NDS 2018 3.4.3.1(a)(1).
  test('uniform load within a depth of the support is left out: kv w L - w d', () => {
    for (const [spansIn, kv] of [
      [[48], 0.5],
      [[48, 48], 0.625],
      [[48, 48, 48], 0.6],
    ] as const) {
      const expected = uniformShearAtDepth({ kv, w, L: 48, d: 3.5 }).value;
      expectWithin(designShearLbf(solveBeam(joistBeam(spansIn)), 3.5), expected, 1e-9);
    }
  });

  // NDS 2018 3.4.3.1(a)(2): P x / d; 1000 x 1.75 / 3.5 = 500, of which (48 - 1.75) / 48 goes to the near support: 481.8.
  test('a point load half a depth from the support counts half: 481.8 lbf of 1000', () => {
    const with1000At = (atIn: number) =>
      designShearLbf(solveBeam({ ...joistBeam([48]), uniform: [], points: [{ atIn, loadLbf: 1000 }] }), 3.5);
    expectWithin(with1000At(1.75), 481.77, 1e-4);
    expectWithin(with1000At(48 - 1.75), 481.77, 1e-4);
    expectWithin(with1000At(3.5), (1000 * 44.5) / 48, 1e-9);
    expectWithin(with1000At(10), (1000 * 38) / 48, 1e-9);
    expect(with1000At(0)).toBeLessThan(1e-9);
  });

  test('an overhanging end shears w (a - d), and not at all where it is shorter than the depth', () => {
    const end = (leftEndIn: number) =>
      designShearLbf(
        solveBeam({
          ...joistBeam([48], { leftEndIn }),
          uniform: [{ fromIn: 0, toIn: leftEndIn, loadLbfPerIn: w }],
        }),
        3.5,
      );
    expectWithin(end(20), w * 16.5, 1e-9);
    // Only the pull back to the far support is left: w a^2 / 2 L.
    expectWithin(end(3), (w * 9) / (2 * 48), 1e-9);
  });

  test('a tip may sag as half a span twice its length', () => {
    const { checks } = checkBeam(solveBeam(joistBeam([20], { rightEndIn: 18 })), JOIST, LIMITS);
    expect(checks[2].atIn).toBe(38);
    expectWithin(checks[2].capacity, 1 / 16, 1e-12);
    const short = checkBeam(solveBeam(joistBeam([8], { rightEndIn: 9 })), JOIST, LIMITS);
    expectWithin(short.checks[2].capacity, 18 / 360, 1e-12);
  });

  test('an end longer than the span behind it lifts the far support', () => {
    expect(checkBeam(solveBeam(joistBeam([20], { rightEndIn: 22 })), JOIST, LIMITS).liftsAt).toEqual([0]);
    expect(checkBeam(solveBeam(joistBeam([20], { rightEndIn: 18 })), JOIST, LIMITS).liftsAt).toEqual([]);
  });

  test('one span counts as one, four as three, and none is no member', () => {
    expect([1, 2, 3, 7].map(spanCountOf)).toEqual([1, 2, 3, 3]);
    expect(() => spanCountOf(0)).toThrow(/at least one span/);
  });
});
