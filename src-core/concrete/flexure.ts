import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Steel of one layer, in2 an inch of width. Ab: one bar or wire, in2; s: spacing, in. Arithmetic. */
export const steelPerWidth = formula<Symbols<'Ab' | 's'>>({
  symbol: 'As',
  label: 'steel area, an inch of width',
  formula: 'Ab / s',
  units: { Ab: 'in2', s: 'in' },
  unit: 'in2/in',
  source: 'arithmetic',
  compute: ({ Ab, s }) => Ab / s,
});

/** Depth of the stress block over the depth of the neutral axis (a ratio). fc: psi. ACI 318-19 22.2.2.4.3. */
export const beta1 = formula<Symbols<'fc'>>({
  symbol: 'beta1',
  label: 'depth of the compression block over that of the neutral axis',
  formula: 'min(0.85, max(0.65, 0.85 - 0.05 * (fc - 4000) / 1000))',
  units: { fc: 'psi' },
  unit: '',
  source: 'ACI 318-19 22.2.2.4.3',
  compute: ({ fc }) => Math.min(0.85, Math.max(0.65, 0.85 - (0.05 * (fc - 4000)) / 1000)),
});

/** Depth of the compression block when the steel yields, in. As: in2/in; fy, fc: psi. ACI 318-19 22.2.2.4.1. */
export const stressBlockDepth = formula<Symbols<'As' | 'fy' | 'fc'>>({
  symbol: 'a',
  label: 'depth of the compression block with the steel at yield',
  formula: 'As * fy / (0.85 * fc)',
  units: { As: 'in2/in', fy: 'psi', fc: 'psi' },
  unit: 'in',
  source: 'ACI 318-19 22.2.2.4.1',
  compute: ({ As, fy, fc }) => (As * fy) / (0.85 * fc),
});

/** Neutral axis from the compression block, in. a: block depth, in. ACI 318-19 22.2.2.4.1. */
export const neutralAxis = formula<Symbols<'a' | 'beta1'>>({
  symbol: 'c',
  label: 'neutral axis below the compressed face',
  formula: 'a / beta1',
  units: { a: 'in', beta1: '' },
  unit: 'in',
  source: 'ACI 318-19 22.2.2.4.1',
  compute: ({ a, beta1: ratio }) => a / ratio,
});

/** Depth of the compression block from the neutral axis, in. c: in. ACI 318-19 22.2.2.4.1. */
export const blockAboveAxis = formula<Symbols<'beta1' | 'c'>>({
  symbol: 'a',
  label: 'depth of the compression block',
  formula: 'beta1 * c',
  units: { beta1: '', c: 'in' },
  unit: 'in',
  source: 'ACI 318-19 22.2.2.4.1',
  compute: ({ beta1: ratio, c }) => ratio * c,
});

/**
 * Neutral axis of a layer that does not yield, in: the positive root of
 * 0.85 fc beta1 c^2 + 0.003 As Es c - 0.003 As Es d = 0. As: in2/in; d: in; Es, fc: psi. ACI 318-19 22.2.1, 22.2.2.
 */
export const neutralAxisUnyielded = formula<Symbols<'As' | 'Es' | 'd' | 'fc' | 'beta1'>>({
  symbol: 'c',
  label: 'neutral axis below the compressed face, steel below yield',
  formula:
    '(sqrt((0.003 * As * Es)^2 + 4 * 0.85 * fc * beta1 * 0.003 * As * Es * d) - 0.003 * As * Es) / (2 * 0.85 * fc * beta1)',
  units: { As: 'in2/in', Es: 'psi', d: 'in', fc: 'psi', beta1: '' },
  unit: 'in',
  source: 'ACI 318-19 22.2.1, 22.2.2 (strain compatibility)',
  compute: ({ As, Es, d, fc, beta1: ratio }) => {
    const block = 0.85 * fc * ratio;
    const pull = 0.003 * As * Es;
    return (Math.sqrt(pull ** 2 + 4 * block * pull * d) - pull) / (2 * block);
  },
});

/** Strain of steel at depth d when the concrete crushes, in/in. d, c: in. ACI 318-19 22.2.1.2, 22.2.2.1. */
export const steelStrain = formula<Symbols<'d' | 'c'>>({
  symbol: 'et',
  label: 'strain of the steel when the concrete crushes',
  formula: '0.003 * (d - c) / c',
  units: { d: 'in', c: 'in' },
  unit: 'in/in',
  source: 'ACI 318-19 22.2.1.2, 22.2.2.1',
  compute: ({ d, c }) => (0.003 * (d - c)) / c,
});

/** Strain at which the steel yields, in/in. fy, Es: psi. ACI 318-19 21.2.2.1. */
export const yieldStrain = formula<Symbols<'fy' | 'Es'>>({
  symbol: 'ety',
  label: 'strain at which the steel yields',
  formula: 'fy / Es',
  units: { fy: 'psi', Es: 'psi' },
  unit: 'in/in',
  source: 'ACI 318-19 21.2.2.1',
  compute: ({ fy, Es }) => fy / Es,
});

/**
 * Stress of steel at depth d, psi; steel in the compression zone counts nothing.
 * fy, Es: psi; d, c: in. ACI 318-19 20.2.2.1, 22.2.1.2.
 */
export const steelStress = formula<Symbols<'fy' | 'Es' | 'd' | 'c'>>({
  symbol: 'fs',
  label: 'stress of the steel',
  formula: 'min(fy, max(0, 0.003 * Es * (d - c) / c))',
  units: { fy: 'psi', Es: 'psi', d: 'in', c: 'in' },
  unit: 'psi',
  source: 'ACI 318-19 20.2.2.1, 22.2.1.2',
  compute: ({ fy, Es, d, c }) => Math.min(fy, Math.max(0, (0.003 * Es * (d - c)) / c)),
});

/** Nominal moment of one layer, lbf in an inch of width. As: in2/in; fs: psi; d, a: in. ACI 318-19 22.3. */
export const nominalMoment = formula<Symbols<'As' | 'fs' | 'd' | 'a'>>({
  symbol: 'Mn',
  label: 'nominal moment, an inch of width',
  formula: 'As * fs * (d - a / 2)',
  units: { As: 'in2/in', fs: 'psi', d: 'in', a: 'in' },
  unit: 'lbf in/in',
  source: 'ACI 318-19 22.3.1.1',
  compute: ({ As, fs, d, a }) => As * fs * (d - a / 2),
});

/** Strength reduction in bending (a ratio). et, ety: strain of the outermost steel and at yield. ACI 318-19 Table 21.2.2. */
export const phiFlexure = formula<Symbols<'et' | 'ety'>>({
  symbol: 'phi',
  label: 'strength reduction in bending',
  formula: 'min(0.9, max(0.65, 0.65 + 0.25 * (et - ety) / 0.003))',
  units: { et: 'in/in', ety: 'in/in' },
  unit: '',
  source: 'ACI 318-19 Table 21.2.2',
  compute: ({ et, ety }) => Math.min(0.9, Math.max(0.65, 0.65 + (0.25 * (et - ety)) / 0.003)),
});

/** Design moment, lbf in an inch of width. phi: ratio; Mn: lbf in an inch. ACI 318-19 7.5.1.1. */
export const designMoment = formula<Symbols<'phi' | 'Mn'>>({
  symbol: 'phiMn',
  label: 'moment the section may carry, an inch of width',
  formula: 'phi * Mn',
  units: { phi: '', Mn: 'lbf in/in' },
  unit: 'lbf in/in',
  source: 'ACI 318-19 7.5.1.1, 7.5.2.1',
  compute: ({ phi, Mn }) => phi * Mn,
});

/**
 * Moment that a thin top may count, with a caution, when its steel is not tension-controlled and this is at least
 * 4/3 of the factored moment; lbf in an inch of width. Common practice, no source; 0.65 is the factor of ACI 318-19
 * Table 21.2.2 for compression-controlled sections, and the code itself (7.3.3.1) refuses such a slab.
 */
export const cautiousMoment = formula<Symbols<'Mn'>>({
  symbol: 'Mthin',
  label: 'moment a thin top may count where the steel hardly yields, an inch of width',
  formula: '0.65 * Mn',
  units: { Mn: 'lbf in/in' },
  unit: 'lbf in/in',
  source: 'common practice, no source (outside ACI 318-19 7.3.3.1)',
  compute: ({ Mn }) => 0.65 * Mn,
});
