/** What is known of a book before it has pages: ids, numbers of figures, what stands in its contents. */
import type { Book } from './book';
import type { BookProblem } from './laid-out';

export interface BookIndex {
  /** Every id that a reference may name. */
  readonly ids: ReadonlySet<string>;
  /** Number of each figure by its id, from 1 in the order of the book. */
  readonly figureNumbers: ReadonlyMap<string, number>;
  readonly entries: readonly IndexEntry[];
  readonly problems: readonly BookProblem[];
}

export interface IndexEntry {
  readonly id: string;
  readonly words: string;
  readonly level: 0 | 1;
}

/** Gathers ids and numbers; an id that comes twice is a problem, as a link to it leads to the first alone. */
export function indexBook(book: Book): BookIndex {
  const ids = new Set<string>();
  const figureNumbers = new Map<string, number>();
  const entries: IndexEntry[] = [];
  const problems: BookProblem[] = [];
  const take = (id: string, chapterId: string) => {
    if (ids.has(id)) {
      problems.push({
        code: 'id-twice',
        chapterId,
        about: id,
        sentence: `The id "${id}" stands for more than one place of the book.`,
      });
    }
    ids.add(id);
  };
  for (const chapter of book.chapters) {
    take(chapter.id, chapter.id);
    entries.push({ id: chapter.id, words: chapter.title, level: 0 });
    for (const block of chapter.blocks) {
      if (block.kind !== 'heading' && block.kind !== 'table' && block.kind !== 'figure') continue;
      take(block.id, chapter.id);
      if (block.kind === 'figure') figureNumbers.set(block.id, figureNumbers.size + 1);
      if (block.kind === 'heading' && block.level === 1) {
        entries.push({ id: block.id, words: block.words, level: 1 });
      }
    }
  }
  return { ids, figureNumbers, entries, problems };
}
