/**
 * Selections from a short list in which some things are alike: so many of each kind. A selection is a whole number whose mixed digits
 * are its counts, so a smaller selection within another always has a smaller number.
 */

export interface Selections {
  readonly counts: readonly number[];
  /** What one more of each kind adds to a selection's number. */
  readonly places: readonly number[];
  /** The selection of everything, and the number of all selections. */
  readonly whole: number;
  readonly size: number;
}

/** The selections from so many of each kind. */
export function selectionsOf(counts: readonly number[]): Selections {
  const places: number[] = [];
  let size = 1;
  for (const count of counts) {
    places.push(size);
    size *= count + 1;
  }
  return { counts, places, whole: size - 1, size };
}

/** Pairs of a selection and another within it: the work of an exact search. A count. */
export function partings(counts: readonly number[]): number {
  return counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);
}

/** How many of each kind a selection holds. */
export function countsIn({ counts, places }: Selections, selection: number): number[] {
  return counts.map((count, kind) => Math.floor(selection / places[kind]!) % (count + 1));
}

/** Every selection within another, the empty one and itself among them, smallest number first. */
export function within(selections: Selections, selection: number): number[] {
  let found = [0];
  countsIn(selections, selection).forEach((count, kind) => {
    const place = selections.places[kind]!;
    const base = found;
    for (let n = 1; n <= count; n++) found = found.concat(base.map((each) => each + n * place));
  });
  return found;
}

/**
 * Everything parted into selections of the least cost together. `costOf` gives the cost of one stick or sheet that holds a selection,
 * infinite where none does; every kind must fit alone. Exact: the last kind left lies in some selection, and each is tried. Of two that
 * cost as much the fuller by `sizes` is taken, so that what is left over stays in one piece.
 */
export function cheapestSelections(
  selections: Selections,
  sizes: readonly number[],
  costOf: (selection: number) => number,
): number[] {
  const { counts, places, size, whole } = selections;
  const cost = Array.from({ length: size }, (_, selection) => (selection > 0 ? costOf(selection) : 0));
  const fill = cost.map((_, selection) =>
    countsIn(selections, selection).reduce((sum, count, kind) => sum + count * sizes[kind]!, 0),
  );
  const least = new Array<number>(size).fill(Number.POSITIVE_INFINITY);
  const taken = new Array<number>(size).fill(0);
  least[0] = 0;
  for (let selection = 1; selection < size; selection++) {
    const kind = countsIn(selections, selection).findLastIndex((count) => count > 0);
    for (const part of within(selections, selection)) {
      const holdsKind = Math.floor(part / places[kind]!) % (counts[kind]! + 1) > 0;
      if (!holdsKind || !Number.isFinite(cost[part]!)) continue;
      const total = least[selection - part]! + cost[part]!;
      const isFuller = total === least[selection] && fill[part]! > fill[taken[selection]!]!;
      if (total < least[selection]! || isFuller) {
        least[selection] = total;
        taken[selection] = part;
      }
    }
  }
  const parts: number[] = [];
  for (let left = whole; left > 0; left -= taken[left]!) {
    if (taken[left] === 0)
      throw new Error(`selection ${left} of ${size} holds a kind that does not fit alone`);
    parts.push(taken[left]!);
  }
  return parts;
}
