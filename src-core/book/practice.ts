/** What the book shows and how large. Choices of this book, no source. */

/** A check that holds at less than this share of its limit is not worked out in the book. */
export const TRIVIAL_RATIO = 0.1;

/** Checks in the table of a piece; the rest of its workings stand at the end of the book. */
export const WORST_CHECKS = 10;

/** Height that drawings may take, as a share of the page between its running lines: what shares a page with text, and what has one. */
export const FIGURE_SHARES = {
  jobView: 0.42,
  plan: 0.56,
  sections: 0.32,
  overhang: 0.32,
  steel: 0.5,
  falsework: 0.62,
  sticks: 0.9,
  sheets: 0.52,
  clock: 0.34,
} as const;

/** A drawing is no smaller than this high, in: below it nothing can be read. */
export const LEAST_FIGURE_IN = 1.5;

/** Words for the four rungs where no piece's own verdict is at hand. */
export const LEVEL_WORDS = {
  holds: 'Holds',
  steel: 'Holds with steel',
  change: 'Needs a change',
  engineer: 'Needs an engineer',
} as const;

/** Where the levels stand in the book. */
export const HOLD_UP_LEVELS = 'hold-up-levels';
