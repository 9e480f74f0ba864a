/** Full-size templates as one HTML document, a sheet a page. */
import { figureMarkup } from '../exports';
import type { Figure, Paper } from '../figure';
import { PAPER_SIZES } from '../figure';
import { pageCss } from './book-html';
import type { DocumentOptions } from './document-html';
import { documentHtml } from './document-html';

/** Pages of templates, each as large as its paper and drawn at 1 : 1; printed at 100 % they can be laid on the work. */
export function templateHtml(pages: readonly Figure[], paper: Paper, options: DocumentOptions): string {
  const { widthIn, heightIn } = PAPER_SIZES[paper];
  const css = [
    // What a browser rounds up at the foot of a sheet would else begin a new one.
    `.sheet { width: ${widthIn}in; height: ${heightIn}in; overflow: hidden; break-after: page; break-inside: avoid; }`,
    '.sheet:last-child { break-after: auto; }',
    '.sheet svg { display: block; }',
    '.sheet text { font-family: Barlow, system-ui, sans-serif; font-weight: 400; }',
    ".sheet [font-weight='bold'] { font-weight: 600; }",
    '@media screen { .sheet { margin: 0 auto 16pt; box-shadow: 0 1pt 6pt rgb(0 0 0 / 35%); } }',
    pageCss(paper),
  ];
  const sheets = pages.map((figure) => `<section class="sheet">${figureMarkup(figure)}</section>`);
  return documentHtml(css.join('\n'), `<main>\n${sheets.join('\n')}\n</main>`, options);
}
