/**
 * Branch and bound over sticks: the longest piece left lies in some stick; every way to fill that stick is tried, the one that loses
 * least first, and given up where the pieces left cannot come cheap enough by their weights. The order of work is the bin completion
 * of Korf, A new algorithm for optimal bin packing, AAAI (2002), from memory.
 */
import { fillsAround } from './fills';
import { cheapestStock } from './greedy-sticks';
import { FILLS_WEIGHED, STICK_SEARCH_STEPS } from './practice';
import { costOf, costStep, type Fill, type StickProblem } from './stick-problem';

export interface SearchedSticks {
  readonly fills: readonly Fill[];
  /** Whether every other way was tried or ruled out. */
  readonly isExhausted: boolean;
}

/** What floating point may add to a cost, as a part of it. */
const COST_SLACK = 1e-9;

/** Cheaper sticks than those to start from, if there are any within the search's steps. Stops at `least`, which none can beat. */
export function searchSticks(
  problem: StickProblem,
  weights: readonly number[],
  least: number,
  start: readonly Fill[],
): SearchedSticks {
  const { sizes, stocks } = problem;
  const step = costStep(problem);
  const counts = [...problem.counts];
  const path: Fill[] = [];
  /** Least cost at which the pieces left were met before. */
  const met = new Map<string, number>();
  let best = start;
  let bestCost = costOf(problem, start);
  let steps = 0;
  let isExhausted = true;

  const isDone = () => bestCost <= least || steps > STICK_SEARCH_STEPS;
  const put = ({ parts }: Fill, sign: 1 | -1): void => {
    for (const { size, count } of parts) counts[size]! -= sign * count;
  };
  /** Cost that may still be lost beside what the pieces left must cost, to end below the best. */
  const toLose = (cost: number, weightLeft: number) =>
    bestCost - step - cost - weightLeft + COST_SLACK * bestCost;

  const visit = (cost: number, weightLeft: number): void => {
    steps++;
    const first = counts.findIndex((count) => count > 0);
    if (first < 0) {
      best = path.map((fill) => cheapestStock(problem, fill));
      bestCost = costOf(problem, best);
      return;
    }
    if (toLose(cost, weightLeft) < 0) return;
    const key = String.fromCharCode(...counts);
    if ((met.get(key) ?? Number.POSITIVE_INFINITY) <= cost) return;
    met.set(key, cost);
    for (const { fill, weight } of choices(first, toLose(cost, weightLeft))) {
      const fillCost = stocks[fill.stock]!.cost;
      if (fillCost - weight > toLose(cost, weightLeft)) continue;
      put(fill, 1);
      path.push(fill);
      visit(cost + fillCost, weightLeft - weight);
      path.pop();
      put(fill, -1);
      if (isDone()) {
        isExhausted = false;
        return;
      }
    }
  };

  /** Fills around the longest piece left from every stock, the least lost first. */
  const choices = (first: number, loss: number): { readonly fill: Fill; readonly weight: number }[] =>
    stocks
      .flatMap(({ capacity, cost }, stock) => {
        if (sizes[first]! > capacity) return [];
        const found = fillsAround(problem, {
          counts,
          first,
          stock,
          mostEmpty: capacity - leastFill(cost, loss),
          mostFills: FILLS_WEIGHED,
          mostSteps: STICK_SEARCH_STEPS - steps,
        });
        steps += found.steps;
        if (!found.isWhole) isExhausted = false;
        return found.fills.map((fill) => ({
          fill,
          weight: fill.parts.reduce((sum, { size, count }) => sum + weights[size]! * count, 0),
        }));
      })
      .sort((a, b) => stocks[a.fill.stock]!.cost - a.weight - (stocks[b.fill.stock]!.cost - b.weight));

  const dearest = Math.max(...weights.map((weight, i) => weight / sizes[i]!));
  /** Length that a stick must at least be filled to, so that no more cost is lost on it, ticks. */
  const leastFill = (cost: number, loss: number) => (cost - loss) / dearest;

  visit(
    0,
    weights.reduce((sum, weight, i) => sum + weight * counts[i]!, 0),
  );
  return { fills: best, isExhausted: isExhausted || bestCost <= least };
}
