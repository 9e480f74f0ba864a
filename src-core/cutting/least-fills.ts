/** The cheapest sticks for a problem: quick lists, bounds, lists from the bound's patterns, and a search where they still differ. */
import { greedySticks } from './greedy-sticks';
import { patternBound } from './pattern-bound';
import { PATTERN_STEPS, ROUNDING_STEPS } from './practice';
import { roundPatterns } from './round-patterns';
import { leastBins } from './shares';
import { costOf, costStep, type Fill, roundedUp, type StickProblem } from './stick-problem';
import { searchSticks } from './stick-search';

export interface LeastFills {
  readonly fills: readonly Fill[];
  readonly cost: number;
  /** Least cost that is proved; the cost itself where the fills are. */
  readonly least: number;
  readonly isProved: boolean;
}

/** Fills of the least cost, or the best that the steps allow. Every size must fit some stock. */
export function leastFills(problem: StickProblem): LeastFills {
  const quick = greedySticks(problem);
  const byShares = leastByShares(problem);
  if (costOf(problem, quick) <= byShares) return proved(problem, quick);
  const patterns = patternBound(problem, quick, costOf(problem, quick), PATTERN_STEPS);
  const least = Math.max(byShares, roundedUp(patterns.bound, costStep(problem)));
  if (costOf(problem, quick) <= least) return proved(problem, quick);
  const rounded = roundPatterns(problem, patterns, least, ROUNDING_STEPS);
  const start = costOf(problem, rounded) < costOf(problem, quick) ? rounded : quick;
  const { fills, isExhausted } = searchSticks(problem, patterns.weights, least, start);
  if (isExhausted) return proved(problem, fills);
  return { fills, cost: costOf(problem, fills), least, isProved: false };
}

function proved(problem: StickProblem, fills: readonly Fill[]): LeastFills {
  const cost = costOf(problem, fills);
  return { fills, cost, least: cost, isProved: true };
}

/** Least cost by the share functions, which know one stock; 0 where there are several. */
function leastByShares({ sizes, counts, stocks }: StickProblem): number {
  const [only, ...others] = stocks;
  if (only === undefined || others.length > 0) return 0;
  return leastBins(only.capacity, sizes, counts) * only.cost;
}
