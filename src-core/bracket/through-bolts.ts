/** Common bolts (A307) through timber: the bolt itself and the bearing of its washer. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Nominal stresses of an A307 bolt, psi: pull and shear. AISC 360-22 Table J3.2. */
export const COMMON_BOLT = { pullPsi: 45_000, shearPsi: 27_000 } as const;

/** Area of a bolt's shank, in2. D: in. Geometry. */
export const boltArea = formula<Symbols<'D'>>({
  symbol: 'Ab',
  label: 'area of the bolt',
  formula: '0.7853982 * D^2',
  units: { D: 'in' },
  unit: 'in2',
  source: 'geometry, pi/4 D^2',
  compute: ({ D }) => 0.7853982 * D ** 2,
});

/** Shear that one bolt may take, lbf. Fnv: psi; Ab: in2. AISC 360-22 J3.7, omega 2.00. */
export const boltShear = formula<Symbols<'Fnv' | 'Ab'>>({
  symbol: 'Va',
  label: 'shear that one bolt may take',
  formula: 'Fnv * Ab / 2',
  units: { Fnv: 'psi', Ab: 'in2' },
  unit: 'lbf',
  source: 'AISC 360-22 J3.7 and Table J3.2 (ASD, omega 2.00)',
  fromMemory: true,
  compute: ({ Fnv, Ab }) => (Fnv * Ab) / 2,
});

/** Pull that one bolt may take beside its shear, lbf. Fnt, Fnv: psi; V: shear on it, lbf; Ab: in2. AISC 360-22 J3.8, omega 2.00. */
export const boltPull = formula<Symbols<'Fnt' | 'Fnv' | 'V' | 'Ab'>>({
  symbol: 'Ta',
  label: 'pull that one bolt may take beside its shear',
  formula: 'max(0, min(Fnt, 1.3 * Fnt - 2 * Fnt / Fnv * V / Ab)) * Ab / 2',
  units: { Fnt: 'psi', Fnv: 'psi', V: 'lbf', Ab: 'in2' },
  unit: 'lbf',
  source: 'AISC 360-22 J3.7, J3.8 and Table J3.2 (ASD, omega 2.00)',
  fromMemory: true,
  compute: ({ Fnt, Fnv, V, Ab }) =>
    (Math.max(0, Math.min(Fnt, 1.3 * Fnt - (((2 * Fnt) / Fnv) * V) / Ab)) * Ab) / 2,
});

/** Area of a round washer on the timber less its hole (1/16 in over the bolt), in2. dw: washer, in; D: bolt, in. Geometry. */
export const washerArea = formula<Symbols<'dw' | 'D'>>({
  symbol: 'Aw',
  label: 'area under the washer',
  formula: '0.7853982 * max(0, dw^2 - (D + 0.0625)^2)',
  units: { dw: 'in', D: 'in' },
  unit: 'in2',
  source: 'geometry; hole 1/16 in over the bolt, NDS 2018 12.1.3.2',
  compute: ({ dw, D }) => 0.7853982 * Math.max(0, dw ** 2 - (D + 0.0625) ** 2),
});

/** Pull that a washer may press into the timber, lbf. Fcp: psi; CM: ratio; Aw: in2. NDS 2018 3.10, 4.2.6. */
export const washerPull = formula<Symbols<'Fcp' | 'CM' | 'Aw'>>({
  symbol: 'Ta',
  label: 'pull that one washer may press into the timber',
  formula: 'Fcp * CM * Aw',
  units: { Fcp: 'psi', CM: '', Aw: 'in2' },
  unit: 'lbf',
  source: 'NDS 2018 3.10.2; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fcp, CM, Aw }) => Fcp * CM * Aw,
});
