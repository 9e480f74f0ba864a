/** What the laying of backing boards takes as given. */

/** The board that is laid where the job's stock names none, in. A common size, chosen for the demo. */
export const DEFAULT_BOARD = { lengthIn: 60, widthIn: 36 } as const;

/** Seams keep this far from corners of openings, inside corners and the edges they run along, in. Common practice, no source. */
export const SEAM_CLEAR_IN = 3;

/** A seam within this angle of an edge runs along it. */
export const ALONG_EDGE_RAD = (10 * Math.PI) / 180;

/** Less of a seam than this in a strip where it has no business is let pass, in. Common practice, no source. */
export const STRIP_CONTACT_IN = 1;

/** Tape runs past each end of a seam, to be trimmed, in. Common practice, no source. */
export const TAPE_PAST_IN = 1;

/** Every second course is moved by this share of a board where seams are staggered. Common practice, no source. */
export const STAGGER_RATIO = 1 / 2;

/** Overhangs are measured at points this far apart along an edge, in. */
export const MEASURE_STEP_IN = 3;

/** Lengths and areas nearer than this are one, in and in2. */
export const SAME_IN = 1e-6;

/** A corner counts as an inside corner from this turn beyond straight, rad. */
export const INSIDE_TURN_RAD = 0.1;
