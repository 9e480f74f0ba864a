/** From cubic feet to bags, water, cement and pigment. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** A count that is whole but for the rounding of its arithmetic stays whole. */
const WHOLE = 1e-9;

/** Smallest whole number that is not below a count. */
export function wholeUp(count: number): number {
  return Math.ceil(count - WHOLE);
}

/** Concrete to be mixed, ft3. V: in the drawing, Vt: kept back for topping up, ft3; o: overfill, w: waste, ratios. Common practice. */
export const neededVolume = formula<Symbols<'V' | 'o' | 'w' | 'Vt'>>({
  symbol: 'Vm',
  label: 'concrete to mix',
  formula: 'V * (1 + o) * (1 + w) + Vt',
  units: { V: 'ft3', o: '', w: '', Vt: 'ft3' },
  unit: 'ft3',
  source: 'common practice, no source',
  compute: ({ V, o, w, Vt }) => V * (1 + o) * (1 + w) + Vt,
});

/** Concrete kept back for topping up, ft3. r: share of a full batch; n: bags in a full batch; y: yield of a bag, ft3. Common practice. */
export const topUpVolume = formula<Symbols<'r' | 'n' | 'y'>>({
  symbol: 'Vt',
  label: 'kept back for topping up',
  formula: 'r * n * y',
  units: { r: '', n: '', y: 'ft3' },
  unit: 'ft3',
  source: 'common practice, no source',
  compute: ({ r, n, y }) => r * n * y,
});

/** Whole bags. V: concrete to mix, y: yield of a bag, ft3. The bag's own label governs the yield. */
export const bagsFor = formula<Symbols<'V' | 'y'>>({
  symbol: 'n',
  label: 'bags, rounded up',
  formula: 'ceil(V / y)',
  units: { V: 'ft3', y: 'ft3' },
  unit: '',
  source: 'the yield on the bag',
  compute: ({ V, y }) => wholeUp(V / y),
});

/** Water midway in the range on the bag, lb. w1, w2: least and most, lb. Common practice. */
export const midwayWater = formula<Symbols<'w1' | 'w2'>>({
  symbol: 'Ww',
  label: 'water to a bag, midway in its range',
  formula: '(w1 + w2) / 2',
  units: { w1: 'lb', w2: 'lb' },
  unit: 'lb',
  source: 'common practice, no source',
  compute: ({ w1, w2 }) => (w1 + w2) / 2,
});

/** Water over cement by mass, a ratio; pozzolans in the bag are not counted. Ww, Wc: water and cement in a bag, lb. */
export const waterCementRatio = formula<Symbols<'Ww' | 'Wc'>>({
  symbol: 'wc',
  label: 'water over cement by mass',
  formula: 'Ww / Wc',
  units: { Ww: 'lb', Wc: 'lb' },
  unit: '',
  source: 'by definition',
  compute: ({ Ww, Wc }) => Ww / Wc,
});

/** Water as a bucket measures it, US gal. Ww: lb; 8.345 lb to the gallon at 4 deg C, from 62.43 lb/ft3 and 231 in3. */
export const waterGallons = formula<Symbols<'Ww'>>({
  symbol: 'Gw',
  label: 'the same in gallons',
  formula: 'Ww / 8.345',
  units: { Ww: 'lb' },
  unit: 'gal',
  source: 'NIST SP 811 (2008), Appendix B; 62.43 lb of water to the cubic foot',
  compute: ({ Ww }) => Ww / 8.345,
});

/** Pigment to a bag, lb. r: pigment over cement by mass, at the most .10; Wc: cement in a bag, lb. ASTM C979 1.4. */
export const pigmentForBag = formula<Symbols<'r' | 'Wc'>>({
  symbol: 'Wp',
  label: 'pigment to a bag',
  formula: 'r * Wc',
  units: { r: '', Wc: 'lb' },
  unit: 'lb',
  source: 'ASTM C979 1.4: at the most a tenth of the cement',
  compute: ({ r, Wc }) => r * Wc,
});

/** What a bucket carries, ft3. G: US gal; f: share that is filled. NIST SP 811, gallon of 231 in3. */
export const bucketVolume = formula<Symbols<'G' | 'f'>>({
  symbol: 'Vb',
  label: 'concrete in a bucket',
  formula: 'G * 231 / 1728 * f',
  units: { G: 'gal', f: '' },
  unit: 'ft3',
  source: 'NIST SP 811 (2008), Appendix B: 231 cubic inches to the gallon',
  compute: ({ G, f }) => ((G * 231) / 1728) * f,
});
