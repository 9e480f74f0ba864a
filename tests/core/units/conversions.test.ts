import { describe, expect, test } from 'vitest';
import {
  F_PER_C,
  FREEZING_F,
  IN2_PER_FT2,
  IN3_PER_FT3,
  KG_PER_LB,
  KG_PER_M3_PER_PCF,
  KPA_PER_PSF,
  L_PER_IN3,
  MM_PER_IN,
  MPA_PER_PSI,
  N_M_PER_LBF_IN,
  N_PER_LBF,
  N_PER_MM_PER_LBF_PER_IN,
  N_PER_MM3_PER_LBF_PER_IN3,
} from '../../../src-core/units';

describe('conversion factors', () => {
  // Exact by definition: NIST SP 811 (2008), Appendix B.8 (printed in bold there).
  test('an inch is 25.4 mm and a pound 0.45359237 kg', () => {
    expect(MM_PER_IN).toBe(25.4);
    expect(KG_PER_LB).toBe(0.45359237);
    expect([FREEZING_F, F_PER_C]).toEqual([32, 1.8]);
  });

  // NIST SP 811 (2008), Appendix B.8, seven digits as printed there.
  test.each([
    ['pound-force to newton', N_PER_LBF, 4.448222],
    ['psi to kilopascal', MPA_PER_PSI * 1000, 6.894757],
    ['psf to pascal', KPA_PER_PSF * 1000, 47.88026],
    ['pound a cubic foot to kilogram a cubic metre', KG_PER_M3_PER_PCF, 16.01846],
    ['pound a cubic inch to kilogram a cubic metre', KG_PER_M3_PER_PCF * IN3_PER_FT3, 27679.9],
    ['pound-force inch to newton metre', N_M_PER_LBF_IN, 0.1129848],
    ['pound-force an inch to newton a metre', N_PER_MM_PER_LBF_PER_IN * 1000, 175.1268],
    ['pound-force a foot to newton a metre', (N_PER_MM_PER_LBF_PER_IN * 1000) / 12, 14.5939],
    ['cubic inch to litre', L_PER_IN3, 0.01638706],
    ['cubic foot to litre', L_PER_IN3 * IN3_PER_FT3, 28.31685],
    ['square foot to square metre', (MM_PER_IN ** 2 * IN2_PER_FT2) / 1e6, 0.09290304],
  ])('%s agrees with the printed factor to seven digits', (_name, factor, printed) => {
    expect(Number(factor.toPrecision(7))).toBe(printed);
  });

  test('a bed of 1 lbf/in3 is 271.4 kN/m3 by its own arithmetic', () => {
    // 4.448222 N / (0.0254 m)^3 = 271 447 N/m3, from the two printed factors above.
    expect(N_PER_MM3_PER_LBF_PER_IN3 * 1e6).toBeCloseTo(4.448222 / 0.0254 ** 3 / 1000, 3);
  });
});
