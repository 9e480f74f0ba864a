/** Own sizes of the edge profiles, for an edge that names none. Common practice, no source. */

/** Radius of the top arris that only takes its sharpness off. */
export const EASED_RADIUS_IN = 1 / 8;
/** Leg of a 45 degree chamfer along the top. */
export const CHAMFER_LEG_IN = 1 / 4;
/** Radius of a rounded top arris. */
export const ROUND_OVER_RADIUS_IN = 1 / 2;
/** A bullnose takes half the thickness; a half bullnose the whole of it, up to this radius. */
export const HALF_BULLNOSE_MOST_IN = 3 / 2;
/** Radius of the hollow along the top. */
export const COVE_RADIUS_IN = 1 / 2;
/** Height and depth of the S curve along the top. */
export const OGEE_SIZE_IN = 3 / 4;
/** Height and depth of the step along the top. */
export const STEP_SIZE_IN = 3 / 8;
