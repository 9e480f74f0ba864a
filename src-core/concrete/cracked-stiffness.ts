import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Stiffness of steel over that of concrete (a ratio). Es, Ec: psi. Transformed section, any concrete text. */
export const modularRatio = formula<Symbols<'Es' | 'Ec'>>({
  symbol: 'n',
  label: 'stiffness of steel over that of concrete',
  formula: 'Es / Ec',
  units: { Es: 'psi', Ec: 'psi' },
  unit: '',
  source: 'transformed section, mechanics of materials',
  compute: ({ Es, Ec }) => Es / Ec,
});

/** Neutral axis of the cracked elastic section, in. n: ratio; As: in2/in; d: in. Transformed section. */
export const crackedDepth = formula<Symbols<'n' | 'As' | 'd'>>({
  symbol: 'kd',
  label: 'neutral axis of the cracked section in service',
  formula: 'sqrt((n * As)^2 + 2 * n * As * d) - n * As',
  units: { n: '', As: 'in2/in', d: 'in' },
  unit: 'in',
  source: 'transformed section, mechanics of materials',
  compute: ({ n, As, d }) => Math.sqrt((n * As) ** 2 + 2 * n * As * d) - n * As,
});

/** Second moment of the cracked section, in4 an inch of width. kd, d: in; n: ratio; As: in2/in. Transformed section. */
export const crackedInertia = formula<Symbols<'kd' | 'n' | 'As' | 'd'>>({
  symbol: 'Icr',
  label: 'second moment of area of the cracked section, an inch of width',
  formula: 'kd^3 / 3 + n * As * (d - kd)^2',
  units: { kd: 'in', n: '', As: 'in2/in', d: 'in' },
  unit: 'in4/in',
  source: 'transformed section, mechanics of materials',
  compute: ({ kd, n, As, d }) => kd ** 3 / 3 + n * As * (d - kd) ** 2,
});

/**
 * Second moment for deflection, in4 an inch of width: Ig up to 2/3 Mcr, less beyond. Ma: service moment and Mcr:
 * cracking moment, lbf in an inch; Icr, Ig: in4/in. Never above Ig. ACI 318-19 Table 24.2.3.5.
 */
export const effectiveInertia = formula<Symbols<'Icr' | 'Ig' | 'Mcr' | 'Ma'>>({
  symbol: 'Ie',
  label: 'second moment of area for deflection, an inch of width',
  formula: 'min(Ig, Icr / (1 - min(1, 2 / 3 * Mcr / Ma)^2 * (1 - Icr / Ig)))',
  units: { Icr: 'in4/in', Ig: 'in4/in', Mcr: 'lbf in/in', Ma: 'lbf in/in' },
  unit: 'in4/in',
  source: 'ACI 318-19 Table 24.2.3.5',
  compute: ({ Icr, Ig, Mcr, Ma }) =>
    Math.min(Ig, Icr / (1 - Math.min(1, ((2 / 3) * Mcr) / Ma) ** 2 * (1 - Icr / Ig))),
});

/**
 * Added long-term over immediate deflection under lasting load (a ratio). xi: time factor; rhoc: ratio of steel in
 * compression (0 where none). ACI 318-19 24.2.4.1.1.
 */
export const longTermFactor = formula<Symbols<'xi' | 'rhoc'>>({
  symbol: 'lambdaDelta',
  label: 'added sag under lasting load over the first sag',
  formula: 'xi / (1 + 50 * rhoc)',
  units: { xi: '', rhoc: '' },
  unit: '',
  source: 'ACI 318-19 24.2.4.1.1',
  compute: ({ xi, rhoc }) => xi / (1 + 50 * rhoc),
});

/** Time factor for lasting load (a ratio) by days under load. ACI 318-19 Table 24.2.4.1.3; a month is 365/12 d. */
const TIME_FACTORS = [
  { loadedDays: 3 * (365 / 12), xiRatio: 1.0 },
  { loadedDays: 6 * (365 / 12), xiRatio: 1.2 },
  { loadedDays: 12 * (365 / 12), xiRatio: 1.4 },
  { loadedDays: 60 * (365 / 12), xiRatio: 2.0 },
] as const;

/**
 * Time factor xi for a load that stays `loadedDays` (a ratio). Straight between the printed rows; below three months
 * the first row stands, which is on the safe side. ACI 318-19 Table 24.2.4.1.3.
 */
export function timeFactorRatio(loadedDays: number): number {
  let before: { readonly loadedDays: number; readonly xiRatio: number } = TIME_FACTORS[0];
  for (const row of TIME_FACTORS) {
    if (loadedDays <= row.loadedDays) {
      const span = row.loadedDays - before.loadedDays;
      if (span <= 0) return row.xiRatio;
      return before.xiRatio + ((row.xiRatio - before.xiRatio) * (loadedDays - before.loadedDays)) / span;
    }
    before = row;
  }
  return before.xiRatio;
}
