import { describe, expect, test } from 'vitest';
import { BRACE_TIMBER, sizeFactor } from '../../../src-core/bracket/brace-timber';
import { columnStability as braceStability } from '../../../src-core/bracket/knee-brace';
import {
  bearingCapacity,
  bendingSizeFactor,
  columnCapacity,
  columnStability,
  compressionSizeFactor,
  durationFactor,
  flatUseFactor,
  LUMBER,
  type LumberSize,
  lateralSupport,
  lumberSection,
  type MemberInput,
  repetitiveFactor,
  SPECIES,
  timberMember,
  wetBendingFactor,
  wetCompressionFactor,
} from '../../../src-core/timber';
import { expectWithin } from '../concrete/within';

const DRY = { durationFactor: 1, isWet: false };
const member = (given: Partial<MemberInput>) =>
  timberMember({ species: 'spf', size: '2x4', use: 'edge', service: DRY, repetition: null, ...given });
const SIZES = Object.keys(LUMBER) as LumberSize[];

describe('factors of NDS 2018', () => {
  test('a load of 7 days counts 1.25, of 8 to 60 days 1.15, of a year 1.0, of twenty years 0.9', () => {
    expect([1, 7, 8, 60, 61, 365, 7300].map(durationFactor)).toEqual([1.25, 1.25, 1.15, 1.15, 1, 1, 0.9]);
  });

  test('three joists at 24 in share their load; two do not, nor three at 24-1/8 in, nor one alone', () => {
    expect(repetitiveFactor({ members: 3, spacingIn: 24 })).toBe(1.15);
    expect(repetitiveFactor({ members: 2, spacingIn: 16 })).toBe(1);
    expect(repetitiveFactor({ members: 3, spacingIn: 24.125 })).toBe(1);
    expect(repetitiveFactor(null)).toBe(1);
  });

  test('a wet SPF 2x6 loses nothing in bending, Fb CF being 1137.5 psi; a wet 2x4 at 1312.5 loses 15 %', () => {
    expect(wetBendingFactor(true, 875, '2x6')).toBe(1);
    expect(wetBendingFactor(true, 875, '2x4')).toBe(0.85);
    expect(wetBendingFactor(true, 900, '2x6')).toBe(0.85);
    expect(wetBendingFactor(false, 900, '2x6')).toBe(1);
  });

  test('wet compression loses a fifth, but nothing where Fc CF is at most 750 psi', () => {
    expect(wetCompressionFactor(true, 1150, '2x4')).toBe(0.8);
    expect(wetCompressionFactor(true, 650, '2x4')).toBe(1);
  });

  test('flat use counts on the flat only', () => {
    expect(flatUseFactor('2x4', 'flat')).toBe(1.1);
    expect(flatUseFactor('2x6', 'flat')).toBe(1.15);
    expect(flatUseFactor('2x6', 'edge')).toBe(1);
  });

  test('a deeper size is weaker a square inch', () => {
    expect((['2x4', '2x6', '2x8', '2x10'] as const).map(bendingSizeFactor)).toEqual([1.5, 1.3, 1.2, 1.1]);
    expect((['2x4', '2x6', '2x8', '2x10'] as const).map(compressionSizeFactor)).toEqual([1.15, 1.1, 1.05, 1]);
  });

  test('neither bearing nor stiffness gains from a short load', () => {
    const [short, long] = [1.25, 1].map((factor) =>
      member({ service: { durationFactor: factor, isWet: false } }),
    );
    expect(short!.bearingPsi).toBe(long!.bearingPsi);
    expect(short!.stiffnessLbfIn2).toBe(long!.stiffnessLbfIn2);
    expect(short!.bendingPsi / long!.bendingPsi).toBeCloseTo(1.25, 12);
    expect(short!.shearPsi / long!.shearPsi).toBeCloseTo(1.25, 12);
    expect(short!.crushingPsi / long!.crushingPsi).toBeCloseTo(1.25, 12);
  });

  test('a 2x4 needs no lateral support, a 2x8 its ends held, a 2x10 its top edge too, none laid flat', () => {
    const need = (size: LumberSize) => lateralSupport(lumberSection(size, 'edge'));
    expect((['2x4', '2x6', '2x8', '2x10', '4x4'] as const).map(need)).toEqual([
      'none',
      'ends',
      'ends',
      'ends-and-top-edge',
      'none',
    ]);
    expect(lateralSupport(lumberSection('2x10', 'flat'))).toBe('none');
  });
});

describe('the same lumber in a knee brace and in falsework', () => {
  test.each(['spf', 'df-l'] as const)('%s has the same reference values', (species) => {
    const { tensionPsi, ...brace } = BRACE_TIMBER[species];
    expect(tensionPsi).toBeGreaterThan(0);
    expect(SPECIES[species]).toEqual(brace);
  });

  test.each(SIZES)('%s has the same size factors', (size) => {
    const { bending, compression } = sizeFactor(LUMBER[size].widthIn);
    expect([bendingSizeFactor(size), compressionSizeFactor(size)]).toEqual([bending, compression]);
  });

  test('a strut and a leg buckle by the same factor', () => {
    for (const FcE of [100, 800, 4000]) {
      const leg = columnStability({ FcE, Fcs: 1500, c: 0.8 }).value;
      expectWithin(leg, braceStability({ FcE, Fcs: 1500 }).value, 1e-12);
    }
  });
});

describe('worked by hand from NDS 2018, values from memory', () => {
  // Fb' = 900 x 1.15 x .85 x 1.5 x 1.1 = 1451.6; S = 3.5 x 1.5^2 / 6 = 1.3125; M = 1905.2. Fv' = 180 x 1.15 x .97 = 200.79; V = 702.8.
  test('a wet DF-L 2x4 laid flat for two months takes 1905 lbf-in and 703 lbf', () => {
    const plate = member({
      species: 'df-l',
      use: 'flat',
      service: { durationFactor: 1.15, isWet: true },
    });
    expectWithin(plate.bendingPsi, 1451.6, 1e-4);
    expectWithin(plate.momentLbfIn, 1905.2, 1e-4);
    expectWithin(plate.shearLbf, 702.8, 1e-4);
  });

  // Fb' = 875 x 1.15 x 1.0 x 1.3 x 1.15 = 1504.3; S = 7.5625; M = 11376. E' = .9 x 1.4e6 x 20.797 = 26.204e6.
  test('a wet SPF 2x6 joist of several takes 11,376 lbf-in and is 26.2e6 lbf-in2 stiff', () => {
    const joist = member({
      size: '2x6',
      service: { durationFactor: 1.15, isWet: true },
      repetition: { members: 5, spacingIn: 16 },
    });
    expectWithin(joist.momentLbfIn, 11_376, 1e-4);
    expectWithin(joist.stiffnessLbfIn2, 26.204e6, 1e-4);
  });

  // Fc* = 1350 x 1.15 = 1552.5; FcE = .822 x 580000 / 27.43^2 = 633.7; A = 1.408 / 1.6 = .8801;
  // Cp = .8801 - sqrt(.7746 - .5102) = .3659; P = 1552.5 x .3659 x 12.25 = 6960.
  test('a DF-L 4x4 leg of 8 ft carries 6960 lbf', () => {
    const leg = columnCapacity({
      member: member({ species: 'df-l', size: '4x4' }),
      thinWayIn: 96,
      wideWayIn: 96,
      isDuringConstruction: false,
    });
    expect(leg.ok && leg.capacityLbf).toBeTruthy();
    if (leg.ok) expectWithin(leg.capacityLbf, 6960, 1e-3);
  });

  // Fcp' = .67 x 425 = 284.75; Cb = 1.875 / 1.5 = 1.25; N = 284.75 x 1.25 x 3.5 x 1.5 = 1868.7.
  test('a joist 1-1/2 in wide presses 1869 lbf into a wet SPF 2x4 laid flat, away from its end', () => {
    const { bearingPsi } = member({ use: 'flat', service: { durationFactor: 1.15, isWet: true } });
    const at = { bearingPsi, widthIn: 3.5, lengthIn: 1.5 };
    expectWithin(bearingCapacity({ ...at, fromEndIn: 6 }).capacityLbf, 1868.7, 1e-4);
    expectWithin(bearingCapacity({ ...at, fromEndIn: 2.9 }).capacityLbf, 1494.9, 1e-4);
  });
});

describe('legs', () => {
  const leg = (thinWayIn: number, wideWayIn: number, isDuringConstruction: boolean) =>
    columnCapacity({ member: member({}), thinWayIn, wideWayIn, isDuringConstruction });

  test('a 2x4 of 75 in (le/d 50) still counts, of 75-1/8 in only while work is under way, of 112-3/4 in never', () => {
    expect(leg(75, 75, false).ok).toBe(true);
    expect(leg(75.125, 75, false)).toMatchObject({ ok: false, code: 'too-slender', limitRatio: 50 });
    expect(leg(75.125, 75, true).ok).toBe(true);
    expect(leg(112.5, 75, true).ok).toBe(true);
    expect(leg(112.75, 75, true)).toMatchObject({ ok: false, limitRatio: 75 });
  });

  test('a 2x4 braced the thin way at 30 in and free the wide way for 80 in bows the wide way', () => {
    expect(leg(30, 80, false)).toMatchObject({ ok: true, bowsThinWay: false, slendernessRatio: 80 / 3.5 });
    expect(leg(30, 60, false)).toMatchObject({ ok: true, bowsThinWay: true, slendernessRatio: 20 });
  });

  test('a leg of no length is crushed, not buckled: Cp nears 1', () => {
    const stub = leg(0.1, 0.1, false);
    if (!stub.ok) throw new Error('a stub is not slender');
    expectWithin(stub.capacityLbf, 1150 * 1.15 * 5.25, 1e-3);
  });

  test('a longer leg carries less', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let lengthIn = 6; lengthIn <= 75; lengthIn += 3) {
      const found = leg(lengthIn, lengthIn, false);
      if (!found.ok) throw new Error('too slender');
      expect(found.capacityLbf).toBeLessThan(before);
      before = found.capacityLbf;
    }
  });

  test('a bearing 6 in long gains nothing, one a hair shorter does', () => {
    const bears = (lengthIn: number) =>
      bearingCapacity({ bearingPsi: 425, widthIn: 1.5, lengthIn, fromEndIn: 12 }).capacityLbf / lengthIn;
    expectWithin(bears(6), 637.5, 1e-12);
    expectWithin(bears(5.999), 637.5 * (6.374 / 5.999), 1e-9);
  });
});
