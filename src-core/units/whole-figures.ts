/** Finds what a line of text must not be broken inside: a figure, its fraction and its unit. */

export interface TextPiece {
  /** Place of its first letter in the whole text. */
  readonly at: number;
  readonly text: string;
  /** Whether a line may not end within it. */
  readonly isWhole: boolean;
}

/** 8, 25-1/2, 1/2, 24.01, 1,500 */
const FIGURE = String.raw`-?\d+(?:[.,]\d+)*(?:-\d+/\d+|/\d+)?`;
/** 2' 1-1/2" */
const FEET = String.raw`-?\d+' ${FIGURE}"`;
const PLAIN_UNIT =
  '(?:(?:sq|cu) )?(?:in|ft|yd|mm|cm|m|lbf?|kips?|kg|k?N|psi|ksi|psf|pcf|kPa|MPa|L|min|days?)[23]?';
/** in, lbf-in/in, lb/cu yd, °F, % */
const UNIT = `(?:%|°[CF]|${PLAIN_UNIT}(?:[-/]${PLAIN_UNIT})*)`;
/** Part of a longer word, such as the 4-W1.4 of a mesh, is no figure. */
const KEPT = new RegExp(String.raw`(?<![\w.#/-])(?:${FEET}|${FIGURE}(?: ${UNIT})?)(?![\w/])`, 'g');

/** The text in pieces, in order: figures that are to stay on one line ("25-1/2 in", "2' 1-1/2\""), and what lies between. */
export function wholeFigures(text: string): TextPiece[] {
  const pieces: TextPiece[] = [];
  let from = 0;
  const add = (to: number, isWhole: boolean) => {
    if (to > from) pieces.push({ at: from, text: text.slice(from, to), isWhole });
    from = to;
  };
  for (const { 0: kept, index } of text.matchAll(KEPT)) {
    // a line never ends inside a bare number
    if (!/[ \-/]/.test(kept)) continue;
    add(index, false);
    add(index + kept.length, true);
  }
  add(text.length, false);
  return pieces;
}
