import { describe, expect, test } from 'vitest';
import type { OrderProblem } from '../../../src-core/sequence/swap-order';
import { findOrder, MOST_EXACT_ITEMS } from '../../../src-core/sequence/swap-order';
import { seededRandom } from '../../support/seeded-random';

/** A problem whose costs depend on the whole set done before. */
function randomProblem(count: number, seed: number, blockedShare: number): OrderProblem {
  const random = seededRandom(seed);
  const costs = new Map<string, number>();
  const blocked = new Map<string, boolean>();
  const known = <Value>(map: Map<string, Value>, key: string, make: () => Value): Value => {
    const before = map.get(key);
    if (before !== undefined) return before;
    const value = make();
    map.set(key, value);
    return value;
  };
  // every number is drawn beforehand, so that it does not matter in which order the search asks
  for (let done = 0; done < 2 ** count; done++)
    for (let item = 0; item < count; item++) {
      known(costs, `${done} ${item}`, () => random());
      known(blocked, `${done} ${item}`, () => random() < blockedShare);
    }
  return {
    count,
    isReachable: (done, item) => !blocked.get(`${done} ${item}`)!,
    costsOf: (done, items) => items.map((item) => costs.get(`${done} ${item}`)!),
  };
}

/** Worst step of the mildest order and least sum among those, by trying every order. */
function bruteForce({ count, isReachable, costsOf }: OrderProblem): { worst: number; sum: number } | null {
  let best: { worst: number; sum: number } | null = null;
  const walk = (done: number, worst: number, sum: number) => {
    if (done === 2 ** count - 1) {
      if (best === null || worst < best.worst || (worst === best.worst && sum < best.sum))
        best = { worst, sum };
      return;
    }
    for (let item = 0; item < count; item++) {
      if ((done & (1 << item)) !== 0 || !isReachable(done, item)) continue;
      const [cost] = costsOf(done, [item]) as [number];
      walk(done | (1 << item), Math.max(worst, cost), sum + cost);
    }
  };
  walk(0, 0, 0);
  return best;
}

function sumOf({ costsOf }: OrderProblem, order: readonly number[]): { worst: number; sum: number } {
  let done = 0;
  let worst = 0;
  let sum = 0;
  for (const item of order) {
    const [cost] = costsOf(done, [item]) as [number];
    worst = Math.max(worst, cost);
    sum += cost;
    done |= 1 << item;
  }
  return { worst, sum };
}

describe('the mildest order', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'of six items, seed %i: the worst step of every order, and the mildest of those together',
    (seed) => {
      const problem = randomProblem(6, seed, 0.2);
      const expected = bruteForce(problem);
      const found = findOrder(problem);
      if (expected === null) {
        expect(found).toBeNull();
        return;
      }
      expect(found!.isExact).toBe(true);
      const { worst, sum } = sumOf(problem, found!.order);
      expect(worst).toBe(expected.worst);
      expect(found!.worst).toBe(expected.worst);
      expect(sum).toBeCloseTo(expected.sum, 12);
    },
  );

  test('asks for the cost of no step twice, and of fewer than all where some sets are out of the question', () => {
    const problem = randomProblem(MOST_EXACT_ITEMS, 99, 0);
    const asked = new Map<string, number>();
    const found = findOrder({
      ...problem,
      costsOf: (done, items) => {
        for (const item of items) asked.set(`${done} ${item}`, (asked.get(`${done} ${item}`) ?? 0) + 1);
        return problem.costsOf(done, items);
      },
    })!;
    expect(Math.max(...asked.values())).toBe(1);
    expect(found.tried).toBe(asked.size);
    expect(found.tried).toBeLessThan(MOST_EXACT_ITEMS * 2 ** (MOST_EXACT_ITEMS - 1));
  });

  test('beyond eight items the likeliest sets are carried on, every item once, and it says so', () => {
    const problem = randomProblem(10, 5, 0);
    const found = findOrder(problem)!;
    expect(found.isExact).toBe(false);
    expect([...found.order].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(found.worst).toBe(sumOf(problem, found.order).worst);
    expect(found.tried).toBeLessThan(6 * 10 * 10);
  });

  test('is none where an item is never reached', () => {
    const problem = randomProblem(4, 3, 0);
    expect(findOrder({ ...problem, isReachable: (_, item) => item !== 2 })).toBeNull();
  });
});
