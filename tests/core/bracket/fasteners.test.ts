import { describe, expect, test } from 'vitest';
import {
  adjustedLateral,
  adjustedWithdrawal,
  combinedFastener,
  LAG_END_GRAIN,
  lagWithdrawal,
  lateralValue,
  nailWithdrawal,
  screwWithdrawal,
  singleShear,
} from '../../../src-core/bracket';
import {
  bearingAcrossGrain,
  bearingAlongGrain,
  bearingSmallDowel,
} from '../../../src-core/bracket/dowel-strength';
import {
  boltArea,
  boltPull,
  boltShear,
  washerArea,
  washerPull,
} from '../../../src-core/bracket/through-bolts';
import { apart } from './samples';

describe('pull-out from side grain', () => {
  // basis 7.3
  test.each([
    [0.375, 0.5, 305],
    [0.25, 0.42, 173],
    [0.375, 0.42, 235],
  ])('a %f in lag in timber of gravity %f holds %i lb an inch', (D, G, expected) => {
    expect(apart(lagWithdrawal.compute({ G, D }), expected)).toBeLessThan(5e-3);
  });

  // NDS Table 12.2A, as printed in a building department's file: gravity .50 and .46.
  test.each([
    [0.25, 225, 199],
    [0.3125, 266, 235],
    [0.375, 305, 269],
    [0.4375, 342, 302],
    [0.5, 378, 334],
    [0.625, 447, 395],
    [0.75, 513, 453],
  ])('a %f in lag holds %i lb an inch in gravity .50 and %i in .46, to the pound', (D, half, light) => {
    expect(Math.abs(lagWithdrawal.compute({ G: 0.5, D }) - half)).toBeLessThanOrEqual(1);
    expect(Math.abs(lagWithdrawal.compute({ G: 0.46, D }) - light)).toBeLessThanOrEqual(1);
  });

  // basis 7.4
  test.each([
    [0.19, 0.5, 135],
    [0.164, 0.42, 82],
    [0.19, 0.42, 96],
  ])('a %f in wood screw in timber of gravity %f holds %i lb an inch', (D, G, expected) => {
    expect(apart(screwWithdrawal.compute({ G, D }), expected)).toBeLessThan(8e-3);
  });

  // NDS Table 12.2C, gravity .50, from memory: 8d 32, 10d 36, 16d 40 lb an inch.
  test.each([
    [0.131, 32],
    [0.148, 36],
    [0.162, 40],
  ])('a common nail of %f in holds %i lb an inch in gravity .50', (D, expected) => {
    expect(Math.round(nailWithdrawal.compute({ G: 0.5, D }))).toBe(expected);
  });

  // By hand: 305 x 2.5 in = 762; x .7 wet x .75 end grain.
  test('wet service takes 30 % of a lag and end grain another quarter', () => {
    const dry = adjustedWithdrawal.compute({ W: 305, p: 2.5, CD: 1, CM: 1, Ceg: 1 });
    const wet = adjustedWithdrawal.compute({ W: 305, p: 2.5, CD: 1, CM: 0.7, Ceg: LAG_END_GRAIN.withdrawal });
    expect(dry).toBe(762.5);
    expect(wet).toBeCloseTo(762.5 * 0.525, 9);
    expect(adjustedLateral.compute({ Z: 300, CD: 1, CM: 1, Ceg: LAG_END_GRAIN.lateral })).toBeCloseTo(201, 9);
  });
});

describe('pull and shear at once', () => {
  // basis 7.5
  test.each([
    [0, 150],
    [30, 177.8],
    [45, 218.2],
    [90, 400],
  ])('400 lb of pull-out and 150 lb of shear value give, at %i degrees, %f lb', (deg, expected) => {
    const a = (deg * Math.PI) / 180;
    const found = combinedFastener.compute({ Wp: 400, Z: 150, T: Math.sin(a), V: Math.cos(a) });
    expect(apart(found, expected)).toBeLessThan(1e-3);
  });
});

describe('single shear', () => {
  // NDS Table 12K (lag screws, steel side plate A653 grade 33, thread 8 D), as printed in a building department's file;
  // the table rounds to 10 lb.
  test.each([
    [0.075, 0.25, 0.67, 170, 130],
    [0.075, 0.25, 0.5, 150, 110],
    [0.075, 0.3125, 0.67, 220, 160],
    [0.075, 0.3125, 0.5, 190, 130],
    [0.075, 0.375, 0.67, 220, 160],
    [0.075, 0.375, 0.5, 200, 130],
    [0.075, 0.375, 0.42, 180, 120],
    [0.12, 0.25, 0.5, 170, 120],
    [0.12, 0.3125, 0.5, 210, 140],
    [0.12, 0.375, 0.5, 210, 140],
    [0.12, 0.375, 0.42, 190, 120],
    [0.134, 0.25, 0.5, 180, 130],
    [0.134, 0.3125, 0.5, 210, 150],
  ])(
    'plate %f, lag %f, gravity %f: %i lb along and %i lb across the grain, to 5 lb',
    (sideIn, diameterIn, specificGravity, along, across) => {
      const lag = {
        kind: 'lags',
        side: 'steel',
        bearingIn: 8 * diameterIn,
        sideIn,
        diameterIn,
        specificGravity,
      } as const;
      expect(Math.abs(lateralValue({ ...lag, grain: 'along' }).referenceLbf - along)).toBeLessThan(5.5);
      expect(Math.abs(lateralValue({ ...lag, grain: 'across' }).referenceLbf - across)).toBeLessThan(5.5);
    },
  );

  // NDS Table 12A, two 1-1/2 in members of gravity .50, bolts, from memory: 5/8 600, 3/4 720, 7/8 850, 1 970 lb along the
  // grain; 240, 270, 290, 310 lb across it. Mode II governs.
  test.each([
    [0.625, 600, 240],
    [0.75, 720, 270],
    [0.875, 850, 290],
    [1, 970, 310],
  ])(
    'a %f in bolt through two 1-1/2 in members takes %i lb along and %i lb across the grain, to 5 lb',
    (diameterIn, along, across) => {
      const bolt = {
        kind: 'through-bolts',
        side: 'timber',
        bearingIn: 1.5,
        sideIn: 1.5,
        diameterIn,
        specificGravity: 0.5,
      } as const;
      const found = lateralValue({ ...bolt, grain: 'along' });
      expect(found.mode).toBe('II');
      expect(Math.abs(found.referenceLbf - along)).toBeLessThan(5.5);
      expect(Math.abs(lateralValue({ ...bolt, grain: 'across' }).referenceLbf - across)).toBeLessThan(5.5);
    },
  );

  // NDS Table 12N, common nails, 1-1/2 in side member, gravity .50, from memory: 8d 97, 10d 118, 16d 141 lb.
  test.each([
    [0.131, 1.0, 100_000, 97],
    [0.148, 1.5, 90_000, 118],
    [0.162, 2.0, 90_000, 141],
  ])(
    'a common nail of %f in, %f in deep, bends twice at its table value',
    (D, mainIn, yieldPsi, expected) => {
      const Fe = bearingSmallDowel.compute({ G: 0.5 });
      const nail = singleShear({
        diameterIn: D,
        nominalIn: D,
        mainIn: Math.max(mainIn, 10 * D),
        sideIn: 1.5,
        mainPsi: Fe,
        sidePsi: Fe,
        yieldPsi,
        angleDeg: 0,
      });
      expect(nail.mode).toBe('IV');
      expect(Math.abs(nail.referenceLbf - expected)).toBeLessThan(1.5);
    },
  );

  // By hand: 1/2 in bolt, Fe 5600 both sides, 1-1/2 in main and side; Im = Is = .5 x 1.5 x 5600 / 4 = 1050.
  test('all six modes come out, and a very thin plate crushes first', () => {
    const even = lateralValue({
      kind: 'through-bolts',
      side: 'timber',
      bearingIn: 1.5,
      sideIn: 1.5,
      diameterIn: 0.5,
      specificGravity: 0.5,
      grain: 'along',
    });
    expect(even.byMode.Im).toBeCloseTo(1050, 6);
    expect(even.byMode.Is).toBeCloseTo(1050, 6);
    expect(even.byMode.IIIm).toBeCloseTo(even.byMode.IIIs, 9);
    const thin = singleShear({
      diameterIn: 0.5,
      nominalIn: 0.5,
      mainIn: 3.5,
      sideIn: 0.01,
      mainPsi: 5600,
      sidePsi: 5600,
      yieldPsi: 45_000,
      angleDeg: 0,
    });
    expect(thin.mode).toBe('Is');
    expect(thin.referenceLbf).toBeCloseTo((0.5 * 0.01 * 5600) / 4, 9);
  });

  // NDS Table 12.3.3, gravity .50: 5600 along, 2600 across a 3/4 in bolt, 4650 under a nail (rounded to 50 psi).
  test('bearing strengths of gravity .50 timber are 5600, 2600 and 4650 psi to 50 psi', () => {
    expect(bearingAlongGrain.compute({ G: 0.5 })).toBe(5600);
    expect(Math.abs(bearingAcrossGrain.compute({ G: 0.5, D: 0.75 }) - 2600)).toBeLessThan(26);
    expect(Math.abs(bearingSmallDowel.compute({ G: 0.5 }) - 4650)).toBeLessThan(26);
  });
});

describe('common bolts', () => {
  // AISC Manual Tables 7-1, 7-2, A307, ASD, from memory: 5/8 in 4.14 kip in shear, 6.90 kip in tension.
  test('a 5/8 bolt takes 4.14 kip in shear and 6.90 kip in tension', () => {
    const Ab = boltArea.compute({ D: 0.625 });
    expect(apart(boltShear.compute({ Fnv: 27_000, Ab }), 4140)).toBeLessThan(2e-3);
    expect(apart(boltPull.compute({ Fnt: 45_000, Fnv: 27_000, V: 0, Ab }), 6900)).toBeLessThan(2e-3);
  });

  // By hand, AISC 360-22 J3-3b: Ab .1104, V 1000 lb: 1.3 x 45 000 - 2 x 45 000/27 000 x 9054 = 28 320 psi; x .1104/2 = 1564 lb.
  test('1000 lb of shear leave a 3/8 bolt 1564 lb of pull', () => {
    const Ab = boltArea.compute({ D: 0.375 });
    expect(apart(boltPull.compute({ Fnt: 45_000, Fnv: 27_000, V: 1000, Ab }), 1564)).toBeLessThan(1e-3);
  });

  // By hand: pi/4 (1.25^2 - .4375^2) = 1.0769 in2; x 425 = 457.7 lb.
  test('a 1-1/4 washer on a 3/8 bolt presses 457.7 lb into spruce, and a washer smaller than its hole nothing', () => {
    const Aw = washerArea.compute({ dw: 1.25, D: 0.375 });
    expect(apart(washerPull.compute({ Fcp: 425, CM: 1, Aw }), 457.7)).toBeLessThan(1e-3);
    expect(washerArea.compute({ dw: 0.4, D: 0.375 })).toBe(0);
  });
});
