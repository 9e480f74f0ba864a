import { describe, expect, test } from 'vitest';
import type { PlacedContent } from '../../../src-core/sheet';
import { layOutBook } from '../../../src-core/sheet';
import { BOOK_CSS, bookBody, bookHtml, pageCss } from '../../../src-core/sheet-html';
import { bookOf, chapterOf, everyBlock, figureOf, tableOf } from '../sheet/sample-book';

const laidOut = layOutBook(bookOf(chapterOf(everyBlock())), 'letter');
const body = bookBody(laidOut);
const document = bookHtml(laidOut, { title: 'Build book', language: 'en' });
const matches = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map((match) => match[1]!);

/** Void elements of HTML (HTML Living Standard 13.1.2), as far as a book has any. */
const VOID = new Set(['col', 'meta']);

/** Walks the tags; gives those left open or closed out of turn. */
function unbalanced(html: string): string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [, slash, name, attributes] of html.matchAll(/<(\/?)([a-zA-Z][\w-]*)((?:"[^"]*"|[^">])*)>/g)) {
    if (VOID.has(name!) || attributes!.endsWith('/')) continue;
    if (slash === '') open.push(name!);
    else if (open.pop() !== name) wrong.push(name!);
  }
  return [...wrong, ...open];
}

describe('the document', () => {
  test('needs nothing besides itself: one style, no script, no address', () => {
    expect(document).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(matches(document, /<(style|script|link|img|iframe)\b/g)).toEqual(['style']);
    expect(document.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\((?!#)/);
    expect(document).toContain('<title>Build book</title>');
  });

  test('is one main part in a document, and no landmark where it stands in a window', () => {
    expect(matches(document, /<(main)\b/g)).toHaveLength(1);
    expect(body).not.toMatch(/<main\b/);
  });

  test('closes every element that it opens', () => {
    expect(unbalanced(document)).toEqual([]);
    expect(unbalanced('<p><b></p>')).not.toEqual([]);
  });

  test('has no style attributes and no handlers, so that a strict content policy lets it through', () => {
    expect(document).not.toMatch(/\s(style|on\w+)=/);
  });

  test('carries the fonts that it is given, which cannot end its style', () => {
    const html = bookHtml(laidOut, { title: 'Book', language: 'en', fontCss: '/*</style><script>*/' });
    expect(matches(html, /<(\/style)\b/g)).toHaveLength(1);
    expect(html.indexOf('</style>')).toBeGreaterThan(html.indexOf('.book .page'));
    expect(html.slice(0, html.indexOf('</style>'))).toContain('<script>');
  });

  test('names its sheet: 8.5 by 11 in, or 210 by 297 mm', () => {
    expect(document).toContain('@page { size: 8.5in 11in; margin: 0; }');
    const [width, height] = /size: ([\d.]+)in ([\d.]+)in/.exec(pageCss('a4'))!.slice(1).map(Number);
    expect(width! * 25.4).toBeCloseTo(210, 9);
    expect(height! * 25.4).toBeCloseTo(297, 9);
    expect(BOOK_CSS).toContain('.book.letter .page { width: 8.5in; height: 11in; }');
    expect(body).toContain('<div class="book letter">');
  });
});

describe('the pages', () => {
  test('are sections, each with its number and the notice', () => {
    const count = laidOut.pages.length;
    expect(count).toBeGreaterThan(1);
    expect(matches(body, /<section class="page" aria-label="([^"]+)">/g)).toEqual(
      laidOut.pages.map((_, k) => `Page ${k + 1} of ${count}`),
    );
    expect(matches(body, /<footer[^>]*><span>([^<]+)</g)).toEqual(laidOut.pages.map(() => laidOut.notice));
  });

  test('head the book, its chapters and what is within them by ranks without a gap', () => {
    expect(matches(body, /<(h\d)\b/g)).toEqual(['h1', 'h2', 'h3', 'h4']);
  });

  test('have one anchor for each id, and every link within them leads to one', () => {
    const ids = matches(body, /\bid="([^"]+)"/g);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(expect.arrayContaining(['hold-it-up', 'cut-list', 'legs', 'leg-places']));
    const links = matches(body, /href="#([^"]+)"/g);
    expect(links.length).toBeGreaterThanOrEqual(4);
    expect(links.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('show a drawing twice without two ids alike', () => {
    const figure = figureOf(3, 2);
    const twice = bookBody(
      layOutBook(
        bookOf(
          chapterOf([
            { kind: 'figure', id: 'here', figure, caption: 'Here.' },
            { kind: 'figure', id: 'there', figure, caption: 'There.' },
          ]),
        ),
        'a4',
      ),
    );
    const ids = matches(twice, /\bid="([^"]+)"/g);
    expect(ids.length).toBeGreaterThan(6);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('show every kind of block', () => {
    const kinds = new Set(
      laidOut.pages.flatMap(({ parts }) => parts).flatMap(({ blocks }) => blocks.map((b) => b.content.kind)),
    );
    const all: { readonly [K in PlacedContent['kind']]: RegExp } = {
      title: /<h1 [^>]*>Build book</,
      chapter: /<h2 [^>]*id="hold-it-up">Hold it up</,
      heading: /<h3 [^>]*id="cut-list">Cut list</,
      paragraph: /<strong>Nobody below the deck\.<\/strong><\/p>/,
      list: /<ol [^>]*><li>Set the legs\.<\/li>/,
      table: /<caption>Legs, cut to the floor<\/caption>/,
      figure: /<figure [^>]*><svg [\s\S]*?<figcaption><strong>Figure\u00a01/,
      workings: /<dd>Mcr = fr \* h\^2 \/ 6 = /,
      facts: /<dt>Concrete<\/dt><dd><span class="whole">3 cu ft<\/span><\/dd>/,
      notice: /<p class="signal"><svg [\s\S]*?<\/svg>Danger<\/p>/,
      verdicts: /class="words"><strong>Needs a corbel<\/strong>/,
      checkboxes: /<span class="box" aria-hidden="true"><\/span>Legs plumb/,
      contents: /<nav [^>]*aria-label="Contents">/,
    };
    expect([...kinds].sort()).toEqual(Object.keys(all).sort());
    for (const pattern of Object.values(all)) expect(body).toMatch(pattern);
  });
});

describe('a table', () => {
  test('names its columns and rows, and shows its sum apart', () => {
    const table = /<table class="block table" id="legs">[\s\S]*?<\/table>/.exec(body)![0];
    expect(matches(table, /<th scope="(\w+)"/g)).toEqual(['col', 'col', 'col', 'row', 'row', 'row', 'row']);
    expect(matches(table, /<col class="(\w+)">/g)).toEqual(['w25', 'w25', 'w50']);
    expect(table).toContain(
      '<tr class="total"><th scope="row">All</th><td class="end"><span class="whole">8 ft',
    );
    for (const width of ['w1', 'w25', 'w100']) expect(BOOK_CSS).toContain(`.book .${width} {`);
  });

  test('has no head that names nothing: an empty cell is a plain one', () => {
    const rows = [{ cells: ['A', '8 ft', ''] }, { cells: ['', '6 ft', ''] }];
    const table = bookBody(layOutBook(bookOf(chapterOf([tableOf(1, { rows })])), 'letter'));
    expect(matches(table, /<th scope="(row)"/g)).toHaveLength(1);
    expect(table).not.toMatch(/<th [^>]*><\/th>/);
  });

  test('keeps its id at its beginning alone', () => {
    const long = bookBody(layOutBook(bookOf(chapterOf([tableOf(80)])), 'letter'));
    expect(matches(long, /<(table)\b/g).length).toBeGreaterThan(1);
    expect(matches(long, /id="(legs)"/g)).toHaveLength(1);
  });
});

test('marks of HTML in names, titles and cells are printed as they are written', () => {
  const nasty = `<b>&"'</b>`;
  const safe = '&lt;b&gt;&amp;&quot;&#39;&lt;/b&gt;';
  const book = layOutBook(
    {
      title: nasty,
      jobName: nasty,
      notice: nasty,
      chapters: [
        chapterOf(
          [
            { kind: 'heading', level: 1, id: nasty, words: nasty },
            {
              kind: 'paragraph',
              words: [nasty, { kind: 'strong', words: nasty }, { kind: 'page', to: nasty }],
            },
            tableOf(1, { caption: nasty, rows: [{ cells: [nasty, nasty, nasty] }] }),
            { kind: 'facts', facts: [{ label: nasty, value: nasty }] },
            {
              kind: 'figure',
              id: 'f',
              figure: { ...figureOf(2, 1), title: nasty, words: nasty },
              caption: nasty,
            },
          ],
          { title: nasty },
        ),
      ],
    },
    'letter',
  );
  const html = bookHtml(book, { title: nasty, language: 'en' });
  expect(html).not.toContain('<b>');
  expect(html).not.toMatch(/&(?!(lt|gt|amp|quot|#39);)/);
  expect(html).toContain(`<title>${safe}</title>`);
  expect(html.split(safe).length - 1).toBeGreaterThan(12);
});

test('the four verdicts have four shapes', () => {
  const shapes = matches(body, /<svg class="verdict-mark [^"]*"[^>]*>(.*?)<\/svg>/g);
  expect(shapes).toHaveLength(4);
  expect(new Set(shapes).size).toBe(4);
});
