import { describe, expect, test } from 'vitest';
import {
  analyseSection,
  crackedDepth,
  crackedInertia,
  crackingMoment,
  crackSpacingLimit,
  effectiveInertia,
  faceStrainRatio,
  froschCrackWidth,
  gergelyLutzCrackWidth,
  grossInertia,
  longTermFactor,
  modularRatio,
  modulusOfRupture,
  serviceSteelStress,
  timeFactorRatio,
} from '../../../src-core/concrete';
import { expectWithin } from './within';

// The slab of rows 4.2, 4.10 and 4.12, a foot of it: 3 in, 4000 psi, #3 at 6 in, 2-1/16 in deep.
const As = 0.22 / 12;
const d = 2.0625;
const n = modularRatio({ Es: 29e6, Ec: 3.605e6 }).value;
const kd = crackedDepth({ n, As, d }).value;
const Icr = crackedInertia({ kd, n, As, d }).value;

describe('stiffness of a cracked slab', () => {
  // Transformed section; ACI 318-19 Table 24.2.3.5.
  test('basis 4.10: it drops from 27 to 4.63 in4 a foot', () => {
    expectWithin(n, 8.044, 3e-3);
    expectWithin(12 * Icr, 4.629, 3e-3);
    const section = analyseSection({
      thicknessIn: 3,
      strengthPsi: 4000,
      layers: [{ areaIn2PerIn: As, depthFromTopIn: 3 - d, yieldPsi: 60_000 }],
      tensionFace: 'top',
    });
    expectWithin(12 * (section?.crackedInertiaIn4PerIn ?? 0), 4.629, 3e-3);
  });

  test('basis 4.10: at 5000, 6000, 9000 and 12 000 lbf in a foot it is 27.0, 18.2, 6.92 and 5.69 in4', () => {
    const Ig = grossInertia({ h: 3 }).value;
    const Mcr = crackingMoment({ fr: modulusOfRupture({ fc: 4000, lambda: 1 }).value, h: 3 }).value;
    const at = (perFoot: number) => 12 * effectiveInertia({ Icr, Ig, Mcr, Ma: perFoot / 12 }).value;
    expectWithin(at(5000), 27, 1e-12);
    expectWithin(at(6000), 18.2, 3e-3);
    expectWithin(at(9000), 6.924, 3e-3);
    expectWithin(at(12_000), 5.69, 3e-3);
    expectWithin(at(0), 27, 1e-12);
  });

  test('it never counts as stiffer than the whole section, even if the steel alone would make it so', () => {
    expect(effectiveInertia({ Icr: 0.9, Ig: 0.6, Mcr: 200, Ma: 800 }).value).toBe(0.6);
  });

  // From memory: Nilson, Darwin & Dolan, Design of Concrete Structures, ch. 3: b 10, d 23, As 2.37 in2, n 8,
  // M 90 kip ft: kd 7.6 in, steel stress 22 200 psi.
  test('a 10 x 25 in beam under 90 kip ft works its steel to 22 200 psi', () => {
    const beam = { n: 8, As: 0.237, d: 23 };
    const axis = crackedDepth(beam).value;
    expectWithin(axis, 7.6, 5e-3);
    const inertia = crackedInertia({ ...beam, kd: axis }).value;
    const fs = serviceSteelStress({ n: 8, M: (90 * 12_000) / 10, d: 23, kd: axis, Icr: inertia }).value;
    expectWithin(fs, 22_200, 5e-3);
  });

  // ACI 318-19 24.2.4.1.1, Table 24.2.4.1.3.
  test('basis 4.11: five years add twice the first sag, 1.6 times it with 0.005 of compression steel', () => {
    const fiveYears = timeFactorRatio(5 * 365);
    expect(longTermFactor({ xi: fiveYears, rhoc: 0 }).value).toBe(2);
    expect(longTermFactor({ xi: fiveYears, rhoc: 0.005 }).value).toBe(1.6);
  });

  // ACI 318-19 Table 24.2.4.1.3.
  test('the time factor passes 1.0, 1.2, 1.4 and 2.0 at 3, 6, 12 and 60 months and stays within them', () => {
    const months = (count: number) => timeFactorRatio((count * 365) / 12);
    expect([3, 6, 12, 60].map((count) => Number(months(count).toFixed(9)))).toEqual([1, 1.2, 1.4, 2]);
    expectWithin(months(9), 1.3, 1e-9);
    expect(months(0)).toBe(1);
    expect(months(600)).toBe(2);
  });
});

describe('crack width', () => {
  // ACI 224R-01, from memory: Frosch (1999); Gergely and Lutz (1968).
  test('basis 4.12: at 36 ksi it is 0.0130 in by Frosch and 0.0100 in by Gergely and Lutz', () => {
    const beta = faceStrainRatio({ h: 3, d, kd }).value;
    expectWithin(beta, 1.662, 5e-3);
    const at = { fs: 36_000, beta, dc: 0.9375, s: 6 };
    expectWithin(froschCrackWidth({ ...at, Es: 29e6 }).value, 0.01297, 5e-3);
    expectWithin(gergelyLutzCrackWidth(at).value, 0.00997, 5e-3);
  });

  // ACI 318-19 Table 24.3.2; by hand at 40 ksi: 15 - 2.5 cc against 12, equal at 1.2 in of cover.
  test('bars at 40 ksi lie within 12 in, less where the cover passes 1.2 in', () => {
    expect(crackSpacingLimit({ fs: 40_000, cc: 0.75 }).value).toBe(12);
    expect(crackSpacingLimit({ fs: 40_000, cc: 2 }).value).toBe(10);
  });
});
