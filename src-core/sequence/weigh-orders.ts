/** Weighs the orders of a swap by how near each step brings the slab to cracking, and checks the mildest in full. */
import type { OpenMoment, SupportMoment, SupportSets } from '../analysis';
import { openMoment, serviceMoments } from '../analysis';
import { stands } from '../checks';
import type { SwapCheck, SwapOptions } from './check-swap';
import { checkMoments } from './check-swap';
import type { FoundOrder, OrderProblem } from './swap-order';
import { findOrder } from './swap-order';
import type { SwapPlan } from './swap-plan';
import { hasWay, standingWith, stepsOf } from './swap-plan';
import { momentsOf } from './swap-steps';

/** Stands for a slab that would turn over or that nothing holds: worse than any that only cracks. */
const FALLS_RATIO = 1000;
/** Orders that are checked in full before the mildest is taken though it fails. */
const MOST_LOOKS = 6;

export interface WeighedOrder {
  readonly found: FoundOrder;
  readonly worst: number;
  readonly check: SwapCheck;
  readonly isBlocked: boolean;
}

/** The orders of one piece; what a step costs is worked out once for both. */
export interface OrderSearch {
  /** The mildest order of all. */
  readonly mildest: WeighedOrder;
  /**
   * The mildest order whose every moment stands in full: where a step of the mildest fails a check other than cracking, such as
   * tipping, it is passed over and the next mildest is looked at. The mildest of all where none of those tried stands.
   */
  readonly mildestStanding: () => WeighedOrder;
}

/** Weighs the orders of a piece that is laid out. `dayOf` gives the day of a step by its number from 0. */
export function searchOrders(
  sets: SupportSets,
  plan: SwapPlan,
  dayOf: (step: number) => number,
  options: SwapOptions,
): OrderSearch {
  const cracking = keptCosts(stepCosts(sets, plan, dayOf));
  const failing = new Set<string>();
  const costsOf: OrderProblem['costsOf'] = (done, items) =>
    cracking(done, items).map((cost, i) => (failing.has(`${done} ${items[i]}`) ? FALLS_RATIO + cost : cost));
  const problem = { count: plan.bays.length, costsOf };
  const isReachable = (done: number, item: number) => hasWay(plan, done, item);
  const isBlocked = findOrder({ ...problem, isReachable }) === null;
  const look = (): WeighedOrder => {
    const found = findOrder({ ...problem, isReachable: isBlocked ? () => true : isReachable })!;
    const steps = stepsOf(plan, found.order, dayOf);
    const check = checkMoments(sets, steps, momentsOf(sets.meshed.job, plan.piece, steps), options);
    const worst = Math.max(...edgesOf(found.order).map(({ done, item }) => cracking(done, [item])[0]!));
    return { found, worst, check, isBlocked };
  };
  const mildest = look();
  const mildestStanding = () => {
    let one = mildest;
    for (let looks = 1; !stands(one.check.level) && looks < MOST_LOOKS; looks++) {
      const failed = failedEdges(one);
      if (failed.every((edge) => failing.has(edge))) break;
      for (const edge of failed) failing.add(edge);
      one = look();
    }
    return stands(one.check.level) ? one : mildest;
  };
  return { mildest, mildestStanding };
}

/** Steps of an order with a moment that does not stand, as `costsOf` asks for them. */
function failedEdges({ found, check }: WeighedOrder): string[] {
  return edgesOf(found.order).flatMap(({ done, item }, i) => {
    const { id } = check.steps[i]!;
    const fails = check.moments.some(({ stepId, level }) => stepId === id && !stands(level));
    return fails ? [`${done} ${item}`] : [];
  });
}

/** Each item of an order with the set that is done before it. */
function edgesOf(order: readonly number[]): { readonly done: number; readonly item: number }[] {
  let done = 0;
  return order.map((item) => {
    const edge = { done, item };
    done |= 1 << item;
    return edge;
  });
}

/** Every moment of an order, with its day: each bay open, and each cabinet in. */
export function momentsOfOrder(
  plan: SwapPlan,
  order: readonly number[],
  dayOf: (step: number) => number,
): SupportMoment[] {
  return edgesOf(order).flatMap(({ done, item }, step) => [
    { day: dayOf(step), standing: standingWith(plan, done, item) },
    { day: dayOf(step), standing: standingWith(plan, done | (1 << item), null) },
  ]);
}

/** Cracking ratio of each moment; `FALLS_RATIO` where the slab would turn over or nothing holds it. */
export function crackingOfMoments(sets: SupportSets, moments: readonly SupportMoment[]): number[] {
  return costsOfMoments(
    sets,
    moments.map((moment) => openMoment(sets, moment)),
  );
}

/** The same costs, each worked out once. */
function keptCosts(costsOf: OrderProblem['costsOf']): OrderProblem['costsOf'] {
  const known = new Map<string, number>();
  return (done, items) => {
    const fresh = items.filter((item) => !known.has(`${done} ${item}`));
    if (fresh.length > 0) {
      costsOf(done, fresh).forEach((cost, i) => {
        known.set(`${done} ${fresh[i]}`, cost);
      });
    }
    return items.map((item) => known.get(`${done} ${item}`)!);
  };
}

/** The worse of a step's two moments: its bay open, and its cabinet in. */
function stepCosts(
  sets: SupportSets,
  plan: SwapPlan,
  dayOf: (step: number) => number,
): (done: number, items: readonly number[]) => readonly number[] {
  const inCosts = new Map<number, number>();
  return (done, items) => {
    const day = dayOf(bitsOf(done));
    const after = items.map((item) => done | (1 << item));
    const fresh = after.filter((set) => !inCosts.has(set));
    const open = (set: number, bay: number | null) =>
      openMoment(sets, { day, standing: standingWith(plan, set, bay) });
    const moments = [...items.map((item) => open(done, item)), ...fresh.map((set) => open(set, null))];
    const costs = costsOfMoments(sets, moments);
    fresh.forEach((set, i) => {
      inCosts.set(set, costs[items.length + i]!);
    });
    return items.map((_, i) => Math.max(costs[i]!, inCosts.get(after[i]!)!));
  };
}

function costsOfMoments(sets: SupportSets, moments: readonly (OpenMoment | null)[]): number[] {
  const held = moments.filter((moment) => moment !== null);
  const ratios = serviceMoments(
    sets,
    held.map((moment) => ({ moment, lift: null })),
  ).map(({ crackingRatio }) => Math.min(FALLS_RATIO, crackingRatio));
  let next = 0;
  return moments.map((moment) => (moment === null ? FALLS_RATIO : ratios[next++]!));
}

function bitsOf(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest >>= 1) count += rest & 1;
  return count;
}
