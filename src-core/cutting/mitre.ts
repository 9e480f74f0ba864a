/**
 * Mitred cuts on one stick. Angles are measured from a square cut. Along the stick, a cut at an angle moves by its face times the
 * tangent, and a saw takes more than its kerf. Derived from the triangle of the cut; checked against worked sums.
 */
import { formula } from '../workings';

const SOURCE = 'triangle of the mitre cut';

/** Length of stick that a saw takes along the stick, in: kerf `k` (in) at `a` from square (rad, under a quarter turn). */
export const mitreKerf = formula<{ k: number; a: number }>({
  symbol: 'ka',
  label: 'Saw kerf along the stick at a mitre',
  formula: 'k / cos(a)',
  units: { k: 'in', a: 'rad' },
  unit: 'in',
  source: SOURCE,
  compute: ({ k, a }) => k / Math.cos(a),
});

/**
 * Stick for `n` like pieces mitred at both ends, each turned end for end beside the last so that they share their cuts, in. `l` to the
 * long points (in), `f` face (in), `a` mitre from square (rad), `k` kerf (in).
 */
export const mitredRun = formula<{ n: number; l: number; f: number; a: number; k: number }>({
  symbol: 'Ln',
  label: 'Stick for mitred pieces that share their cuts',
  formula: 'n * (l - f * sin(a) / cos(a)) + (n - 1) * k / cos(a) + f * sin(a) / cos(a)',
  units: { n: '', l: 'in', f: 'in', a: 'rad', k: 'in' },
  unit: 'in',
  source: SOURCE,
  compute: ({ n, l, f, a, k }) => n * (l - f * Math.tan(a)) + ((n - 1) * k) / Math.cos(a) + f * Math.tan(a),
});

/** Stick for `n` pieces `l` long (in) that are cut square apart, with a kerf `k` (in) between, and mitred after, in. */
export const squareRun = formula<{ n: number; l: number; k: number }>({
  symbol: 'Ls',
  label: 'Stick for pieces cut square apart',
  formula: 'n * l + (n - 1) * k',
  units: { n: '', l: 'in', k: 'in' },
  unit: 'in',
  source: SOURCE,
  compute: ({ n, l, k }) => n * l + (n - 1) * k,
});

/**
 * Lean of a cut line: how far it moves along the stick for each inch from the near edge to the far one. Nought for a square cut.
 *
 *     far edge   ____________            start leans +, end leans -:
 *               /            \           both long points on the near edge
 *     near     /______________\
 */
export interface Leans {
  readonly start: number;
  readonly end: number;
}

/** Leans of a piece's ends: a positive angle has its long point on the near edge, a negative one on the far edge. */
export function leansOf(startRad: number, endRad: number): Leans {
  return { start: Math.tan(startRad), end: 0 - Math.tan(endRad) };
}

/** How a piece lies on its stick: turned end for end with its face up, or rolled over about its length, or both. */
export interface Lie {
  readonly isTurned: boolean;
  readonly isRolled: boolean;
}

/** Leans of a piece as it lies. Turned, its ends change places and each keeps its lean; rolled over, each leans the other way. */
export function laid({ start, end }: Leans, { isTurned, isRolled }: Lie): Leans {
  const there = isTurned ? { start: end, end: start } : { start, end };
  return isRolled ? { start: 0 - there.start, end: 0 - there.end } : there;
}

/** Lean that a cut between two ends may have and serve both: the lesser of two that lean alike, else square. */
export function sharedLean(end: number, start: number): number {
  if (end * start <= 0) return 0;
  return Math.sign(end) * Math.min(Math.abs(end), Math.abs(start));
}

/**
 * Length along the stick from the long point of one end to that of the next piece's start, in; below nought where they nest. Two ends
 * that lean alike share a cut at the lesser lean; where that saves nothing they are cut square apart.
 */
export function jointIn(end: number, start: number, faceIn: number, kerfIn: number): number {
  const lean = Math.abs(sharedLean(end, start));
  return Math.min(kerfIn, kerfIn * Math.hypot(1, lean) - lean * faceIn);
}
