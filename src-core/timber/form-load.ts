/** What the falsework is designed for, and what the floor below it gets. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Weight of the wet slab, psf. wc: density of wet concrete, lb/ft3; h: thickness, in. */
export const wetSlabLoad = formula<Symbols<'wc' | 'h'>>({
  symbol: 'qw',
  label: 'weight of the wet slab',
  formula: 'wc * h / 12',
  units: { wc: 'lb/ft3', h: 'in' },
  unit: 'psf',
  source: 'arithmetic',
  compute: ({ wc, h }) => (wc * h) / 12,
});

/**
 * Design load of the form, psf: wet slab, form and people and tools, never less than a floor value. qw, qf, ql, qmin: psf
 * (50 for people and 100 in all, without motorised carts). ACI 347R-14 4.1.1.
 */
export const formDesignLoad = formula<Symbols<'qw' | 'qf' | 'ql' | 'qmin'>>({
  symbol: 'q',
  label: 'design load of the form',
  formula: 'max(qw + qf + ql, qmin)',
  units: { qw: 'psf', qf: 'psf', ql: 'psf', qmin: 'psf' },
  unit: 'psf',
  source: 'ACI 347R-14 4.1.1',
  compute: ({ qw, qf, ql, qmin }) => Math.max(qw + qf + ql, qmin),
});

/** Load a running inch of a member that carries a strip, lbf/in. q: psf; s: width of the strip (the spacing), in. */
export const stripLoad = formula<Symbols<'q' | 's'>>({
  symbol: 'w',
  label: 'load on a running inch of the member',
  formula: 'q * s / 144',
  units: { q: 'psf', s: 'in' },
  unit: 'lbf/in',
  source: 'arithmetic',
  compute: ({ q, s }) => (q * s) / 144,
});

/**
 * Sideways load that bracing must hold along one edge, lbf: the greater of 2 % of all dead load and 100 lbf for each foot of
 * slab edge. D: dead load of slab and form, lbf; Le: length of that edge, ft. Both ways, one at a time. ACI 347R-14 4.1.4, clause
 * from memory.
 */
export const lateralLoad = formula<Symbols<'D' | 'Le'>>({
  symbol: 'H',
  label: 'sideways load that the bracing must hold',
  formula: 'max(0.02 * D, 100 * Le)',
  units: { D: 'lbf', Le: 'ft' },
  unit: 'lbf',
  source: 'ACI 347R-14 4.1.4',
  fromMemory: true,
  compute: ({ D, Le }) => Math.max(0.02 * D, 100 * Le),
});

/** Weight of slab and form together, lbf. qw, qf: psf; Af: plan area, ft2. */
export const formWeight = formula<Symbols<'qw' | 'qf' | 'Af'>>({
  symbol: 'W',
  label: 'weight of the wet slab and its form',
  formula: '(qw + qf) * Af',
  units: { qw: 'psf', qf: 'psf', Af: 'ft2' },
  unit: 'lbf',
  source: 'arithmetic',
  compute: ({ qw, qf, Af }) => (qw + qf) * Af,
});

/** Area of floor or deck that the load takes up, ft2. W: slab and form, P: people, lbf; qa: what the floor may carry, psf. */
export const floorAreaNeeded = formula<Symbols<'W' | 'P' | 'qa'>>({
  symbol: 'An',
  label: 'floor that the load takes up at its allowance',
  formula: '(W + P) / qa',
  units: { W: 'lbf', P: 'lbf', qa: 'psf' },
  unit: 'ft2',
  source: 'arithmetic; 40 psf for a house floor or deck is IRC Table R301.5',
  compute: ({ W, P, qa }) => (W + P) / qa,
});
