import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Final drying shrinkage of a standard member, in/in. ACI 209R-92 2.4.1, from memory. */
export const STANDARD_FINAL_SHRINKAGE_RATIO = 780e-6;

/** Fair figure for the shrinkage of a thin top, in/in. Common practice, no source. */
export const THIN_TOP_SHRINKAGE_RATIO = 500e-6;

/** Thermal expansion of concrete, per deg C (5.5e-6 per deg F). ACI 209R-92, from memory. */
export const THERMAL_EXPANSION_PER_DEG_C = 9.9e-6;

/**
 * Drying shrinkage, in/in. epsu: final shrinkage, in/in; t: days after the end of seven days of moist curing.
 * ACI 209R-92 eq. 2-6, from memory.
 */
export const shrinkageStrain = formula<Symbols<'epsu' | 't'>>({
  symbol: 'eps',
  label: 'shrinkage so far',
  formula: 'epsu * t / (35 + t)',
  units: { epsu: 'in/in', t: 'd' },
  unit: 'in/in',
  source: 'ACI 209R-92 eq. 2-6',
  fromMemory: true,
  compute: ({ epsu, t }) => (epsu * t) / (35 + t),
});

/** Shortening of a free piece as it dries, in. eps: shrinkage, in/in; L: length, in. Arithmetic. */
export const shrinkageMovement = formula<Symbols<'eps' | 'L'>>({
  symbol: 'delta',
  label: 'shortening as it dries',
  formula: 'eps * L',
  units: { eps: 'in/in', L: 'in' },
  unit: 'in',
  source: 'arithmetic',
  compute: ({ eps, L }) => eps * L,
});

/** Change of length with temperature, in. alpha: per deg C; dT: deg C; L: in. Mechanics of materials. */
export const thermalMovement = formula<Symbols<'alpha' | 'dT' | 'L'>>({
  symbol: 'delta',
  label: 'change of length with temperature',
  formula: 'alpha * dT * L',
  units: { alpha: '1/deg C', dT: 'deg C', L: 'in' },
  unit: 'in',
  source: 'mechanics of materials',
  compute: ({ alpha, dT, L }) => alpha * dT * L,
});

/**
 * Tension in a piece that is held at both ends, psi. Ec: psi; eps: prevented strain, in/in; phic: creep coefficient
 * (a ratio, 0 for a sudden change). Age-adjusted modulus in its simplest form, from memory.
 */
export const restrainedStress = formula<Symbols<'Ec' | 'eps' | 'phic'>>({
  symbol: 'sigma',
  label: 'tension if both ends are held',
  formula: 'Ec * eps / (1 + phic)',
  units: { Ec: 'psi', eps: 'in/in', phic: '' },
  unit: 'psi',
  source: 'effective modulus, ACI 209R-92',
  fromMemory: true,
  compute: ({ Ec, eps, phic }) => (Ec * eps) / (1 + phic),
});

/**
 * Close joint spacing, in. h: thickness, in. Slabs on ground only, a hint for tops lying on a full bed; never for
 * spans. ACI 302.1R and 360R, from memory.
 */
export const closeJointSpacing = formula<Symbols<'h'>>({
  symbol: 'sj',
  label: 'close joint spacing',
  formula: '24 * h',
  units: { h: 'in' },
  unit: 'in',
  source: 'ACI 302.1R, 360R',
  fromMemory: true,
  compute: ({ h }) => 24 * h,
});

/** Wide joint spacing, in. h: thickness, in. As `closeJointSpacing`. ACI 302.1R and 360R, from memory. */
export const wideJointSpacing = formula<Symbols<'h'>>({
  symbol: 'sj',
  label: 'wide joint spacing',
  formula: '36 * h',
  units: { h: 'in' },
  unit: 'in',
  source: 'ACI 302.1R, 360R',
  fromMemory: true,
  compute: ({ h }) => 36 * h,
});
