/** In what sizes things are sold, and what is counted for whom. Common sizes and common practice, no source. */

/** A roll of tape, in: 60 yd. */
export const TAPE_ROLL_IN = 2160;
/** Screws in a box. A count. */
export const SCREW_BOX = 100;
/** A bag of sand, lb. */
export const SAND_BAG_LB = 50;
/** A sheet that keeps slabs damp and floors clean, in. */
export const COVER_SHEET = { lengthIn: 300, widthIn: 120 } as const;
/** Strip that is bought by the length and cut on site: of a drip groove, and of joints drawn in a slab, in. */
export const RUN_STICK_IN = 96;
/** Sizes of stock that differ by no more than this are one, in. */
export const SAME_SIZE_IN = 0.01;
/** Steel is cut with cutters, which take nothing away, in. */
export const CUTTER_KERF_IN = 0;
/** Boards to kneel on, for each who finishes. A count. */
export const KNEELING_BOARDS_EACH = 2;
