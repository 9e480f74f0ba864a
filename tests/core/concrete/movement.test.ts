import { describe, expect, test } from 'vitest';
import {
  closeJointSpacing,
  restrainedStress,
  STANDARD_FINAL_SHRINKAGE_RATIO,
  shrinkageMovement,
  shrinkageStrain,
  THERMAL_EXPANSION_PER_DEG_C,
  THIN_TOP_SHRINKAGE_RATIO,
  thermalMovement,
  wideJointSpacing,
} from '../../../src-core/concrete';
import { expectWithin } from './within';

describe('movement of a top', () => {
  // ACI 209R-92 eq. 2-6, 2.4.1, from memory.
  test('basis 11.1: it has shrunk .167, .444, .720 and .9125 of the whole after 7, 28, 90 and 365 d', () => {
    const shrunkAt = (t: number) => shrinkageStrain({ epsu: STANDARD_FINAL_SHRINKAGE_RATIO, t }).value;
    expectWithin(shrunkAt(7) / STANDARD_FINAL_SHRINKAGE_RATIO, 0.167, 5e-3);
    expectWithin(shrunkAt(28) / STANDARD_FINAL_SHRINKAGE_RATIO, 0.444, 5e-3);
    expectWithin(shrunkAt(90) / STANDARD_FINAL_SHRINKAGE_RATIO, 0.72, 5e-3);
    expectWithin(shrunkAt(365) / STANDARD_FINAL_SHRINKAGE_RATIO, 0.9125, 5e-3);
    expectWithin(shrunkAt(7), 130e-6, 5e-3);
    expectWithin(shrunkAt(28), 347e-6, 5e-3);
    expectWithin(shrunkAt(90), 562e-6, 5e-3);
    expectWithin(shrunkAt(365), 712e-6, 5e-3);
  });

  // Common practice figure of 500 microstrain.
  test('basis 11.2: 96 in of thin top shortens by .048 in', () => {
    expectWithin(shrinkageMovement({ eps: THIN_TOP_SHRINKAGE_RATIO, L: 96 }).value, 0.048, 5e-3);
  });

  // ACI 209R-92, from memory: 5.5e-6 per deg F; 10e-6 per deg C is the round metric figure.
  test('basis 11.3: 50 deg F move 96 in by .0264 in; 28 deg C move 2440 mm by .683 mm', () => {
    const inches = thermalMovement({ alpha: THERMAL_EXPANSION_PER_DEG_C, dT: 50 / 1.8, L: 96 });
    expectWithin(inches.value, 0.0264, 5e-3);
    const metric = thermalMovement({ alpha: 10e-6, dT: 28, L: 2440 / 25.4 });
    expectWithin(metric.value * 25.4, 0.683, 5e-3);
  });

  // ACI 302.1R and 360R, from memory.
  test('basis 11.4: 2 in on a full bed takes joints every 48 to 72 in', () => {
    expect(closeJointSpacing({ h: 2 }).value).toBe(48);
    expect(wideJointSpacing({ h: 2 }).value).toBe(72);
  });

  // By hand: 3.6e6 .0005 / (1 + 2) = 600 psi, above the 474 psi at which 4000 psi concrete cracks.
  test('500 microstrain held at both ends pull 600 psi even with creep of 2', () => {
    expectWithin(restrainedStress({ Ec: 3.6e6, eps: 500e-6, phic: 2 }).value, 600, 1e-12);
  });
});
