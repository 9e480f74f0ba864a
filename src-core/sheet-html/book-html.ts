/** The book as one HTML document, or as the markup of its pages alone. */
import type { LaidOutBook, Page, PagePart, Paper } from '../sheet';
import { PAPERS } from '../sheet';
import { blockHtml } from './block-html';
import { BOOK_CSS } from './book-css';
import { htmlText } from './html-text';

export interface BookHtmlOptions {
  /** Title of the document. */
  readonly title: string;
  /** Language tag of the words, such as "en". */
  readonly language: string;
  /** `@font-face` rules with the bundled fonts in them; without, another font stands in and heights may not hold. */
  readonly fontCss?: string;
}

const DOCUMENT_CSS = 'html, body { margin: 0; }';

/** A whole document that needs nothing besides itself, and no script. */
export function bookHtml(book: LaidOutBook, { title, language, fontCss = '' }: BookHtmlOptions): string {
  return [
    '<!doctype html>',
    `<html lang="${htmlText(language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${htmlText(title)}</title>`,
    `<style>${styleText(`${fontCss}\n${DOCUMENT_CSS}\n${BOOK_CSS}\n${pageCss(book.paper)}`)}</style>`,
    '</head>',
    '<body>',
    bookBody(book),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** The pages without a head; to be shown with `BOOK_CSS`, and printed with `pageCss`. */
export function bookBody(book: LaidOutBook): string {
  return [
    `<main class="book ${book.paper}">`,
    ...book.pages.map((page) => pageHtml(page, book)),
    '</main>',
  ].join('\n');
}

/** Size of the sheet for the printer; the margins are those of the page boxes. */
export function pageCss(paper: Paper): string {
  const { widthIn, heightIn } = PAPERS[paper];
  return `@page { size: ${widthIn}in ${heightIn}in; margin: 0; }`;
}

function pageHtml({ number, jobName, chapterTitle, parts }: Page, { pages, notice }: LaidOutBook): string {
  const folio = `Page ${number} of ${pages.length}`;
  return [
    `<section class="page" aria-label="${folio}">`,
    `<header class="running"><span>${htmlText(jobName)}</span><span>${htmlText(chapterTitle)}</span></header>`,
    `<div class="text">${parts.map(partHtml).join('\n')}</div>`,
    `<footer class="running"><span>${htmlText(notice)}</span><span>${folio}</span></footer>`,
    '</section>',
  ].join('\n');
}

function partHtml({ isSmall, blocks }: PagePart): string {
  return `<div class="part${isSmall ? ' small' : ''}">${blocks.map(({ content }) => blockHtml(content)).join('\n')}</div>`;
}

/** A style element ends at the first closing tag, whatever stands round it. */
function styleText(css: string): string {
  return css.replaceAll('</', '<\\/');
}
