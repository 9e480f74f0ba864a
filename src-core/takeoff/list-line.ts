/** One line of the list from its sources. */
import type { UnitSystem } from '../units';
import { sumOf } from './sources';
import type { ListGroupId, ListLine, ListSource, ListUnit } from './types';
import { amountWords } from './words';

/** Price of one of what is sold. */
export interface UnitPrice {
  readonly each: number;
  readonly from: 'own' | 'invented';
}

export interface LineDraft {
  readonly id: string;
  readonly group: ListGroupId;
  readonly name: string;
  readonly unit: ListUnit;
  readonly sources: readonly ListSource[];
  /** Added for waste, and why or why not. */
  readonly waste: Waste;
  readonly buy: number;
  readonly buyWords: string;
  readonly price: UnitPrice | null;
}

export interface Waste {
  readonly ratio: number;
  readonly words: string;
}

/** Of what is cut by a list. */
export const CUT_BY_LIST: Waste = {
  ratio: 0,
  words: 'whole sticks or sheets as the cut list takes them, nothing added for waste',
};

/** Of what is counted. */
export const AS_COUNTED: Waste = { ratio: 0, words: 'as counted, nothing added for waste' };

/** Of what is poured, spread or run off a roll. */
export function bulkWaste(ratio: number): Waste {
  return { ratio, words: `${percentWords(ratio)} added for waste` };
}

/** "10 %". */
export function percentWords(ratio: number): string {
  return `${Number((100 * ratio).toPrecision(3))} %`;
}

/** Whole units that hold an amount and its waste; arithmetic that lands a hair above a whole is that whole. */
export function wholeUnits(amount: number, { ratio }: Waste, unitHolds: number): number {
  return Math.ceil((amount * (1 + ratio)) / unitHolds - 1e-9);
}

/** The line, or none where it has no source. */
export function listLine(draft: LineDraft, system: UnitSystem): ListLine[] {
  const { id, group, name, unit, sources, waste, buy, buyWords, price } = draft;
  if (sources.length === 0) return [];
  const needed = sumOf(sources);
  return [
    {
      id,
      group,
      name,
      needed,
      unit,
      neededWords: amountWords(needed, unit, system),
      wasteRatio: waste.ratio,
      wasteWords: waste.words,
      buy,
      buyWords,
      priceEach: price?.each ?? null,
      priceFrom: price?.from ?? null,
      cost: price === null ? null : buy * price.each,
      sources,
    },
  ];
}
