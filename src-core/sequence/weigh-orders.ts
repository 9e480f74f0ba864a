/** Weighs the orders of a swap by how near each step brings the slab to cracking, and checks the mildest in full. */
import type { OpenMoment, SupportSets } from '../analysis';
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

/**
 * The mildest order whose every moment stands in full: where a step of the mildest fails a check other than cracking, such as tipping,
 * it is passed over and the next mildest is looked at. The mildest of all where none of those tried stands.
 */
export function weighOrders(
  sets: SupportSets,
  plan: SwapPlan,
  dayOf: (step: number) => number,
  options: SwapOptions,
): WeighedOrder {
  const cracking = keptCosts(stepCosts(sets, plan, dayOf));
  const failing = new Set<string>();
  const costsOf: OrderProblem['costsOf'] = (done, items) =>
    cracking(done, items).map((cost, i) => (failing.has(`${done} ${items[i]}`) ? FALLS_RATIO + cost : cost));
  const problem = { count: plan.bays.length, costsOf };
  const isReachable = (done: number, item: number) => hasWay(plan, done, item);
  const isBlocked = findOrder({ ...problem, isReachable }) === null;
  let first: WeighedOrder | null = null;
  for (let look = 0; look < MOST_LOOKS; look++) {
    const found = findOrder({ ...problem, isReachable: isBlocked ? () => true : isReachable })!;
    const steps = stepsOf(plan, found.order, dayOf);
    const check = checkMoments(sets, steps, momentsOf(sets.meshed.job, plan.piece, steps), options);
    const worst = Math.max(...edgesOf(found.order).map(({ done, item }) => cracking(done, [item])[0]!));
    const one = { found, worst, check, isBlocked };
    first ??= one;
    if (stands(check.level)) return one;
    const failed = edgesOf(found.order).filter((_, i) =>
      check.moments.some(({ stepId, level }) => stepId === steps[i]!.id && !stands(level)),
    );
    if (failed.length === 0 || failed.every(({ done, item }) => failing.has(`${done} ${item}`))) break;
    for (const { done, item } of failed) failing.add(`${done} ${item}`);
  }
  return first!;
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
