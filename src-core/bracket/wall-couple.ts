/** The couple with which a bracket hangs on its wall, and the bearings at its two ends. */
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

/** Lever between the top fasteners and the middle of the toe's bearing, in. h: top row above the toe; lt: bearing length, in. */
export const toeLever = formula<Symbols<'h' | 'lt'>>({
  symbol: 'z',
  label: 'lever from the top fasteners to the bearing at the toe',
  formula: 'h - lt / 2',
  units: { h: 'in', lt: 'in' },
  unit: 'in',
  source: 'statics; length of the bearing: common practice, no source',
  compute: ({ h, lt }) => h - lt / 2,
});

/** Pull in the top row, lbf. P: load, lbf; e: its distance from the wall face, in; z: lever, in. Statics. */
export const couplePull = formula<Symbols<'P' | 'e' | 'z'>>({
  symbol: 'T',
  label: 'pull in the top row of fasteners',
  formula: 'P * e / z',
  units: { P: 'lbf', e: 'in', z: 'in' },
  unit: 'lbf',
  source: 'statics',
  compute: ({ P, e, z }) => (P * e) / z,
});

/** Share of one fastener, lbf. F: force on the row, lbf; n: fasteners that share it. Statics. */
export const fastenerShare = formula<Symbols<'F' | 'n'>>({
  symbol: 'F1',
  label: 'share of one fastener',
  formula: 'F / n',
  units: { F: 'lbf', n: '' },
  unit: 'lbf',
  source: 'statics, shared alike',
  compute: ({ F, n }) => F / n,
});

export interface WallCouple {
  /** Pull of the whole top row, and the equal push at the toe. */
  readonly pullLbf: number;
  readonly pushLbf: number;
  readonly shearLbf: number;
  readonly lines: readonly Line[];
}

/**
 * Forces of a bracket on its wall: pull T of the top row, push C at the toe equal to it, shear V; lbf. `loadLbf` at `atIn` from
 * the wall face, `leverIn` from the top row to the toe's push. Statics.
 */
export function wallCouple(input: { loadLbf: number; atIn: number; leverIn: number }): WallCouple {
  const pull = couplePull({ P: input.loadLbf, e: input.atIn, z: input.leverIn });
  return { pullLbf: pull.value, pushLbf: pull.value, shearLbf: input.loadLbf, lines: [pull.line] };
}

/** Bearing area factor (a ratio). lb: length along the grain, in, under 6 and 3 in or more from the end. NDS 2018 3.10.4. */
export const bearingAreaFactor = formula<Symbols<'lb'>>({
  symbol: 'Cb',
  label: 'bearing area factor',
  formula: '(lb + 0.375) / lb',
  units: { lb: 'in' },
  unit: '',
  source: 'NDS 2018 3.10.4',
  compute: ({ lb }) => (lb + 0.375) / lb,
});

/** Push that the toe may press into a stud, lbf. Fcp: psi; CM, Cb: ratios; w, lt: width and length of the bearing, in. NDS 2018 3.10.2. */
export const heelBearing = formula<Symbols<'Fcp' | 'CM' | 'Cb' | 'w' | 'lt'>>({
  symbol: 'Ca',
  label: 'push that the toe may press into the stud',
  formula: 'Fcp * CM * Cb * w * lt',
  units: { Fcp: 'psi', CM: '', Cb: '', w: 'in', lt: 'in' },
  unit: 'lbf',
  source: 'NDS 2018 3.10.2, 3.10.4; values from Supplement Table 4A',
  fromMemory: true,
  compute: ({ Fcp, CM, Cb, w, lt }) => Fcp * CM * Cb * w * lt,
});

/** Push that concrete may take on a small area, lbf. fc: psi; A1: in2. ACI 318-19 22.8.3.2, phi 0.65 (21.2.1). */
export const concreteBearing = formula<Symbols<'fc' | 'A1'>>({
  symbol: 'phiBn',
  label: 'push that the concrete may take on the arm',
  formula: '0.65 * 0.85 * fc * A1',
  units: { fc: 'psi', A1: 'in2' },
  unit: 'lbf',
  source: 'ACI 318-19 22.8.3.2, 21.2.1',
  compute: ({ fc, A1 }) => 0.65 * 0.85 * fc * A1,
});

/** Factored load on one bracket, lbf. D, L: dead and live load, lbf. ACI 318-19 Table 5.3.1. */
export const factoredLoad = formula<Symbols<'D' | 'L'>>({
  symbol: 'U',
  label: 'factored load',
  formula: 'max(1.4 * D, 1.2 * D + 1.6 * L)',
  units: { D: 'lbf', L: 'lbf' },
  unit: 'lbf',
  source: 'ACI 318-19 Table 5.3.1',
  compute: ({ D, L }) => Math.max(1.4 * D, 1.2 * D + 1.6 * L),
});

/**
 * Moment on an inch of wall, lbf-in/in, which is as much in lb-ft a foot. M: moment on one stud's share of the wall, lbf-in; s: length
 * of that share, in. Statics.
 */
export const wallOverturning = formula<Symbols<'M' | 's'>>({
  symbol: 'mw',
  label: 'moment on an inch of wall, in lbf-in; the same figure is lb-ft on a foot',
  formula: 'M / s',
  units: { M: 'lbf in', s: 'in' },
  unit: 'lbf in/in',
  source: 'statics',
  compute: ({ M, s }) => M / s,
});
