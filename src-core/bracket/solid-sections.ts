/** Section values of bars and tubes about the horizontal axis through their middle. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

const GEOMETRY = 'section geometry, any beam text';
const TUBE_GEOMETRY = 'section geometry, corner radii left out';

/** Area of a bar, in2. b, d: width and depth, in. Geometry. */
export const barArea = formula<Symbols<'b' | 'd'>>({
  symbol: 'A',
  label: 'area of the section',
  formula: 'b * d',
  units: { b: 'in', d: 'in' },
  unit: 'in2',
  source: GEOMETRY,
  compute: ({ b, d }) => b * d,
});

/** Second moment of area of a bar, in4. b, d: width and depth, in. Geometry. */
export const barInertia = formula<Symbols<'b' | 'd'>>({
  symbol: 'I',
  label: 'second moment of area',
  formula: 'b * d^3 / 12',
  units: { b: 'in', d: 'in' },
  unit: 'in4',
  source: GEOMETRY,
  compute: ({ b, d }) => (b * d ** 3) / 12,
});

/** Plastic section modulus of a bar, in3. b, d: width and depth, in. Geometry. */
export const barPlasticModulus = formula<Symbols<'b' | 'd'>>({
  symbol: 'Z',
  label: 'plastic section modulus',
  formula: 'b * d^2 / 4',
  units: { b: 'in', d: 'in' },
  unit: 'in3',
  source: GEOMETRY,
  compute: ({ b, d }) => (b * d ** 2) / 4,
});

/** Area of a rectangular tube, in2. b, d: outside width and depth; t: wall, in. Corner radii are left out. */
export const tubeArea = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'A',
  label: 'area of the section',
  formula: 'b * d - max(0, b - 2 * t) * max(0, d - 2 * t)',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in2',
  source: TUBE_GEOMETRY,
  compute: ({ b, d, t }) => b * d - Math.max(0, b - 2 * t) * Math.max(0, d - 2 * t),
});

/**
 * Second moment of area of a rectangular tube, in4. b, d: outside width and depth; t: wall, in.
 * Corner radii are left out: up to 7 % high for thin walls and 17 % for thick ones against rolled tube tables.
 */
export const tubeInertia = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'I',
  label: 'second moment of area',
  formula: 'b * d^3 / 12 - max(0, b - 2 * t) * max(0, d - 2 * t)^3 / 12',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in4',
  source: TUBE_GEOMETRY,
  compute: ({ b, d, t }) => (b * d ** 3) / 12 - (Math.max(0, b - 2 * t) * Math.max(0, d - 2 * t) ** 3) / 12,
});

/** Plastic section modulus of a rectangular tube, in3. b, d: outside width and depth; t: wall, in. Radii left out. */
export const tubePlasticModulus = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'Z',
  label: 'plastic section modulus',
  formula: 'b * d^2 / 4 - max(0, b - 2 * t) * max(0, d - 2 * t)^2 / 4',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in3',
  source: TUBE_GEOMETRY,
  compute: ({ b, d, t }) => (b * d ** 2) / 4 - (Math.max(0, b - 2 * t) * Math.max(0, d - 2 * t) ** 2) / 4,
});

/** Section modulus to one face, in3. I: second moment, in4; c: distance of the face from the centroid, in. */
export const fibreModulus = formula<Symbols<'I' | 'c'>>({
  symbol: 'S',
  label: 'section modulus to the face',
  formula: 'I / c',
  units: { I: 'in4', c: 'in' },
  unit: 'in3',
  source: GEOMETRY,
  compute: ({ I, c }) => I / c,
});

/** Weight of a steel section, lb/ft. A: area, in2. 490 lb/ft3 over 144 in2/ft2, AISC Steel Construction Manual Table 17-12. */
export const steelWeight = formula<Symbols<'A'>>({
  symbol: 'w',
  label: 'weight of the arm, a foot',
  formula: '490 * A / 144',
  units: { A: 'in2' },
  unit: 'lb/ft',
  source: 'density of steel 490 lb/ft3, AISC Steel Construction Manual Table 17-12',
  fromMemory: true,
  compute: ({ A }) => (490 * A) / 144,
});
