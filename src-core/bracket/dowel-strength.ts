/** Bearing strengths under fasteners, and the bending yield strength and root diameter of lag and wood screws. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Dowel bearing strength along the grain, D 1/4 in and over, psi. G: specific gravity. NDS 2018 Table 12.3.3. */
export const bearingAlongGrain = formula<Symbols<'G'>>({
  symbol: 'Fe',
  label: 'bearing strength of the timber along the grain',
  formula: '11200 * G',
  units: { G: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 12.3.3',
  compute: ({ G }) => 11200 * G,
});

/** Dowel bearing strength across the grain, D 1/4 in and over, psi. G: specific gravity; D: diameter, in. NDS 2018 Table 12.3.3. */
export const bearingAcrossGrain = formula<Symbols<'G' | 'D'>>({
  symbol: 'Fe',
  label: 'bearing strength of the timber across the grain',
  formula: '6100 * G^1.45 / sqrt(D)',
  units: { G: '', D: 'in' },
  unit: 'psi',
  source: 'NDS 2018 Table 12.3.3',
  compute: ({ G, D }) => (6100 * G ** 1.45) / Math.sqrt(D),
});

/** Dowel bearing strength under a fastener thinner than 1/4 in, any direction, psi. G: specific gravity. NDS 2018 Table 12.3.3. */
export const bearingSmallDowel = formula<Symbols<'G'>>({
  symbol: 'Fe',
  label: 'bearing strength of the timber under a thin fastener',
  formula: '16600 * G^1.84',
  units: { G: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 12.3.3, D under 1/4 in',
  compute: ({ G }) => 16600 * G ** 1.84,
});

/** From this diameter on a fastener counts as a large one, in. NDS 2018 Table 12.3.1B. */
export const LARGE_DOWEL_IN = 0.25;

/** Bearing strength of the steel side, psi: sheet under 1/4 in (A653 grade 33), plate (A36). NDS 2018 Table 12K heading. */
const STEEL_BEARING_PSI = { sheet: 61_850, plate: 87_000 } as const;

/** Bearing strength of a steel side plate by its thickness, psi. NDS 2018 Table 12K footnotes, from memory. */
export function steelBearingPsi(thicknessIn: number): number {
  return thicknessIn < 0.25 ? STEEL_BEARING_PSI.sheet : STEEL_BEARING_PSI.plate;
}

interface Step {
  readonly upToIn: number;
  readonly value: number;
}

/** Bending yield strength of lag screws, psi, by nominal diameter. NDS 2018 Appendix I, Table I1, from memory. */
const LAG_YIELD: readonly Step[] = [
  { upToIn: 0.25, value: 70_000 },
  { upToIn: 0.3125, value: 60_000 },
  { upToIn: Number.POSITIVE_INFINITY, value: 45_000 },
];

/** Bending yield strength of wood screws, psi, by nominal diameter. NDS 2018 Table 12L footnotes, from memory. */
const SCREW_YIELD: readonly Step[] = [
  { upToIn: 0.142, value: 100_000 },
  { upToIn: 0.177, value: 90_000 },
  { upToIn: 0.236, value: 80_000 },
  { upToIn: 0.273, value: 70_000 },
  { upToIn: 0.344, value: 60_000 },
  { upToIn: Number.POSITIVE_INFINITY, value: 45_000 },
];

/** Bending yield strength of a lag or wood screw, psi. NDS 2018 Table I1 and Table 12L footnotes, from memory. */
export function screwYieldPsi(kind: 'lags' | 'screws', diameterIn: number): number {
  const steps = kind === 'lags' ? LAG_YIELD : SCREW_YIELD;
  const step = steps.find((each) => diameterIn <= each.upToIn);
  if (!step) throw new Error(`no yield strength for a fastener of ${diameterIn} in`);
  return step.value;
}

type Root = readonly [nominalIn: number, rootIn: number];

/** Root diameter of lag screws. NDS 2018 Appendix L, Table L2, from memory. */
const LAG_ROOTS: readonly Root[] = [
  [0.25, 0.173],
  [0.3125, 0.227],
  [0.375, 0.265],
  [0.4375, 0.328],
  [0.5, 0.371],
  [0.625, 0.471],
  [0.75, 0.579],
  [0.875, 0.683],
  [1, 0.78],
];

/** Root diameter of wood screws No. 6 to No. 24. NDS 2018 Appendix L, Table L3, from memory. */
const SCREW_ROOTS: readonly Root[] = [
  [0.138, 0.113],
  [0.151, 0.122],
  [0.164, 0.131],
  [0.177, 0.142],
  [0.19, 0.152],
  [0.216, 0.171],
  [0.242, 0.196],
  [0.268, 0.209],
  [0.294, 0.232],
  [0.32, 0.255],
  [0.372, 0.298],
];

/**
 * Root diameter of a lag or wood screw, in: that of the largest listed size not over it; below the list, in proportion to the
 * smallest. NDS 2018 Appendix L, Tables L2, L3, from memory.
 */
export function rootDiameterIn(kind: 'lags' | 'screws', diameterIn: number): number {
  const roots = kind === 'lags' ? LAG_ROOTS : SCREW_ROOTS;
  const smallest = roots[0]!;
  const fitting = roots.findLast(([nominalIn]) => nominalIn <= diameterIn + 1e-9);
  return fitting ? fitting[1] : (diameterIn * smallest[1]) / smallest[0];
}
