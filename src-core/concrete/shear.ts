import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Size effect on shear (a ratio). d: depth to the steel, in. ACI 318-19 22.5.5.1.3. */
export const sizeEffect = formula<Symbols<'d'>>({
  symbol: 'lambdas',
  label: 'size effect on shear',
  formula: 'min(1, sqrt(2 / (1 + d / 10)))',
  units: { d: 'in' },
  unit: '',
  source: 'ACI 318-19 22.5.5.1.3',
  compute: ({ d }) => Math.min(1, Math.sqrt(2 / (1 + d / 10))),
});

/** Steel over concrete area of the strip (a ratio). As: in2/in; d: in. ACI 318-19 2.2 (notation). */
export const steelRatio = formula<Symbols<'As' | 'd'>>({
  symbol: 'rhow',
  label: 'steel ratio',
  formula: 'As / d',
  units: { As: 'in2/in', d: 'in' },
  unit: '',
  source: 'ACI 318-19 2.2 (As / bw d)',
  compute: ({ As, d }) => As / d,
});

/**
 * Nominal one-way shear of a slab without stirrups, lbf an inch of width. lambdas: size effect; rhow: steel ratio;
 * fc: psi, its root counted to 100 psi (22.5.3.1); d: in. ACI 318-19 Table 22.5.5.1(c).
 */
export const oneWayShear = formula<Symbols<'lambdas' | 'lambda' | 'rhow' | 'fc' | 'd'>>({
  symbol: 'Vc',
  label: 'nominal one-way shear, an inch of width',
  formula: '8 * lambdas * lambda * cbrt(rhow) * min(100, sqrt(fc)) * d',
  units: { lambdas: '', lambda: '', rhow: '', fc: 'psi', d: 'in' },
  unit: 'lbf/in',
  source: 'ACI 318-19 Table 22.5.5.1(c)',
  compute: ({ lambdas, lambda, rhow, fc, d }) =>
    8 * lambdas * lambda * Math.cbrt(rhow) * Math.min(100, Math.sqrt(fc)) * d,
});

/** Design one-way shear, lbf an inch of width. phi: 0.75; Vc: lbf/in. ACI 318-19 7.5.1.1, 21.2.1. */
export const designOneWayShear = formula<Symbols<'phi' | 'Vc'>>({
  symbol: 'phiVn',
  label: 'one-way shear the strip may carry, an inch of width',
  formula: 'phi * Vc',
  units: { phi: '', Vc: 'lbf/in' },
  unit: 'lbf/in',
  source: 'ACI 318-19 7.5.1.1, 21.2.1',
  compute: ({ phi, Vc }) => phi * Vc,
});

/**
 * Punching stress without shear steel, psi. beta: long over short side of the patch; alphas: 40 inside, 30 at an
 * edge, 20 at a corner; d: in; bo: critical perimeter, in; fc: psi, its root counted to 100 psi (22.6.3.1).
 * ACI 318-19 Table 22.6.5.2.
 */
export const punchingStress = formula<Symbols<'beta' | 'alphas' | 'd' | 'bo' | 'lambdas' | 'lambda' | 'fc'>>({
  symbol: 'vc',
  label: 'shear stress at which a patch punches through',
  formula: 'min(4, 2 + 4 / beta, 2 + alphas * d / bo) * lambdas * lambda * min(100, sqrt(fc))',
  units: { beta: '', alphas: '', d: 'in', bo: 'in', lambdas: '', lambda: '', fc: 'psi' },
  unit: 'psi',
  source: 'ACI 318-19 Table 22.6.5.2',
  compute: ({ beta, alphas, d, bo, lambdas, lambda, fc }) =>
    Math.min(4, 2 + 4 / beta, 2 + (alphas * d) / bo) * lambdas * lambda * Math.min(100, Math.sqrt(fc)),
});

/** Design punching strength, lbf. phi: 0.75; vc: psi; bo, d: in. ACI 318-19 8.5.1.1, 22.6.1.2. */
export const punchingStrength = formula<Symbols<'phi' | 'vc' | 'bo' | 'd'>>({
  symbol: 'phiVn',
  label: 'load that a patch may carry before it punches through',
  formula: 'phi * vc * bo * d',
  units: { phi: '', vc: 'psi', bo: 'in', d: 'in' },
  unit: 'lbf',
  source: 'ACI 318-19 8.5.1.1, 22.6.1.2',
  compute: ({ phi, vc, bo, d }) => phi * vc * bo * d,
});

/**
 * Bearing strength of concrete under a plate or foot, lbf. phi: 0.65; fc: psi; A1: loaded area, in2; A2: base of
 * the widest frustum of slope 1:2 within the concrete, in2 (equal to A1 where no spread is claimed).
 * ACI 318-19 Table 22.8.3.2.
 */
export const concreteBearing = formula<Symbols<'phi' | 'fc' | 'A1' | 'A2'>>({
  symbol: 'phiBn',
  label: 'load the concrete carries in bearing',
  formula: 'phi * 0.85 * fc * A1 * min(2, sqrt(A2 / A1))',
  units: { phi: '', fc: 'psi', A1: 'in2', A2: 'in2' },
  unit: 'lbf',
  source: 'ACI 318-19 Table 22.8.3.2',
  compute: ({ phi, fc, A1, A2 }) => phi * 0.85 * fc * A1 * Math.min(2, Math.sqrt(A2 / A1)),
});
