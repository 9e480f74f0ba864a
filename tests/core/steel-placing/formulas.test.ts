import { describe, expect, test } from 'vitest';
import { STEEL_LB_PER_IN3 } from '../../../src-core/steel-placing';
import {
  HOOK_HEIGHT_BARS,
  hookAllowance,
  meshMass,
  roundSteelMass,
} from '../../../src-core/steel-placing/formulas';
import { ownSag, placingSag, placingStress } from '../../../src-core/steel-placing/sag';
import { lastDigit, recompute, recomputeTolerance } from '../../support/recompute';
import { BARS, box, caseOf, LIGHT_MESH, placed } from './cases';

describe('weights', () => {
  test('steel weighs 490 lb/ft3 (ASTM A615 and A1064 weights)', () => {
    expect(STEEL_LB_PER_IN3 * 1728).toBeCloseTo(490, 0);
  });

  // ASTM A615 Table 1: nominal weights, lb/ft
  test.each([
    ['#3', 0.375, 0.376],
    ['#4', 0.5, 0.668],
    ['#5', 0.625, 1.043],
    ['#6', 0.75, 1.502],
  ])('a foot of %s weighs its nominal weight', (_, db, lbPerFt) => {
    const massLb = roundSteelMass.compute({ rho: STEEL_LB_PER_IN3, db, L: 12 });
    expect(Math.abs(massLb - lbPerFt)).toBeLessThan(0.0025 * lbPerFt);
  });

  test('100 ft2 of 6 x 6 W2.9 mesh is 400 ft of wire of .029 in2: 39.5 lb (ASTM A1064 area, worked by hand)', () => {
    const inputs = { rho: STEEL_LB_PER_IN3, d1: 0.1922, s1: 6, d2: 0.1922, s2: 6 };
    expect(meshMass.compute(inputs) * 14_400).toBeCloseTo(400 * 12 * 0.029 * 0.2836, 1);
  });

  test('mesh of unlike wires counts each way by its own spacing', () => {
    const inputs = { rho: STEEL_LB_PER_IN3, d1: 0.2, s1: 4, d2: 0.1, s2: 8 };
    // an 8 x 8 in square holds two wires of .2 and one of .1
    const byHand = (0.2836 * Math.PI * (2 * 0.04 + 0.01) * 8) / 4;
    expect(meshMass.compute(inputs) * 64).toBeCloseTo(byHand, 12);
  });
});

describe('hooks', () => {
  test('a 90 degree hook stands 6 in over a #3 and 8 in over a #4 (CRSI Manual of Standard Practice, from memory)', () => {
    expect(HOOK_HEIGHT_BARS * 0.375).toBe(6);
    expect(HOOK_HEIGHT_BARS * 0.5).toBe(8);
  });

  test('its length is that height less what the bend saves: 16 - (8 - 5.498) = 13.498 diameters', () => {
    const bendSaves = 2 * 4 - (Math.PI / 2) * 3.5;
    expect(hookAllowance.compute({ db: 0.375 })).toBeCloseTo((16 - bendSaves) * 0.375, 12);
    expect(hookAllowance.compute({ db: 0.375 })).toBeCloseTo(5.062, 3);
  });
});

/** Moments over the inner supports of equal spans by the three-moment equation, solved by elimination. */
function supportMoments(
  spans: number,
  L: number,
  terms: (span: number) => readonly [number, number],
): number[] {
  const n = spans - 1;
  const diagonal = Array.from({ length: n }, () => 4 * L);
  const right = Array.from({ length: n }, (_, k) => -(terms(k)[1] + terms(k + 1)[0]));
  for (let k = 1; k < n; k++) {
    const ratio = L / diagonal[k - 1]!;
    diagonal[k]! -= ratio * L;
    right[k]! -= ratio * right[k - 1]!;
  }
  const moments = Array.from({ length: n }, () => 0);
  for (let k = n - 1; k >= 0; k--) moments[k] = (right[k]! - L * (moments[k + 1] ?? 0)) / diagonal[k]!;
  return [0, ...moments, 0];
}

describe('sag of a wire over many spans', () => {
  const [L, E, I] = [10, 29e6, 2e-6];

  test('with one of 21 spans loaded in its middle agrees with the three-moment equation', () => {
    const P = 5;
    // 6 A x / L of a point load in the middle of a span is 3 P L^2 / 8
    const moments = supportMoments(21, L, (span) =>
      span === 10 ? [(3 * P * L * L) / 8, (3 * P * L * L) / 8] : [0, 0],
    );
    const [left, right] = [moments[10]!, moments[11]!];
    const byHand = (P * L ** 3) / (48 * E * I) + ((left + right) * L ** 2) / (16 * E * I);
    const formula = placingSag.compute({ P, L, E, n1: 1, I1: I, n2: 0, I2: I });
    expect(formula).toBeCloseTo(byHand, 9);
    const middle = (P * L) / 4 + (left + right) / 2;
    const d = 0.08;
    expect(placingStress.compute({ P, L, d, n1: 1, I1: I, n2: 0, I2: I })).toBeCloseTo(
      (middle * d) / 2 / I,
      4,
    );
  });

  test('under its own weight in every span agrees with the three-moment equation', () => {
    const w = 0.003;
    // 6 A x / L of an even load is w L^3 / 4
    const moments = supportMoments(21, L, () => [(w * L ** 3) / 4, (w * L ** 3) / 4]);
    const byHand = (5 * w * L ** 4) / (384 * E * I) + ((moments[10]! + moments[11]!) * L ** 2) / (16 * E * I);
    expect(ownSag.compute({ w, L, E, I })).toBeCloseTo(byHand, 7);
  });
});

test('every line of the workings can be worked again from its printed numbers', () => {
  const job = caseOf(box(300, 25.5), {
    reinforcement: [LIGHT_MESH, { ...BARS, hooked: true, depthIn: 0.72 }],
  });
  const { meshes, bars, sags } = placed(job);
  const lines = [...meshes, ...bars, ...sags].flatMap(({ workings }) => workings);
  expect(lines.length).toBeGreaterThan(15);
  for (const line of lines) {
    expect(Math.abs(recompute(line) - Number(line.result)), line.label).toBeLessThanOrEqual(
      Math.max(recomputeTolerance(line), lastDigit(line.result)),
    );
  }
});
