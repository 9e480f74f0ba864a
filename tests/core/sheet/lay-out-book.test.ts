import { describe, expect, test } from 'vitest';
import type { Book, LaidOutBook, PlacedContent } from '../../../src-core/sheet';
import { layOutBook, textArea } from '../../../src-core/sheet';
import { bookOf, chapterOf, everyBlock, figureOf, sentences, tableOf } from './sample-book';

type Placed<K extends PlacedContent['kind']> = Extract<PlacedContent, { kind: K }>;

const contentsOfPage = (book: LaidOutBook, page: number) =>
  book.pages[page - 1]!.parts.flatMap(({ blocks }) => blocks.map(({ content }) => content));
const kindsOfPage = (book: LaidOutBook, page: number) => contentsOfPage(book, page).map(({ kind }) => kind);
const allOf = <K extends PlacedContent['kind']>(book: LaidOutBook, kind: K): Placed<K>[] =>
  book.pages
    .flatMap((_, k) => contentsOfPage(book, k + 1))
    .filter((content): content is Placed<K> => content.kind === kind);
const words = (text: readonly { readonly text: string }[]) => text.map((run) => run.text).join('');
const codes = (book: LaidOutBook) => book.problems.map(({ code }) => code);
const layOut = (...chapters: Book['chapters']) => layOutBook(bookOf(...chapters), 'letter');

/** Words that take exactly so many lines: one long word cannot share its line with the next. */
function linesOf(count: number): { readonly kind: 'paragraph'; readonly words: string } {
  return { kind: 'paragraph', words: Array.from({ length: count }, () => 'm'.repeat(45)).join(' ') };
}

describe('paper', () => {
  test('letter leaves 7.3 in of text and a4 180 mm less 0.48 mm', () => {
    // ASME Y14.1: 8.5 by 11 in; ISO 216: 210 by 297 mm; margins of 0.6 in, 15.24 mm
    expect(textArea('letter').widthPt).toBeCloseTo(7.3 * 72, 9);
    expect((textArea('a4').widthPt / 72) * 25.4).toBeCloseTo(210 - 2 * 15.24, 9);
    const heightDifferencePt = textArea('a4').roomPt - textArea('letter').roomPt;
    expect((heightDifferencePt / 72) * 25.4).toBeCloseTo(297 - 279.4, 9);
  });

  test('no page is fuller than its room, on either, with every kind of block', () => {
    for (const paper of ['letter', 'a4'] as const) {
      const chapters = Array.from({ length: 6 }, (_, k) =>
        chapterOf([...everyBlock(), { kind: 'paragraph', words: sentences(3 * k) }], {
          id: `chapter-${k}`,
          startsPage: k % 2 === 0,
        }),
      );
      const book = layOutBook(bookOf(...chapters), paper);
      expect(book.pages.length).toBeGreaterThan(5);
      for (const page of book.pages) {
        const sum = page.parts
          .flatMap(({ blocks }) => blocks)
          .reduce((pt, b) => pt + b.gapPt + b.heightPt, 0);
        expect(sum).toBeCloseTo(page.usedPt, 6);
        expect(sum).toBeLessThanOrEqual(book.roomPt + 1e-6);
      }
    }
  });

  test('the same book gives the same pages', () => {
    const book = bookOf(chapterOf(everyBlock()));
    expect(layOutBook(book, 'a4')).toEqual(layOutBook(structuredClone(book), 'a4'));
  });

  test('30 chapters of every block are laid out in well under a second', () => {
    const chapters = Array.from({ length: 30 }, (_, k) => chapterOf(everyBlock(), { id: `chapter-${k}` }));
    const book = bookOf(...chapters);
    layOutBook(book, 'letter');
    const start = performance.now();
    layOutBook(book, 'letter');
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

describe('a table over the end of a page', () => {
  const book = layOut(chapterOf([tableOf(80)]));
  const parts = allOf(book, 'table');

  test('is parted between rows and loses none', () => {
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.flatMap(({ rows }) => rows.map(({ cells }) => words(cells[0]!)))).toEqual(
      Array.from({ length: 80 }, (_, k) => `L${k + 1}`),
    );
  });

  test('shows caption and head again', () => {
    expect(parts.map(({ continues }) => continues)).toEqual(parts.map((_, k) => k > 0));
    expect(parts.map(({ caption }) => words(caption))).toEqual(
      parts.map((_, k) => (k === 0 ? 'Legs, cut to the floor' : 'Legs, cut to the floor (continued)')),
    );
    for (const { heads } of parts) expect(heads.map(words)).toEqual(['Leg', 'Length', 'Stands on']);
  });

  test('has columns of whole percents that add up to 100', () => {
    expect(parts[0]!.columns.map(({ widthPercent }) => widthPercent)).toEqual([25, 25, 50]);
    const thirds = tableOf(1, { columns: tableOf(1).columns.map((column) => ({ ...column, share: 1 })) });
    const [placed] = allOf(layOut(chapterOf([thirds])), 'table');
    expect(placed!.columns.map(({ widthPercent }) => widthPercent)).toEqual([34, 33, 33]);
  });

  test('never leaves one row alone on either page', () => {
    for (let count = 30; count < 50; count++) {
      for (const { rows } of allOf(layOut(chapterOf([tableOf(count)])), 'table')) {
        expect(rows.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  test('with a row of a wrong number of cells is a bug', () => {
    expect(() => layOut(chapterOf([tableOf(0, { rows: [{ cells: ['L1'] }] })]))).toThrow(/3 columns/);
  });
});

describe('what stays together', () => {
  // Letter: 11 in less margins of 0.6 in and running lines of 24 and 22 pt leave 659.6 pt; title 32, chapter 26 + 24 and the white
  // above a paragraph 8 leave 569.6 pt, 37 lines of 15 pt.
  test('a heading goes over to the next page with what follows it where two lines of that do not fit', () => {
    // heading 16 + 18, paragraph 8 + 2 lines of 15: 72 pt, so that 33 lines may stand before it: 495 + 72 = 567
    const heading = { kind: 'heading', level: 1, id: 'cut-list', words: 'Cut list' } as const;
    const pageAfter = (lines: number) => {
      const book = layOut(chapterOf([linesOf(lines), heading, linesOf(6)]));
      const { page } = book.contents.find(({ id }) => id === 'cut-list')!;
      const kinds = kindsOfPage(book, page);
      expect(kinds[kinds.indexOf('heading') + 1]).toBe('paragraph');
      return page;
    };
    expect([32, 33, 34, 35].map(pageAfter)).toEqual([1, 1, 2, 2]);
  });

  test('a paragraph leaves at least two lines on either page', () => {
    // after N lines and 8 pt, (561.6 - 15 N) / 15 lines fit: 4, 3, 2 and 1 of the five
    const linesBefore = (lines: number) => {
      const book = layOut(chapterOf([linesOf(lines), linesOf(5)]));
      const onFirst = contentsOfPage(book, 1).filter((content) => content.kind === 'paragraph');
      return onFirst.length === 1 ? 0 : words(onFirst[1]!.words).split(' ').length;
    };
    expect([33, 34, 35, 36].map(linesBefore)).toEqual([3, 3, 2, 0]);
  });

  test('a numbered list goes on with its number', () => {
    const items = Array.from({ length: 90 }, (_, k) => `Step ${k + 1}`);
    const lists = allOf(layOut(chapterOf([{ kind: 'list', isNumbered: true, items }])), 'list');
    expect(lists.length).toBeGreaterThan(1);
    let next = 1;
    for (const list of lists) {
      expect(list.start).toBe(next);
      next += list.items.length;
    }
    expect(next).toBe(91);
  });

  test('a heading and a drawing that fill more than a page are parted and reported', () => {
    const roomIn = textArea('letter').roomPt / 72;
    const book = layOut(
      chapterOf([{ kind: 'figure', id: 'tall', figure: figureOf(3, roomIn - 0.4), caption: 'Tall.' }]),
    );
    expect(codes(book)).toEqual(['heading-parted']);
    expect(book.pages).toHaveLength(2);
  });

  test('a notice taller than a page is reported', () => {
    const book = layOut(chapterOf([{ kind: 'notice', level: 'warning', paragraphs: [sentences(60)] }]));
    expect(codes(book)).toContain('block-too-tall');
  });
});

describe('references', () => {
  test('name the page and the number of a drawing further on', () => {
    const book = layOut(
      chapterOf([{ kind: 'figure', id: 'first', figure: figureOf(2, 1), caption: 'First.' }]),
      chapterOf(
        [
          {
            kind: 'paragraph',
            words: ['see ', { kind: 'page', to: 'last' }, ' and ', { kind: 'figure', to: 'last' }],
          },
        ],
        { id: 'words' },
      ),
      chapterOf([{ kind: 'figure', id: 'last', figure: figureOf(2, 1), caption: 'Last.' }], { id: 'end' }),
    );
    expect(book.problems).toEqual([]);
    const [paragraph] = allOf(book, 'paragraph');
    expect(words(paragraph!.words)).toBe('see page\u00a03 and Figure\u00a02');
    expect(paragraph!.words.filter(({ to }) => to === 'last')).toHaveLength(2);
    expect(allOf(book, 'figure').map(({ caption }) => words(caption))).toEqual([
      'Figure\u00a01, scale 1\u00a0:\u00a016. First.',
      'Figure\u00a02, scale 1\u00a0:\u00a016. Last.',
    ]);
  });

  test('that lead nowhere are reported, once each, and so is a figure that is a table', () => {
    const lost = [{ kind: 'page', to: 'nowhere' } as const, ' ', { kind: 'figure', to: 'legs' } as const];
    const book = layOut(
      chapterOf([
        { kind: 'paragraph', words: lost },
        { kind: 'paragraph', words: lost },
        tableOf(2, { caption: [{ kind: 'page', to: 'lost-too' }] }),
      ]),
    );
    expect(book.problems.map(({ code, about }) => `${code} ${about}`)).toEqual([
      'unresolved-reference nowhere',
      'unresolved-reference legs',
      'unresolved-reference lost-too',
    ]);
  });

  test('an id that comes twice is reported', () => {
    expect(codes(layOut(chapterOf([tableOf(2), tableOf(3)])))).toEqual(['id-twice']);
  });

  test('the contents list chapters and first headings with their pages', () => {
    const book = layOut(
      chapterOf([{ kind: 'contents', shows: 'headings' }], { id: 'contents', title: 'Contents' }),
      chapterOf([...everyBlock(), { kind: 'paragraph', words: sentences(80) }]),
      chapterOf([], { id: 'end', title: 'End' }),
    );
    const last = book.pages.length;
    expect(last).toBeGreaterThan(4);
    expect(book.contents).toEqual([
      { id: 'contents', words: 'Contents', level: 0, page: 1 },
      { id: 'hold-it-up', words: 'Hold it up', level: 0, page: 2 },
      { id: 'cut-list', words: 'Cut list', level: 1, page: 2 },
      { id: 'end', words: 'End', level: 0, page: last },
    ]);
    expect(allOf(book, 'contents')[0]!.entries.map(({ id, page }) => [id, page])).toEqual(
      book.contents.map(({ id, page }) => [id, page]),
    );
  });
});

describe('a chapter for one page', () => {
  const pourDay = (rows: number) =>
    chapterOf([tableOf(rows)], { id: 'pour', title: 'Pour day', onOnePage: true });
  const rowsThatFit = Array.from({ length: 60 }, (_, k) => k + 2).filter(
    (rows) => layOut(pourDay(rows)).pages[0]!.parts[0]!.isSmall === false,
  ).length;

  test('is set full size where it fits', () => {
    const book = layOut(pourDay(rowsThatFit));
    expect(book.pages).toHaveLength(1);
    expect(book.problems).toEqual([]);
  });

  test('is set at 0.9 where it does not', () => {
    const book = layOut(pourDay(rowsThatFit + 3));
    expect(book.pages).toHaveLength(1);
    expect(book.pages[0]!.parts[0]!.isSmall).toBe(true);
    expect(book.problems).toEqual([]);
  });

  test('goes on over more pages and is reported where that is not enough', () => {
    const book = layOut(pourDay(rowsThatFit + 20));
    expect(book.pages).toHaveLength(2);
    expect(book.problems).toEqual([
      {
        code: 'chapter-over-one-page',
        chapterId: 'pour',
        about: 'pour',
        sentence: '"Pour day" does not fit on one page, even in the smaller size.',
      },
    ]);
  });

  test('begins a new page rather than be parted', () => {
    const follows = { ...pourDay(20), startsPage: false };
    const book = layOut(chapterOf([tableOf(20, { id: 'before' })]), follows);
    expect(book.pages).toHaveLength(2);
    expect(kindsOfPage(book, 2)).toEqual(['chapter', 'table']);
    const short = layOut(chapterOf([tableOf(2, { id: 'before' })]), { ...follows, blocks: [tableOf(2)] });
    expect(short.pages).toHaveLength(1);
    expect(short.pages[0]!.parts).toHaveLength(2);
  });
});

describe('what does not fit the paper', () => {
  test('a drawing wider than the text is left out and says so', () => {
    const wide = chapterOf([{ kind: 'figure', id: 'wide', figure: figureOf(7.2, 2), caption: 'Wide.' }]);
    expect(codes(layOutBook(bookOf(wide), 'letter'))).toEqual([]);
    const onA4 = layOutBook(bookOf(wide), 'a4');
    expect(codes(onA4)).toEqual(['figure-too-large']);
    const [figure] = allOf(onA4, 'figure');
    expect(figure!.figure).toBeNull();
    expect(words(figure!.caption)).toContain('left out');
  });

  test('a figure that may not be broken in a narrow column is reported', () => {
    const columns = tableOf(1).columns.map((column, k) => ({ ...column, share: k === 1 ? 1 : 20 }));
    expect(codes(layOut(chapterOf([tableOf(1, { columns })])))).toEqual(['words-too-wide']);
  });

  test('a notice longer than the foot of the page is reported, and a long name of a job is cut', () => {
    const book = layOutBook(
      { ...bookOf(chapterOf([])), notice: sentences(1).trim(), jobName: sentences(1) },
      'letter',
    );
    expect(codes(book)).toEqual(['notice-too-long']);
    expect(book.pages[0]!.jobName).toMatch(/^The deck is level .*…$/);
    expect(book.pages[0]!.chapterTitle).toBe('Hold it up');
  });
});

test('a word broken over lines is printed without a blank', () => {
  const long = 'm'.repeat(400);
  const [paragraph] = allOf(
    layOut(chapterOf([{ kind: 'paragraph', words: `see ${long} there` }])),
    'paragraph',
  );
  expect(words(paragraph!.words)).toBe(`see ${long} there`);
});

test('workings show formula, numbers and source, and what is from memory says so', () => {
  const [workings] = allOf(layOut(chapterOf(everyBlock())), 'workings');
  const [cracking, moment] = workings!.lines;
  // 410 psi * (1.5 in)^2 / 6 = 153.75
  expect(words(cracking!.equation)).toBe('Mcr = fr * h^2 / 6 = 410 * 1.5^2 / 6 = 153.8 lbf-in/in');
  expect(words(cracking!.source)).toBe('ACI 318-19 24.2.3.5; from memory, verify');
  expect(words(moment!.equation)).toBe('M = 88.5 lbf-in/in');
});
