/** Lays a text out in lines of at most a page's width. */

/** Columns of a page, in characters. */
export const PAGE_COLUMNS = 100;

/** Breaks at spaces; `first` begins the first line and `rest` the others. A longer word stands alone. */
export function wrap(text: string, first = '', rest = ' '.repeat(first.length)): string[] {
  const lines: string[] = [];
  let line = first;
  let isBlank = true;
  for (const word of text.split(/\s+/)) {
    if (word === '') continue;
    if (!isBlank && lengthOf(line) + 1 + lengthOf(word) > PAGE_COLUMNS) {
      lines.push(line);
      line = rest;
      isBlank = true;
    }
    line += isBlank ? word : ` ${word}`;
    isBlank = false;
  }
  return [...lines, line.trimEnd()];
}

/** Characters, not halves of surrogate pairs. */
function lengthOf(text: string): number {
  return [...text].length;
}
