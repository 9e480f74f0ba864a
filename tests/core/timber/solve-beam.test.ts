import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BeamInput,
  beamAt,
  beamExtremes,
  beamStations,
  bothEndsMidDeflection,
  bothEndsSpanMoment,
  bothEndsTipDeflection,
  endMoment,
  oneEndFarReaction,
  oneEndNearReaction,
  oneEndSpanMoment,
  oneEndTipDeflection,
  solveBeam,
  UNIFORM_SPANS,
} from '../../../src-core/timber';
import { expectWithin } from '../concrete/within';
import { mirrored, totals, uniformBeam } from './beam-cases';

const w = 11.11;
const L = 48;
const EI = 7.5e6;
const EXACT = 1e-9;
const even = (count: number) =>
  uniformBeam({ spansIn: new Array(count).fill(L), loadLbfPerIn: w, stiffnessLbfIn2: EI });
const reactionsOf = (input: BeamInput) => solveBeam(input).supports.map(({ reactionLbf }) => reactionLbf);
const momentsOf = (input: BeamInput) => solveBeam(input).supports.map(({ momentLbfIn }) => momentLbfIn);

describe('equal spans under a uniform load, from any beam table', () => {
  test('one span: w L / 2, w L^2 / 8, 5 w L^4 / 384 EI in the middle', () => {
    const beam = solveBeam(even(1));
    const extremes = beamExtremes(beam);
    expectWithin(beam.supports[0]!.reactionLbf, (w * L) / 2, EXACT);
    expectWithin(extremes.sagging.momentLbfIn, (w * L ** 2) / 8, EXACT);
    expectWithin(extremes.deflections[0]!.deflectionIn, (5 * w * L ** 4) / (384 * EI), EXACT);
    expectWithin(extremes.deflections[0]!.atIn, L / 2, EXACT);
    expect(extremes.hogging.momentLbfIn).toBe(0);
  });

  test('two spans: 3/8, 10/8, 3/8 of w L, w L^2 / 8 over the middle, 9/128 w L^2 in the span', () => {
    const beam = solveBeam(even(2));
    const shares = reactionsOf(even(2)).map((reaction) => reaction / (w * L));
    for (const [i, share] of [0.375, 1.25, 0.375].entries()) expectWithin(shares[i]!, share, EXACT);
    const extremes = beamExtremes(beam);
    expectWithin(-extremes.hogging.momentLbfIn, (w * L ** 2) / 8, EXACT);
    expectWithin(extremes.sagging.momentLbfIn, (9 * w * L ** 2) / 128, EXACT);
    // w x (L^3 - 3 L x^2 + 2 x^3) / 48 EI at x = (1 + sqrt 33) L / 16
    const x = ((1 + Math.sqrt(33)) * L) / 16;
    const sag = (w * x * (L ** 3 - 3 * L * x ** 2 + 2 * x ** 3)) / (48 * EI);
    expectWithin(extremes.deflections[0]!.deflectionIn, sag, EXACT);
    expectWithin(extremes.deflections[0]!.atIn, x, 1e-7);
    expectWithin(extremes.deflections[1]!.deflectionIn, sag, EXACT);
  });

  test('three spans: .4 and 1.1 w L, .1 w L^2 over the supports, .08 and .025 between', () => {
    const shares = reactionsOf(even(3)).map((reaction) => reaction / (w * L));
    for (const [i, share] of [0.4, 1.1, 1.1, 0.4].entries()) expectWithin(shares[i]!, share, EXACT);
    const beam = solveBeam(even(3));
    const extremes = beamExtremes(beam);
    expectWithin(-extremes.hogging.momentLbfIn, 0.1 * w * L ** 2, EXACT);
    expectWithin(extremes.sagging.momentLbfIn, 0.08 * w * L ** 2, EXACT);
    expectWithin(beamAt(beam, 1.5 * L).momentLbfIn, 0.025 * w * L ** 2, EXACT);
    expectWithin(beamAt(beam, 1.5 * L).deflectionIn, ((5 / 384 - 1 / 80) * w * L ** 4) / EI, EXACT);
    expectWithin(extremes.shearLbf, 0.6 * w * L, EXACT);
  });

  test('four spans: 11, 32, 26, 32, 11 of w L / 28, hogging 3 and 2 of w L^2 / 28', () => {
    const shares = reactionsOf(even(4)).map((reaction) => (28 * reaction) / (w * L));
    for (const [i, share] of [11, 32, 26, 32, 11].entries()) expectWithin(shares[i]!, share, EXACT);
    const hogs = momentsOf(even(4)).map((moment) => (-28 * moment) / (w * L ** 2));
    for (const [i, hog] of [3, 2, 3].entries()) expectWithin(hogs[i + 1]!, hog, EXACT);
  });

  test.each([1, 2, 3] as const)('%i: the rounded closed forms lie within half a per cent', (count) => {
    const beam = solveBeam(even(count));
    const { sagging, hogging, shearLbf, deflections } = beamExtremes(beam);
    const { km, kv, kd, kr } = UNIFORM_SPANS[count];
    const largest = Math.max(sagging.momentLbfIn, -hogging.momentLbfIn);
    expectWithin((w * L ** 2) / km, largest, 1e-9);
    expectWithin(kv * w * L, shearLbf, 1e-9);
    const sag = Math.max(...deflections.map(({ deflectionIn }) => deflectionIn));
    expectWithin((w * L ** 4) / (kd * EI), sag, 5e-3);
    expectWithin(kr * w * L, Math.max(...reactionsOf(even(count))), 1e-9);
  });

  // Basis 10.7 to 10.10, derived there by three moments; 0.2 %.
  test.each([
    ['10.7', [1, 1, 1, 1], 0.1071, 0.0772, 1.143],
    ['10.8', [1, 2, 1], 0.2813, 0.2188, 1.781],
    ['10.9', [2, 1, 1], 0.3696, 0.3323, 2.022],
    ['10.10', [2, 2], 0.5, 0.2813, 2.5],
  ] as const)(
    '%s: bays %j hog %d, sag %d w L^2 and load a support with %d w L',
    (_, bays, hog, sag, peak) => {
      const input = uniformBeam({
        spansIn: bays.map((bay) => bay * L),
        loadLbfPerIn: w,
        stiffnessLbfIn2: EI,
      });
      const { sagging, hogging } = beamExtremes(solveBeam(input));
      expectWithin(-hogging.momentLbfIn / (w * L ** 2), hog, 2e-3);
      expectWithin(sagging.momentLbfIn / (w * L ** 2), sag, 2e-3);
      expectWithin(Math.max(...reactionsOf(input)) / (w * L), peak, 2e-3);
    },
  );
});

describe('overhanging ends, from any beam table', () => {
  const a = 14;

  test('one end: reactions, both moments and the tip', () => {
    const input = uniformBeam({ spansIn: [L], rightEndIn: a, loadLbfPerIn: w, stiffnessLbfIn2: EI });
    const beam = solveBeam(input);
    const extremes = beamExtremes(beam);
    expectWithin(beam.supports[0]!.reactionLbf, oneEndFarReaction({ w, L, a }).value, EXACT);
    expectWithin(beam.supports[1]!.reactionLbf, oneEndNearReaction({ w, L, a }).value, EXACT);
    expectWithin(extremes.sagging.momentLbfIn, oneEndSpanMoment({ w, L, a }).value, EXACT);
    expectWithin(-extremes.hogging.momentLbfIn, endMoment({ w, a }).value, EXACT);
    expectWithin(beamAt(beam, L + a).deflectionIn, oneEndTipDeflection({ w, L, a, EI }).value, EXACT);
  });

  test('both ends: the middle and the tips', () => {
    const input = uniformBeam({
      spansIn: [L],
      leftEndIn: a,
      rightEndIn: a,
      loadLbfPerIn: w,
      stiffnessLbfIn2: EI,
    });
    const beam = solveBeam(input);
    const middle = beamAt(beam, a + L / 2);
    expectWithin(middle.momentLbfIn, bothEndsSpanMoment({ w, L, a }).value, EXACT);
    expectWithin(middle.deflectionIn, bothEndsMidDeflection({ w, L, a, EI }).value, EXACT);
    for (const tip of [0, 2 * a + L]) {
      expectWithin(beamAt(beam, tip).deflectionIn, bothEndsTipDeflection({ w, L, a, EI }).value, EXACT);
    }
  });

  test('a load on the tip lifts the far support by P a / L and sinks the tip by P a^2 (L + a) / 3 EI', () => {
    const beam = solveBeam({
      leftEndIn: 0,
      spans: [{ lengthIn: L, stiffnessLbfIn2: EI }],
      rightEndIn: a,
      uniform: [],
      points: [{ atIn: L + a, loadLbf: 250 }],
    });
    expectWithin(beam.supports[0]!.reactionLbf, (-250 * a) / L, EXACT);
    expectWithin(beamAt(beam, L + a).deflectionIn, (250 * a ** 2 * (L + a)) / (3 * EI), EXACT);
    // Between the supports it rises by P a L^2 / (9 sqrt 3 EI).
    const span = beamExtremes(beam).deflections[0]!;
    expectWithin(-span.deflectionIn, (250 * a * L ** 2) / (9 * Math.sqrt(3) * EI), EXACT);
  });
});

describe('other loads and stiffnesses', () => {
  test('a point load b from one end sags P b (L^2 - b^2)^1.5 / (9 sqrt 3 L EI)', () => {
    const b = 17;
    const beam = solveBeam({
      leftEndIn: 0,
      spans: [{ lengthIn: L, stiffnessLbfIn2: EI }],
      rightEndIn: 0,
      uniform: [],
      points: [{ atIn: L - b, loadLbf: 300 }],
    });
    const { sagging, deflections } = beamExtremes(beam);
    expectWithin(sagging.momentLbfIn, (300 * b * (L - b)) / L, EXACT);
    const sag = (300 * b * (L ** 2 - b ** 2) ** 1.5) / (9 * Math.sqrt(3) * L * EI);
    expectWithin(deflections[0]!.deflectionIn, sag, EXACT);
  });

  test('a load on the left half: 3/8 and 1/8 of w L, 9/128 w L^2 at 3/8 of the span', () => {
    const beam = solveBeam({
      leftEndIn: 0,
      spans: [{ lengthIn: L, stiffnessLbfIn2: EI }],
      rightEndIn: 0,
      uniform: [{ fromIn: 0, toIn: L / 2, loadLbfPerIn: w }],
      points: [],
    });
    expectWithin(beam.supports[0]!.reactionLbf, (3 * w * L) / 8, EXACT);
    expectWithin(beam.supports[1]!.reactionLbf, (w * L) / 8, EXACT);
    const { sagging } = beamExtremes(beam);
    expectWithin(sagging.momentLbfIn, (9 * w * L ** 2) / 128, EXACT);
    expectWithin(sagging.atIn, (3 * L) / 8, EXACT);
  });

  test('two unequal spans of unequal stiffness hog by the three-moment equation', () => {
    const [l1, l2, e1, e2] = [30, 52, 4e6, 9e6];
    const input: BeamInput = {
      leftEndIn: 0,
      spans: [
        { lengthIn: l1, stiffnessLbfIn2: e1 },
        { lengthIn: l2, stiffnessLbfIn2: e2 },
      ],
      rightEndIn: 0,
      uniform: [{ fromIn: 0, toIn: l1 + l2, loadLbfPerIn: w }],
      points: [],
    };
    const hog = (w * (l1 ** 3 / e1 + l2 ** 3 / e2)) / (8 * (l1 / e1 + l2 / e2));
    expectWithin(-momentsOf(input)[1]!, hog, EXACT);
  });

  test('a point load on a support goes straight into it', () => {
    const input = { ...even(2), uniform: [], points: [{ atIn: L, loadLbf: 400 }] };
    const [first, second, third] = reactionsOf(input) as [number, number, number];
    expect([first, second, third].map((r) => r.toFixed(9))).toEqual([
      '0.000000000',
      '400.000000000',
      '0.000000000',
    ]);
    expect(beamExtremes(solveBeam(input)).shearLbf).toBeLessThan(1e-9);
  });

  test('a beam without a span, without stiffness or with a load off it is refused', () => {
    expect(() => solveBeam({ ...even(1), spans: [] })).toThrow(/at least one span/);
    expect(() => solveBeam({ ...even(1), spans: [{ lengthIn: L, stiffnessLbfIn2: 0 }] })).toThrow(/stiff/);
    expect(() => solveBeam({ ...even(1), points: [{ atIn: L + 1, loadLbf: 1 }] })).toThrow(/off a beam/);
    expect(() => solveBeam({ ...even(1), leftEndIn: -1 })).toThrow(/Ends of a beam/);
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const beams = fc
  .record({
    leftEndIn: fc.oneof(fc.constant(0), number(1, 20)),
    rightEndIn: fc.oneof(fc.constant(0), number(1, 20)),
    spans: fc.array(fc.record({ lengthIn: number(8, 80), stiffnessLbfIn2: number(1e6, 4e7) }), {
      minLength: 1,
      maxLength: 6,
    }),
    uniform: fc.array(fc.tuple(number(0, 1), number(0, 1), number(-10, 30)), { maxLength: 4 }),
    points: fc.array(fc.tuple(number(0, 1), number(-200, 400)), { maxLength: 4 }),
  })
  .map(({ uniform, points, ...shape }): BeamInput => {
    const lengthIn =
      shape.leftEndIn + shape.rightEndIn + shape.spans.reduce((sum, span) => sum + span.lengthIn, 0);
    return {
      ...shape,
      uniform: uniform.map(([a, b, loadLbfPerIn]) => ({
        fromIn: Math.min(a, b) * lengthIn,
        toIn: Math.max(a, b) * lengthIn,
        loadLbfPerIn,
      })),
      points: points.map(([share, loadLbf]) => ({ atIn: share * lengthIn, loadLbf })),
    };
  });

/** Sizes of a beam's loads, moments and deflections, against which differences are small or not. */
function scaleOf(input: BeamInput) {
  const beam = solveBeam(input);
  const loadLbf =
    1 +
    input.uniform.reduce((sum, u) => sum + Math.abs(u.loadLbfPerIn) * (u.toIn - u.fromIn), 0) +
    input.points.reduce((sum, p) => sum + Math.abs(p.loadLbf), 0);
  const softest = Math.min(...input.spans.map(({ stiffnessLbfIn2 }) => stiffnessLbfIn2));
  return {
    beam,
    loadLbf,
    momentLbfIn: loadLbf * beam.lengthIn,
    deflectionIn: (loadLbf * beam.lengthIn ** 3) / softest,
  };
}

describe('any beam', () => {
  test('is in balance, rests on its supports and is smooth over them', () => {
    fc.assert(
      fc.property(beams, (input) => {
        const { beam, loadLbf, momentLbfIn, deflectionIn } = scaleOf(input);
        const all = totals(input);
        const up = beam.supports.reduce((sum, s) => sum + s.reactionLbf, 0);
        const about = beam.supports.reduce((sum, s) => sum + s.reactionLbf * s.atIn, 0);
        expect(Math.abs(up - all.loadLbf)).toBeLessThan(1e-9 * loadLbf);
        expect(Math.abs(about - all.momentLbfIn)).toBeLessThan(1e-9 * momentLbfIn);
        for (const { atIn, momentLbfIn: over } of beam.supports) {
          const state = beamAt(beam, atIn);
          expect(Math.abs(state.deflectionIn)).toBeLessThan(1e-9 * deflectionIn);
          expect(Math.abs(state.momentLbfIn - over)).toBeLessThan(1e-9 * momentLbfIn);
        }
        for (let i = 0; i + 1 < beam.parts.length; i++) {
          const before = beamAt(beam, beam.parts[i + 1]!.fromIn).slopeRatio;
          expect(Math.abs(before - beam.parts[i + 1]!.slopeRatio)).toBeLessThan(
            (1e-9 * deflectionIn) / beam.lengthIn,
          );
        }
        const tips = [beamAt(beam, 0), beamAt(beam, beam.lengthIn)];
        for (const { momentLbfIn: tip } of tips) expect(Math.abs(tip)).toBeLessThan(1e-9 * momentLbfIn);
      }),
    );
  });

  test('curves as M / EI and its moment rises as its shear, away from its loads', () => {
    fc.assert(
      fc.property(beams, number(0.05, 0.95), fc.nat(7), (input, share, nth) => {
        const { beam, loadLbf } = scaleOf({ ...input, points: [] });
        const part = beam.parts[nth % beam.parts.length]!;
        const x = part.fromIn + share * part.lengthIn;
        const h = part.lengthIn * 0.01;
        const [low, here, high] = [beamAt(beam, x - h), beamAt(beam, x), beamAt(beam, x + h)];
        const rise = (high.momentLbfIn - low.momentLbfIn) / (2 * h);
        const curve = (high.slopeRatio - low.slopeRatio) / (2 * h);
        expect(Math.abs(rise - here.shearAfterLbf)).toBeLessThan(0.02 * loadLbf);
        expect(Math.abs(curve * part.stiffnessLbfIn2 + here.momentLbfIn)).toBeLessThan(
          0.02 * loadLbf * part.lengthIn,
        );
        const fall = (high.deflectionIn - low.deflectionIn) / (2 * h);
        expect(Math.abs(fall - here.slopeRatio) * part.stiffnessLbfIn2).toBeLessThan(
          0.02 * loadLbf * beam.lengthIn ** 2,
        );
      }),
    );
  });

  test('seen from the other side is the same beam', () => {
    fc.assert(
      fc.property(beams, number(0, 1), (input, share) => {
        const { beam, loadLbf, momentLbfIn, deflectionIn } = scaleOf(input);
        const other = solveBeam(mirrored(input));
        const back = [...other.supports].reverse();
        for (const [i, support] of beam.supports.entries()) {
          expect(Math.abs(support.reactionLbf - back[i]!.reactionLbf)).toBeLessThan(1e-8 * loadLbf);
        }
        const [here, there] = [
          beamAt(beam, share * beam.lengthIn),
          beamAt(other, (1 - share) * beam.lengthIn),
        ];
        expect(Math.abs(here.momentLbfIn - there.momentLbfIn)).toBeLessThan(1e-8 * momentLbfIn);
        expect(Math.abs(here.deflectionIn - there.deflectionIn)).toBeLessThan(1e-8 * deflectionIn);
      }),
    );
  });

  test('under two loads at once is the sum of both', () => {
    fc.assert(
      fc.property(beams, number(0, 1), (input, share) => {
        const { beam, momentLbfIn, deflectionIn } = scaleOf(input);
        const at = share * beam.lengthIn;
        const alone = [
          beamAt(solveBeam({ ...input, points: [] }), at),
          beamAt(solveBeam({ ...input, uniform: [] }), at),
        ] as const;
        const both = beamAt(beam, at);
        const moment = alone[0].momentLbfIn + alone[1].momentLbfIn;
        const sag = alone[0].deflectionIn + alone[1].deflectionIn;
        expect(Math.abs(both.momentLbfIn - moment)).toBeLessThan(1e-9 * momentLbfIn);
        expect(Math.abs(both.deflectionIn - sag)).toBeLessThan(1e-9 * deflectionIn);
      }),
    );
  });

  test('is nowhere worse than its extremes say', () => {
    fc.assert(
      fc.property(beams, (input) => {
        const { beam, loadLbf, momentLbfIn, deflectionIn } = scaleOf(input);
        const { sagging, hogging, shearLbf, deflections } = beamExtremes(beam);
        const largest = Math.max(...deflections.map((part) => Math.abs(part.deflectionIn)));
        for (const state of beamStations(beam, 40)) {
          expect(state.momentLbfIn).toBeLessThanOrEqual(sagging.momentLbfIn + 1e-9 * momentLbfIn);
          expect(state.momentLbfIn).toBeGreaterThanOrEqual(hogging.momentLbfIn - 1e-9 * momentLbfIn);
          expect(Math.abs(state.shearAfterLbf)).toBeLessThanOrEqual(shearLbf + 1e-9 * loadLbf);
          expect(Math.abs(state.deflectionIn)).toBeLessThanOrEqual(largest + 1e-9 * deflectionIn);
        }
        expect(beamAt(beam, sagging.atIn).momentLbfIn).toBeCloseTo(sagging.momentLbfIn, 3);
      }),
    );
  });
});
