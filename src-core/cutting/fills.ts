/** The ways to fill one stick around the longest piece that is left. */
import type { Fill, StickProblem } from './stick-problem';

export interface FillsWanted {
  readonly counts: readonly number[];
  /** Size that must be in it: the longest left. */
  readonly first: number;
  readonly stock: number;
  /** Room that may stay empty, ticks. */
  readonly mostEmpty: number;
  /** Fills, and steps to find them, at the most. */
  readonly mostFills: number;
  readonly mostSteps: number;
}

export interface FillsFound {
  readonly fills: readonly Fill[];
  readonly steps: number;
  /** Whether none was left out for want of fills or steps. */
  readonly isWhole: boolean;
}

/** Every fill that holds a piece of the first size and has no room for another piece that is left. */
export function fillsAround({ sizes, stocks }: StickProblem, wanted: FillsWanted): FillsFound {
  const { first, stock, mostEmpty, mostFills, mostSteps } = wanted;
  const left = [...wanted.counts];
  const used = new Array<number>(sizes.length).fill(0);
  const behind = lengthsBehind(sizes, left);
  const fills: Fill[] = [];
  let steps = 0;
  let isWhole = true;

  const take = (size: number, count: number): void => {
    left[size]! -= count;
    used[size]! += count;
  };
  const walk = (from: number, empty: number, shortestPassed: number): void => {
    if (++steps > mostSteps || fills.length >= mostFills) {
      isWhole = false;
      return;
    }
    let size = from;
    while (size < sizes.length && (left[size] === 0 || sizes[size]! > empty)) size++;
    // Even with every piece from here on, one that was passed over would still fit, or too much would stay empty.
    const leastEmpty = empty - behind[size]!;
    if (leastEmpty >= shortestPassed || leastEmpty > mostEmpty) return;
    if (size === sizes.length) {
      fills.push(fillOf(stock, used));
      return;
    }
    const most = Math.min(left[size]!, Math.floor(empty / sizes[size]!));
    for (let count = most; count >= 0 && isWhole; count--) {
      take(size, count);
      const passed = left[size]! > 0 ? Math.min(shortestPassed, sizes[size]!) : shortestPassed;
      walk(size + 1, empty - count * sizes[size]!, passed);
      take(size, -count);
    }
  };
  take(first, 1);
  walk(first, stocks[stock]!.capacity - sizes[first]!, Number.POSITIVE_INFINITY);
  return { fills, steps, isWhole };
}

function fillOf(stock: number, used: readonly number[]): Fill {
  return { stock, parts: used.flatMap((count, size) => (count > 0 ? [{ size, count }] : [])) };
}

/** Length of all pieces from each size on, ticks. */
function lengthsBehind(sizes: readonly number[], counts: readonly number[]): number[] {
  const sums = new Array<number>(sizes.length + 1).fill(0);
  for (let i = sizes.length - 1; i >= 0; i--) sums[i] = sums[i + 1]! + sizes[i]! * counts[i]!;
  return sums;
}
