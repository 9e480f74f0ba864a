import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import {
  leastPressureWithinThird,
  pressureBeyondThird,
  pressureWithinThird,
} from '../../../src-core/checks/kern';
import { tipping } from '../../../src-core/checks/tipping';
import {
  overturningMoment,
  rightingMoment,
  TIPS_ALONE_RATIO,
  tippingFactor,
  tippingRatio,
  tippingStrength,
} from '../../../src-core/checks/turning';
import { slabWeight } from '../../../src-core/checks/weight';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import {
  analyse,
  CAP_E4,
  COUNTER_E2,
  HEARTH_E3,
  jobOf,
  LEDGE_E1,
  rectangle,
  wallAlongX,
} from '../../support/pieces';

/** A load on the smallest patch that a job may state: its middle lies 1/8 in inside the edge. */
function pointLoad(forceLbf: number, spreadPsf = 0) {
  return { roving: { setting: 'own' as const, forceLbf, widthIn: 0.25, depthIn: 0.25 }, spreadPsf };
}

/** The bar top of basis 2.1 to 2.3: 96 x 18 x 2 in on a 5.5 in wall that starts `overhangIn` from its front. */
function barTop(overhangIn: number): Job {
  return jobOf({
    corners: rectangle(96, 18),
    thicknessIn: 2,
    loads: pointLoad(250),
    supports: [wallAlongX('wall', 0, 96, overhangIn + 2.75, 5.5)],
  });
}

/** 24 x 20 x 2 in, 80.56 lb, 4 in out over a wall that goes on to its back edge. */
function shelf(forceLbf: number): Job {
  return jobOf({
    corners: rectangle(24, 20),
    thicknessIn: 2,
    loads: pointLoad(forceLbf),
    supports: [wallAlongX('wall', 0, 24, 12, 16)],
  });
}

const within = (value: number, wanted: number, share: number) =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(share * Math.abs(wanted));

describe('statics of tipping', () => {
  // Derived.
  test('basis 2.1: 290 lb and 250 lb at the front edge, 870 against 1500 lb-in, .58 and .326', () => {
    const Mr = rightingMoment({ W: slabWeight({ A: 96 * 18, h: 2, w: 145 }).value, x: 9 - 6 }).value;
    const Mo = overturningMoment({ P: 250, y: 6 }).value;
    within(Mr, 870, 0.005);
    within(Mo, 1500, 0.005);
    within(tippingFactor({ Mr, Mo }).value, 0.58, 0.005);
    within(tippingStrength({ Mr, Mo }).value, 0.326, 0.005);
  });

  // Derived, by the middle-third rule.
  test('basis 2.4: 100 lb an inch on 6 in, 1/2, 1 and 2 in off its middle: 25.0, 33.3, 66.7 psi', () => {
    within(pressureWithinThird({ R: 100, B: 6, e: 0.5 }).value, 25, 0.002);
    within(leastPressureWithinThird({ R: 100, B: 6, e: 0.5 }).value, 8.33, 0.002);
    within(pressureWithinThird({ R: 100, B: 6, e: 1 }).value, 33.3, 0.002);
    expect(leastPressureWithinThird({ R: 100, B: 6, e: 1 }).value).toBe(0);
    within(pressureBeyondThird({ R: 100, B: 6, e: 2 }).value, 66.7, 0.002);
    within(pressureBeyondThird({ R: 100, B: 6, e: 1 }).value, 33.3, 0.002);
  });

  // Derived.
  test('basis 2.7: a 53.7 lb post cap, 322 against 500 lb-in, .644', () => {
    const W = slabWeight({ A: 16 * 16, h: 2.5, w: 145 }).value;
    within(W, 53.7, 0.005);
    const Mr = rightingMoment({ W, x: 6 }).value;
    within(Mr, 322, 0.005);
    within(tippingFactor({ Mr, Mo: overturningMoment({ P: 250, y: 2 }).value }).value, 0.644, 0.005);
  });

  // Derived: 1229 N at 75 mm against 1112 N at 150 mm.
  test('basis 2.8: 92.2 against 166.8 N-m, .552', () => {
    const toNm = 0.1129848;
    const Mr = rightingMoment({ W: 1229 / 4.4482216, x: 75 / 25.4 }).value;
    const Mo = overturningMoment({ P: 1112 / 4.4482216, y: 150 / 25.4 }).value;
    within(Mr * toNm, 92.2, 0.005);
    within(Mo * toNm, 166.8, 0.005);
    within(tippingFactor({ Mr, Mo }).value, 0.552, 0.005);
  });

  test('the ratio stops at 9.99', () => {
    expect(tippingRatio({ FSmin: 1.5, Mr: 1, Mo: 1000 }).value).toBe(TIPS_ALONE_RATIO);
  });
});

describe('tipping of a loose slab', () => {
  // Hand: the back edge lies 6.5 in past the wall, farther than the front: 290 x 2.5 = 725 lb-in against
  // 250 x 6.375 = 1593.75 lb-in; 1.5 x 1593.75 / 725 = 3.297.
  test('the bar top of basis 2.1 tips first over the back of its wall', () => {
    const [check] = runCheckCase(tipping, {
      says: 'basis 2.1',
      job: barTop(6),
      meshSizeIn: 3,
      level: 'change',
      ratio: { near: 3.297, within: 0.001 },
    });
    expect(check?.needs).toEqual(['tie', 'corbel', 'support']);
    expect(check?.words).toBe('It turns over under 250 lbf 6-3/8 in past the face of the support.');
  });

  // Exact: the middle of 18 in lies 1 in outside a wall that starts 10 in from the front.
  test('basis 2.3: with 10 in out it tips under its own weight, 1 in past the wall', () => {
    const [check] = runCheckCase(tipping, {
      says: 'basis 2.3',
      job: barTop(10),
      meshSizeIn: 3,
      level: 'change',
      ratio: { near: TIPS_ALONE_RATIO, within: 1e-9 },
    });
    expect(check?.words).toContain('1 in past the outer face');
  });

  test('E1 turns over under its own weight, 2-1/4 in past the wall', () => {
    const [check] = runCheckCase(tipping, {
      says: 'E1',
      job: LEDGE_E1(),
      meshSizeIn: 3,
      level: 'change',
      ratio: { near: TIPS_ALONE_RATIO, within: 1e-9 },
    });
    expect(check?.words).toContain('2-1/4 in past');
  });

  // E4: 50.3 lb, 8 in; 50 psf on 2 in of edge: 13.9 lb-in; leaning lies over the pier's face.
  test('E2, E3 and E4 stay down', () => {
    for (const job of [COUNTER_E2(), HEARTH_E3()]) {
      runCheckCase(tipping, {
        says: job.id,
        job,
        meshSizeIn: 3,
        level: 'holds',
        ratio: { from: 0, to: 0.05 },
      });
    }
    runCheckCase(tipping, {
      says: 'E4',
      job: CAP_E4(),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: (1.5 * (50 / 144) * 40 * 1) / (50.347 * 8), within: 0.001 },
    });
  });

  // Hand: 80.56 x 6 = 483.3 lb-in; P x 3.875 lb-in; 1.5 is reached at P = 83.15 lb.
  test('83 lbf leaves 1.5 against tipping, 83.5 lbf does not', () => {
    runCheckCase(tipping, {
      says: '83 lbf',
      job: shelf(83),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 0.9982, within: 0.0005 },
    });
    const [check] = runCheckCase(tipping, {
      says: '83.5 lbf',
      job: shelf(83.5),
      meshSizeIn: 2,
      level: 'change',
      ratio: { near: 1.0042, within: 0.0005 },
    });
    expect(check?.words).toContain('safety factor 1.49, 1.5 is wanted');
  });

  // Hand: 483.3 lb x 4 in = 1933 lb-in; leaning 200 x 4 = 800; 50 psf on 144 x 6 in, 3 in out: 900 lb-in; 1.5 x 900 / 1933.
  test('a crowd along 12 ft of 6 in overhang tips more than one person does', () => {
    const job = jobOf({
      corners: rectangle(144, 20),
      thicknessIn: 2,
      supports: [wallAlongX('wall', 0, 144, 13, 14)],
    });
    const [check] = runCheckCase(tipping, {
      says: 'a crowd',
      job,
      meshSizeIn: 3,
      level: 'holds',
      ratio: { near: 0.6983, within: 0.001 },
    });
    expect(check?.words).toContain('50 psf along the overhang');
  });

  // The cap E4 bedded, turned by 53.13 degrees (3-4-5) about its corner: the same statics, and the engine must find so too.
  test('a cap turned in plan stays down as it does square', () => {
    const turned = ({ xIn, yIn }: { xIn: number; yIn: number }) => ({
      xIn: 0.6 * xIn - 0.8 * yIn,
      yIn: 0.8 * xIn + 0.6 * yIn,
    });
    const bed = [
      { xIn: 2, yIn: 2 },
      { xIn: 18, yIn: 2 },
      { xIn: 18, yIn: 18 },
      { xIn: 2, yIn: 18 },
    ];
    const job = jobOf({
      use: 'cap',
      corners: rectangle(20, 20).map(turned),
      thicknessIn: 1.5,
      loads: { roving: { setting: 'leaning' } },
      supports: [{ kind: 'full-bed', id: 'bed', corners: bed.map(turned) }],
    });
    runCheckCase(tipping, {
      says: 'turned cap',
      job,
      meshSizeIn: 3,
      level: 'holds',
      ratio: { near: (1.5 * (50 / 144) * 40 * 1) / (50.347 * 8), within: 0.001 },
    });
    const analysis = analyse(job, { meshSizeIn: 3 });
    const contactsX = analysis.contacts.map(({ at }) => 0.6 * at.xIn + 0.8 * at.yIn);
    expect(Math.min(...contactsX)).toBeCloseTo(2, 4);
    expect(Math.max(...contactsX)).toBeCloseTo(18, 4);
  });

  test('a slab that the plate engine turns over fails, however safe it is by statics and whatever ties it', () => {
    const job = shelf(20);
    const analysis = analyse(job, { meshSizeIn: 3 });
    const found = (stability: Partial<typeof analysis.stability>) => {
      const turned = { ...analysis, stability: { ...analysis.stability, ...stability } };
      const [check] = tipping.run({ job, analysis: turned, limits: DEFAULT_LIMITS });
      return { level: check!.level, ratio: check!.ratio };
    };
    expect(found({})).toEqual({ level: 'holds', ratio: expect.closeTo(20 / 83.3, 2) });
    // common practice, no source: a load case that turns it over counts as no safety at all, 1.5 wanted over 1
    expect(found({ kind: 'tips-under-load' })).toEqual({ level: 'change', ratio: 1.5 });
    expect(found({ kind: 'tips-alone' })).toEqual({ level: 'change', ratio: TIPS_ALONE_RATIO });
    expect(found({ kind: 'tips-under-load', tied: true })).toEqual({ level: 'change', ratio: 1.5 });
    expect(found({ tied: true })).toEqual({ level: 'holds', ratio: 0 });
  });

  test('a tied ledge only informs, and points to its ties', () => {
    const job = jobOf({
      use: 'bar-ledge',
      corners: rectangle(96, 17.5),
      thicknessIn: 1.5,
      supports: [wallAlongX('wall', 0, 96, 13.75, 5.5, { hold: { kind: 'tied', ratingLbf: 2000 } })],
    });
    const [check] = runCheckCase(tipping, {
      says: 'tied',
      job,
      meshSizeIn: 3,
      level: 'holds',
      ratio: { from: 0, to: 0 },
    });
    expect(check?.words).toContain('Its ties hold it down; loose it would tip off under its own weight.');
    expect(check?.cautions[0]).toContain('Adhesive, mortar and grout');
  });

  // Edge of validity: no live load at all, weight well inside; 80.56 lb, 2 in off the middle of a 16 in wall.
  test('a shelf without any load cannot tip, and its wall is pressed within the middle third', () => {
    const job = shelf(0);
    const [check] = runCheckCase(tipping, {
      says: 'no load',
      job,
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0, to: 0 },
    });
    expect(check?.words).toContain('cannot tip');
    const qmax = check?.workings.find(({ symbol }) => symbol === 'qmax')?.value ?? Number.NaN;
    within(qmax, (80.556 / 24 / 16) * (1 + (6 * 2) / 16), 0.001);
  });
});
