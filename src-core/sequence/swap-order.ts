/** Finds an order of things to be done one by one so that the worst step is as mild as it can be. */

/** What is searched. A set of what is done is a bit mask; item i is bit i. */
export interface OrderProblem {
  readonly count: number;
  /** Whether an item can be done once those of `done` are. */
  readonly isReachable: (done: number, item: number) => boolean;
  /** How bad it is to do each of `items` next, in their order. Asked once a set and item. */
  readonly costsOf: (done: number, items: readonly number[]) => readonly number[];
}

export interface FoundOrder {
  readonly order: readonly number[];
  /** The worst step's cost. */
  readonly worst: number;
  /** Whether no order at all has a milder worst step; false where only the likeliest were tried. */
  readonly isExact: boolean;
  /** Steps whose cost was worked out. */
  readonly tried: number;
}

/** Up to so many items every set of them is within reach: 2^8 sets and 1024 steps at the most. */
export const MOST_EXACT_ITEMS = 8;
/** Beyond that so many sets are carried on from each size to the next. */
const KEPT_SETS = 6;
/** Costs that differ by less are one, so that rounding does not choose between mirrored orders. */
const SAME_COST = 1e-9;

/**
 * The order whose worst step is mildest, and among those the one whose steps are mildest together; null where no order reaches every
 * item. Exact up to `MOST_EXACT_ITEMS` items (a shortest path over the sets, the length of a path being its worst step), beyond that
 * the likeliest sets of each size are carried on.
 */
export function findOrder(problem: OrderProblem): FoundOrder | null {
  const known = knownCosts(problem);
  const found = problem.count <= MOST_EXACT_ITEMS ? exactOrder(problem, known) : likelyOrder(problem, known);
  return found === null ? null : { ...found, tried: known.tried() };
}

interface KnownCosts {
  readonly next: (done: number) => readonly { readonly item: number; readonly cost: number }[];
  readonly tried: () => number;
}

function knownCosts({ count, isReachable, costsOf }: OrderProblem): KnownCosts {
  const bySet = new Map<number, readonly { readonly item: number; readonly cost: number }[]>();
  let tried = 0;
  return {
    next: (done) => {
      const before = bySet.get(done);
      if (before !== undefined) return before;
      const items = Array.from({ length: count }, (_, i) => i).filter(
        (item) => (done & (1 << item)) === 0 && isReachable(done, item),
      );
      const costs = costsOf(done, items);
      tried += items.length;
      const found = items.map((item, i) => ({ item, cost: costs[i]! }));
      bySet.set(done, found);
      return found;
    },
    tried: () => tried,
  };
}

interface Path {
  readonly done: number;
  readonly order: readonly number[];
  readonly worst: number;
  readonly sum: number;
}

const START: Path = { done: 0, order: [], worst: 0, sum: 0 };

/** First how mild the worst step can be, then the mildest steps together among those no worse. */
function exactOrder({ count }: OrderProblem, known: KnownCosts): Omit<FoundOrder, 'tried'> | null {
  const mildest = shortest(count, known, Infinity, (path) => path.worst);
  if (mildest === null) return null;
  const best = shortest(count, known, mildest.worst + SAME_COST, (path) => path.sum) ?? mildest;
  return { order: best.order, worst: best.worst, isExact: true };
}

/** Dijkstra's way over the sets: the shortest unfinished path is carried on first. */
function shortest(
  count: number,
  known: KnownCosts,
  mostCost: number,
  lengthOf: (path: Path) => number,
): Path | null {
  const all = 2 ** count - 1;
  const open = new Map<number, Path>([[0, START]]);
  const closed = new Set<number>();
  while (open.size > 0) {
    const path = [...open.values()].reduce((a, b) => (lengthOf(b) < lengthOf(a) ? b : a));
    if (path.done === all) return path;
    open.delete(path.done);
    closed.add(path.done);
    for (const longer of carriedOn(path, known)) {
      if (closed.has(longer.done)) continue;
      if (longer.worst > mostCost) continue;
      const before = open.get(longer.done);
      if (before === undefined || lengthOf(longer) < lengthOf(before)) open.set(longer.done, longer);
    }
  }
  return null;
}

function likelyOrder({ count }: OrderProblem, known: KnownCosts): Omit<FoundOrder, 'tried'> | null {
  let paths: readonly Path[] = [START];
  for (let size = 1; size <= count; size++) {
    const bySet = new Map<number, Path>();
    for (const path of paths.flatMap((one) => carriedOn(one, known))) {
      const before = bySet.get(path.done);
      if (before === undefined || compare(path, before) < 0) bySet.set(path.done, path);
    }
    paths = [...bySet.values()].sort(compare).slice(0, KEPT_SETS);
  }
  const [best] = paths;
  return best === undefined ? null : { order: best.order, worst: best.worst, isExact: false };
}

function carriedOn(path: Path, known: KnownCosts): Path[] {
  return known.next(path.done).map(({ item, cost }) => ({
    done: path.done | (1 << item),
    order: [...path.order, item],
    worst: Math.max(path.worst, cost),
    sum: path.sum + cost,
  }));
}

function compare(a: Path, b: Path): number {
  return Math.abs(a.worst - b.worst) > SAME_COST ? a.worst - b.worst : a.sum - b.sum;
}
