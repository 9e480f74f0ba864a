/** Weights, hooks and joint depths that the placing works with. */
import { formula } from '../workings';

/** Mass of round steel, lb. rho: lb/in3; db: diameter, in; L: length, in. Geometry; 490 lb/ft3. */
export const roundSteelMass = formula<{ rho: number; db: number; L: number }>({
  symbol: 'm',
  label: 'mass of a round bar or wire',
  formula: 'rho * 3.14159265 * db^2 / 4 * L',
  units: { rho: 'lb/in3', db: 'in', L: 'in' },
  unit: 'lb',
  source: 'geometry; steel at 490 lb/ft3, the basis of ASTM A615 and A1064 weights',
  compute: ({ rho, db, L }) => ((rho * Math.PI * db ** 2) / 4) * L,
});

/**
 * Mass of mesh, lb/in2 of plan. rho: lb/in3; d1, d2: wires along and across, in; s1, s2: their spacings, in.
 * Geometry; 490 lb/ft3.
 */
export const meshMass = formula<{ rho: number; d1: number; s1: number; d2: number; s2: number }>({
  symbol: 'wm',
  label: 'mass of the mesh, a square inch',
  formula: 'rho * 3.14159265 / 4 * (d1^2 / s1 + d2^2 / s2)',
  units: { rho: 'lb/in3', d1: 'in', s1: 'in', d2: 'in', s2: 'in' },
  unit: 'lb/in2',
  source: 'geometry; steel at 490 lb/ft3, the basis of ASTM A1064 weights',
  compute: ({ rho, d1, s1, d2, s2 }) => ((rho * Math.PI) / 4) * (d1 ** 2 / s1 + d2 ** 2 / s2),
});

/**
 * What a standard 90 degree hook adds to the length over its outside, in: quarter turn on a centre line of 3.5 db and
 * 12 db beyond it, less the 4 db that the bend itself takes of that length. db: bar, in. Valid for #3 to #8.
 * ACI 318-19 Table 25.3.1 (inside bend 6 db, extension 12 db).
 */
export const hookAllowance = formula<{ db: number }>({
  symbol: 'ha',
  label: 'length that a 90 degree hook adds',
  formula: '(3.14159265 / 2 * 3.5 + 12 - 4) * db',
  units: { db: 'in' },
  unit: 'in',
  source: 'ACI 318-19 Table 25.3.1',
  compute: ({ db }) => ((Math.PI / 2) * 3.5 + 12 - 4) * db,
});

/** Height of a standard 90 degree hook over the outside of its bar, in bar diameters. ACI 318-19 Table 25.3.1. */
export const HOOK_HEIGHT_BARS = 16;

/** Depth of a control joint, in. h: thickness, in. ACI 302.1R asks a quarter of the slab, from memory; common practice. */
export const controlJointDepth = formula<{ h: number }>({
  symbol: 'dj',
  label: 'depth of a control joint',
  formula: 'h / 4',
  units: { h: 'in' },
  unit: 'in',
  source: 'ACI 302.1R, a quarter of the thickness',
  fromMemory: true,
  compute: ({ h }) => h / 4,
});
