import type { BracketSupport } from '../job';
import { formula, type Worked } from '../workings';
import { armProperties } from './arm-properties';
import { fixingMoment } from './fixing-moment';
import { braceInfluence, braceTipCompliance, strutLength } from './knee-brace';
import type { Symbols } from './symbols';

/** Sinking of a cantilever arm at xi for each pound at xj, in/lbf, xi at most xj. xi, xj: in; E: psi; I: in4. Any beam table. */
export const cantileverInfluence = formula<Symbols<'xi' | 'xj' | 'E' | 'I'>>({
  symbol: 'f',
  label: 'sinking of the arm at xi for each pound at xj',
  formula: 'xi^2 * (3 * xj - xi) / (6 * E * I)',
  units: { xi: 'in', xj: 'in', E: 'psi', I: 'in4' },
  unit: 'in/lbf',
  source: 'cantilever with one load, any beam table',
  compute: ({ xi, xj, E, I }) => (xi ** 2 * (3 * xj - xi)) / (6 * E * I),
});

/**
 * Sinking at xi for each pound at xj because the fixing gives, in/lbf: it turns 1 degree under its rated moment.
 * xi, xj: in; Mr: lbf-in. Common practice, no source (a bound).
 */
export const fixingInfluence = formula<Symbols<'xi' | 'xj' | 'Mr'>>({
  symbol: 'fr',
  label: 'sinking at xi for each pound at xj, from the fixing',
  formula: 'xi * xj * 0.01745329 / Mr',
  units: { xi: 'in', xj: 'in', Mr: 'lbf in' },
  unit: 'in/lbf',
  source: 'common practice, no source: the fixing turns 1 degree under its rated moment',
  compute: ({ xi, xj, Mr }) => (xi * xj * 0.01745329) / Mr,
});

/**
 * Flexibility of one bracket's arm: row-major n by n, in/lbf, entry (i, j) the sinking at `positionsIn[i]` (from the wall face,
 * 0 to the reach) for each pound at `positionsIn[j]`. Symmetric, positive semidefinite. High bound: rigid fixing. Low bound:
 * the fixing turns 1 degree under its rated moment, and an angle is free to move sideways. A timber brace is a two-bar truss
 * with its strut at the tip. Any beam table; the bounds are common practice.
 */
export function armFlexibility(input: {
  readonly bracket: BracketSupport;
  readonly bound: 'low' | 'high';
  readonly positionsIn: readonly number[];
}): Float64Array {
  const { positionsIn, bracket } = input;
  const count = positionsIn.length;
  for (const xIn of positionsIn) requireOnArm(bracket, xIn);
  const influence = armInfluence(bracket, input.bound);
  const flexibility = new Float64Array(count * count);
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      const value = influence(positionsIn[i]!, positionsIn[j]!).reduce(
        (sum, part) => sum + part.compute(),
        0,
      );
      flexibility[i * count + j] = value;
      flexibility[j * count + i] = value;
    }
  }
  return flexibility;
}

/** One part of the sinking at one place for a pound at another: the number for loops, the line for the page. */
export interface InfluencePart {
  readonly compute: () => number;
  readonly work: () => Worked;
}

/** Sinking of the arm at one place for each pound at another, in/lbf, in its parts (arm, fixing). As `armFlexibility`. */
export function armInfluence(
  bracket: BracketSupport,
  bound: 'low' | 'high',
): (aIn: number, bIn: number) => readonly InfluencePart[] {
  const arm = ownInfluence(bracket, bound);
  if (bound === 'high') return (aIn, bIn) => [arm(aIn, bIn)];
  const Mr = fixingMoment(bracket).ratedLbfIn;
  return (aIn, bIn) => {
    const inputs = { xi: aIn, xj: bIn, Mr };
    return [
      arm(aIn, bIn),
      { compute: () => fixingInfluence.compute(inputs), work: () => fixingInfluence(inputs) },
    ];
  };
}

function ownInfluence(
  bracket: BracketSupport,
  bound: 'low' | 'high',
): (aIn: number, bIn: number) => InfluencePart {
  const section = armProperties(bracket.arm);
  const E = section.modulusPsi;
  if (bracket.arm.kind === 'knee-brace') {
    const L = bracket.reachIn;
    const h = bracket.arm.dropIn;
    const Ls = strutLength.compute({ L, h });
    const ft = braceTipCompliance.compute({ L, Ls, h, A: section.areaIn2, E });
    return (aIn, bIn) => {
      const inputs = { xi: Math.min(aIn, bIn), xj: Math.max(aIn, bIn), L, ft, E, I: section.inertiaIn4 };
      return { compute: () => braceInfluence.compute(inputs), work: () => braceInfluence(inputs) };
    };
  }
  const I = bound === 'low' ? section.freeInertiaIn4 : section.inertiaIn4;
  return (aIn, bIn) => {
    const inputs = { xi: Math.min(aIn, bIn), xj: Math.max(aIn, bIn), E, I };
    return { compute: () => cantileverInfluence.compute(inputs), work: () => cantileverInfluence(inputs) };
  };
}

function requireOnArm(bracket: BracketSupport, xIn: number): void {
  if (xIn >= 0 && xIn <= bracket.reachIn * (1 + 1e-9)) return;
  throw new Error(`a place ${xIn} in from the wall is not on an arm of ${bracket.reachIn} in`);
}
