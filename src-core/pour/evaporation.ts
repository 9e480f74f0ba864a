/** How fast fresh concrete dries at its surface. */
import { F_PER_C, FREEZING_F, KG_PER_LB, M_PER_S_PER_MPH, MM_PER_IN } from '../units';
import { formula } from '../workings';
import { MOST_DRYING_LB_FT2_H, WATCH_DRYING_LB_FT2_H } from './practice';
import type { Symbols } from './symbols';

/**
 * Evaporation from fresh concrete, lb/ft2/h. Tc, Ta: concrete and air, deg F; r: relative humidity, a ratio; V: wind half
 * a metre above the surface, mph. Good to about 40 % either way. Uno 1998, ACI Materials Journal 95-M34, after Menzel.
 */
export const evaporation = formula<Symbols<'Tc' | 'Ta' | 'r' | 'V'>>({
  symbol: 'E',
  label: 'evaporation at the surface',
  formula: 'max(0, (max(0, Tc)^2.5 - r * max(0, Ta)^2.5) * (1 + 0.4 * V) / 1000000)',
  units: { Tc: 'deg F', Ta: 'deg F', r: '', V: 'mph' },
  unit: 'lb/ft2/h',
  source: 'Uno 1998, ACI Materials Journal 95-M34; good to about 40 %',
  compute: ({ Tc, Ta, r, V }) =>
    Math.max(0, ((Math.max(0, Tc) ** 2.5 - r * Math.max(0, Ta) ** 2.5) * (1 + 0.4 * V)) / 1_000_000),
});

/**
 * The same in kg/m2/h as it is printed for SI, with rounded constants: about 4 % below the form above. Tc, Ta: deg C, not
 * below -18; r: a ratio; V: km/h. Uno 1998.
 */
export const evaporationSi = formula<Symbols<'Tc' | 'Ta' | 'r' | 'V'>>({
  symbol: 'E',
  label: 'evaporation at the surface, by the rounded SI form',
  formula: 'max(0, 5 * (max(0, Tc + 18)^2.5 - r * max(0, Ta + 18)^2.5) * (V + 4) / 1000000)',
  units: { Tc: 'deg C', Ta: 'deg C', r: '', V: 'km/h' },
  unit: 'kg/m2/h',
  source: 'Uno 1998, ACI Materials Journal 95-M34; good to about 40 %',
  compute: ({ Tc, Ta, r, V }) =>
    Math.max(0, (5 * (Math.max(0, Tc + 18) ** 2.5 - r * Math.max(0, Ta + 18) ** 2.5) * (V + 4)) / 1_000_000),
});

/** Kilograms a square metre in a pound a square foot: 4.882 43. NIST SP 811 B.8. */
export const KG_PER_M2_PER_LB_FT2 = KG_PER_LB / ((12 * MM_PER_IN) / 1000) ** 2;
/** Kilometres an hour in a mile an hour: 1.609 344. Exact. NIST SP 811 B.8. */
export const KMH_PER_MPH = M_PER_S_PER_MPH * 3.6;

/** Degrees Fahrenheit. NIST SP 811 B.8. */
export function fahrenheit(tempC: number): number {
  return tempC * F_PER_C + FREEZING_F;
}

/** Below .1, from .1 to .2, and above .2 lb/ft2/h. */
export type DryingBand = 'slow' | 'watch' | 'act';

/** The band of an evaporation, lb/ft2/h: the method is too rough for decimals. */
export function dryingBand(rateLbFt2H: number): DryingBand {
  if (rateLbFt2H > MOST_DRYING_LB_FT2_H) return 'act';
  return rateLbFt2H < WATCH_DRYING_LB_FT2_H ? 'slow' : 'watch';
}
