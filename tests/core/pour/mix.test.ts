import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bagsFor,
  batchesOf,
  bucketVolume,
  cubicYards,
  neededVolume,
  pieceVolume,
  pigmentForBag,
  pourPlan,
  splitBags,
  waterCementRatio,
  waterGallons,
  weightOf,
} from '../../../src-core/pour';
import { jobOf, rectangle } from '../../support/pieces';
import { mixOf, slabJob } from './pour-jobs';

const square = { kind: 'free', profile: { kind: 'square' } } as const;
const squareEdges = (count: number) => Array.from({ length: count }, () => square);

function within(value: number, wanted: number, share: number): void {
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(share);
}

describe('volume, weight and bags, against sums by hand', () => {
  const counter = jobOf({
    corners: rectangle(96, 25.5),
    thicknessIn: 2,
    edges: squareEdges(4),
    cutouts: [
      {
        id: 'sink',
        purpose: 'other',
        shape: { kind: 'rectangle', centre: { xIn: 48, yIn: 12.75 }, widthIn: 33, depthIn: 22 },
      },
    ],
  }).pieces[0]!;

  test('a 96 x 25-1/2 x 2 in counter with a 33 x 22 opening is 1.993 ft3 of 2.833 and weighs 289.0 lb', () => {
    const { oneIn3, grossAreaIn2 } = pieceVolume(counter);
    within((grossAreaIn2 * 2) / 1728, 2.833, 0.002);
    within(oneIn3 / 1728, 1.993, 0.002);
    within(weightOf.compute({ V: oneIn3 / 1728, w: 145 }), 289.0, 0.002);
  });

  test('with a tenth for waste it takes 2.192 ft3: 4 bags of 80 lb, 5 of 60, 6 of 50', () => {
    const V = neededVolume.compute({ V: pieceVolume(counter).oneIn3 / 1728, o: 0, w: 0.1, Vt: 0 });
    within(V, 2.192, 0.002);
    expect([0.6, 0.45, 0.375].map((y) => bagsFor.compute({ V, y }))).toEqual([4, 5, 6]);
  });

  test('an L of 96 x 25-1/2 with a return of 48 x 25-1/2, 2 in thick, is 4.250 ft3 or .1574 yd3', () => {
    const corners = [
      { xIn: 0, yIn: -48 },
      { xIn: 25.5, yIn: -48 },
      { xIn: 25.5, yIn: 0 },
      { xIn: 96, yIn: 0 },
      { xIn: 96, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ];
    const ell = jobOf({ corners, thicknessIn: 2, edges: squareEdges(6) }).pieces[0]!;
    const V = pieceVolume(ell).oneIn3 / 1728;
    within(V, 4.25, 0.001);
    within(cubicYards.compute({ V }), 0.1574, 0.001);
  });

  test('a cubic yard is 45 bags of 80 lb, 60 of 60, 72 of 50', () => {
    expect([0.6, 0.45, 0.375].map((y) => bagsFor.compute({ V: 27, y }))).toEqual([45, 60, 72]);
    expect(bagsFor.compute({ V: 27.001, y: 0.6 })).toBe(46);
  });

  test('42.3 lb of water on a 94 lb sack of cement is a ratio of .45 and 5.07 gal', () => {
    within(waterCementRatio.compute({ Ww: 42.3, Wc: 94 }), 0.45, 0.002);
    within(waterGallons.compute({ Ww: 42.3 }), 5.07, 0.002);
  });

  test('5 % of pigment on 94 lb of cement is 4.70 lb, and 10 % is 9.40', () => {
    expect(pigmentForBag.compute({ r: 0.05, Wc: 94 })).toBeCloseTo(4.7, 12);
    expect(pigmentForBag.compute({ r: 0.1, Wc: 94 })).toBeCloseTo(9.4, 12);
  });

  test('a 5 gal bucket of 145 pcf weighs 96.9 lb full, 64.6 two thirds full, 48.5 half full', () => {
    const lb = (f: number) => weightOf.compute({ V: bucketVolume.compute({ G: 5, f }), w: 145 });
    within(lb(1), 96.9, 0.003);
    within(lb(2 / 3), 64.6, 0.003);
    within(lb(0.5), 48.5, 0.003);
  });
});

describe('a plan in bags', () => {
  test('a 2880 in3 slab with .12 ft3 kept back takes 3 bags of .6 ft3 and leaves .0133 ft3', () => {
    const [pour] = pourPlan(slabJob()).pours;
    // 2880 / 1728 = 1.6667; a tenth of a batch of two bags = .12; together 1.7867 of 1.8.
    expect(pour!.volumes.totalFt3).toBeCloseTo(1.786667, 6);
    expect(pour!.bags).toMatchObject({ bags: 3 });
    expect(pour!.bags!.surplusFt3).toBeCloseTo(0.013333, 6);
    expect(pour!.batches.map(({ bags }) => bags)).toEqual([2, 1]);
  });

  test('one bag in hand stands beside the bags that are mixed', () => {
    expect(pourPlan(slabJob()).mixes[0]).toMatchObject({ bags: 3, bagsInHand: 1 });
  });

  test('each bag gets water midway between 6 and 7.5 lb where none is chosen: w/c .3375 on 20 lb of cement', () => {
    const [pour] = pourPlan(slabJob()).pours;
    expect(pour!.bags!.perBag).toMatchObject({ waterLb: 6.75, waterCementRatio: 0.3375 });
    expect(pour!.batches.map(({ waterLb }) => waterLb)).toEqual([13.5, 6.75]);
  });

  test.each([6, 7.2, 7.5])('chosen water of %d lb stands', (waterLb) => {
    const [pour] = pourPlan(slabJob({ mixes: [mixOf({ waterLb })] })).pours;
    expect(pour!.bags!.perBag.waterLb).toBe(waterLb);
    expect(pour!.findings.map(({ kind }) => kind)).not.toContain('water-outside');
  });

  test.each([5.9, 7.6])('chosen water of %d lb is outside 6 to 7.5 lb, refused and left out', (waterLb) => {
    const [pour] = pourPlan(slabJob({ mixes: [mixOf({ waterLb })] })).pours;
    expect(pour!.batches.every((batch) => batch.waterLb === null && batch.waterGal === null)).toBe(true);
    const refused = pour!.findings.find(({ kind }) => kind === 'water-outside');
    expect(refused).toMatchObject({ level: 'refused' });
    expect(refused!.words).toContain(`takes 6 lb to 7.5 lb of water; ${waterLb} lb is outside`);
  });

  const coloured = (pigmentRatio: number, cementLb: number | null = 20) =>
    pourPlan(slabJob({ mixes: [mixOf({ cementLb })] }, { colour: { pigment: 'Slate grey', pigmentRatio } }));

  test('pigment of a tenth of 20 lb of cement is 2 lb to a bag, 6 lb in all', () => {
    const plan = coloured(0.1);
    expect(plan.pours[0]!.bags!.perBag.pigmentLb).toBeCloseTo(2, 12);
    expect(plan.mixes[0]!.pigments[0]!.weightLb).toBeCloseTo(6, 12);
    expect(plan.pours[0]!.findings.map(({ kind }) => kind)).not.toContain('pigment-over');
  });

  test('pigment of 10.1 % is refused and left out', () => {
    const plan = coloured(0.101);
    expect(plan.pours[0]!.batches.every(({ pigmentLb }) => pigmentLb === null)).toBe(true);
    expect(plan.mixes[0]!.pigments).toEqual([]);
    const refused = plan.pours[0]!.findings.find(({ kind }) => kind === 'pigment-over');
    expect(refused).toMatchObject({ level: 'refused', source: 'ASTM C979 1.4' });
    expect(refused!.words).toMatch(/^Slate grey at 10\.1 % of the cement is refused/);
  });

  test('without the cement in a bag the pigment to a bag cannot be said, nor w/c', () => {
    const [pour] = coloured(0.05, null).pours;
    expect(pour!.bags!.perBag).toMatchObject({ pigmentLb: null, waterCementRatio: null, waterLb: 6.75 });
    expect(pour!.findings.find(({ kind }) => kind === 'cement-unknown')).toMatchObject({
      level: 'attention',
    });
  });

  test('a mix without bag data gives cubic feet and yards, no batch, and says what is missing', () => {
    const [pour] = pourPlan(slabJob({ mixes: [mixOf(null)] })).pours;
    expect(pour).toMatchObject({ bags: null, batches: [], clock: null });
    expect(pour!.volumes.totalFt3).toBeCloseTo(1.666667, 6);
    expect(pour!.volumes.totalYd3).toBeCloseTo(0.061728, 6);
    const missing = pour!.findings.find(({ kind }) => kind === 'no-bag-data')!;
    expect(missing.words).toContain('weight, yield and water of a bag of Countertop mix are missing');
  });
});

describe('batches of any pour', () => {
  const amounts = (waterLb: number, pigmentLb: number) => ({
    waterLb,
    waterGal: waterLb / 8.345,
    waterCementRatio: null,
    pigmentLb,
    lines: [],
    findings: [],
  });
  const task = fc.record({
    bags: fc.integer({ min: 1, max: 400 }),
    mixerBags: fc.integer({ min: 1, max: 40 }),
    bagYieldFt3: fc.double({ min: 0.2, max: 2, noNaN: true }),
    filled: fc.double({ min: 0.01, max: 1, noNaN: true }),
    wasteRatio: fc.double({ min: 0, max: 0.5, noNaN: true }),
    waterLb: fc.double({ min: 1, max: 20, noNaN: true }),
    pigmentLb: fc.double({ min: 0, max: 5, noNaN: true }),
  });

  test('add up to the bags, none over the mixer, all but the last full', () => {
    fc.assert(
      fc.property(task, ({ bags, mixerBags }) => {
        const split = splitBags(bags, mixerBags);
        expect(split.reduce((sum, count) => sum + count, 0)).toBe(bags);
        expect(split.every((count) => count >= 1 && count <= mixerBags)).toBe(true);
        expect(split.slice(0, -1).every((count) => count === mixerBags)).toBe(true);
      }),
    );
  });

  test('give every bag the same water and pigment, and their concrete goes into forms, waste or what is kept', () => {
    fc.assert(
      fc.property(task, ({ filled, waterLb, pigmentLb, ...rest }) => {
        const mixedFt3 = rest.bags * rest.bagYieldFt3;
        const inFormsFt3 = (filled * mixedFt3) / (1 + rest.wasteRatio);
        const batches = batchesOf({ ...rest, inFormsFt3 }, amounts(waterLb, pigmentLb));
        for (const batch of batches) {
          expect(batch.waterLb! / batch.bags).toBeCloseTo(waterLb, 10);
          expect(batch.pigmentLb! / batch.bags).toBeCloseTo(pigmentLb, 10);
          const parts = batch.placedFt3 + batch.wastedFt3 + batch.keptFt3;
          expect(Math.abs(parts - batch.yieldFt3)).toBeLessThan(1e-9);
          expect(batch.keptFt3).toBeGreaterThan(-1e-9);
        }
        const sum = (key: 'placedFt3' | 'yieldFt3') =>
          batches.reduce((total, batch) => total + batch[key], 0);
        expect(Math.abs(sum('placedFt3') / inFormsFt3 - 1)).toBeLessThan(1e-9);
        expect(Math.abs(sum('yieldFt3') / mixedFt3 - 1)).toBeLessThan(1e-9);
      }),
    );
  });
});
