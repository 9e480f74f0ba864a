import { describe, expect, test } from 'vitest';
import { formPressure, formResultant, formUplift } from '../../../src-core/openings';
import { IN_PER_FT, KG_PER_M3_PER_PCF, KPA_PER_PSF, MM_PER_IN, N_PER_LBF } from '../../../src-core/units';
import { recompute, recomputeTolerance } from '../../support/recompute';

/** Standard gravity, m/s2, by definition (ISO 80000-3). */
const GRAVITY = 9.80665;

describe('pressure of wet concrete on an upright form', () => {
  test('24 kN/m3 at 600 mm of head gives 14.4 kPa at the foot and 4.32 kN/m along it (basis 8.8, ACI 347R)', () => {
    const w = 24_000 / GRAVITY / KG_PER_M3_PER_PCF;
    const h = 600 / MM_PER_IN;
    expect(formPressure.compute({ w, h }) * KPA_PER_PSF).toBeCloseTo(14.4, 3);
    const newtonPerMm = (formResultant.compute({ w, h }) * N_PER_LBF) / MM_PER_IN;
    expect(newtonPerMm).toBeCloseTo(4.32, 3);
  });

  test('150 pcf against a 4 in edge gives 50 psf and 8.33 lbf/ft, against 36 in 450 psf and 675 lbf/ft (basis 8.6)', () => {
    for (const [h, psf, plf] of [
      [4, 50, 8.3333],
      [36, 450, 675],
    ] as const) {
      expect(formPressure.compute({ w: 150, h })).toBeCloseTo(psf, 9);
      expect(formResultant.compute({ w: 150, h }) * IN_PER_FT).toBeCloseTo(plf, 3);
    }
  });

  test('its lines can be worked again by hand', () => {
    for (const { line } of [formPressure({ w: 150, h: 2.5 }), formResultant({ w: 150, h: 2.5 })]) {
      expect(Math.abs(recompute(line) - line.value)).toBeLessThanOrEqual(recomputeTolerance(line));
    }
  });
});

describe('uplift of a form in wet concrete', () => {
  test('a weightless knock-out of 20 x 16 x 2 in wholly under concrete pulls with 55.6 lbf (basis 8.7)', () => {
    expect(formUplift.compute({ w: 150, V: 20 * 16 * 2, Wo: 0 })).toBeCloseTo(55.56, 2);
  });

  test('one that weighs more than the concrete it displaces stays down', () => {
    expect(formUplift.compute({ w: 150, V: 640, Wo: 60 })).toBeLessThan(0);
  });
});
