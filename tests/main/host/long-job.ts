import { exampleText } from './place-here';

const LINES_OF_NOTHING = 370_000;

/** A job of some 7 MB: the galley with blank lines before its last brace, so that writing it takes a while. */
export function longText(): string {
  const text = exampleText('boathouse-galley').trimEnd();
  return `${text.slice(0, -1)}${`${' '.repeat(19)}\n`.repeat(LINES_OF_NOTHING)}}\n`;
}
