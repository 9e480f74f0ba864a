/**
 * Shares of a stick: functions that give each piece a share of it, such that pieces which fit one stick together never share more
 * than one. The shares of all pieces are then no more than the sticks, whatever the cutting. Fekete & Schepers, New classes of fast
 * lower bounds for bin packing problems, Mathematical Programming 91 (2001), from memory; the first kind is the bound L2 of
 * Martello & Toth, Knapsack Problems (1990), ch. 8, from memory.
 */
import { LARGEST_DIVISOR } from './practice';

/** Share of one stick that a piece of a size takes, 0 to 1. Sizes in ticks. */
export type Share = (size: number) => number;

/** What floating point may add to a sum of shares. */
export const SHARE_SLACK = 1e-9;

/** Shares by length: a piece up to `smallest` takes none, one that leaves less than that takes all. */
function byLength(capacity: number, smallest: number): Share {
  return (size) => (size < smallest ? 0 : size > capacity - smallest ? 1 : size / capacity);
}

/** Shares by count: how many of `divisor` + 1 equal parts a piece is longer than, out of `divisor`. */
function byCount(capacity: number, divisor: number): Share {
  return (size) => {
    const parts = (divisor + 1) * size;
    return parts % capacity === 0 ? size / capacity : Math.floor(parts / capacity) / divisor;
  };
}

/** Every share function that is tried for pieces of these sizes. */
export function sharesOf(capacity: number, sizes: readonly number[]): Share[] {
  const smalls = [0, ...new Set(sizes.filter((size) => 2 * size <= capacity))];
  const divisors = Array.from({ length: LARGEST_DIVISOR }, (_, i) => i + 1);
  return [
    ...smalls.map((smallest) => byLength(capacity, smallest)),
    ...divisors.map((divisor) => byCount(capacity, divisor)),
  ];
}

/** Least number of sticks for counts of sizes, proved by the best of the share functions. A count. */
export function leastBins(capacity: number, sizes: readonly number[], counts: readonly number[]): number {
  const most = sharesOf(capacity, sizes).reduce((best, share) => {
    const total = sizes.reduce((sum, size, i) => sum + share(size) * counts[i]!, 0);
    return Math.max(best, total);
  }, 0);
  return Math.max(0, Math.ceil(most - SHARE_SLACK));
}
