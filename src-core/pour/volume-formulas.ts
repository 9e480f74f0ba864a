/** From plan area to cubic feet, weight and the push on an edge form. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Square-edged volume of a slab, ft3. A: plan area, Ac: openings, in2; h: thickness, in. Plane geometry. */
export const plainVolume = formula<Symbols<'A' | 'Ac' | 'h'>>({
  symbol: 'V0',
  label: 'volume with square edges',
  formula: '(A - Ac) * h / 1728',
  units: { A: 'in2', Ac: 'in2', h: 'in' },
  unit: 'ft3',
  source: 'plane geometry',
  compute: ({ A, Ac, h }) => ((A - Ac) * h) / 1728,
});

/** Volume of all copies of a piece, ft3. V0: with square edges, ft3; E: what profiles and grooves take, in3; n: copies. */
export const shapedVolume = formula<Symbols<'V0' | 'E' | 'n'>>({
  symbol: 'V',
  label: 'volume less profiles and grooves, all copies',
  formula: 'n * (V0 - E / 1728)',
  units: { V0: 'ft3', E: 'in3', n: '' },
  unit: 'ft3',
  source: 'plane geometry',
  compute: ({ V0, E, n }) => n * (V0 - E / 1728),
});

/** Cubic yards, as a ready-mix plant sells them. V: ft3. */
export const cubicYards = formula<Symbols<'V'>>({
  symbol: 'Vy',
  label: 'the same in cubic yards',
  formula: 'V / 27',
  units: { V: 'ft3' },
  unit: 'yd3',
  source: 'NIST SP 811 (2008), Appendix B',
  compute: ({ V }) => V / 27,
});

/** Weight, lb. V: ft3; w: lb/ft3, of hardened or of wet concrete. */
export const weightOf = formula<Symbols<'V' | 'w'>>({
  symbol: 'W',
  label: 'weight',
  formula: 'V * w',
  units: { V: 'ft3', w: 'lb/ft3' },
  unit: 'lb',
  source: 'density by definition',
  compute: ({ V, w }) => V * w,
});
