import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Moment that cracks the section, lbf in an inch of width. fr: modulus of rupture, psi; h: thickness, in.
 * ACI 318-19 24.2.3.5 (fr Ig / yt of a rectangle).
 */
export const crackingMoment = formula<Symbols<'fr' | 'h'>>({
  symbol: 'Mcr',
  label: 'moment that cracks the section, an inch of width',
  formula: 'fr * h^2 / 6',
  units: { fr: 'psi', h: 'in' },
  unit: 'lbf in/in',
  source: 'ACI 318-19 24.2.3.5 (fr Ig / yt of a rectangle)',
  compute: ({ fr, h }) => (fr * h ** 2) / 6,
});

/**
 * Service moment up to which the section is taken as uncracked, lbf in an inch of width.
 * Mcr: cracking moment, lbf in an inch. ACI 318-19 Table 24.2.3.5.
 */
export const plainCrackingLimit = formula<Symbols<'Mcr'>>({
  symbol: 'Mlim',
  label: 'service moment up to which it stays uncracked on paper, an inch of width',
  formula: '2 / 3 * Mcr',
  units: { Mcr: 'lbf in/in' },
  unit: 'lbf in/in',
  source: 'ACI 318-19 Table 24.2.3.5',
  compute: ({ Mcr }) => (2 / 3) * Mcr,
});

/**
 * Factored bending strength of plain concrete, lbf in an inch of width. phi: 0.60; fc: psi; h: thickness, in.
 * For information only: chapter 14 admits plain concrete where it is continuously supported, in arch action, or
 * as walls and pedestals (14.1.3), so an overhang or a span between legs is outside chapter 14.
 * ACI 318-19 14.5.2.1(a).
 */
export const plainStrength = formula<Symbols<'phi' | 'lambda' | 'fc' | 'h'>>({
  symbol: 'phiMn',
  label: 'factored strength of plain concrete in bending, an inch of width',
  formula: 'phi * 5 * lambda * sqrt(fc) * h^2 / 6',
  units: { phi: '', lambda: '', fc: 'psi', h: 'in' },
  unit: 'lbf in/in',
  source: 'ACI 318-19 14.5.2.1(a), 21.2.1',
  compute: ({ phi, lambda, fc, h }) => (phi * 5 * lambda * Math.sqrt(fc) * h ** 2) / 6,
});

/**
 * Factored one-way shear of plain concrete, lbf an inch of width. phi: 0.60; fc: psi; h: thickness, in.
 * ACI 318-19 Table 14.5.5.1(a), from memory.
 */
export const plainOneWayShear = formula<Symbols<'phi' | 'lambda' | 'fc' | 'h'>>({
  symbol: 'phiVn',
  label: 'factored one-way shear of plain concrete, an inch of width',
  formula: 'phi * 4 / 3 * lambda * sqrt(fc) * h',
  units: { phi: '', lambda: '', fc: 'psi', h: 'in' },
  unit: 'lbf/in',
  source: 'ACI 318-19 Table 14.5.5.1(a)',
  fromMemory: true,
  compute: ({ phi, lambda, fc, h }) => ((phi * 4) / 3) * lambda * Math.sqrt(fc) * h,
});

/**
 * Factored punching strength of plain concrete, lbf. phi: 0.60; fc: psi; beta: long over short side of the loaded
 * patch; bo: perimeter at h/2 from the patch, in; h: thickness, in. ACI 318-19 Table 14.5.5.1(b), (c), from memory.
 */
export const plainPunching = formula<Symbols<'phi' | 'lambda' | 'fc' | 'beta' | 'bo' | 'h'>>({
  symbol: 'phiVn',
  label: 'factored punching strength of plain concrete',
  formula: 'phi * min(1 + 2 / beta, 2) * 4 / 3 * lambda * sqrt(fc) * bo * h',
  units: { phi: '', lambda: '', fc: 'psi', beta: '', bo: 'in', h: 'in' },
  unit: 'lbf',
  source: 'ACI 318-19 Table 14.5.5.1(b), (c)',
  fromMemory: true,
  compute: ({ phi, lambda, fc, beta, bo, h }) =>
    ((phi * Math.min(1 + 2 / beta, 2) * 4) / 3) * lambda * Math.sqrt(fc) * bo * h,
});
