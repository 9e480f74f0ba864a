/** Bending matrices Db, 3 x 3 row by row, lbf-in: whole concrete and concrete cracked in one direction. */

import { formula } from '../workings';

/** Entries of one bending matrix. A count. */
export const BENDING_ENTRIES = 9;

/** Plate rigidity D, lbf-in. E in psi, h in inches, nu a ratio. Valid for h below about a tenth of the span. */
export const plateRigidity = formula<{ E: number; h: number; nu: number }>({
  symbol: 'D',
  label: 'Stiffness of the slab in bending',
  formula: 'E * h^3 / (12 * (1 - nu^2))',
  units: { E: 'psi', h: 'in', nu: '' },
  unit: 'lbf-in',
  source: 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., article on pure bending',
  compute: ({ E, h, nu }) => (E * h ** 3) / (12 * (1 - nu * nu)),
});

/**
 * Bending matrix of an uncracked slab: `elasticPsi` E, `thicknessIn` h, `poisson` nu (a ratio).
 * Source: Timoshenko & Woinowsky-Krieger, isotropic plate.
 */
export function bendingMatrix(elasticPsi: number, thicknessIn: number, poisson: number): Float64Array {
  const rigidityLbfIn = plateRigidity.compute({ E: elasticPsi, h: thicknessIn, nu: poisson });
  return crackedBendingMatrix({ rigidityLbfIn, poisson }, 0, 1);
}

export interface PlateRigidity {
  /** D of the uncracked slab. */
  readonly rigidityLbfIn: number;
  /** Poisson's ratio nu. */
  readonly poisson: number;
}

/**
 * Bending matrix of a slab cracked in one direction. `acrossRad` is the direction that the crack weakens, counted from x
 * towards y: the crack itself runs square to it. With s = `scaleAcross` (ratio above 0, at most 1): D1 = s D across the
 * crack, D2 = D along it, D12 = nu sqrt(s) D, twist (1 - nu)/2 sqrt(s) D. It stays positive definite for every s above 0.
 * Source: orthotropic plate as in Timoshenko & Woinowsky-Krieger, chapter on anisotropic plates; its usual
 * geometric-mean twist and coupling; scaling by s is engineering judgement, no source.
 */
export function crackedBendingMatrix(
  whole: PlateRigidity,
  acrossRad: number,
  scaleAcross: number,
): Float64Array {
  const root = Math.sqrt(scaleAcross);
  const d1 = scaleAcross * whole.rigidityLbfIn;
  const d2 = whole.rigidityLbfIn;
  const d12 = whole.poisson * root * whole.rigidityLbfIn;
  const dt = ((1 - whole.poisson) / 2) * root * whole.rigidityLbfIn;
  // Curvatures in the crack's axes: k' = T k; so Db = transpose(T) D' T.
  const c = Math.cos(acrossRad);
  const s = Math.sin(acrossRad);
  const t = [c * c, s * s, c * s, s * s, c * c, -c * s, -2 * c * s, 2 * c * s, c * c - s * s];
  const local = [d1, d12, 0, d12, d2, 0, 0, 0, dt];
  const into = new Float64Array(BENDING_ENTRIES);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      let sum = 0;
      for (let p = 0; p < 3; p++) {
        for (let q = 0; q < 3; q++) sum += t[3 * p + i]! * local[3 * p + q]! * t[3 * q + j]!;
      }
      into[3 * i + j] = sum;
    }
  }
  return into;
}
