/** A whole HTML document that needs nothing besides itself, and no script. */
import { htmlText } from './html-text';

export interface DocumentOptions {
  /** Title of the document. */
  readonly title: string;
  /** Language tag of the words, such as "en". */
  readonly language: string;
  /** `@font-face` rules with the bundled fonts in them; without, another font stands in and heights may not hold. */
  readonly fontCss?: string;
}

const DOCUMENT_CSS = 'html, body { margin: 0; }';

export function documentHtml(
  css: string,
  body: string,
  { title, language, fontCss = '' }: DocumentOptions,
): string {
  return [
    '<!doctype html>',
    `<html lang="${htmlText(language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${htmlText(title)}</title>`,
    `<style>${styleText(`${fontCss}\n${DOCUMENT_CSS}\n${css}`)}</style>`,
    '</head>',
    '<body>',
    body,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** A style element ends at the first closing tag, whatever stands round it. */
function styleText(css: string): string {
  return css.replaceAll('</', '<\\/');
}
