/** A text set in a width: its height now, its words when the pages are known. */
import type { BookIndex } from './book-index';
import type { BookProblem, Text, TextRun } from './laid-out';
import type { TextStyle } from './practice';
import type { Reference, Run, Words } from './words';
import { runsOf } from './words';
import type { Part, ReferenceWords, TextLine } from './wrap';
import { wrapWords } from './wrap';

/** Where a block is to stand. */
export interface Setting {
  readonly chapterId: string;
  /** Points of the scale of the chapter, as all lengths of a measured block: a small chapter has more of them in a line. */
  readonly widthPt: number;
  /** Height of a page, likewise. */
  readonly roomPt: number;
  /** Real points in a point of the chapter. */
  readonly scale: number;
  readonly index: BookIndex;
}

/** Page of an id, from 1; null where it is nowhere in the book. */
export type PageOf = (id: string) => number | null;

export interface SetText {
  readonly lineCount: number;
  readonly heightPt: number;
  readonly problems: readonly BookProblem[];
  /** All lines, or those from one number up to another. */
  readonly text: (pageOf: PageOf, from?: number, to?: number) => Text;
}

const NO_BREAK = '\u00a0';
/** Longest page that a line is kept for: a book of a thousand pages is none. */
const LONGEST_PAGE = 888;
/** Stands for the number of what is not in the book. */
const UNKNOWN = '?';

/** "page 7", "Figure 3", which no line ends within. */
export function referenceText({ kind }: Pick<Reference, 'kind'>, number: number | string): string {
  return `${kind === 'page' ? 'page' : 'Figure'}${NO_BREAK}${number}`;
}

/** Sets words in a style within a width. */
export function setText(words: Words, style: TextStyle, widthPt: number, setting: Setting): SetText {
  const { figureNumbers } = setting.index;
  const figureText = (reference: Reference) =>
    referenceText(reference, figureNumbers.get(reference.to) ?? UNKNOWN);
  const { lines, tooWide } = wrapWords(words, style, widthPt, (reference) =>
    reference.kind === 'page' ? referenceText(reference, LONGEST_PAGE) : figureText(reference),
  );
  const lost = runsOf(words).filter(
    (run): run is Reference => isReference(run) && !leadsSomewhere(run, setting),
  );
  return {
    lineCount: lines.length,
    heightPt: lines.length * style.linePt,
    problems: [
      ...(tooWide === null ? [] : [tooWideProblem(tooWide, setting)]),
      ...lost.map((reference) => lostProblem(reference, setting)),
    ],
    text: (pageOf, from = 0, to = lines.length) =>
      joinLines(lines.slice(from, to), (reference) =>
        reference.kind === 'page'
          ? referenceText(reference, pageOf(reference.to) ?? UNKNOWN)
          : figureText(reference),
      ),
  };
}

function isReference(run: Run): run is Reference {
  return typeof run !== 'string' && run.kind !== 'strong';
}

function leadsSomewhere({ kind, to }: Reference, { index }: Setting): boolean {
  return kind === 'page' ? index.ids.has(to) : index.figureNumbers.has(to);
}

function lostProblem({ kind, to }: Reference, { chapterId }: Setting): BookProblem {
  return {
    code: 'unresolved-reference',
    chapterId,
    about: to,
    sentence: `A reference leads to the ${kind === 'page' ? 'place' : 'figure'} "${to}", which is not in the book.`,
  };
}

function tooWideProblem(words: string, { chapterId }: Setting): BookProblem {
  return {
    code: 'words-too-wide',
    chapterId,
    about: words,
    sentence: `"${words}" must not be broken and is longer than its line.`,
  };
}

function joinLines(lines: readonly TextLine[], textOf: ReferenceWords): Text {
  const runs: TextRun[] = [];
  lines.forEach(({ words, isJoined }, lineIndex) => {
    words.forEach((word, wordIndex) => {
      word.forEach((part, partIndex) => {
        const next = runOf(part, textOf);
        const last = runs.at(-1);
        const isApart = partIndex === 0 && !(wordIndex === 0 && isJoined);
        if (last !== undefined && isApart && (lineIndex > 0 || wordIndex > 0)) {
          const isStrong = last.isStrong && next.isStrong;
          append(runs, { text: ' ', isStrong, isWhole: false, to: null });
        }
        append(runs, next);
      });
    });
  });
  return runs;
}

function runOf({ text, isStrong, isWhole, reference }: Part, textOf: ReferenceWords): TextRun {
  if (reference === null) return { text, isStrong, isWhole, to: null };
  return { text: textOf(reference), isStrong, isWhole, to: reference.to };
}

function append(runs: TextRun[], next: TextRun): void {
  const last = runs.at(-1);
  const isAlike =
    last !== undefined &&
    last.isStrong === next.isStrong &&
    !last.isWhole &&
    !next.isWhole &&
    last.to === null &&
    next.to === null;
  if (isAlike) runs[runs.length - 1] = { ...last, text: last.text + next.text };
  else runs.push(next);
}
