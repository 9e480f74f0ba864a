import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Tension at which concrete cracks in bending, psi. fc: cylinder strength, psi; lambda: 1 for normalweight.
 * ACI 318-19 19.2.3.1.
 */
export const modulusOfRupture = formula<Symbols<'fc' | 'lambda'>>({
  symbol: 'fr',
  label: 'tension at which the concrete cracks in bending',
  formula: '7.5 * lambda * sqrt(fc)',
  units: { fc: 'psi', lambda: '' },
  unit: 'psi',
  source: 'ACI 318-19 19.2.3.1',
  compute: ({ fc, lambda }) => 7.5 * lambda * Math.sqrt(fc),
});

/** Stiffness of normalweight concrete, psi. fc: cylinder strength, psi. ACI 318-19 19.2.2.1(b). */
export const elasticModulus = formula<Symbols<'fc'>>({
  symbol: 'Ec',
  label: 'stiffness of the concrete',
  formula: '57000 * sqrt(fc)',
  units: { fc: 'psi' },
  unit: 'psi',
  source: 'ACI 318-19 19.2.2.1(b)',
  compute: ({ fc }) => 57_000 * Math.sqrt(fc),
});

/**
 * Stiffness of concrete of a known weight, psi. fc: cylinder strength, psi; wc: density, lb/ft3.
 * Valid for wc from 90 to 160 lb/ft3. ACI 318-19 19.2.2.1(a).
 */
export const elasticModulusByDensity = formula<Symbols<'fc' | 'wc'>>({
  symbol: 'Ec',
  label: 'stiffness of the concrete by its weight',
  formula: 'wc^1.5 * 33 * sqrt(fc)',
  units: { fc: 'psi', wc: 'lb/ft3' },
  unit: 'psi',
  source: 'ACI 318-19 19.2.2.1(a)',
  compute: ({ fc, wc }) => wc ** 1.5 * 33 * Math.sqrt(fc),
});

/** Second moment of area of the whole section, in4 an inch of width. h: thickness, in. Any mechanics text. */
export const grossInertia = formula<Symbols<'h'>>({
  symbol: 'Ig',
  label: 'second moment of area of the uncracked section, an inch of width',
  formula: 'h^3 / 12',
  units: { h: 'in' },
  unit: 'in4/in',
  source: 'rectangle, mechanics of materials',
  compute: ({ h }) => h ** 3 / 12,
});
