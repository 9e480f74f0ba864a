import { describe, expect, test } from 'vitest';
import type { Cement } from '../../../src-core/concrete';
import {
  ageOfRatio,
  crackingMoment,
  elasticModulusAtAge,
  equivalentAgeOf,
  GAIN_CONSTANTS,
  gainRatio,
  maturityOf,
  modulusOfRupture,
  plainStrength,
  spellEquivalentAge,
  strengthAtAge,
} from '../../../src-core/concrete';
import { expectWithin } from './within';

const curve = (cement: Cement) => ({ a: GAIN_CONSTANTS[cement].aDays, b: GAIN_CONSTANTS[cement].bRatio });
const ratio = (cement: Cement, t: number) => gainRatio({ t, ...curve(cement) }).value;

describe('strength by day', () => {
  // ACI 209R-92 Table 2.2.1, from memory.
  test('basis 10.1: ordinary cement has .206 of its strength at 1 d, .704 at 7 d, 1.007 at 28 d', () => {
    expectWithin(ratio('ordinary', 1), 0.2062, 2e-3);
    expectWithin(ratio('ordinary', 3), 0.458, 2e-3);
    expectWithin(ratio('ordinary', 7), 0.7035, 2e-3);
    expectWithin(ratio('ordinary', 14), 0.8805, 2e-3);
    expectWithin(ratio('ordinary', 28), 1.0072, 2e-3);
  });

  // ACI 209R-92 Table 2.2.1, from memory.
  test('basis 10.2: rapid cement has .311 of its strength at 1 d, .801 at 7 d, .998 at 28 d', () => {
    expectWithin(ratio('rapid', 1), 0.3106, 2e-3);
    expectWithin(ratio('rapid', 3), 0.593, 2e-3);
    expectWithin(ratio('rapid', 7), 0.801, 2e-3);
    expectWithin(ratio('rapid', 28), 0.998, 2e-3);
  });

  // ACI 209R-92 eq. 2-1 turned round.
  test('basis 10.3: 70 and 75 % are there after 6.9 and 8.3 d, with rapid cement after 4.5 and 5.6 d', () => {
    expectWithin(ageOfRatio({ r: 0.7, ...curve('ordinary') }).value, 6.91, 5e-3);
    expectWithin(ageOfRatio({ r: 0.75, ...curve('ordinary') }).value, 8.28, 5e-3);
    expectWithin(ageOfRatio({ r: 0.7, ...curve('rapid') }).value, 4.52, 5e-3);
    expectWithin(ageOfRatio({ r: 0.75, ...curve('rapid') }).value, 5.56, 5e-3);
  });

  // ASTM C1074 (Nurse-Saul), constants from memory.
  test('basis 10.4: 3 d at 20 deg C and 2 d at 10 deg C make 1920 degree hours, 3120 above -10', () => {
    const spells = [
      { temperatureC: 20, durationDays: 3 },
      { temperatureC: 10, durationDays: 2 },
    ];
    expect(maturityOf(spells).maturityDegCHours).toBe(1920);
    expect(maturityOf(spells, -10).maturityDegCHours).toBe(3120);
    expect(maturityOf([{ temperatureC: -5, durationDays: 2 }]).maturityDegCHours).toBe(0);
  });

  // ASTM C1074 (equivalent age), constants from memory.
  test('basis 10.5: a day at 10 deg C is worth .55 d, at 30 deg C 1.76 d; 3 d at 10 deg C are 1.64 d', () => {
    const dayAt = (Ta: number) => spellEquivalentAge({ Q: 5000, Ta, Ts: 20, dt: 1 }).value;
    expectWithin(dayAt(10), 0.5475, 3e-3);
    expectWithin(dayAt(30), 1.755, 3e-3);
    expectWithin(equivalentAgeOf([{ temperatureC: 10, durationDays: 3 }]).equivalentAgeDays, 1.64, 3e-3);
  });

  // ACI 209R-92 with ACI 318-19 14.5.2.1 and 19.2.3.1.
  test('basis 10.6: a 2 in slab of 4000 psi has 1832 psi after 3 d and cracks at 2568 lbf in a foot', () => {
    const { strengthPsi: fc } = strengthAtAge({ f28Psi: 4000, ageDays: 3, cement: 'ordinary' });
    expectWithin(fc, 1832, 3e-3);
    expectWithin(12 * plainStrength({ phi: 0.6, lambda: 1, fc, h: 2 }).value, 1027, 3e-3);
    const fr = modulusOfRupture({ fc, lambda: 1 }).value;
    expectWithin(12 * crackingMoment({ fr, h: 2 }).value, 2568, 3e-3);
  });

  test('stiffness grows with the root of strength: a quarter of the strength, half the stiffness', () => {
    expectWithin(elasticModulusAtAge({ Ec: 3.6e6, fct: 1000, f28: 4000 }).value, 1.8e6, 1e-12);
  });

  test('growth after 28 d is not counted, and there is no strength at the pour or before it', () => {
    const at = (ageDays: number) => strengthAtAge({ f28Psi: 4000, ageDays, cement: 'ordinary' }).strengthPsi;
    expect(at(365)).toBe(4000);
    expect(at(0)).toBe(0);
    expect(at(-2)).toBe(0);
  });

  test('three days at 10 deg C leave ordinary concrete at 1217 psi, below 10 deg C it is marked cold', () => {
    const cool = strengthAtAge({ f28Psi: 4000, ageDays: 3, cement: 'ordinary', temperatureC: 10 });
    // te = 3 x .54750 = 1.6425 d; 4000 x 1.6425 / (4 + .85 x 1.6425) = 1217.5 psi.
    expectWithin(cool.strengthPsi, 1217.5, 1e-3);
    expect(cool.isColdCured).toBe(false);
    const cold = strengthAtAge({ f28Psi: 4000, ageDays: 3, cement: 'ordinary', temperatureC: 9.9 });
    expect(cold.isColdCured).toBe(true);
  });

  test('frozen concrete gains nothing', () => {
    const frozen = strengthAtAge({ f28Psi: 4000, ageDays: 14, cement: 'rapid', temperatureC: 0 });
    expect(frozen.strengthPsi).toBe(0);
    expect(frozen.equivalentAgeDays).toBe(0);
  });
});

describe('cylinder tests over the curve', () => {
  const mix = { f28Psi: 4000, cement: 'ordinary' } as const;
  const at = (ageDays: number, ...cylinderResults: { ageDays: number; strengthPsi: number }[]) =>
    strengthAtAge({ ...mix, ageDays, cylinderResults });

  test('the day of a test has the strength tested', () => {
    expect(at(7, { ageDays: 7, strengthPsi: 3500 })).toMatchObject({ strengthPsi: 3500, isTested: true });
    expect(at(7, { ageDays: 7, strengthPsi: 2000 }).strengthPsi).toBe(2000);
  });

  test('between tests the strength runs straight: 2000 psi at 3 d and 3200 at 7 d make 2600 at 5 d', () => {
    const tests = [
      { ageDays: 7, strengthPsi: 3200 },
      { ageDays: 3, strengthPsi: 2000 },
    ];
    expectWithin(at(5, ...tests).strengthPsi, 2600, 1e-12);
  });

  test('a poor test at 7 d lowers every day after it by the same share', () => {
    // Curve at 7 d: 2814.07 psi; 2000 is .71071 of it; so 28 d has 4000 x .71071 = 2842.9 psi.
    expectWithin(at(28, { ageDays: 7, strengthPsi: 2000 }).strengthPsi, 2842.9, 1e-4);
  });

  test('a good test at 7 d promises nothing more at 28 d, but strength does not fall back', () => {
    expect(at(28, { ageDays: 7, strengthPsi: 3500 }).strengthPsi).toBe(4000);
    expect(at(8, { ageDays: 7, strengthPsi: 3500 }).strengthPsi).toBe(3500);
  });

  test('before the first test the curve stands, lowered if that test is poor', () => {
    expectWithin(at(3, { ageDays: 7, strengthPsi: 3500 }).strengthPsi, 1832.06, 1e-4);
    expectWithin(at(3, { ageDays: 7, strengthPsi: 1407.04 }).strengthPsi, 916.03, 1e-4);
  });

  test('of two tests at one age the lower counts', () => {
    const pair = [
      { ageDays: 7, strengthPsi: 3000 },
      { ageDays: 7, strengthPsi: 2600 },
    ];
    expect(at(7, ...pair).strengthPsi).toBe(2600);
  });

  test('tests leave the pour day at nothing', () => {
    expect(at(0, { ageDays: 7, strengthPsi: 3000 })).toMatchObject({ strengthPsi: 0, isTested: false });
  });

  test('a test stands on frozen concrete after it, and says nothing of the days before', () => {
    const frozen = { ...mix, temperatureC: -5, cylinderResults: [{ ageDays: 7, strengthPsi: 900 }] };
    expect(strengthAtAge({ ...frozen, ageDays: 10 })).toMatchObject({ strengthPsi: 900, isTested: true });
    expect(strengthAtAge({ ...frozen, ageDays: 5 })).toMatchObject({ strengthPsi: 0, isTested: false });
  });

  test('a test of nothing is refused with its numbers', () => {
    expect(() => at(7, { ageDays: 0, strengthPsi: 3000 })).toThrow('3000 psi at 0 d');
  });
});
