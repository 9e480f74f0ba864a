/** What the quick check says of a piece, in the order in which it is read. */
import type { Level } from '../../src-core/checks';
import type { PieceResult } from '../../src-core/verdict';

export interface QuickAnswer {
  readonly level: Level;
  /** The rung: "Needs a tie". */
  readonly words: string;
  readonly why: string;
  /** The smallest change that was tried and passes; null where none is called for or none was found. */
  readonly change: string | null;
}

/** Mark, words, one sentence and the first change. */
export function quickAnswer({ verdict, changes }: PieceResult): QuickAnswer {
  const { level, words, why } = verdict;
  return { level, words, why, change: changes[0]?.title ?? null };
}
