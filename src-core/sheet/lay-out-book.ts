/** From chapters to pages. */

import type { Paper } from '../figure';
import { PAPER_SIZES } from '../figure';
import type { Book, Chapter } from './book';
import type { BookIndex } from './book-index';
import { indexBook } from './book-index';
import type { BookProblem, ContentsEntry, LaidOutBook, Page, PagePart } from './laid-out';
import { measureBlock } from './measure-block';
import { measureTitle } from './measure-text';
import type { Measured } from './measured';
import type { MeasuredChapter, PagedStretches, Paginated } from './paginate';
import { paginate } from './paginate';
import {
  FOLIO_PT,
  JOB_NAME_SHARE,
  MARGIN_IN,
  PT_PER_IN,
  RUNNING_GAP_PT,
  RUNNING_PT,
  SMALL_SCALE,
  STYLES,
  WIDTH_RESERVE,
} from './practice';
import type { PageOf, Setting } from './set-text';
import { fittingText, textWidthPt } from './text-width';

/** Width of the text and height between the running lines, pt. */
export interface TextArea {
  readonly widthPt: number;
  readonly roomPt: number;
}

export function textArea(paper: Paper): TextArea {
  const { widthIn, heightIn } = PAPER_SIZES[paper];
  return {
    widthPt: (widthIn - 2 * MARGIN_IN) * PT_PER_IN,
    roomPt: (heightIn - 2 * MARGIN_IN) * PT_PER_IN - RUNNING_PT.header - RUNNING_PT.footer,
  };
}

interface SetChapter extends MeasuredChapter {
  readonly chapter: Chapter;
  readonly scale: number;
}

/**
 * Puts a book on paper: every block on its page with its height, references resolved, the contents with page numbers, and what is
 * wrong with it. The same book gives the same pages. Heights hold where the book is set in the bundled fonts.
 */
export function layOutBook(book: Book, paper: Paper): LaidOutBook {
  const area = textArea(paper);
  const index = indexBook(book);
  const chapters = book.chapters.map((chapter, k) =>
    setChapter(chapter, k === 0 ? book.title : null, area, index),
  );
  const paginated = paginate(chapters, area.roomPt);
  const pageOf = pagesOfIds(chapters, paginated.pages);
  return {
    title: book.title,
    notice: book.notice,
    paper,
    roomPt: area.roomPt,
    pages: paginated.pages.map((page, k) => placePage(page, k + 1, chapters, { book, area, pageOf })),
    contents: index.entries.map((entry): ContentsEntry => ({ ...entry, page: pageOf(entry.id)! })),
    problems: withoutTwins([
      ...index.problems,
      ...noticeProblems(book, area),
      ...chapters.flatMap(({ blocks }) => blocks.flatMap(({ problems }) => problems)),
      ...pageProblems(chapters, paginated),
    ]),
  };
}

/** Measures a chapter; one that must fit on a page and does not is measured once more in the smaller size. */
function setChapter(chapter: Chapter, title: string | null, area: TextArea, index: BookIndex): SetChapter {
  const isLimited = chapter.onOnePage ?? false;
  const full = measureChapter(chapter, title, { area, index, scale: 1 });
  if (!isLimited || heightPt(full) <= area.roomPt) {
    return { chapter, scale: 1, startsPage: chapter.startsPage, isKeptWhole: isLimited, blocks: full };
  }
  const small = measureChapter(chapter, title, { area, index, scale: SMALL_SCALE });
  const isKeptWhole = heightPt(small) <= area.roomPt;
  return { chapter, scale: SMALL_SCALE, startsPage: chapter.startsPage, isKeptWhole, blocks: small };
}

function measureChapter(
  chapter: Chapter,
  title: string | null,
  { area, index, scale }: { readonly area: TextArea; readonly index: BookIndex; readonly scale: number },
): Measured[] {
  const { widthPt, roomPt } = area;
  const setting: Setting = {
    chapterId: chapter.id,
    widthPt: widthPt / scale,
    roomPt: roomPt / scale,
    scale,
    index,
  };
  const blocks = [
    ...(title === null ? [] : [measureTitle('title', title, setting)]),
    measureTitle('chapter', chapter.title, setting),
    ...chapter.blocks.map((block) => measureBlock(block, setting)),
  ];
  return blocks.map((block) => ({
    ...block,
    gapPt: block.gapPt * scale,
    againPt: block.againPt * scale,
    unitsPt: block.unitsPt.map((unitPt) => unitPt * scale),
  }));
}

/** Height of blocks from the top of a page. */
function heightPt(blocks: readonly Measured[]): number {
  return blocks.reduce(
    (sum, { gapPt, unitsPt }, k) =>
      unitsPt.reduce((total, unitPt) => total + unitPt, sum + (k > 0 ? gapPt : 0)),
    0,
  );
}

/** Page of every anchor: the one on which its block begins. The first of two alike counts. */
function pagesOfIds(chapters: readonly SetChapter[], pages: readonly PagedStretches[]): PageOf {
  const found = new Map<string, number>();
  pages.forEach(({ stretches }, k) => {
    for (const { chapter, block, from } of stretches) {
      const { id } = chapters[chapter]!.blocks[block]!;
      if (id !== null && from === 0 && !found.has(id)) found.set(id, k + 1);
    }
  });
  return (id) => found.get(id) ?? null;
}

function placePage(
  { stretches, usedPt }: PagedStretches,
  number: number,
  chapters: readonly SetChapter[],
  { book, area, pageOf }: { readonly book: Book; readonly area: TextArea; readonly pageOf: PageOf },
): Page {
  const onPage = [...new Set(stretches.map(({ chapter }) => chapter))];
  const parts = onPage.map((chapterIndex): PagePart => {
    const { chapter, scale, blocks } = chapters[chapterIndex]!;
    return {
      chapterId: chapter.id,
      isSmall: scale < 1,
      blocks: stretches
        .filter((stretch) => stretch.chapter === chapterIndex)
        .map(({ block, from, to, gapPt, heightPt: blockPt }) => ({
          gapPt,
          heightPt: blockPt,
          content: blocks[block]!.place(pageOf, from, to),
        })),
    };
  });
  const title = chapters[onPage[0]!]!.chapter.title;
  return { number, ...runningLine(book.jobName, title, area.widthPt), parts, usedPt };
}

function runningLine(jobName: string, title: string, widthPt: number) {
  const linePt = widthPt / (1 + WIDTH_RESERVE);
  const shortName = fittingText(jobName, STYLES.cell, linePt * JOB_NAME_SHARE);
  const restPt = linePt - textWidthPt(shortName, STYLES.cell) - RUNNING_GAP_PT;
  return { jobName: shortName, chapterTitle: fittingText(title, STYLES.cell, restPt) };
}

/** A notice may not be cut: what is too long for the foot of the page is a problem. */
function noticeProblems({ notice }: Book, { widthPt }: TextArea): BookProblem[] {
  const isLong = textWidthPt(notice, STYLES.cell) * (1 + WIDTH_RESERVE) > widthPt - FOLIO_PT - RUNNING_GAP_PT;
  if (!isLong) return [];
  return [
    {
      code: 'notice-too-long',
      chapterId: null,
      about: 'notice',
      sentence: `The notice at the foot of every page is longer than its line: "${notice}".`,
    },
  ];
}

function pageProblems(chapters: readonly SetChapter[], { parted, tooTall }: Paginated): BookProblem[] {
  const overflowing = chapters
    .filter(({ chapter, isKeptWhole }) => (chapter.onOnePage ?? false) && !isKeptWhole)
    .map(
      ({ chapter }): BookProblem => ({
        code: 'chapter-over-one-page',
        chapterId: chapter.id,
        about: chapter.id,
        sentence: `"${chapter.title}" does not fit on one page, even in the smaller size.`,
      }),
    );
  const problemAt = (code: BookProblem['code'], what: string) => (place: Paginated['parted'][number]) => {
    const { chapter, blocks } = chapters[place.chapter]!;
    const { kind, id } = blocks[place.block]!;
    const about = id ?? kind;
    return { code, chapterId: chapter.id, about, sentence: `"${chapter.title}": the ${kind} ${what}.` };
  };
  return [
    ...overflowing,
    ...tooTall.map(problemAt('block-too-tall', 'has a part that is taller than a page')),
    ...parted.map(
      problemAt('heading-parted', 'and what it stays with are taller than a page, and were parted'),
    ),
  ];
}

function withoutTwins(problems: readonly BookProblem[]): BookProblem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}
