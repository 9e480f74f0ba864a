/** Words and numbers as XML takes them. */

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const DECIMALS = 1e4;

/**
 * Words as the text or the attribute of an XML element: marks escaped, and what XML 1.0 does not allow, control characters and
 * broken letter pairs, as blanks. Source: Extensible Markup Language 1.0, 2.2 and 2.4.
 */
export function xmlText(words: string): string {
  return words
    .replace(/[\p{Cc}\p{Surrogate}\uFFFE\uFFFF]/gu, ' ')
    .replace(/[&<>"]/g, (mark) => ENTITIES[mark]!);
}

/** A number with at most four decimals and no power of ten. */
export function xmlNumber(value: number): string {
  const rounded = Math.round(value * DECIMALS) / DECIMALS;
  return String(rounded === 0 ? 0 : rounded);
}
