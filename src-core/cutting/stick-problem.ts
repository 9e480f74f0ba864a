/** Pieces of a few sizes to be cut from sticks that cost something, in ticks. */

export interface StickProblem {
  /** Lengths with one kerf, longest first, all different; and how many of each. Ticks, counts. */
  readonly sizes: readonly number[];
  readonly counts: readonly number[];
  readonly stocks: readonly { readonly capacity: number; readonly cost: number }[];
}

/** One stick: its stock, and how many of which size are cut from it. */
export interface Fill {
  readonly stock: number;
  readonly parts: readonly { readonly size: number; readonly count: number }[];
}

/** Length that a fill takes of its stick, ticks. */
export function filledTicks({ sizes }: StickProblem, { parts }: Fill): number {
  return parts.reduce((sum, { size, count }) => sum + sizes[size]! * count, 0);
}

/** Cost of all sticks. */
export function costOf({ stocks }: StickProblem, fills: readonly Fill[]): number {
  return fills.reduce((sum, { stock }) => sum + stocks[stock]!.cost, 0);
}

/** The step in which costs can differ: the greatest common divisor of the stocks' whole costs. */
export function costStep({ stocks }: StickProblem): number {
  return stocks.reduce((step, { cost }) => commonDivisor(step, cost), 0);
}

/** What floating point may add to a cost, as a part of it. */
const COST_SLACK = 1e-9;

/** A cost rounded up to whole steps, unless only floating point lifts it above one. */
export function roundedUp(cost: number, step: number): number {
  return Math.ceil((cost / step) * (1 - COST_SLACK)) * step;
}

/** Greatest common divisor of two whole numbers. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
