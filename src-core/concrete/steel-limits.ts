import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Least steel of a slab, in2 an inch of width. h: thickness, in. ACI 318-19 7.6.1.1, 24.4.3.2. */
export const minimumSteel = formula<Symbols<'h'>>({
  symbol: 'Asmin',
  label: 'least steel, an inch of width',
  formula: '0.0018 * h',
  units: { h: 'in' },
  unit: 'in2/in',
  source: 'ACI 318-19 7.6.1.1, 24.4.3.2',
  compute: ({ h }) => 0.0018 * h,
});

/** Widest spacing of the bars that carry, in. h: thickness, in. ACI 318-19 7.7.2.3. */
export const maximumMainSpacing = formula<Symbols<'h'>>({
  symbol: 'smax',
  label: 'widest spacing of the bars that carry',
  formula: 'min(3 * h, 18)',
  units: { h: 'in' },
  unit: 'in',
  source: 'ACI 318-19 7.7.2.3',
  compute: ({ h }) => Math.min(3 * h, 18),
});

/** Widest spacing of bars against shrinkage, in. h: thickness, in. ACI 318-19 24.4.3.3. */
export const maximumShrinkageSpacing = formula<Symbols<'h'>>({
  symbol: 'smax',
  label: 'widest spacing of bars against shrinkage',
  formula: 'min(5 * h, 18)',
  units: { h: 'in' },
  unit: 'in',
  source: 'ACI 318-19 24.4.3.3',
  compute: ({ h }) => Math.min(5 * h, 18),
});

/**
 * Widest spacing that keeps cracks fine, in. fs: service stress of the steel, psi; cc: clear cover to the
 * tension face, in. ACI 318-19 Table 24.3.2.
 */
export const crackSpacingLimit = formula<Symbols<'fs' | 'cc'>>({
  symbol: 'smax',
  label: 'widest spacing that keeps cracks fine',
  formula: 'min(15 * 40000 / fs - 2.5 * cc, 12 * 40000 / fs)',
  units: { fs: 'psi', cc: 'in' },
  unit: 'in',
  source: 'ACI 318-19 Table 24.3.2',
  compute: ({ fs, cc }) => Math.min((15 * 40_000) / fs - 2.5 * cc, (12 * 40_000) / fs),
});
