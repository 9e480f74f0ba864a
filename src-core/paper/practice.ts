/** Sizes of drawings on paper, in and pt. Common practice, no source, unless one is named. */

/** Type size of names. */
export const NAME_PT = 8;
/** Type size of dimensions. */
export const DIMENSION_PT = 7.5;
/** Type size of notes and small names: the smallest of any drawing. */
export const SMALL_PT = 6.75;

/** Points in an inch of paper. */
export const PT_PER_IN = 72;
/** Room that a letter takes, as a share of the type size: the mean of a plain sans serif, with a little in hand. */
export const LETTER_EM = 0.55;
/** Room above the baseline, as a share of the type size. */
export const ASCENT_EM = 0.76;
/** Room below the baseline, as a share of the type size. */
export const DESCENT_EM = 0.22;
/** Least white between two words of a drawing. */
export const BETWEEN_WORDS_IN = 0.025;
/** White round a whole drawing. */
export const FIGURE_MARGIN_IN = 0.04;

/** From what is measured to the nearest lane of dimension lines. */
export const FIRST_LANE_IN = 0.34;
/** From lane to lane. */
export const LANE_IN = 0.25;
/** White between what is measured and its witness line. */
export const WITNESS_GAP_IN = 0.06;
/** A witness line runs this far past its dimension line. */
export const WITNESS_PAST_IN = 0.06;
/** Half an oblique stroke at the end of a dimension line. Oblique strokes of building drawings: ISO 129-1, from memory. */
export const STROKE_HALF_IN = 0.05;
/** From a dimension line to the underside of its figure. */
export const FIGURE_OFF_IN = 0.025;
/** White that a figure wants at each end between its witness lines. */
export const FIGURE_ROOM_IN = 0.04;
/** Shorter lengths get no dimension on a plan, in of the slab: below what is marked with a pencil. */
export const LEAST_DIMENSION_IN = 1 / 8;

/** Radius of the ring round the number of an edge. */
export const RING_IN = 0.085;
/** From an edge to the middle of its ring. */
export const RING_OFF_IN = 0.14;

/** Dot at the end of a leader. */
export const LEADER_DOT_IN = 0.018;

/** White above the scale bar and what stands in its row. */
export const FURNITURE_GAP_IN = 0.14;
/** Longest scale bar. */
export const BAR_MOST_IN = 2;
/** Height of a scale bar. */
export const BAR_HEIGHT_IN = 0.06;
