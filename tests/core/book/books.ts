/** Jobs and their books for the tests, each job gathered once. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BookFacts } from '../../../src-core/book';
import { gatherBook } from '../../../src-core/book';
import type { Job, Piece } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import type { Block, Book, Reference, Run, Words } from '../../../src-core/sheet';
import type { UnitSystem } from '../../../src-core/units';

const JOBS = new URL('../../../assets/jobs/', import.meta.url);

export const SMALL_JOBS = ['bar-ledge', 'gate-pier-cap', 'hearth', 'straight-counter'] as const;
export type ExampleJob = (typeof SMALL_JOBS)[number] | 'boathouse-galley';

/** A job file of the examples, shown in a system of units. */
export function exampleJob(name: ExampleJob, shownIn: UnitSystem = 'imperial'): Job {
  const reading = readJobText(readFileSync(fileURLToPath(new URL(`${name}.json`, JOBS)), 'utf8'));
  if (!reading.ok) throw new Error(`${name} is no job`);
  return { ...reading.job, shownIn };
}

const gathered = new Map<string, BookFacts>();

/** What is gathered of an example job, once for all tests of a file. */
export function exampleFacts(name: ExampleJob, shownIn: UnitSystem = 'imperial'): BookFacts {
  const key = `${name} ${shownIn}`;
  const facts = gathered.get(key) ?? gatherBook(exampleJob(name, shownIn));
  gathered.set(key, facts);
  return facts;
}

/** Pieces over and over under ids of their own, until there are `count`. */
export function repeated(pieces: readonly Piece[], count: number): Piece[] {
  return Array.from({ length: count }, (_, k) => {
    const piece = pieces[k % pieces.length]!;
    const turn = Math.floor(k / pieces.length);
    return {
      ...piece,
      id: `${piece.id}-${turn}`,
      name: `${piece.name} ${turn + 1}`,
      supports: piece.supports.map((support) => ({ ...support, id: `${support.id}-${turn}` })),
    };
  });
}

/** Every word of a book but those within its drawings, a line a cell or paragraph. References stand as their ids. */
export function wordsOf({ chapters }: Pick<Book, 'chapters'>): string {
  return chapters.flatMap(({ title, blocks }) => [title, ...blocks.flatMap(blockWords)]).join('\n');
}

function blockWords(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return [block.words];
    case 'paragraph':
      return [plain(block.words)];
    case 'list':
    case 'checkboxes':
      return block.items.map(plain);
    case 'table':
      return [
        plain(block.caption),
        ...block.columns.map(({ head }) => head),
        ...block.rows.flatMap(({ cells }) => cells.map(plain)),
      ];
    case 'figure':
      return [plain(block.caption)];
    case 'workings':
      return block.lines.flatMap(({ label, formula, substituted, result, unit, source }) => [
        label,
        formula,
        substituted,
        `${result} ${unit}`.trimEnd(),
        source,
      ]);
    case 'facts':
      return block.facts.flatMap(({ label, value }) => [label, plain(value)]);
    case 'notice':
      return block.paragraphs.map(plain);
    case 'verdicts':
      return block.rows.flatMap(({ name, words, why }) => [plain(name), words, plain(why)]);
    case 'contents':
      return [];
  }
}

export function plain(words: Words): string {
  return typeof words === 'string' ? words : words.map(runText).join('');
}

function runText(run: Run): string {
  if (typeof run === 'string') return run;
  return isReference(run) ? run.to : run.words;
}

function isReference(run: Exclude<Run, string>): run is Reference {
  return run.kind !== 'strong';
}

/** Rows of a table of a book, as plain cells; none where there is no such table. */
export function rowsOf({ chapters }: Pick<Book, 'chapters'>, tableId: string): string[][] {
  return chapters
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) =>
      block.kind === 'table' && block.id === tableId ? block.rows.map(({ cells }) => cells.map(plain)) : [],
    );
}
