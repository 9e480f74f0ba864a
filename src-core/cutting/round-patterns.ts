/** Whole sticks from patterns that are cut in parts: the most wanted patterns are cut, and the rest is worked again. */
import { cheapestStock, greedySticks } from './greedy-sticks';
import { type Pattern, type PatternBound, patternBound } from './pattern-bound';
import { costOf, type Fill, type StickProblem } from './stick-problem';

/** A pattern that is wanted this often at least is cut once. */
const WANTED_TIMES = 0.6;
/** A pattern wanted this little less than a whole number of times is wanted so often. */
const NEARLY = 1e-6;

/**
 * The cheapest list that comes of a bound's patterns, in no more than so many steps. What the patterns leave open is laid by the
 * quick lists, and the cheapest of all is kept.
 */
export function roundPatterns(
  problem: StickProblem,
  { patterns }: PatternBound,
  least: number,
  mostSteps: number,
): Fill[] {
  let cut: Fill[] = [];
  let left = [...problem.counts];
  let wanted = patterns;
  let best: Fill[] | null = null;
  let steps = 0;
  while (steps < mostSteps) {
    const taken = mostWanted(wanted, left);
    cut = [...cut, ...taken];
    left = without(left, taken);
    const rest = restOf(problem, left);
    const laid = rest.problem.sizes.length === 0 ? [] : greedySticks(rest.problem).map(rest.back);
    const list = [...cut, ...laid].map((fill) => cheapestStock(problem, fill));
    if (best === null || costOf(problem, list) < costOf(problem, best)) best = list;
    if (laid.length <= 1 || taken.length === 0 || costOf(problem, best) <= least) return best;
    const clipped = wanted.flatMap(({ fill }) => rest.clip(fill));
    const again = patternBound(rest.problem, clipped, Number.POSITIVE_INFINITY, mostSteps - steps);
    steps += again.steps;
    wanted = again.patterns.map(({ fill, times }) => ({ fill: rest.back(fill), times }));
  }
  return best ?? greedySticks(problem);
}

/** Patterns cut as often as they are wanted whole; where none is, those wanted most that the pieces left allow. */
function mostWanted(patterns: readonly Pattern[], counts: readonly number[]): Fill[] {
  const whole = patterns.flatMap(({ fill, times }) =>
    Array.from({ length: Math.floor(times + NEARLY) }, () => fill),
  );
  if (whole.length > 0) return whole;
  const left = [...counts];
  const taken: Fill[] = [];
  for (const { fill, times } of [...patterns].sort((a, b) => b.times - a.times)) {
    if (taken.length > 0 && times < WANTED_TIMES) break;
    if (fill.parts.some(({ size, count }) => left[size]! < count)) continue;
    for (const { size, count } of fill.parts) left[size]! -= count;
    taken.push(fill);
  }
  return taken;
}

function without(counts: readonly number[], fills: readonly Fill[]): number[] {
  const left = [...counts];
  for (const { parts } of fills) for (const { size, count } of parts) left[size]! -= count;
  return left;
}

/** The problem of the pieces left, and the ways there and back. */
function restOf({ sizes, stocks }: StickProblem, counts: readonly number[]) {
  const kept = sizes.flatMap((_, size) => (counts[size]! > 0 ? [size] : []));
  const place = new Map(kept.map((size, i) => [size, i]));
  return {
    problem: { sizes: kept.map((size) => sizes[size]!), counts: kept.map((size) => counts[size]!), stocks },
    back: ({ stock, parts }: Fill): Fill => ({
      stock,
      parts: parts.map(({ size, count }) => ({ size: kept[size]!, count })),
    }),
    clip: ({ stock, parts }: Fill): Fill[] => {
      const own = parts.flatMap(({ size, count }) => {
        const i = place.get(size);
        return i === undefined ? [] : [{ size: i, count: Math.min(count, counts[size]!) }];
      });
      return own.length === 0 ? [] : [{ stock, parts: own }];
    },
  };
}
