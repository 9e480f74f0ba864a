/** How far the searches of this room go. They count steps and read no clock, so that the same lengths always give the same lists. */

/**
 * Lengths are compared in whole ticks of a 1,016,000th of an inch: a 64th of an inch and a tenth of a millimetre are both whole
 * numbers of them, so sums of measures as people write them are exact.
 */
export const TICKS_PER_IN = 1_016_000;

/** Prices are compared in whole ten-thousandths. */
export const PRICE_STEPS = 10_000;

/** Steps of the search for sticks before it stops and says how near it came. */
export const STICK_SEARCH_STEPS = 60_000;

/** Ways to fill one stick that are weighed; where there are more, the search no longer proves anything by itself. */
export const FILLS_WEIGHED = 300;

/**
 * Ways to part a list in two that an exact search of all lists may need: 3^10, so ten pieces that are all unlike, more where many
 * are alike.
 */
export const EXACT_PARTINGS = 59_049;

/** Orders of a stick's mitred pieces that are weighed before the next best piece is simply laid on. */
export const ORDER_STATES = 20_000;

/** Rounds in which the pieces of the last sheet are laid first. */
export const SHEET_ROUNDS = 24;

/** Largest divisor of the sharing functions behind the bounds. More finds little; the choice is ours. */
export const LARGEST_DIVISOR = 20;

/** Lengths nearer than this are alike when a sheet is drawn, in. */
export const ALIKE_IN = 1e-6;

/**
 * Parts of the longest stick on which patterns are sought where sizes share no larger measure: as many as leave the steps for so many
 * looks. The bound by patterns is proved on a finer grid.
 */
export const MOST_PATTERN_GRID = 4_096;
export const PATTERN_LOOKS = 600;
export const PROOF_GRID = 16_384;

/** Steps spent on patterns, and on whole sticks from them. Fewer make the bound lower and the lists longer, never wrong. */
export const PATTERN_STEPS = 140_000_000;
export const ROUNDING_STEPS = 80_000_000;

/** Different lengths up to which patterns are sought at all: their table grows with the square. */
export const MOST_PATTERN_SIZES = 400;
