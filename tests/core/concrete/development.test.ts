import { describe, expect, test } from 'vitest';
import {
  barDevelopment,
  barLap,
  clearBarLength,
  deformedMeshDevelopment,
  deformedMeshFactor,
  gradeFactorRatio,
  hookDevelopment,
  hookLength,
  hookStrengthFactor,
  plainMeshDevelopment,
  plainMeshLap,
  plainMeshLength,
  tightBarLength,
} from '../../../src-core/concrete';
import { expectWithin } from './within';

const bare = { fy: 60_000, psit: 1, psie: 1, psig: 1, lambda: 1, fc: 4000 };

describe('length in which bars take hold', () => {
  // ACI 318-19 Table 25.4.2.3, 25.4.2.1.
  test('basis 4.13: #3, #4 and #5 with room want 14.2, 19.0 and 23.7 in, half as much again where tight', () => {
    const clear = (db: number) => barDevelopment({ ld0: clearBarLength({ ...bare, db }).value }).value;
    const tight = (db: number) => barDevelopment({ ld0: tightBarLength({ ...bare, db }).value }).value;
    expectWithin(clear(0.375), 14.23, 1e-3);
    expectWithin(clear(0.5), 18.97, 1e-3);
    expectWithin(clear(0.625), 23.72, 1e-3);
    expectWithin(tight(0.375), 21.35, 1e-3);
    expectWithin(tight(0.5), 28.46, 1e-3);
    expectWithin(tight(0.625), 35.58, 1e-3);
  });

  // ACI 318-19 Table 25.5.2.1, class B.
  test('basis 4.13: two #3 lap 18.5 in', () => {
    expectWithin(barLap({ ld0: clearBarLength({ ...bare, db: 0.375 }).value }).value, 18.5, 1e-3);
  });

  test('no bar counts with less than 12 in', () => {
    const ld0 = clearBarLength({ ...bare, fy: 40_000, db: 0.375 }).value;
    expect(ld0).toBeLessThan(12);
    expect(barDevelopment({ ld0 }).value).toBe(12);
  });

  // ACI 318-19 25.4.3.1, Table 25.4.3.2.
  test('basis 4.14: a #3 hook works out at 3.43 in and takes the least of 6, or 6.87 in crowded with little cover', () => {
    const psic = hookStrengthFactor({ fc: 4000 }).value;
    const hook = (psir: number, psio: number) => {
      const length = { fy: 60_000, psie: 1, psir, psio, psic, lambda: 1, fc: 4000, db: 0.375 };
      return hookLength(length).value;
    };
    expectWithin(hook(1, 1), 3.43, 2e-3);
    expect(hookDevelopment({ ldh0: hook(1, 1), db: 0.375 }).value).toBe(6);
    expectWithin(hookDevelopment({ ldh0: hook(1.6, 1.25), db: 0.375 }).value, 6.87, 2e-3);
  });

  test('the concrete factor on hooks reaches 1 at 6000 psi and stays there', () => {
    expectWithin(hookStrengthFactor({ fc: 6000 }).value, 1, 1e-12);
    expect(hookStrengthFactor({ fc: 8000 }).value).toBe(1);
    expectWithin(hookStrengthFactor({ fc: 3000 }).value, 0.8, 1e-12);
  });

  // ACI 318-19 Table 25.4.2.5.
  test('grade 60 counts 1, 500 MPa and grade 80 count 1.15, grade 100 counts 1.3', () => {
    expect([60_000, 72_500, 80_000, 100_000].map(gradeFactorRatio)).toEqual([1, 1.15, 1.15, 1.3]);
  });
});

describe('length in which mesh takes hold', () => {
  // ACI 318-19 25.4.7.2, 25.5.4.1, from memory.
  test('basis 4.15: W1.4 wires at 6 in want 0.65 in by strength, but 8 in to catch two cross wires', () => {
    const ld0 = plainMeshLength({ Ab: 0.014, s: 6, fy: 65_000, lambda: 1, fc: 4000 }).value;
    expectWithin(ld0, 0.6475, 2e-3);
    expect(plainMeshDevelopment({ ld0, sx: 6 }).value).toBe(8);
    expect(plainMeshLap({ ld0, sx: 6 }).value).toBe(8);
  });

  test('mesh at 2 in takes the least of 6 in, to hold and to lap', () => {
    expect(plainMeshDevelopment({ ld0: 1, sx: 2 }).value).toBe(6);
    expect(plainMeshLap({ ld0: 1, sx: 2 }).value).toBe(6);
  });

  // ACI 318-19 25.4.6, from memory; by hand: (70 - 35)/70 = .5 against 5 .2257/4 = .282.
  test('deformed D4 wires at 4 in want half the bar length, and 8 in at least', () => {
    const psiw = deformedMeshFactor({ fy: 70_000, db: 0.2257, s: 4 }).value;
    expectWithin(psiw, 0.5, 1e-12);
    expect(deformedMeshDevelopment({ ld0: 10, psiw }).value).toBe(8);
    expect(deformedMeshDevelopment({ ld0: 20, psiw }).value).toBe(10);
  });
});
