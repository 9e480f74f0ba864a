import { describe, expect, test } from 'vitest';
import {
  combinedFastener,
  concreteBearing,
  corbelSteel,
  lagWithdrawal,
  studStrength,
  wallCouple,
  wallOverturning,
} from '../../../src-core/bracket';
import { bearingAreaFactor, factoredLoad, heelBearing } from '../../../src-core/bracket/wall-couple';
import { apart } from './samples';

describe('the couple on the wall', () => {
  // basis 7.6: P 250 at 8 in, lever 8 in, 2 top of 4 lags 1/4 in, 2 in of thread, gravity .42, Z' 150.
  test('250 lb at 8 in pull two top lags with 125 lb each, and they hold 274.5 lb against 139.8', () => {
    const couple = wallCouple({ loadLbf: 250, atIn: 8, leverIn: 8 });
    expect(couple.pullLbf).toBe(250);
    expect(couple.pushLbf).toBe(250);
    const T = couple.pullLbf / 2;
    const V = couple.shearLbf / 4;
    const Wp = 2 * lagWithdrawal.compute({ G: 0.42, D: 0.25 });
    expect((Math.atan2(T, V) * 180) / Math.PI).toBeCloseTo(63.4, 1);
    expect(apart(Math.hypot(T, V), 139.8)).toBeLessThan(5e-3);
    expect(apart(combinedFastener.compute({ Wp, Z: 150, T, V }), 274.5)).toBeLessThan(5e-3);
  });

  // By hand: 300 lb at 9 in every 24 in: 2700 lb-in on 24 in, 225 lb-ft on 2 ft.
  test('300 lb at 9 in every 24 in turn the wall with 112.5 lb-in an inch, which is 112.5 lb-ft a foot', () => {
    expect(wallOverturning.compute({ M: 2700, s: 24 })).toBeCloseTo(112.5, 9);
    expect((300 * (9 / 12)) / (24 / 12)).toBeCloseTo(112.5, 9);
  });

  // By hand, spruce No. 2: 875 x 1.5 x 1.5 x 3.5^2 / 6 = 4020 lb-in; 875 x 1.3 x 1.5 x 5.5^2 / 6 = 8602.
  test('a 2x4 stud bends safely with 4020 lb-in, a 2x6 with 8602, and 15 % less where it stays wet', () => {
    expect(apart(studStrength(3.5, false).momentLbfIn, 4020)).toBeLessThan(1e-3);
    expect(apart(studStrength(5.5, false).momentLbfIn, 8602)).toBeLessThan(1e-3);
    expect(studStrength(4.5, false).words).toBe('2x4');
    expect(studStrength(3.5, true).momentLbfIn / studStrength(3.5, false).momentLbfIn).toBeCloseTo(0.85, 9);
  });

  // basis 6.9: 1.5 x 1.5 in, Cb 1.25: 1195 lb in spruce, 1406 lb in Douglas fir without it.
  test('a stud takes 1195 lb on 1-1/2 x 1-1/2 in of spruce, 1406 lb of Douglas fir without the area factor', () => {
    const Cb = bearingAreaFactor.compute({ lb: 1.5 });
    expect(Cb).toBeCloseTo(1.25, 12);
    expect(apart(heelBearing.compute({ Fcp: 425, CM: 1, Cb, w: 1.5, lt: 1.5 }), 1195)).toBeLessThan(1e-3);
    expect(apart(heelBearing.compute({ Fcp: 625, CM: 1, Cb: 1, w: 1.5, lt: 1.5 }), 1406)).toBeLessThan(1e-3);
  });

  // NDS Table 3.10.4, from memory: Cb 1.75 / 1.38 / 1.25 / 1.19 at 1/2, 1, 1-1/2, 2 in.
  test.each([
    [0.5, 1.75],
    [1, 1.38],
    [1.5, 1.25],
    [2, 1.19],
  ])('a bearing %f in long counts %f times', (lb, expected) => {
    expect(Math.abs(bearingAreaFactor.compute({ lb }) - expected)).toBeLessThan(0.006);
  });

  // By hand: .65 x .85 x 3000 x 2 = 3315 lb; 1.2 x 100 + 1.6 x 250 = 520 lb; 1.4 x 100 = 140 lb.
  test('concrete of 3000 psi takes 3315 lb on 2 in2; 100 lb dead and 250 live factor to 520', () => {
    expect(concreteBearing.compute({ fc: 3000, A1: 2 })).toBeCloseTo(3315, 9);
    expect(factoredLoad.compute({ D: 100, L: 250 })).toBeCloseTo(520, 9);
    expect(factoredLoad.compute({ D: 100, L: 0 })).toBeCloseTo(140, 9);
  });
});

describe('a structural corbel, for the engineer', () => {
  const corbel = {
    shearLbf: 5000,
    atIn: 3,
    depthIn: 8,
    effectiveDepthIn: 6.5,
    widthIn: 8,
    strengthPsi: 4000,
    yieldPsi: 60_000,
    friction: 1.4,
  };

  // basis 7.7
  test('5000 lb at 3 in on an 8 x 8 in corbel want .1387 in2 of main steel and .0582 in2 of ties', () => {
    const found = corbelSteel(corbel);
    expect(apart(found.shearLimitLbf, 41_600)).toBeLessThan(5e-3);
    expect(apart(found.momentLbfIn, 16_500)).toBeLessThan(5e-3);
    expect(apart(found.frictionIn2, 0.0794)).toBeLessThan(5e-3);
    expect(apart(found.pullIn2, 0.0222)).toBeLessThan(5e-3);
    expect(apart(found.bendingIn2 ?? 0, 0.057)).toBeLessThan(5e-3);
    expect(apart(found.mainIn2 ?? 0, 0.1387)).toBeLessThan(5e-3);
    expect(apart(found.tiesIn2 ?? 0, 0.0582)).toBeLessThan(5e-3);
  });

  // By the equation that it solves: .75 x Af x fy x (d - Af fy / (1.7 fc b)) = Mu.
  test('the steel for the moment carries the moment', () => {
    const Af = corbelSteel(corbel).bendingIn2 ?? 0;
    expect(0.75 * Af * 60_000 * (6.5 - (Af * 60_000) / (1.7 * 4000 * 8))).toBeCloseTo(16_500, 6);
  });

  test('a corbel too shallow for its moment gets no steel figure rather than a wrong one', () => {
    const found = corbelSteel({ ...corbel, shearLbf: 200_000 });
    expect(found.bendingIn2).toBeNull();
    expect(found.mainIn2).toBeNull();
  });
});
