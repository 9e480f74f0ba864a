/** Sticks as they are bought, and what a list of them is to keep least. */
import { PRICE_STEPS, TICKS_PER_IN } from './practice';
import type { CutAim } from './proof';
import { stockTicks } from './ticks';

export interface StickStock {
  readonly id: string;
  readonly lengthIn: number;
  /** Price of one stick; null where it is not known. */
  readonly price: number | null;
}

/** What sticks are called in a proof. */
export const STICK_WORDS = { one: 'stick', many: 'sticks' } as const;

/** The number of sticks is kept least where there is one stock, else their price where all have one, else their length. */
export function aimOf(stocks: readonly StickStock[]): CutAim {
  if (stocks.length === 1) return 'count';
  return stocks.every(({ price }) => price !== null && price > 0) ? 'price' : 'length';
}

/** Cost of a stick by its aim, as a whole number, so that sums of costs are exact. */
export function wholeCost(aim: CutAim, { lengthIn, price }: StickStock): number {
  if (aim === 'count') return 1;
  return aim === 'price' ? Math.round(price! * PRICE_STEPS) : stockTicks(lengthIn, 0);
}

/** A whole cost as a count, a price, or a length, in. */
export function totalOf(aim: CutAim, wholes: number): number {
  if (aim === 'count') return wholes;
  return wholes / (aim === 'price' ? PRICE_STEPS : TICKS_PER_IN);
}
