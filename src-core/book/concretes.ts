/** Pieces of one concrete: one mix poured on one day, as strong as each other on every day after. */
import type { Piece } from '../job';
import type { EarliestDay } from '../sequence';
import type { BookContext } from './context';
import type { BookFacts } from './facts';
import { namesWords } from './names';

/** Where the earliest days are explained. */
export const EARLIEST_WORKINGS = 'workings-earliest';

export interface Concrete {
  readonly pieces: readonly Piece[];
  /** Every kind of work that any of these pieces asks for. */
  readonly days: readonly EarliestDay[];
  /** "Bar ledge, Foot ledge, poured on day 1, Tue 2027-04-27". */
  readonly words: (context: Pick<BookContext, 'print'>) => string;
}

/** Every concrete of a job, by the day of its pour. */
export function concretes({ pieces: drawings }: Pick<BookFacts, 'pieces'>): Concrete[] {
  const found = new Map<string, { pieces: Piece[]; days: Map<string, EarliestDay> }>();
  for (const { alike, earliest } of drawings) {
    for (const piece of alike) {
      const key = `${piece.pourDay} ${piece.mixId}`;
      const concrete = found.get(key) ?? { pieces: [], days: new Map<string, EarliestDay>() };
      concrete.pieces.push(piece);
      for (const day of earliest) if (!concrete.days.has(day.id)) concrete.days.set(day.id, day);
      found.set(key, concrete);
    }
  }
  return [...found.values()]
    .sort((a, b) => a.pieces[0]!.pourDay - b.pieces[0]!.pourDay)
    .map(({ pieces, days }) => ({
      pieces,
      days: [...days.values()],
      words: ({ print }) =>
        `${namesWords([...new Set(pieces.map(({ name }) => name))])}, poured on ${print.day(pieces[0]!.pourDay)}`,
    }));
}
