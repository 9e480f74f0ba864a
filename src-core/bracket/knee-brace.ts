/**
 * A timber knee brace: a level arm pinned to the wall, and a strut of the same section from the arm's tip down to the
 * wall. Letters: L reach, h drop of the strut's foot below the arm, Ls length of the strut, e distance of the load.
 */
import { formula } from '../workings';
import type { Symbols } from './symbols';

const TRUSS = 'statics of a two-bar truss, any statics text';

/** Length of the strut, in. L, h: in. */
export const strutLength = formula<Symbols<'L' | 'h'>>({
  symbol: 'Ls',
  label: 'length of the strut',
  formula: 'sqrt(L^2 + h^2)',
  units: { L: 'in', h: 'in' },
  unit: 'in',
  source: TRUSS,
  compute: ({ L, h }) => Math.sqrt(L ** 2 + h ** 2),
});

/** Push in the strut, lbf. P: load, lbf; e, L, Ls, h: in. */
export const strutForce = formula<Symbols<'P' | 'e' | 'L' | 'Ls' | 'h'>>({
  symbol: 'S',
  label: 'push in the strut',
  formula: 'P * e / L * Ls / h',
  units: { P: 'lbf', e: 'in', L: 'in', Ls: 'in', h: 'in' },
  unit: 'lbf',
  source: TRUSS,
  compute: ({ P, e, L, Ls, h }) => (((P * e) / L) * Ls) / h,
});

/** Pull in the level arm, lbf. P: load, lbf; e, h: in. */
export const armPull = formula<Symbols<'P' | 'e' | 'h'>>({
  symbol: 'T',
  label: 'pull in the arm',
  formula: 'P * e / h',
  units: { P: 'lbf', e: 'in', h: 'in' },
  unit: 'lbf',
  source: TRUSS,
  compute: ({ P, e, h }) => (P * e) / h,
});

/** Bending moment in the arm under a load between wall and strut, lbf-in. P: lbf; e, L: in. */
export const braceArmMoment = formula<Symbols<'P' | 'e' | 'L'>>({
  symbol: 'M',
  label: 'moment in the arm between wall and strut',
  formula: 'P * e * (L - e) / L',
  units: { P: 'lbf', e: 'in', L: 'in' },
  unit: 'lbf in',
  source: 'simple span with one load, any beam table',
  compute: ({ P, e, L }) => (P * e * (L - e)) / L,
});

/** How far the tip sinks for each pound at the tip, in/lbf: both members stretch or shorten. L, Ls, h: in; A: in2; E: psi. */
export const braceTipCompliance = formula<Symbols<'L' | 'Ls' | 'h' | 'A' | 'E'>>({
  symbol: 'ft',
  label: 'sinking of the tip for each pound on it',
  formula: '(L^3 + Ls^3) / (h^2 * A * E)',
  units: { L: 'in', Ls: 'in', h: 'in', A: 'in2', E: 'psi' },
  unit: 'in/lbf',
  source: 'virtual work of a two-bar truss, any strength-of-materials text',
  compute: ({ L, Ls, h, A, E }) => (L ** 3 + Ls ** 3) / (h ** 2 * A * E),
});

/**
 * Sinking of the arm at xi for each pound at xj, in/lbf, xi at most xj: share of the tip's sinking and bending of the
 * arm as a simple span from wall to strut. xi, xj, L: in; ft: in/lbf; E: psi; I: in4.
 */
export const braceInfluence = formula<Symbols<'xi' | 'xj' | 'L' | 'ft' | 'E' | 'I'>>({
  symbol: 'f',
  label: 'sinking at xi for each pound at xj',
  formula: 'xi * xj / L^2 * ft + (L - xj) * xi * (L^2 - (L - xj)^2 - xi^2) / (6 * E * I * L)',
  units: { xi: 'in', xj: 'in', L: 'in', ft: 'in/lbf', E: 'psi', I: 'in4' },
  unit: 'in/lbf',
  source: 'simple span with one load, any beam table, on a sinking end',
  compute: ({ xi, xj, L, ft, E, I }) =>
    ((xi * xj) / L ** 2) * ft + ((L - xj) * xi * (L ** 2 - (L - xj) ** 2 - xi ** 2)) / (6 * E * I * L),
});

/** Buckling stress of a strut, psi. Emin: psi, adjusted; Ls: in; d: thinner side, in. NDS 2018 3.7.1.5. */
export const strutBucklingStress = formula<Symbols<'Emin' | 'Ls' | 'd'>>({
  symbol: 'FcE',
  label: 'stress at which the strut buckles',
  formula: '0.822 * Emin / (Ls / d)^2',
  units: { Emin: 'psi', Ls: 'in', d: 'in' },
  unit: 'psi',
  source: 'NDS 2018 3.7.1.5',
  compute: ({ Emin, Ls, d }) => (0.822 * Emin) / (Ls / d) ** 2,
});

/** Column stability factor of sawn timber (a ratio). FcE, Fcs: buckling and crushing stress, psi. NDS 2018 3.7.1.5, c 0.8. */
export const columnStability = formula<Symbols<'FcE' | 'Fcs'>>({
  symbol: 'Cp',
  label: 'column stability factor',
  formula: '(1 + FcE / Fcs) / 1.6 - sqrt(((1 + FcE / Fcs) / 1.6)^2 - FcE / Fcs / 0.8)',
  units: { FcE: 'psi', Fcs: 'psi' },
  unit: '',
  source: 'NDS 2018 3.7.1.5, c 0.8 for sawn timber',
  compute: ({ FcE, Fcs }) => {
    const half = (1 + FcE / Fcs) / 1.6;
    return half - Math.sqrt(half ** 2 - FcE / Fcs / 0.8);
  },
});

/** Adjusted design stress of timber, psi. F: reference, psi; CD duration, CM wet service, CF size. NDS 2018 4.3.1. */
export const adjustedStress = formula<Symbols<'F' | 'CD' | 'CM' | 'CF'>>({
  symbol: 'Fa',
  label: 'adjusted design stress',
  formula: 'F * CD * CM * CF',
  units: { F: 'psi', CD: '', CM: '', CF: '' },
  unit: 'psi',
  source: 'NDS 2018 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ F, CD, CM, CF }) => F * CD * CM * CF,
});

/** Load that the strut may carry, lbf. Fcs: psi; Cp: ratio; A: in2. NDS 2018 3.6.3. */
export const strutCapacity = formula<Symbols<'Fcs' | 'Cp' | 'A'>>({
  symbol: 'Pa',
  label: 'push that the strut may carry',
  formula: 'Fcs * Cp * A',
  units: { Fcs: 'psi', Cp: '', A: 'in2' },
  unit: 'lbf',
  source: 'NDS 2018 3.6.3, 3.7.1',
  compute: ({ Fcs, Cp, A }) => Fcs * Cp * A,
});

/** Bending and pull together in the arm (a ratio, at most 1). T: lbf; A: in2; Ft, Fb: psi; M: lbf-in; S: in3. NDS 2018 3.9.1. */
export const bendingWithPull = formula<Symbols<'T' | 'A' | 'Ft' | 'M' | 'S' | 'Fb'>>({
  symbol: 'u',
  label: 'pull and bending of the arm, as a share of what it may take',
  formula: 'T / (A * Ft) + M / (S * Fb)',
  units: { T: 'lbf', A: 'in2', Ft: 'psi', M: 'lbf in', S: 'in3', Fb: 'psi' },
  unit: '',
  source: 'NDS 2018 3.9.1',
  compute: ({ T, A, Ft, M, S, Fb }) => T / (A * Ft) + M / (S * Fb),
});

/** Shear that a rectangular timber section may carry, lbf. Fv: psi; A: in2. NDS 2018 3.4.2. */
export const timberShearCapacity = formula<Symbols<'Fv' | 'A'>>({
  symbol: 'Va',
  label: 'shear that the arm may carry',
  formula: '2 * Fv * A / 3',
  units: { Fv: 'psi', A: 'in2' },
  unit: 'lbf',
  source: 'NDS 2018 3.4.2',
  compute: ({ Fv, A }) => (2 * Fv * A) / 3,
});
