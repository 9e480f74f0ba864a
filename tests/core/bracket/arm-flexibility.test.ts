import { describe, expect, test } from 'vitest';
import { armFlexibility, armProperties, fixingMoment, kneeBraceForces } from '../../../src-core/bracket';
import type { ArmSection, BracketSupport } from '../../../src-core/job';
import { ANGLE, apart, BRACE, bracketOf, FLAT, LAGS, TEE, TUBE } from './samples';

function flexibility(bracket: BracketSupport, bound: 'low' | 'high', ...positionsIn: number[]): Float64Array {
  return armFlexibility({ bracket, bound, positionsIn });
}

/** Smallest pivot of a Cholesky factorisation, over the largest diagonal; negative for an indefinite matrix. */
function smallestPivot(matrix: Float64Array, count: number): number {
  const work = Float64Array.from(matrix);
  const scale = Math.max(...Array.from({ length: count }, (_, i) => matrix[i * count + i] ?? 0));
  let smallest = Number.POSITIVE_INFINITY;
  for (let k = 0; k < count; k += 1) {
    const pivot = work[k * count + k] ?? 0;
    smallest = Math.min(smallest, pivot / scale);
    for (let i = k + 1; i < count; i += 1) {
      for (let j = k + 1; j < count; j += 1) {
        work[i * count + j]! -= (work[i * count + k]! * work[k * count + j]!) / pivot;
      }
    }
  }
  return smallest;
}

describe('flexibility of a rigidly fixed arm', () => {
  // basis 7.1
  test('a flat bar 2 x 1/2 sinks .0552 in under 100 lb at 10 in', () => {
    expect(apart(100 * flexibility(bracketOf({ arm: FLAT }), 'high', 10)[0]!, 0.0552)).toBeLessThan(3e-3);
  });

  // basis 7.2
  test('a 1-1/2 tube sinks .01357 in under 250 lb at 10 in, at 8851 psi', () => {
    expect(apart(250 * flexibility(bracketOf(), 'high', 10)[0]!, 0.01357)).toBeLessThan(3e-3);
    expect(apart(2500 / armProperties(TUBE).tensionModulusIn3, 8851)).toBeLessThan(3e-3);
  });

  // basis 7.8: slab strip 24 x 2 in, 10 in out, Ec 3.605e6: 3 x 3.605e6 x 16 / 1000 = 173.0 kip/in.
  test('the tube takes 9.6 % of a tip load beside a clamped slab strip of 173.0 kip/in', () => {
    const slabLbfPerIn = (3 * 3.605e6 * ((24 * 8) / 12)) / 1000;
    const tubeLbfPerIn = 1 / flexibility(bracketOf(), 'high', 10)[0]!;
    expect(apart(slabLbfPerIn, 173_000)).toBeLessThan(5e-3);
    expect(apart(tubeLbfPerIn, 18_430)).toBeLessThan(5e-3);
    expect(apart(tubeLbfPerIn / (tubeLbfPerIn + slabLbfPerIn), 0.0963)).toBeLessThan(5e-3);
  });

  // Any beam table: cantilever with a load at midspan, tip deflection 5PL^3/48EI.
  test('a load at the middle of the arm sinks its tip by 5PL^3/48EI, and the other way round', () => {
    const matrix = flexibility(bracketOf(), 'high', 5, 10);
    const expected = (5 * 1000) / (48 * 29e6 * armProperties(TUBE).inertiaIn4);
    expect(apart(matrix[1]!, expected)).toBeLessThan(1e-12);
    expect(matrix[2]).toBe(matrix[1]);
  });

  // Any beam table: cantilever under uniform load, tip deflection wL^4/8EI.
  test('four hundred small loads along the arm sink its tip as a uniform load does, wL^4/8EI', () => {
    const positionsIn = [...Array.from({ length: 400 }, (_, i) => ((i + 0.5) * 10) / 400), 10];
    const matrix = armFlexibility({ bracket: bracketOf(), bound: 'high', positionsIn });
    const tipRow = matrix.subarray(400 * 401, 400 * 401 + 400);
    const tipIn = tipRow.reduce((sum, each) => sum + each * (10 / 400), 0);
    expect(apart(tipIn, 10 ** 4 / (8 * 29e6 * armProperties(TUBE).inertiaIn4))).toBeLessThan(1e-5);
  });

  test('nothing sinks at the wall face', () => {
    expect([...flexibility(bracketOf(), 'low', 0, 5)].slice(0, 3)).toEqual([0, 0, 0]);
  });

  test('a place beyond the tip or behind the wall is refused as a bug', () => {
    expect(() => flexibility(bracketOf(), 'high', 10.5)).toThrow('10.5');
    expect(() => flexibility(bracketOf(), 'high', -1)).toThrow('-1');
    expect(() => flexibility(bracketOf(), 'high', Number.NaN)).toThrow('NaN');
  });
});

describe('flexibility with a fixing that gives', () => {
  // By hand: 1 degree is .0174533; at the rated moment M from a load M/10 at 10 in, the tip sinks by 10 x .0174533 more.
  test('under its rated moment the fixing turns 1 degree, .1745 in at the tip of a 10 in arm', () => {
    const bracket = bracketOf();
    const loadLbf = fixingMoment(bracket).ratedLbfIn / 10;
    const more = flexibility(bracket, 'low', 10)[0]! - flexibility(bracket, 'high', 10)[0]!;
    expect(loadLbf * more).toBeCloseTo((10 * Math.PI) / 180, 6);
  });

  // By hand: 1800 x .42^1.5 x .375^.75 = 234.8 lb/in; x 2.5 in = 587 lb; lever 9 - .5 = 8.5 in -> 4989 lb-in with one lag.
  // Two would pull with 1174 lb, but the toe presses no more than 425 x 1.375 x 1.5 = 876.6 lb into spruce: 7451 lb-in.
  test('the rated moment is the lesser of top row and toe: 4989 lb-in with one lag, 7451 with two', () => {
    expect(apart(fixingMoment(bracketOf()).ratedLbfIn, 7451)).toBeLessThan(1e-3);
    const one = bracketOf({ fixing: { ...LAGS, topCount: 1 } });
    expect(apart(fixingMoment(one).ratedLbfIn, 4989)).toBeLessThan(1e-3);
  });

  // The flat bar itself is good for 2695 lb-in only (basis 7.1); it bends, its fixing does not turn the further for it.
  test('a slender arm does not make its fixing turn further', () => {
    expect(fixingMoment(bracketOf({ arm: FLAT })).ratedLbfIn).toBe(fixingMoment(bracketOf()).ratedLbfIn);
  });

  test('an entered rating of 300 lb at 12 in is a rated moment of 3600 lb-in', () => {
    const rated = bracketOf({
      fixing: { kind: 'rated', ratedLoadLbf: 300, ratedAtIn: 12, ratedBy: 'maker' },
    });
    expect(fixingMoment(rated).ratedLbfIn).toBe(3600);
  });

  test('a fixing worth nothing gives a very soft bracket, not an infinite one', () => {
    const none = bracketOf({ fixing: { kind: 'rated', ratedLoadLbf: 0, ratedAtIn: 12, ratedBy: 'maker' } });
    expect(Number.isFinite(flexibility(none, 'low', 10)[0]!)).toBe(true);
  });

  test('an angle free to move sideways is softer in the low bound by its own section alone', () => {
    const bracket = bracketOf({ arm: ANGLE });
    const M = fixingMoment(bracket).ratedLbfIn;
    const own = flexibility(bracket, 'low', 10)[0]! - (100 * Math.PI) / 180 / M;
    const held = flexibility(bracket, 'high', 10)[0]!;
    const section = armProperties(ANGLE);
    expect(apart(held / own, section.freeInertiaIn4 / section.inertiaIn4)).toBeLessThan(1e-5);
  });
});

describe('flexibility of any arm', () => {
  const arms: readonly ArmSection[] = [TUBE, FLAT, ANGLE, TEE, BRACE];
  const cases = arms.flatMap((arm) =>
    (['low', 'high'] as const).map((bound) => [arm.kind, bound, arm] as const),
  );

  test.each(cases)('%s, %s bound: symmetric and positive definite at six places', (_, bound, arm) => {
    const positionsIn = [1, 2.5, 4, 6, 8.5, 10];
    const matrix = armFlexibility({ bracket: bracketOf({ arm }), bound, positionsIn });
    for (let i = 0; i < 6; i += 1) {
      for (let j = 0; j < 6; j += 1) expect(matrix[i * 6 + j]).toBe(matrix[j * 6 + i]);
    }
    expect(smallestPivot(matrix, 6)).toBeGreaterThan(0);
  });

  test.each(arms.map((arm) => [arm.kind, arm] as const))(
    '%s: the low bound sinks more everywhere',
    (_, arm) => {
      const bracket = bracketOf({ arm });
      const low = flexibility(bracket, 'low', 2, 6, 10);
      const high = flexibility(bracket, 'high', 2, 6, 10);
      low.forEach((value, i) => {
        expect(value).toBeGreaterThan(high[i]!);
      });
    },
  );
});

describe('a timber knee brace', () => {
  const bracket = bracketOf({ arm: BRACE, reachIn: 12, make: 'timber', heelIn: 16 });

  // Statics: at 45 degrees a tip load P pulls the arm with P and pushes the strut with P sqrt 2.
  test('at 45 degrees 200 lb at the tip pull the arm with 200 lb and push the strut with 282.8 lb', () => {
    const forces = kneeBraceForces({ arm: BRACE, reachIn: 12, loadLbf: 200, atIn: 12 });
    expect(forces.armPullLbf).toBeCloseTo(200, 9);
    expect(forces.strutPushLbf).toBeCloseTo(282.843, 3);
    expect(forces.armMomentLbfIn).toBe(0);
  });

  // Two-bar truss in any strength-of-materials text: tip deflection (1 + 2 sqrt 2) P L / AE at 45 degrees.
  test('at 45 degrees its tip sinks by (1 + 2 sqrt 2) P L / AE', () => {
    const expected = ((1 + 2 * Math.SQRT2) * 12) / (5.25 * 1.4e6);
    expect(apart(flexibility(bracket, 'high', 12)[0]!, expected)).toBeLessThan(1e-12);
    const forces = kneeBraceForces({ arm: BRACE, reachIn: 12, loadLbf: 1, atIn: 12 });
    expect(apart(forces.tipStiffnessLbfPerIn, 1 / expected)).toBeLessThan(1e-12);
  });

  // Any beam table: a simple span sinks PL^3/48EI in its middle, on top of a quarter of the tip's sinking.
  test('a load in the middle sinks it by PL^3/48EI and a quarter of the tip flexibility', () => {
    const I = (1.5 * 3.5 ** 3) / 12;
    const span = 12 ** 3 / (48 * 1.4e6 * I);
    const tip = flexibility(bracket, 'high', 12)[0]!;
    expect(apart(flexibility(bracket, 'high', 6)[0]!, span + tip / 4)).toBeLessThan(1e-12);
  });
});
