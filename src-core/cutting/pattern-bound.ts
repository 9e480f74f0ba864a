/**
 * The least cost of sticks if patterns could be cut in parts: the linear programme of Gilmore & Gomory, A linear programming approach to
 * the cutting-stock problem, Operations Research 9 (1961), by generated columns. Its prices of the pieces, scaled by the dearest fill
 * that there is (Farley, Operations Research 38 (1990)), prove a bound whatever the rounding on the way; new patterns are sought half
 * way between the prices and the best proved so far, which saves rounds (Wentges, 1997). All from memory.
 */
import { dearestFills } from './dearest-fill';
import { MOST_PATTERN_GRID, MOST_PATTERN_SIZES, PATTERN_LOOKS, PROOF_GRID } from './practice';
import { costStep, type Fill, roundedUp, type StickProblem } from './stick-problem';

export interface PatternBound {
  /** Cost that a piece of each size carries: the pieces of any one stick never carry more than it costs. */
  readonly weights: readonly number[];
  /** Cost of all pieces by their weights: no sticks cost less. Not rounded. */
  readonly bound: number;
  /** Patterns of the programme's answer, and how often each is cut: not whole numbers. */
  readonly patterns: readonly Pattern[];
  readonly steps: number;
}

export interface Pattern {
  readonly fill: Fill;
  readonly times: number;
}

/** What floating point may add to a reduced cost, as a part of the cost. */
const PRICE_SLACK = 1e-7;
const LEAST_PIVOT = 1e-9;
const NUDGE = 1e-4;
const GOLDEN_SECTION = (Math.sqrt(5) - 1) / 2;

/**
 * Weights of the pieces, and the patterns behind them, in no more than so many steps. Starts from the fills given. Stops early where the
 * bound reaches `enough`, or cannot rise by another step of cost. Every size must fit some stock. Very many sizes get weights by their
 * length alone, and no patterns.
 */
export function patternBound(
  problem: StickProblem,
  start: readonly Fill[],
  enough: number,
  mostSteps: number,
): PatternBound {
  const { sizes, counts, stocks } = problem;
  const rows = sizes.length;
  const total = (prices: ArrayLike<number>) => counts.reduce((sum, count, i) => sum + count * prices[i]!, 0);
  // the best prices proved so far; at first by length alone
  let best = sizes.map((size) => size * Math.min(...stocks.map(({ capacity, cost }) => cost / capacity)));
  if (rows > MOST_PATTERN_SIZES) return { weights: best, bound: total(best), patterns: [], steps: mostSteps };
  // glossary: basis column r is columns[r], cut times[r]; inverse is the basis' inverse, row by row; y prices the pieces
  const columns = sizes.map((_, i) => onlyOf(problem, i));
  const times = new Float64Array(rows);
  const y = new Float64Array(rows);
  const inverse = Array.from({ length: rows }, () => new Float64Array(rows));
  columns.forEach(({ stock, parts }, i) => {
    const own = parts[0]!.count;
    times[i] = (counts[i]! * (1 + nudge(i))) / own;
    y[i] = stocks[stock]!.cost / own;
    inverse[i]![i] = 1 / own;
  });
  for (const fill of start) if (isCheap(fill)) enter(fill);

  const coarse = dearestFills(problem, patternGrid(rows, mostSteps), 'up');
  const fine = coarse.isExact ? coarse : dearestFills(problem, PROOF_GRID, 'down');
  const scaleBy = (grid: typeof coarse) =>
    Math.min(...stocks.map(({ cost }, stock) => cost / grid.worthOf(stock)));
  const step = costStep(problem);
  let steps = 0;
  while (steps < mostSteps) {
    const bound = roundedUp(total(best), step);
    if (bound >= enough || bound >= roundedUp(total(y), step)) break;
    const between = best.map((price, i) => (price + Math.max(0, y[i]!)) / 2);
    const isHalfWay = lookFor(between);
    if (!isHalfWay && !lookFor(y.map((price) => Math.max(0, price)))) break;
  }
  fine.look(best);
  const scale = scaleBy(fine);
  const weights = best.map((price) => price * scale);
  return {
    weights,
    bound: total(weights),
    patterns: columns.map((fill, i) => ({ fill, times: times[i]! })),
    steps: steps + fine.steps,
  };

  /** Looks for a pattern at such prices; whether it brought one in, or a better bound. */
  function lookFor(prices: ArrayLike<number>): boolean {
    coarse.look(prices);
    steps += coarse.steps;
    const scale = scaleBy(coarse);
    const isBetter = total(prices) * scale > total(best) * (1 + PRICE_SLACK);
    if (isBetter) best = sizes.map((_, i) => prices[i]! * scale);
    let hasEntered = false;
    for (const fill of stocks.map((_, stock) => coarse.fillOf(stock))) {
      if (!isCheap(fill) || !enter(fill)) continue;
      hasEntered = true;
      steps += rows * rows;
    }
    return isBetter || hasEntered;
  }

  /** Whether a fill costs less than its pieces are priced at. */
  function isCheap({ stock, parts }: Fill): boolean {
    const worth = parts.reduce((sum, { size, count }) => sum + y[size]! * count, 0);
    return worth > stocks[stock]!.cost * (1 + PRICE_SLACK);
  }

  /** Brings a pattern into the basis; false where the arithmetic has no room for it. */
  function enter(fill: Fill): boolean {
    const { parts, stock } = fill;
    const way = inverse.map((row) => parts.reduce((sum, { size, count }) => sum + row[size]! * count, 0));
    let leaves = -1;
    for (let r = 0; r < rows; r++) {
      if (way[r]! > LEAST_PIVOT && (leaves < 0 || times[r]! * way[leaves]! < times[leaves]! * way[r]!))
        leaves = r;
    }
    if (leaves < 0) return false;
    const reduced = stocks[stock]!.cost - parts.reduce((sum, { size, count }) => sum + y[size]! * count, 0);
    const pivotRow = inverse[leaves]!;
    const pivot = way[leaves]!;
    const enters = times[leaves]! / pivot;
    for (let i = 0; i < rows; i++) pivotRow[i]! /= pivot;
    for (let r = 0; r < rows; r++) {
      if (r === leaves || way[r] === 0) continue;
      const row = inverse[r]!;
      const share = way[r]!;
      for (let i = 0; i < rows; i++) row[i]! -= share * pivotRow[i]!;
      times[r] = Math.max(0, times[r]! - share * enters);
    }
    times[leaves] = enters;
    columns[leaves] = fill;
    for (let i = 0; i < rows; i++) y[i]! += reduced * pivotRow[i]!;
    return true;
  }
}

function patternGrid(rows: number, mostSteps: number): number {
  return Math.min(MOST_PATTERN_GRID, Math.ceil(mostSteps / (PATTERN_LOOKS * rows)));
}

/**
 * A part of a count by which it is worked too large, different for each: like counts would let patterns change places for ever without
 * any being cut more. The proof does not look at counts.
 */
function nudge(i: number): number {
  return NUDGE * ((i * GOLDEN_SECTION) % 1);
}

/** As many of one size as there are, or as the stock holds that comes cheapest by the piece. */
function onlyOf({ sizes, counts, stocks }: StickProblem, size: number): Fill {
  const held = stocks.map(({ capacity }) => Math.min(counts[size]!, Math.floor(capacity / sizes[size]!)));
  const byPiece = (i: number) => (held[i] === 0 ? Number.POSITIVE_INFINITY : stocks[i]!.cost / held[i]!);
  const stock = stocks.reduce((best, _, i) => (byPiece(i) < byPiece(best) ? i : best), 0);
  return { stock, parts: [{ size, count: held[stock]! }] };
}
