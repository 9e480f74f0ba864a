/**
 * Angles and tees as arms: a flange on top under the slab, a leg or stem hanging from it, one thickness. About the
 * horizontal axis the two are the same section. Fillets and toe radii are left out (within 2 % of rolled tables).
 * Letters: b flange width, d whole depth, t thickness, y centroid below the top, x centroid from the back of the leg.
 */
import { formula } from '../workings';
import type { Symbols } from './symbols';

const GEOMETRY = 'section geometry, fillets left out';

/** Area of an angle or tee, in2. b, d, t: in. */
export const openArea = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'A',
  label: 'area of the section',
  formula: '(b + d - t) * t',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in2',
  source: GEOMETRY,
  compute: ({ b, d, t }) => (b + d - t) * t,
});

/**
 * Centroid of an angle or tee below its top, in. b, d, t: in.
 * With b and d exchanged it is the centroid of an angle from the back of its hanging leg.
 */
export const openCentroid = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'y',
  label: 'centroid of the section from its back',
  formula: '(b * t / 2 + (d^2 - t^2) / 2) / (b + d - t)',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in',
  source: GEOMETRY,
  compute: ({ b, d, t }) => ((b * t) / 2 + (d ** 2 - t ** 2) / 2) / (b + d - t),
});

/** Second moment of area of an angle or tee about the horizontal axis, in4. b, d, t, y: in. */
export const openInertia = formula<Symbols<'b' | 'd' | 't' | 'y'>>({
  symbol: 'I',
  label: 'second moment of area',
  formula: '(b * t^3 + t * (d - t)^3) / 12 + b * t * (y - t / 2)^2 + t * (d - t) * ((d + t) / 2 - y)^2',
  units: { b: 'in', d: 'in', t: 'in', y: 'in' },
  unit: 'in4',
  source: GEOMETRY,
  compute: ({ b, d, t, y }) =>
    (b * t ** 3 + t * (d - t) ** 3) / 12 + b * t * (y - t / 2) ** 2 + t * (d - t) * ((d + t) / 2 - y) ** 2,
});

/** Depth of the axis that halves the area of an angle or tee, in. b, d, t: in; b at least t. */
export const openPlasticAxis = formula<Symbols<'b' | 'd' | 't'>>({
  symbol: 'yp',
  label: 'axis that halves the area, below the top',
  formula: 'max((b + d - t) * t / (2 * b), (d + t - b) / 2)',
  units: { b: 'in', d: 'in', t: 'in' },
  unit: 'in',
  source: GEOMETRY,
  compute: ({ b, d, t }) => Math.max(((b + d - t) * t) / (2 * b), (d + t - b) / 2),
});

/** Plastic section modulus of an angle or tee about the horizontal axis, in3. b, d, t, yp: in. */
export const openPlasticModulus = formula<Symbols<'b' | 'd' | 't' | 'yp'>>({
  symbol: 'Z',
  label: 'plastic section modulus',
  formula: 'b * yp^2 / 2 + t * (d - yp)^2 / 2 + (b - t) * (t - yp) * abs(t - yp) / 2',
  units: { b: 'in', d: 'in', t: 'in', yp: 'in' },
  unit: 'in3',
  source: GEOMETRY,
  compute: ({ b, d, t, yp }) =>
    (b * yp ** 2) / 2 + (t * (d - yp) ** 2) / 2 + ((b - t) * (t - yp) * Math.abs(t - yp)) / 2,
});

/** Product of inertia of an angle about its centroid, in4; across to the free toe and down positive. b, d, t, x, y: in. */
export const angleProduct = formula<Symbols<'b' | 'd' | 't' | 'x' | 'y'>>({
  symbol: 'Ixy',
  label: 'product of inertia of the angle',
  formula: 'b * t * (b / 2 - x) * (t / 2 - y) + t * (d - t) * (t / 2 - x) * ((d + t) / 2 - y)',
  units: { b: 'in', d: 'in', t: 'in', x: 'in', y: 'in' },
  unit: 'in4',
  source: GEOMETRY,
  compute: ({ b, d, t, x, y }) =>
    b * t * (b / 2 - x) * (t / 2 - y) + t * (d - t) * (t / 2 - x) * ((d + t) / 2 - y),
});

/**
 * Second moment of area that resists a vertical load on an angle free to move sideways, in4.
 * Ix, Iy, Ixy: in4. Unsymmetrical bending, any strength-of-materials text.
 */
export const angleFreeInertia = formula<Symbols<'Ix' | 'Iy' | 'Ixy'>>({
  symbol: 'Ifree',
  label: 'second moment of area, free to move sideways',
  formula: 'Ix - Ixy^2 / Iy',
  units: { Ix: 'in4', Iy: 'in4', Ixy: 'in4' },
  unit: 'in4',
  source: 'unsymmetrical bending, any strength-of-materials text',
  compute: ({ Ix, Iy, Ixy }) => Ix - Ixy ** 2 / Iy,
});

/**
 * Section modulus of an angle under a vertical load, free to move sideways, in3: the least over its five corners.
 * b, d, t, x, y: in; Ix, Iy, Ixy: in4. For equal legs this is the 0.80 of AISC 360-22 F10.2 within 5 %.
 */
export const angleFreeModulus = formula<Symbols<'b' | 'd' | 't' | 'x' | 'y' | 'Ix' | 'Iy' | 'Ixy'>>({
  symbol: 'Sfree',
  label: 'section modulus, free to move sideways',
  formula:
    '(Ix * Iy - Ixy^2) / max(abs(x * Ixy - y * Iy), abs((b - x) * Ixy + y * Iy), abs((b - x) * Ixy - (t - y) * Iy), abs((d - y) * Iy - (t - x) * Ixy), abs((d - y) * Iy + x * Ixy))',
  units: { b: 'in', d: 'in', t: 'in', x: 'in', y: 'in', Ix: 'in4', Iy: 'in4', Ixy: 'in4' },
  unit: 'in3',
  source: 'unsymmetrical bending, any strength-of-materials text',
  compute: ({ b, d, t, x, y, Ix, Iy, Ixy }) =>
    (Ix * Iy - Ixy ** 2) /
    Math.max(
      Math.abs(x * Ixy - y * Iy),
      Math.abs((b - x) * Ixy + y * Iy),
      Math.abs((b - x) * Ixy - (t - y) * Iy),
      Math.abs((d - y) * Iy - (t - x) * Ixy),
      Math.abs((d - y) * Iy + x * Ixy),
    ),
});
