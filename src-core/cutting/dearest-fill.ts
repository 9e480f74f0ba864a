/** The fill of a stick whose pieces are worth most, on a grid: the bounded knapsack by dynamic programming. */
import { commonDivisor, type Fill, type StickProblem } from './stick-problem';

export interface DearestFills {
  /** Steps that one look at the grid takes. */
  readonly steps: number;
  /** Whether every size is whole on the grid, so that nothing was rounded. */
  readonly isExact: boolean;
  /** Looks at the grid with pieces of such worth. */
  readonly look: (worths: ArrayLike<number>) => void;
  /** Worth of the dearest fill of a stock by the last look, and the fill. */
  readonly worthOf: (stock: number) => number;
  readonly fillOf: (stock: number) => Fill;
}

/** Several pieces of one size that are taken together. */
interface Lot {
  readonly size: number;
  readonly count: number;
  readonly units: number;
}

/**
 * A grid of no more than `most` parts of the longest stick. Where sizes share a measure that large, they are whole on it. Else they are
 * rounded up, so that every fill found is one, or down, so that no fill is dearer than the dearest found.
 */
export function dearestFills(
  { sizes, counts, stocks }: StickProblem,
  most: number,
  rounding: 'up' | 'down',
): DearestFills {
  const longest = Math.max(...stocks.map(({ capacity }) => capacity));
  const divisor = sizes.reduce(commonDivisor, 0);
  const isExact = longest / divisor <= most;
  const unit = isExact ? divisor : longest / most;
  const width = Math.floor(longest / unit) + 1;
  const unitsOf = (length: number) => (rounding === 'up' ? Math.ceil : Math.floor)(length / unit);
  const lots: Lot[] = sizes.flatMap((size, i) =>
    lotsOf(Math.min(counts[i]!, Math.floor(longest / size))).map((count) => ({
      size: i,
      count,
      units: unitsOf(count * size),
    })),
  );
  const worth = new Float64Array(width);
  const taken = lots.map(() => new Uint8Array(width));
  const ends = stocks.map(({ capacity }) => Math.floor(capacity / unit));
  return {
    steps: lots.length * width,
    isExact,
    look: (worths) => {
      worth.fill(0);
      lots.forEach(({ size, count, units }, lot) => {
        const value = count * worths[size]!;
        const own = taken[lot]!;
        own.fill(0);
        if (!(value > 0)) return;
        for (let at = width - 1; at >= units; at--) {
          const withIt = worth[at - units]! + value;
          if (withIt > worth[at]!) {
            worth[at] = withIt;
            own[at] = 1;
          }
        }
      });
    },
    worthOf: (stock) => worth[ends[stock]!]!,
    fillOf: (stock) => {
      const held = sizes.map(() => 0);
      let at = ends[stock]!;
      for (let lot = lots.length - 1; lot >= 0; lot--) {
        if (taken[lot]![at] === 0) continue;
        held[lots[lot]!.size]! += lots[lot]!.count;
        at -= lots[lot]!.units;
      }
      return { stock, parts: held.flatMap((count, size) => (count > 0 ? [{ size, count }] : [])) };
    },
  };
}

/** Powers of two and a rest that make up every count to a number. */
function lotsOf(most: number): number[] {
  const lots: number[] = [];
  for (let left = most; left > 0; left -= lots.at(-1)!) lots.push(Math.min(2 ** lots.length, left));
  return lots;
}
