/** Reference values with their factors on: what one square inch of this lumber may take. ASD, NDS 2018 Table 4.3.1. */
import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Bending value, psi. Fb: reference, psi; CD duration, CM wet service, CF size, Cfu flat use, Cr repetitive member (ratios).
 * NDS 2018 Table 4.3.1, CL = 1 by 4.4.1.
 */
export const adjustedBending = formula<Symbols<'Fb' | 'CD' | 'CM' | 'CF' | 'Cfu' | 'Cr'>>({
  symbol: 'Fba',
  label: 'bending stress that the lumber may take',
  formula: 'Fb * CD * CM * CF * Cfu * Cr',
  units: { Fb: 'psi', CD: '', CM: '', CF: '', Cfu: '', Cr: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fb, CD, CM, CF, Cfu, Cr }) => Fb * CD * CM * CF * Cfu * Cr,
});

/** Shear value along the grain, psi. Fv: reference, psi; CD, CM (ratios). NDS 2018 Table 4.3.1. */
export const adjustedShear = formula<Symbols<'Fv' | 'CD' | 'CM'>>({
  symbol: 'Fva',
  label: 'shear stress that the lumber may take',
  formula: 'Fv * CD * CM',
  units: { Fv: 'psi', CD: '', CM: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fv, CD, CM }) => Fv * CD * CM,
});

/** Bearing value across the grain, psi. Fcp: reference, psi; CM (a ratio); the duration of the load does not count. NDS 2018 Table 4.3.1. */
export const adjustedBearing = formula<Symbols<'Fcp' | 'CM'>>({
  symbol: 'Fcpa',
  label: 'bearing stress across the grain that the lumber may take',
  formula: 'Fcp * CM',
  units: { Fcp: 'psi', CM: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fcp, CM }) => Fcp * CM,
});

/** Crushing value along the grain before buckling, psi. Fc: reference, psi; CD, CM, CF (ratios). NDS 2018 3.7.1.5 (Fc*). */
export const crushingStress = formula<Symbols<'Fc' | 'CD' | 'CM' | 'CF'>>({
  symbol: 'Fcs',
  label: 'crushing stress along the grain, before buckling',
  formula: 'Fc * CD * CM * CF',
  units: { Fc: 'psi', CD: '', CM: '', CF: '' },
  unit: 'psi',
  source: 'NDS 2018 3.7.1.5, Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fc, CD, CM, CF }) => Fc * CD * CM * CF,
});

/** Stiffness, psi. E: reference, psi; CM (a ratio). NDS 2018 Table 4.3.1. */
export const adjustedModulus = formula<Symbols<'E' | 'CM'>>({
  symbol: 'Ea',
  label: 'stiffness of the lumber',
  formula: 'E * CM',
  units: { E: 'psi', CM: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ E, CM }) => E * CM,
});

/** Stiffness for buckling, psi. Emin: reference, psi; CM (a ratio). NDS 2018 Table 4.3.1. */
export const adjustedModulusMin = formula<Symbols<'Emin' | 'CM'>>({
  symbol: 'Emina',
  label: 'stiffness of the lumber, for buckling',
  formula: 'Emin * CM',
  units: { Emin: 'psi', CM: '' },
  unit: 'psi',
  source: 'NDS 2018 Table 4.3.1; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Emin, CM }) => Emin * CM,
});
