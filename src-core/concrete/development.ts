import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Straight development length of a #6 or smaller bar with cover >= db and clear spacing >= 2 db, before the least
 * length, in. fy, fc: psi (root of fc to 100 psi, 25.4.1.4); db: in; psit: 1.3 over 12 in of fresh concrete, else 1;
 * psie: 1 bare, to 1.5 epoxy coated; psig: see `gradeFactorRatio`. ACI 318-19 Table 25.4.2.3.
 */
export const clearBarLength = formula<Symbols<'fy' | 'psit' | 'psie' | 'psig' | 'lambda' | 'fc' | 'db'>>({
  symbol: 'ld0',
  label: 'length in which a bar with room around it takes hold, before the least length',
  formula: 'fy * psit * psie * psig / (25 * lambda * min(100, sqrt(fc))) * db',
  units: { fy: 'psi', psit: '', psie: '', psig: '', lambda: '', fc: 'psi', db: 'in' },
  unit: 'in',
  source: 'ACI 318-19 Table 25.4.2.3',
  compute: ({ fy, psit, psie, psig, lambda, fc, db }) =>
    ((fy * psit * psie * psig) / (25 * lambda * Math.min(100, Math.sqrt(fc)))) * db,
});

/**
 * The same where cover or clear spacing is less (the "other cases" row), in. Symbols as in `clearBarLength`.
 * ACI 318-19 Table 25.4.2.3.
 */
export const tightBarLength = formula<Symbols<'fy' | 'psit' | 'psie' | 'psig' | 'lambda' | 'fc' | 'db'>>({
  symbol: 'ld0',
  label: 'length in which a bar with little room around it takes hold, before the least length',
  formula: '3 * fy * psit * psie * psig / (50 * lambda * min(100, sqrt(fc))) * db',
  units: { fy: 'psi', psit: '', psie: '', psig: '', lambda: '', fc: 'psi', db: 'in' },
  unit: 'in',
  source: 'ACI 318-19 Table 25.4.2.3',
  compute: ({ fy, psit, psie, psig, lambda, fc, db }) =>
    ((3 * fy * psit * psie * psig) / (50 * lambda * Math.min(100, Math.sqrt(fc)))) * db,
});

/** Development length of a bar, in. ld0: from `clearBarLength` or `tightBarLength`, in. ACI 318-19 25.4.2.1. */
export const barDevelopment = formula<Symbols<'ld0'>>({
  symbol: 'ld',
  label: 'length in which a bar takes hold',
  formula: 'max(12, ld0)',
  units: { ld0: 'in' },
  unit: 'in',
  source: 'ACI 318-19 25.4.2.1',
  compute: ({ ld0 }) => Math.max(12, ld0),
});

/** Lap of bars in tension (class B), in. ld0: length before the least length, in. ACI 318-19 Table 25.5.2.1. */
export const barLap = formula<Symbols<'ld0'>>({
  symbol: 'lst',
  label: 'lap of two bars',
  formula: 'max(12, 1.3 * ld0)',
  units: { ld0: 'in' },
  unit: 'in',
  source: 'ACI 318-19 Table 25.5.2.1 (class B)',
  compute: ({ ld0 }) => Math.max(12, 1.3 * ld0),
});

/** Factor for the strength of concrete on hooks (a ratio). fc: psi. ACI 318-19 Table 25.4.3.2. */
export const hookStrengthFactor = formula<Symbols<'fc'>>({
  symbol: 'psic',
  label: 'factor for the strength of the concrete on hooks',
  formula: 'min(1, fc / 15000 + 0.6)',
  units: { fc: 'psi' },
  unit: '',
  source: 'ACI 318-19 Table 25.4.3.2',
  compute: ({ fc }) => Math.min(1, fc / 15_000 + 0.6),
});

/**
 * Development length of a standard hook before the least lengths, in. fy, fc: psi; db: in; psie: 1 bare, 1.2 coated;
 * psir: 1 where hooks are 6 db apart or tied, else 1.6; psio: 1 with 6 db side cover, else 1.25; psic: see
 * `hookStrengthFactor`. ACI 318-19 25.4.3.1(a).
 */
export const hookLength = formula<Symbols<'fy' | 'psie' | 'psir' | 'psio' | 'psic' | 'lambda' | 'fc' | 'db'>>(
  {
    symbol: 'ldh0',
    label: 'length in which a hook takes hold, before the least lengths',
    formula: 'fy * psie * psir * psio * psic / (55 * lambda * min(100, sqrt(fc))) * db^1.5',
    units: { fy: 'psi', psie: '', psir: '', psio: '', psic: '', lambda: '', fc: 'psi', db: 'in' },
    unit: 'in',
    source: 'ACI 318-19 25.4.3.1(a)',
    compute: ({ fy, psie, psir, psio, psic, lambda, fc, db }) =>
      ((fy * psie * psir * psio * psic) / (55 * lambda * Math.min(100, Math.sqrt(fc)))) * db ** 1.5,
  },
);

/** Development length of a standard hook, in. ldh0: from `hookLength`, in; db: in. ACI 318-19 25.4.3.1. */
export const hookDevelopment = formula<Symbols<'ldh0' | 'db'>>({
  symbol: 'ldh',
  label: 'length in which a hook takes hold',
  formula: 'max(ldh0, 8 * db, 6)',
  units: { ldh0: 'in', db: 'in' },
  unit: 'in',
  source: 'ACI 318-19 25.4.3.1',
  compute: ({ ldh0, db }) => Math.max(ldh0, 8 * db, 6),
});

/**
 * Factor for bars above grade 60 in straight development (a ratio); grades between the printed ones take the higher.
 * ACI 318-19 Table 25.4.2.5 prints 1.0 to grade 60, 1.15 at 80, 1.3 at 100.
 */
export function gradeFactorRatio(yieldPsi: number): number {
  if (yieldPsi <= 60_000) return 1;
  return yieldPsi <= 80_000 ? 1.15 : 1.3;
}
