/**
 * Paper, type and spacing of the book. Points (72 to the inch), as type is measured. The layout and the style sheet both read these
 * numbers, so that what is reckoned and what is printed agree. Choices of this book, no source, unless one is named.
 */
import type { FontFace } from './font-metrics';

export const PT_PER_IN = 72;

/** White on all sides: most office printers leave a quarter of an inch and less. */
export const MARGIN_IN = 0.6;

/** Heights of the running lines above and below the text, with the white between. */
export const RUNNING_PT = { header: 24, footer: 22 } as const;
/** Width kept for "Page 100 of 200", and the least white between the two ends of a running line. */
export const FOLIO_PT = 96;
export const RUNNING_GAP_PT = 18;
/** Most of a running line that the job's name may take. */
export const JOB_NAME_SHARE = 0.55;

/** A chapter that must fit on one page is set this much smaller where it does not. */
export const SMALL_SCALE = 0.9;

/** Lines are reckoned this much longer than their letters: kerning, rounding of the browser. */
export const WIDTH_RESERVE = 0.02;

export interface TextStyle {
  readonly face: FontFace;
  readonly sizePt: number;
  readonly linePt: number;
}

/** Nothing on the page is set smaller than 9.5 pt, 12.67 px; a chapter set small goes to 8.55 pt. */
export const STYLES = {
  title: { face: 'narrow', sizePt: 28, linePt: 32 },
  chapter: { face: 'narrow', sizePt: 20, linePt: 24 },
  heading1: { face: 'narrow', sizePt: 14.5, linePt: 18 },
  heading2: { face: 'narrow', sizePt: 12, linePt: 15 },
  body: { face: 'text', sizePt: 10.5, linePt: 15 },
  cell: { face: 'text', sizePt: 9.5, linePt: 13 },
  cellStrong: { face: 'strong', sizePt: 9.5, linePt: 13 },
  signal: { face: 'narrow', sizePt: 12, linePt: 15 },
} as const satisfies { readonly [name: string]: TextStyle };

/** White above a block; none at the top of a page. */
export const GAPS_PT = {
  title: 0,
  chapter: 26,
  heading: { 1: 16, 2: 12 },
  paragraph: 8,
  list: 6,
  table: 10,
  figure: 12,
  workings: 8,
  facts: 8,
  notice: 10,
  verdicts: 8,
  checkboxes: 8,
  contents: 8,
} as const;

/** Hairlines keep their thickness whatever the scale: one pixel of a screen. */
export const HAIR_PT = 0.75;

export const LIST_PT = { indent: 16, between: 2 } as const;
export const CELL_PT = { side: 5, above: 3, below: 3, captionBelow: 4, penRow: 24 } as const;
export const CAPTION_ABOVE_PT = 5;
export const WORKINGS_PT = { indent: 14, between: 7 } as const;
export const FACTS_PT = { labelPercent: 30, side: 8, above: 2, below: 2 } as const;
/** Frame of a notice; its thickness tells the signal words apart in black and white. */
export const NOTICE_PT = {
  side: 10,
  above: 6,
  below: 7,
  between: 3,
  frame: { danger: 3, warning: 2.25, caution: 1.5, notice: 0.75 },
} as const;
export const VERDICT_PT = {
  mark: 20,
  namePercent: 26,
  wordsPercent: 22,
  side: 8,
  above: 4,
  below: 4,
} as const;
export const CHECKBOX_PT = { indent: 20, between: 6 } as const;
export const CONTENTS_PT = { folio: 24, leader: 24, indent: 16, between: 2 } as const;

/** Fewest lines, rows or items of a block that stand together before and after the end of a page. */
export const LEAST_TOGETHER = 2;
