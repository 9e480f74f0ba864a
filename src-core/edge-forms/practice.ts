/** Habits of the room: spacings, clearances and common sizes. Common practice, no source, but where another is named. */

/** Form stock that is taken where the job's stock has none, in. Common size. */
export const SHIPPED_STRIP_IN = 96;
/** Form stock shorter than this is an offcut, not stock to plan by, in. */
export const SHORTEST_STOCK_IN = 24;

/** A butt joint keeps this far from a corner, in. */
export const JOINT_TO_CORNER_IN = 6;
/** A butt joint keeps this far from the line of a cutout's corner or of a seam, in. */
export const JOINT_TO_LINE_IN = 2;
/** A seam that ends this near an edge meets it, in. */
export const SEAM_REACH_IN = 1;

/** Screws along a form stand no farther apart than this, in. */
export const SCREW_SPACING_IN = 12;
/** The two screws near each end of a part, from its end, in. */
export const END_SCREWS_IN = [2, 4] as const;
/** Screws of a corner block, and of a plug, from below. A plug narrower than `ONE_SCREW_IN` has room for one, in. */
export const BLOCK_SCREWS = 2;
export const PLUG_SCREWS = 2;
export const ONE_SCREW_IN = 2;

/** Braces or blocks behind a form, and braces and ribs inside one of an opening, stand no farther apart than this, in. */
export const BRACE_SPACING_IN = 12;

/** Radius of the quarter round of sealant along the foot of a form, in. */
export const BEAD_RADIUS_IN = 1 / 4;
/** A tube of sealant, US fluid ounces: about 300 mL. Common size. */
export const TUBE_FL_OZ = 10.1;

/** Radius from which a strip bends cold, and from which one bends once kerfed; a tighter corner takes a shaped block, in. */
export const BENT_FROM_IN = 12;
export const KERFED_FROM_IN = 3;
/** An opening no wider than this, or than two strips, is a plug, not a form of strips, in. */
export const PLUG_UP_TO_IN = 4;

/** A corner that turns less than this is straight, rad: half a degree. */
export const STRAIGHT_RAD = Math.PI / 360;

/** A strip is used again where its length agrees within this, in, and its end cuts within a quarter of a degree. */
export const SAME_LENGTH_IN = 1 / 16;
export const SAME_CUT_RAD = Math.PI / 720;
