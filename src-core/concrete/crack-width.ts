import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Stress of the steel in service, psi. n: ratio; M: service moment, lbf in an inch; d, kd: in; Icr: in4/in.
 * Transformed section, cracked and elastic.
 */
export const serviceSteelStress = formula<Symbols<'n' | 'M' | 'd' | 'kd' | 'Icr'>>({
  symbol: 'fs',
  label: 'stress of the steel in service',
  formula: 'n * M * (d - kd) / Icr',
  units: { n: '', M: 'lbf in/in', d: 'in', kd: 'in', Icr: 'in4/in' },
  unit: 'psi',
  source: 'transformed section, mechanics of materials',
  compute: ({ n, M, d, kd, Icr }) => (n * M * (d - kd)) / Icr,
});

/** Strain at the cracked face over that of the steel (a ratio). h, d, kd: in. ACI 224R-01, from memory. */
export const faceStrainRatio = formula<Symbols<'h' | 'd' | 'kd'>>({
  symbol: 'beta',
  label: 'strain at the face over strain of the steel',
  formula: '(h - kd) / (d - kd)',
  units: { h: 'in', d: 'in', kd: 'in' },
  unit: '',
  source: 'ACI 224R-01',
  fromMemory: true,
  compute: ({ h, d, kd }) => (h - kd) / (d - kd),
});

/**
 * Greatest crack width at the face, in. fs: service stress, Es: psi; beta: face strain ratio; dc: face to centre of
 * the nearest bar, in; s: spacing, in. Frosch (1999), as in ACI 224R-01, from memory.
 */
export const froschCrackWidth = formula<Symbols<'fs' | 'Es' | 'beta' | 'dc' | 's'>>({
  symbol: 'w',
  label: 'widest crack by Frosch',
  formula: '2 * fs / Es * beta * sqrt(dc^2 + (s / 2)^2)',
  units: { fs: 'psi', Es: 'psi', beta: '', dc: 'in', s: 'in' },
  unit: 'in',
  source: 'Frosch (1999), ACI 224R-01',
  fromMemory: true,
  compute: ({ fs, Es, beta, dc, s }) => ((2 * fs) / Es) * beta * Math.sqrt(dc ** 2 + (s / 2) ** 2),
});

/**
 * Most probable greatest crack width at the face, in. fs: service stress, psi; beta: face strain ratio; dc: face to
 * centre of the nearest bar, in; s: spacing, in. Gergely and Lutz (1968), as in ACI 224R-01, from memory.
 */
export const gergelyLutzCrackWidth = formula<Symbols<'fs' | 'beta' | 'dc' | 's'>>({
  symbol: 'w',
  label: 'widest crack by Gergely and Lutz',
  formula: '0.076 * beta * (fs / 1000) * cbrt(dc * 2 * dc * s) / 1000',
  units: { fs: 'psi', beta: '', dc: 'in', s: 'in' },
  unit: 'in',
  source: 'Gergely and Lutz (1968), ACI 224R-01',
  fromMemory: true,
  compute: ({ fs, beta, dc, s }) => (0.076 * beta * (fs / 1000) * Math.cbrt(dc * 2 * dc * s)) / 1000,
});
