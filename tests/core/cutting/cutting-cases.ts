/** Cases and exhaustive answers for the tests of cutting. Nothing here is shared with the room itself. */
import type { StickList, StickStock } from '../../../src-core/cutting';

/** Pieces named p1, p2 and so on. */
export function pieces(...lengthsIn: readonly number[]) {
  return lengthsIn.map((lengthIn, i) => ({ id: `p${i + 1}`, lengthIn }));
}

/** One stock length without a price. */
export function stick(lengthIn: number): StickStock {
  return { id: `${lengthIn}`, lengthIn, price: null };
}

/** The least cost of parting `count` things into groups, by trying every parting; infinite groups are not made. */
export function leastByTrying(count: number, costOf: (group: readonly number[]) => number): number {
  const groups = Array.from({ length: 2 ** count }, (_, mask) =>
    Array.from({ length: count }, (_, i) => i).filter((i) => (mask >> i) & 1),
  );
  const costs = groups.map((group) => (group.length === 0 ? 0 : costOf(group)));
  const least = costs.map(() => Number.POSITIVE_INFINITY);
  least[0] = 0;
  for (let mask = 1; mask < least.length; mask++) {
    const lowest = mask & -mask;
    for (let part = mask; part > 0; part = (part - 1) & mask) {
      if ((part & lowest) === 0) continue;
      least[mask] = Math.min(least[mask]!, costs[part]! + least[mask ^ part]!);
    }
  }
  return least.at(-1)!;
}

/** What is wrong with a list of sticks, a sentence each: pieces lost or doubled, sticks too short, saws in pieces. */
export function faultsOf(
  list: StickList,
  asked: readonly { readonly id: string; readonly lengthIn: number }[],
  kerfIn: number,
): string[] {
  const faults: string[] = [];
  const cut = list.sticks.flatMap(({ cuts }) => cuts.map(({ id }) => id));
  const got = [...cut, ...list.tooLong.map(({ id }) => id)].sort();
  const wanted = asked.map(({ id }) => id).sort();
  if (got.join() !== wanted.join()) faults.push(`${got.join()} for ${wanted.join()}`);
  for (const { cuts, stockLengthIn, offcutIn } of list.sticks) {
    let freeFromIn = 0;
    for (const { id, lengthIn, atIn } of cuts) {
      const own = asked.find((piece) => piece.id === id);
      if (own === undefined || own.lengthIn !== lengthIn) faults.push(`${id} is ${lengthIn} in long`);
      if (atIn < freeFromIn - 1e-9) faults.push(`${id} begins at ${atIn}, before ${freeFromIn}`);
      freeFromIn = atIn + lengthIn + kerfIn;
    }
    const endIn = freeFromIn - kerfIn;
    if (endIn > stockLengthIn + 1e-6) faults.push(`cuts end at ${endIn} of ${stockLengthIn}`);
    const leftIn = Math.max(0, stockLengthIn - freeFromIn);
    if (Math.abs(offcutIn - leftIn) > 1e-9) faults.push(`${offcutIn} left, not ${leftIn}`);
  }
  return faults;
}
