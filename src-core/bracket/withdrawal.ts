/** Pull-out of lag screws, wood screws and nails from side grain, and pull together with shear. */
import type { BracketFixing } from '../job';
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Lag screw's pull-out for each inch of thread in side grain, lbf/in. G: specific gravity; D: diameter, in. NDS 2018 12.2.1. */
export const lagWithdrawal = formula<Symbols<'G' | 'D'>>({
  symbol: 'W',
  label: 'pull-out of a lag screw, an inch of thread',
  formula: '1800 * G^1.5 * D^0.75',
  units: { G: '', D: 'in' },
  unit: 'lbf/in',
  source: 'NDS 2018 12.2.1 (Eq. 12.2-1)',
  compute: ({ G, D }) => 1800 * G ** 1.5 * D ** 0.75,
});

/** Wood screw's pull-out for each inch of thread in side grain, lbf/in. G: specific gravity; D: diameter, in. NDS 2018 12.2.2. */
export const screwWithdrawal = formula<Symbols<'G' | 'D'>>({
  symbol: 'W',
  label: 'pull-out of a wood screw, an inch of thread',
  formula: '2850 * G^2 * D',
  units: { G: '', D: 'in' },
  unit: 'lbf/in',
  source: 'NDS 2018 12.2.2 (Eq. 12.2-2)',
  compute: ({ G, D }) => 2850 * G ** 2 * D,
});

/** Smooth-shank nail's pull-out for each inch in side grain, lbf/in. G: specific gravity; D: diameter, in. NDS 2018 12.2.3. */
export const nailWithdrawal = formula<Symbols<'G' | 'D'>>({
  symbol: 'W',
  label: 'pull-out of a nail, an inch of penetration',
  formula: '1380 * G^2.5 * D',
  units: { G: '', D: 'in' },
  unit: 'lbf/in',
  source: 'NDS 2018 12.2.3 (Eq. 12.2-3)',
  fromMemory: true,
  compute: ({ G, D }) => 1380 * G ** 2.5 * D,
});

/**
 * Adjusted pull-out of one fastener, lbf. W: lbf/in; p: thread in the timber, tip not counted, in; CD duration,
 * CM wet service (0.7), Ceg end grain (lag 0.75; a wood screw or nail counts nothing in end grain).
 * NDS 2018 Table 11.3.1, 11.3.3, 12.5.2.
 */
export const adjustedWithdrawal = formula<Symbols<'W' | 'p' | 'CD' | 'CM' | 'Ceg'>>({
  symbol: 'Wp',
  label: 'pull that one fastener may take',
  formula: 'W * p * CD * CM * Ceg',
  units: { W: 'lbf/in', p: 'in', CD: '', CM: '', Ceg: '' },
  unit: 'lbf',
  source: 'NDS 2018 Table 11.3.1, Table 11.3.3, 12.5.2',
  fromMemory: true,
  compute: ({ W, p, CD, CM, Ceg }) => W * p * CD * CM * Ceg,
});

/** Adjusted lateral value of one fastener, lbf. Z: lbf; CD, CM (0.7), Ceg (0.67 in end grain). NDS 2018 Table 11.3.1, 12.5.2. */
export const adjustedLateral = formula<Symbols<'Z' | 'CD' | 'CM' | 'Ceg'>>({
  symbol: 'Za',
  label: 'shear that one fastener may take',
  formula: 'Z * CD * CM * Ceg',
  units: { Z: 'lbf', CD: '', CM: '', Ceg: '' },
  unit: 'lbf',
  source: 'NDS 2018 Table 11.3.1, Table 11.3.3, 12.5.2',
  fromMemory: true,
  compute: ({ Z, CD, CM, Ceg }) => Z * CD * CM * Ceg,
});

/** End grain factors of a lag screw. NDS 2018 12.5.2, from memory for the lateral one. */
export const LAG_END_GRAIN = { withdrawal: 0.75, lateral: 0.67 } as const;

/** Pull and shear on one fastener together, lbf. T, V: lbf. Statics. */
export const fastenerResultant = formula<Symbols<'T' | 'V'>>({
  symbol: 'R',
  label: 'pull and shear on one top fastener together',
  formula: 'sqrt(T^2 + V^2)',
  units: { T: 'lbf', V: 'lbf' },
  unit: 'lbf',
  source: 'statics',
  compute: ({ T, V }) => Math.sqrt(T ** 2 + V ** 2),
});

/**
 * What one lag or wood screw may take when pulled and sheared at once, lbf, in the direction of the resultant. Wp: pull-out,
 * lbf; Z: lateral value, lbf; T, V: pull and shear on it, lbf, not both 0. NDS 2018 12.4.1 with cos a = V/R, sin a = T/R.
 */
export const combinedFastener = formula<Symbols<'Wp' | 'Z' | 'T' | 'V'>>({
  symbol: 'Zalpha',
  label: 'pull and shear together that one fastener may take',
  formula: 'Wp * Z * (T^2 + V^2) / (Wp * V^2 + Z * T^2)',
  units: { Wp: 'lbf', Z: 'lbf', T: 'lbf', V: 'lbf' },
  unit: 'lbf',
  source: 'NDS 2018 12.4.1 (Eq. 12.4-1)',
  compute: ({ Wp, Z, T, V }) => (Wp * Z * (T ** 2 + V ** 2)) / (Wp * V ** 2 + Z * T ** 2),
});

/** Least thread in the timber, in. k: diameters (4 for a lag screw, 6 for a wood screw); D: diameter, in. NDS 2018 12.1.4, 12.1.5. */
export const leastPenetration = formula<Symbols<'k' | 'D'>>({
  symbol: 'pmin',
  label: 'least thread in the timber',
  formula: 'k * D',
  units: { k: '', D: 'in' },
  unit: 'in',
  source: 'NDS 2018 12.1.4.6 (lag screw 4 D), 12.1.5.6 (wood screw 6 D)',
  fromMemory: true,
  compute: ({ k, D }) => k * D,
});

/** Least distance of a fastener from the edge of the timber, loaded along the grain, in. D: in. NDS 2018 Table 12.5.1C. */
export const leastEdgeDistance = formula<Symbols<'D'>>({
  symbol: 'emin',
  label: 'least distance from the edge of the stud',
  formula: '1.5 * D',
  units: { D: 'in' },
  unit: 'in',
  source: 'NDS 2018 Table 12.5.1C, loaded along the grain',
  fromMemory: true,
  compute: ({ D }) => 1.5 * D,
});

export type TimberScrew = Extract<BracketFixing, { kind: 'screws' | 'lags' }>;

/** Pull-out formula of a kind of screw. NDS 2018 12.2. */
export function withdrawalOf(kind: TimberScrew['kind']): typeof lagWithdrawal {
  return kind === 'lags' ? lagWithdrawal : screwWithdrawal;
}
