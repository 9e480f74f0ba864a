/** The book as one HTML document, or as the markup of its pages alone. */

import type { Paper } from '../figure';
import { PAPER_SIZES } from '../figure';
import type { LaidOutBook, Page, PagePart } from '../sheet';
import { blockHtml } from './block-html';
import { BOOK_CSS } from './book-css';
import type { DocumentOptions } from './document-html';
import { documentHtml } from './document-html';
import { htmlText } from './html-text';

/** A whole document that needs nothing besides itself, and no script. */
export function bookHtml(book: LaidOutBook, options: DocumentOptions): string {
  return documentHtml(`${BOOK_CSS}\n${pageCss(book.paper)}`, `<main>\n${bookBody(book)}\n</main>`, options);
}

/** The pages without a head, to stand in a page or a window of its own; to be shown with `BOOK_CSS`, and printed with `pageCss`. */
export function bookBody(book: LaidOutBook): string {
  return [
    `<div class="book ${book.paper}">`,
    ...book.pages.map((page) => pageHtml(page, book)),
    '</div>',
  ].join('\n');
}

/** Size of the sheet for the printer; the margins are those of the page boxes. */
export function pageCss(paper: Paper): string {
  const { widthIn, heightIn } = PAPER_SIZES[paper];
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
