import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import { expect, test } from '@playwright/test';
import type { PDFPageProxy } from 'pdfjs-dist';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { BookFacts } from '../../src-core/book';
import { bookJson, gatherBook, jobBook } from '../../src-core/book';
import { cutoutTemplate } from '../../src-core/exports';
import type { Paper } from '../../src-core/figure';
import type { Job } from '../../src-core/job';
import { readJobText } from '../../src-core/job';
import type { LaidOutBook } from '../../src-core/sheet';
import { layOutBook } from '../../src-core/sheet';
import { bookHtml, templateHtml } from '../../src-core/sheet-html';

/** Gathering the book of the largest example on a busy machine, ms. */
const BOOK_MS = 400_000;
test.describe.configure({ timeout: BOOK_MS });

const EXAMPLES = ['bar-ledge', 'straight-counter', 'hearth', 'boathouse-galley'] as const;
type Example = (typeof EXAMPLES)[number];

interface Made {
  readonly job: Job;
  readonly facts: BookFacts;
  readonly book: LaidOutBook;
  readonly html: string;
}

const made = new Map<string, Made>();

/** The book of an example on the paper of its units, worked out once. */
function bookOf(id: Example, paper: Paper = 'letter'): Made {
  const known = made.get(`${id} ${paper}`);
  if (known !== undefined) return known;
  const reading = readJobText(readFileSync(new URL(`../../assets/jobs/${id}.json`, import.meta.url), 'utf8'));
  if (!reading.ok) throw new Error(`${id} is no job`);
  const { job } = reading;
  const facts = [...made.values()].find((one) => one.job.id === job.id)?.facts ?? gatherBook(job);
  const book = layOutBook(jobBook(job, facts, paper), paper);
  const fresh = {
    job,
    facts,
    book,
    html: bookHtml(book, { title: job.name, language: 'en', fontCss: FONTS }),
  };
  made.set(`${id} ${paper}`, fresh);
  return fresh;
}

/** The bundled fonts within the document, taken from their packages apart from how the tool does it. */
const FONTS = [
  ['Barlow', 400, 'barlow'],
  ['Barlow', 600, 'barlow'],
  ['Barlow Condensed', 600, 'barlow-condensed'],
]
  .map(([family, weight, name]) => {
    const file = createRequire(import.meta.url).resolve(
      `@fontsource/${name}/files/${name}-latin-${weight}-normal.woff2`,
    );
    const data = readFileSync(file).toString('base64');
    return `@font-face { font-family: '${family}'; font-weight: ${weight}; src: url(data:font/woff2;base64,${data}) format('woff2'); }`;
  })
  .join('\n');

async function show(page: Page, html: string): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.setContent(html, { waitUntil: 'load' });
  await page.evaluate(() => document.fonts.ready);
}

for (const id of EXAMPLES) {
  test(`every page of the book of ${id} holds what is on it`, async ({ page }) => {
    const { book, html } = bookOf(id);
    expect(book.problems).toEqual([]);
    await show(page, html);
    expect(await page.locator('.page').count()).toBe(book.pages.length);
    const found = await page.evaluate(lookAtPages);
    expect(found.faces).toEqual(['Barlow 400', 'Barlow 600', 'Barlow Condensed 600']);
    expect(found.texts).toBeGreaterThan(500);
    expect(found.outside).toEqual([]);
    expect(found.links).toBeGreaterThan(10);
    expect(found.deadLinks).toEqual([]);
    expect(found.twice).toEqual([]);
    expect(found.overlaps).toEqual([]);
  });
}

test('the book of the galley fits A4 as it fits letter', async ({ page }) => {
  const { book, html } = bookOf('boathouse-galley', 'a4');
  expect(book.problems).toEqual([]);
  await show(page, html);
  const found = await page.evaluate(lookAtPages);
  expect(found.outside).toEqual([]);
  expect(found.overlaps).toEqual([]);
});

test('the printed book of the galley says every verdict, leg, batch time and source', async ({ page }) => {
  const { job, facts, book, html } = bookOf('boathouse-galley');
  await show(page, html);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const document = await getDocument({ data: Uint8Array.from(pdf), verbosity: 0 }).promise;
  expect(document.numPages).toBe(book.pages.length);
  const texts: string[] = [];
  for (let k = 1; k <= document.numPages; k++) texts.push(await textOf(await document.getPage(k)));
  // Lines break anywhere, so that blanks tell nothing.
  const said = squeezed(texts.join(''));
  const { verdicts, legs, batches, sources } = bookJson(job, facts);
  expect(verdicts.length).toBeGreaterThan(5);
  expect(legs.length).toBeGreaterThan(30);
  expect(batches.length).toBeGreaterThan(10);
  expect(sources.length).toBeGreaterThan(50);
  const wanted = [
    ...verdicts.flatMap(({ piece, words, why }) => [piece, words, why]),
    ...legs.flatMap(({ number, length, shim }) => [number, length, shim]),
    ...batches.flatMap(({ waterIn, ready, placed }) => [waterIn, ready, placed]),
    ...sources,
  ];
  expect(wanted.filter((words) => !said.includes(squeezed(words)))).toEqual([]);
});

for (const paper of ['letter', 'a4'] as const) {
  test(`the check square of a template is 100 mm within 0.1 mm when it is printed on ${paper}`, async ({
    page,
  }) => {
    const { job } = bookOf('boathouse-galley');
    const piece = job.pieces.find(({ cutouts }) => cutouts.length > 0)!;
    const template = cutoutTemplate(job, piece.id, piece.cutouts[0]!.id, paper);
    if (!template.ok) throw new Error(template.sentence);
    const figures = template.pages.map(({ figure }) => figure);
    await show(page, templateHtml(figures, paper, { title: 'Template', language: 'en', fontCss: FONTS }));
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    const document = await getDocument({ data: Uint8Array.from(pdf), verbosity: 0 }).promise;
    expect(document.numPages).toBe(figures.length);
    for (let k = 1; k <= document.numPages; k++) {
      const sizes = await closedRectangles(await document.getPage(k));
      const squares = sizes.filter(
        ([width, height]) => Math.abs(width - height) < 1 && Math.abs(width - 100) < 5,
      );
      expect(squares, `page ${k}`).toHaveLength(1);
      for (const side of squares[0]!) expect(Math.abs(side - 100)).toBeLessThan(0.1);
    }
  });
}

async function textOf(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join('');
}

function squeezed(words: string): string {
  return words.replace(/[\s\u00a0\u00ad\u200b]+/g, '');
}

type Matrix = readonly [number, number, number, number, number, number];

/** What two transforms do one after the other: `inner` first. Source: ISO 32000-1, 8.3.4. */
function after(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** Width and height, mm, of every path of four corners on a page, from its drawing operators. */
async function closedRectangles(page: PDFPageProxy): Promise<[number, number][]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  const kept: Matrix[] = [];
  const found: [number, number][] = [];
  fnArray.forEach((operator, k) => {
    const args: unknown = argsArray[k];
    if (operator === OPS.save) kept.push(now);
    if (operator === OPS.restore) now = kept.pop() ?? now;
    if (operator === OPS.transform) now = after(now, args as Matrix);
    if (operator === OPS.constructPath) {
      const [operators, values] = args as [number[], number[]];
      found.push(...rectanglesOf(operators, values, now));
    }
  });
  return found;
}

function rectanglesOf(
  operators: readonly number[],
  values: readonly number[],
  by: Matrix,
): [number, number][] {
  const found: [number, number][] = [];
  let corners: { x: number; y: number }[] = [];
  let at = 0;
  const point = () => {
    const [x, y] = [values[at++]!, values[at++]!];
    return { x: by[0] * x + by[2] * y + by[4], y: by[1] * x + by[3] * y + by[5] };
  };
  const end = () => {
    if (corners.length >= 4) found.push(sizeOf(corners));
    corners = [];
  };
  for (const operator of operators) {
    if (operator === OPS.moveTo) {
      end();
      corners = [point()];
    } else if (operator === OPS.lineTo) corners.push(point());
    else if (operator === OPS.rectangle) {
      end();
      const [x, y, width, height] = [values[at++]!, values[at++]!, values[at++]!, values[at++]!];
      const ends = [x, y, x + width, y + height];
      values = [...values.slice(0, at), ...ends, ...values.slice(at)];
      corners = [point(), point()];
      found.push(sizeOf(corners));
      corners = [];
    } else if (operator === OPS.curveTo) at += 6;
    else if (operator === OPS.curveTo2 || operator === OPS.curveTo3) at += 4;
  }
  end();
  return found;
}

const MM_PER_PT = 25.4 / 72;

function sizeOf(corners: readonly { x: number; y: number }[]): [number, number] {
  const across = (of: (corner: { x: number; y: number }) => number) =>
    (Math.max(...corners.map(of)) - Math.min(...corners.map(of))) * MM_PER_PT;
  return [across(({ x }) => x), across(({ y }) => y)];
}

/** Runs in the page: what lies outside its page or its box, links that lead nowhere, texts of drawings that lie over each other. */
function lookAtPages() {
  const NEAR_PX = 0.5;
  const BOXES = 'td, th, dd, dt, figcaption, caption, li, p, h1, h2, h3, h4, .running, .name, .words, .why';
  /** Ink is measured this large, since a canvas rounds what is small. */
  const LARGE_PX = 200;
  const pen = document.createElement('canvas').getContext('2d')!;
  const outside: string[] = [];
  const overlaps: string[] = [];
  let texts = 0;

  const says = (text: string) => text.trim().slice(0, 60);
  for (const page of document.querySelectorAll<HTMLElement>('.page')) {
    const folio = page.getAttribute('aria-label');
    const sheet = page.getBoundingClientRect();
    if (page.scrollHeight > page.clientHeight || page.scrollWidth > page.clientWidth) {
      outside.push(`${folio}: the page itself`);
    }
    const foot = page.querySelector('footer.running')!.getBoundingClientRect().top;
    for (const block of page.querySelectorAll('.block')) {
      const { bottom } = block.getBoundingClientRect();
      if (bottom > foot + NEAR_PX) outside.push(`${folio}: ${block.className} reaches the foot`);
    }
    const walker = document.createTreeWalker(page, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement!;
      if ((node.textContent ?? '').trim() === '' || parent.closest('title, desc, style') !== null) continue;
      texts++;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = parent.closest('svg') ?? parent.closest(BOXES);
      const held = box === null ? sheet : box.getBoundingClientRect();
      for (const rect of range.getClientRects()) {
        const isBeside = rect.left < held.left - NEAR_PX || rect.right > held.right + NEAR_PX;
        const isOffPage =
          rect.left < sheet.left ||
          rect.right > sheet.right ||
          rect.top < sheet.top ||
          rect.bottom > sheet.bottom;
        const middle = (rect.top + rect.bottom) / 2;
        if (isBeside || isOffPage || middle < held.top || middle > held.bottom) {
          outside.push(`${folio}: "${says(node.textContent ?? '')}" in ${box?.tagName ?? 'the page'}`);
          break;
        }
      }
    }
  }

  for (const svg of document.querySelectorAll<SVGSVGElement>('.figure svg')) {
    const words = [...svg.querySelectorAll('text')].map((text) => ({ text, corners: cornersOf(text) }));
    words.forEach(({ text, corners }, k) => {
      for (const other of words.slice(k + 1)) {
        if (depthOf(corners, other.corners) > NEAR_PX) {
          overlaps.push(
            `${svg.id || svg.getAttribute('aria-labelledby')}: "${says(text.textContent ?? '')}" and "${says(other.text.textContent ?? '')}"`,
          );
        }
      }
    });
  }

  /** Corners of the letters of a text on the screen, turned as they are: as wide as they are set, as high as their ink. */
  function cornersOf(text: SVGTextElement): DOMPoint[] {
    const { fontFamily, fontWeight, fontSize } = getComputedStyle(text);
    pen.font = `${fontWeight} ${LARGE_PX}px ${fontFamily}`;
    const ink = pen.measureText(text.textContent ?? '');
    const scale = Number.parseFloat(fontSize) / LARGE_PX;
    const { x, width } = text.getBBox();
    const baseline = text.y.baseVal.getItem(0).value;
    const [top, bottom] = [
      baseline - ink.actualBoundingBoxAscent * scale,
      baseline + ink.actualBoundingBoxDescent * scale,
    ];
    const matrix = text.getScreenCTM()!;
    return [
      new DOMPoint(x, top),
      new DOMPoint(x + width, top),
      new DOMPoint(x + width, bottom),
      new DOMPoint(x, bottom),
    ].map((point) => point.matrixTransform(matrix));
  }

  /** How deep two rectangles lie in each other: the least over the directions of their sides (separating axes). */
  function depthOf(one: readonly DOMPoint[], other: readonly DOMPoint[]): number {
    let least = Number.POSITIVE_INFINITY;
    for (const corners of [one, other]) {
      for (const k of [0, 1]) {
        const [dx, dy] = [corners[k + 1]!.x - corners[k]!.x, corners[k + 1]!.y - corners[k]!.y];
        const length = Math.hypot(dx, dy);
        const along = ({ x, y }: DOMPoint) => (x * dx + y * dy) / length;
        const [a, b] = [one.map(along), other.map(along)];
        least = Math.min(least, Math.max(...a) - Math.min(...b), Math.max(...b) - Math.min(...a));
      }
    }
    return least;
  }

  const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
  const links = [...document.querySelectorAll('a[href^="#"]')].map((link) =>
    link.getAttribute('href')!.slice(1),
  );
  const faces = [...document.fonts]
    .filter(({ status }) => status === 'loaded')
    .map(({ family, weight }) => `${family.replaceAll(/["']/g, '')} ${weight}`);
  return {
    texts,
    outside,
    overlaps,
    faces: [...new Set(faces)].sort(),
    links: links.length,
    deadLinks: links.filter((id) => document.getElementById(id) === null),
    twice: ids.filter((id, k) => ids.indexOf(id) !== k),
  };
}
