import { formula } from '../workings';
import type { Symbols } from './symbols';

/**
 * Development length of welded plain wire by its strength, in. Ab: one wire, in2; s: spacing of the wires developed,
 * in; fy, fc: psi. ACI 318-19 25.4.7.2(c), from memory.
 */
export const plainMeshLength = formula<Symbols<'Ab' | 's' | 'fy' | 'lambda' | 'fc'>>({
  symbol: 'ld0',
  label: 'length in which plain mesh takes hold by its strength',
  formula: '0.27 * Ab / s * fy / (lambda * min(100, sqrt(fc)))',
  units: { Ab: 'in2', s: 'in', fy: 'psi', lambda: '', fc: 'psi' },
  unit: 'in',
  source: 'ACI 318-19 25.4.7.2(c)',
  fromMemory: true,
  compute: ({ Ab, s, fy, lambda, fc }) => (((0.27 * Ab) / s) * fy) / (lambda * Math.min(100, Math.sqrt(fc))),
});

/**
 * Development length of welded plain wire from the critical section to the outermost cross wire, in; two cross wires
 * lie within it. ld0: from `plainMeshLength`, in; sx: spacing of the cross wires, in. ACI 318-19 25.4.7.2, from memory.
 */
export const plainMeshDevelopment = formula<Symbols<'ld0' | 'sx'>>({
  symbol: 'ld',
  label: 'length in which plain mesh takes hold',
  formula: 'max(6, sx + 2, ld0)',
  units: { ld0: 'in', sx: 'in' },
  unit: 'in',
  source: 'ACI 318-19 25.4.7.2',
  fromMemory: true,
  compute: ({ ld0, sx }) => Math.max(6, sx + 2, ld0),
});

/**
 * Lap of welded plain wire between the outermost cross wires, in. ld0: from `plainMeshLength`, in; sx: spacing of the
 * cross wires, in. ACI 318-19 25.5.4.1, from memory.
 */
export const plainMeshLap = formula<Symbols<'ld0' | 'sx'>>({
  symbol: 'lst',
  label: 'lap of two sheets of plain mesh',
  formula: 'max(6, sx + 2, 1.5 * ld0)',
  units: { ld0: 'in', sx: 'in' },
  unit: 'in',
  source: 'ACI 318-19 25.5.4.1',
  fromMemory: true,
  compute: ({ ld0, sx }) => Math.max(6, sx + 2, 1.5 * ld0),
});

/**
 * Share of the bar length that welded deformed wire needs, with one cross wire 2 in or more past the critical section
 * (a ratio). fy: psi; db: wire, in; s: spacing of the wires developed, in. ACI 318-19 25.4.6.3, from memory.
 */
export const deformedMeshFactor = formula<Symbols<'fy' | 'db' | 's'>>({
  symbol: 'psiw',
  label: 'share of the bar length that deformed mesh needs',
  formula: 'min(1, max((fy - 35000) / fy, 5 * db / s))',
  units: { fy: 'psi', db: 'in', s: 'in' },
  unit: '',
  source: 'ACI 318-19 25.4.6.3',
  fromMemory: true,
  compute: ({ fy, db, s }) => Math.min(1, Math.max((fy - 35_000) / fy, (5 * db) / s)),
});

/**
 * Development length of welded deformed wire, in. ld0: from `clearBarLength` or `tightBarLength`, in; psiw: ratio.
 * ACI 318-19 25.4.6.1, from memory.
 */
export const deformedMeshDevelopment = formula<Symbols<'ld0' | 'psiw'>>({
  symbol: 'ld',
  label: 'length in which deformed mesh takes hold',
  formula: 'max(8, psiw * ld0)',
  units: { ld0: 'in', psiw: '' },
  unit: 'in',
  source: 'ACI 318-19 25.4.6.1',
  fromMemory: true,
  compute: ({ ld0, psiw }) => Math.max(8, psiw * ld0),
});
