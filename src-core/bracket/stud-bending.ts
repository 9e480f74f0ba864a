import { formula, type Line } from '../workings';
import { BRACE_TIMBER, sizeFactor, WET_FACTOR } from './brace-timber';
import { adjustedStress } from './knee-brace';
import type { Symbols } from './symbols';

/** Depths of the usual studs, 2x6 and 2x4, in. */
const DEEP_STUD_IN = 5.5;
const USUAL_STUD_IN = 3.5;
const STUD_WIDTH_IN = 1.5;

/** Section modulus of a stud across the wall, in3. b, d: in. Geometry. */
export const studModulus = formula<Symbols<'b' | 'd'>>({
  symbol: 'S',
  label: 'section modulus of a stud',
  formula: 'b * d^2 / 6',
  units: { b: 'in', d: 'in' },
  unit: 'in3',
  source: 'geometry',
  compute: ({ b, d }) => (b * d ** 2) / 6,
});

/** Moment that a stud may take, lbf-in. Fa: adjusted stress, psi; S: in3. NDS 2018 3.3. */
export const studMoment = formula<Symbols<'Fa' | 'S'>>({
  symbol: 'Ms',
  label: 'moment that a stud may take',
  formula: 'Fa * S',
  units: { Fa: 'psi', S: 'in3' },
  unit: 'lbf in',
  source: 'NDS 2018 3.3',
  compute: ({ Fa, S }) => Fa * S,
});

export interface StudStrength {
  /** "2x4", "2x6". */
  readonly words: string;
  readonly momentLbfIn: number;
  readonly lines: readonly Line[];
}

/**
 * Moment that one stud of a wall may take across the wall, lbf-in: spruce-pine-fir No. 2, CD 1.0; 2x6 in a wall 5-1/2 in or thicker,
 * else 2x4. Nothing is shared with its neighbours, and its push from above is left out. NDS 2018 3.3, Supplement Table 4A,
 * from memory.
 */
export function studStrength(wallIn: number, isWet: boolean): StudStrength {
  const depthIn = wallIn >= DEEP_STUD_IN ? DEEP_STUD_IN : USUAL_STUD_IN;
  const stress = adjustedStress({
    F: BRACE_TIMBER.spf.bendingPsi,
    CD: 1,
    CM: isWet ? WET_FACTOR.bending : 1,
    CF: sizeFactor(depthIn).bending,
  });
  const modulus = studModulus({ b: STUD_WIDTH_IN, d: depthIn });
  const moment = studMoment({ Fa: stress.value, S: modulus.value });
  return {
    words: depthIn === DEEP_STUD_IN ? '2x6' : '2x4',
    momentLbfIn: moment.value,
    lines: [stress.line, modulus.line, moment.line],
  };
}
