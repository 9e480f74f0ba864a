/** Words as HTML. */
import type { Text, TextRun } from '../sheet';

const ENTITIES: { readonly [mark: string]: string } = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Words as the text or a quoted attribute of an element; control characters, which HTML does not allow, as blanks. */
export function htmlText(words: string): string {
  return words
    .replace(/[\p{Cc}\p{Surrogate}\uFFFE\uFFFF]/gu, ' ')
    .replace(/[&<>"']/g, (mark) => ENTITIES[mark]!);
}

/** Runs of text with what is strong, what stays on one line and where it leads. */
export function textHtml(text: Text): string {
  return text.map(runHtml).join('');
}

function runHtml({ text, isStrong, isWhole, to }: TextRun): string {
  const words = htmlText(text);
  const linked =
    to !== null
      ? `<a class="whole" href="#${htmlText(to)}">${words}</a>`
      : isWhole
        ? `<span class="whole">${words}</span>`
        : words;
  return isStrong ? `<strong>${linked}</strong>` : linked;
}
