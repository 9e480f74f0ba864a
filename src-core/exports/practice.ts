/** Sizes that drawings leave with. Common practice, no source, unless said. */

/** Letters of a plan at true scale: names of parts, and figures of dimensions, in. */
export const NAME_HEIGHT_IN = 1.25;
export const FIGURE_HEIGHT_IN = 0.875;

/** From line to line of words, in letter heights. */
export const LINE_RATIO = 1.5;

/** Dimension lines of a plan at true scale: the nearest row, the pitch of rows, and the witness lines, in. */
export const FIRST_ROW_IN = 4;
export const ROW_IN = 2.5;
export const WITNESS_GAP_IN = 0.5;
export const WITNESS_PAST_IN = 0.5;
/** Half the oblique stroke that ends a dimension line. Oblique strokes: ISO 129-1, from memory. */
export const STROKE_HALF_IN = 0.375;
/** From a dimension line to the middle of its figure, in. */
export const FIGURE_OFF_IN = 0.75;
/** Dimensions shorter than this are left out of a plan, in. */
export const LEAST_DIMENSION_IN = 0.25;

/** Room round a plan, in. */
export const PLAN_MARGIN_IN = 2;
/** Width of a letter as a share of its height, for the room that words take. */
export const LETTER_RATIO = 0.6;

/** Edge of a sheet that printers leave blank, in. */
export const PAPER_MARGIN_IN = 0.5;
/** Strip below a template for its words, in. */
export const TEMPLATE_BAND_IN = 0.8;
/** What neighbouring pages of a template share, and half a cross that is printed on both, in. */
export const OVERLAP_IN = 0.5;
export const CROSS_HALF_IN = 0.2;
/** Room round the outline of a template; its centre lines run this far past it, in. */
export const TEMPLATE_PAST_IN = 0.5;
/** Chords of a template leave an arc by at most this much, a fifth of the thickness of a pencil line, in. */
export const TEMPLATE_CHORD_IN = 1 / 512;
/** Pages in a row or a column of a template: one letter of the alphabet each. */
export const MOST_PAGES_IN_LINE = 26;
