/** What a pour plan takes as given. Common practice, no source, unless a line says otherwise. */

/** Share of a full batch that is mixed beyond the need and kept back, to fill what the first pass of the straightedge leaves low. */
export const TOP_UP_RATIO = 0.1;
/** Bags of a mix bought beyond those that the plan mixes: one may be torn or damp. */
export const BAGS_IN_HAND = 1;

/** Each mixer takes one person; whoever is left carries and places. */
export const PEOPLE_A_MIXER = 1;
/** The clock is kept with this much of the working time to spare, for a dropped bucket or a stiff form. */
export const LEAST_SLACK_MINUTES = 10;
/** Largest crew that is looked for when the crew of the job is too slow. */
export const MOST_MIXERS = 4;
export const MOST_PEOPLE = 10;
/** Up to this many pieces every order of pouring is weighed; beyond it the largest piece goes first. */
export const MOST_WEIGHED_PIECES = 7;

/** Longest straightedge that two people draw true, in. */
export const MOST_STRAIGHTEDGE_IN = 96;
/** How far a straightedge passes each form that it rides on, in. */
export const PAST_FORM_IN = 6;
/** An opening at least this large both ways is formed by a rim that the straightedge rides on; a smaller one by a plug, in. */
export const LEAST_RIM_IN = 4;
/** A strip of slab narrower than this beside an opening is struck off with a trowel, in. */
export const LEAST_STRIP_IN = 3;
/** A corner that turns by less is no inside corner to the straightedge, rad. */
export const INSIDE_CORNER_RAD = (10 * Math.PI) / 180;
/** With more inside corners than this a slab is struck off by eye from its rims, as one. */
export const MOST_INSIDE_CORNERS = 8;

/** Crew's time to strike off, to fill, to strike off again, to float and to trowel, minutes a square foot. */
export const SCREED_MINUTES_A_FT2 = 0.3;
export const FILL_MINUTES_A_FT2 = 0.15;
export const SECOND_SCREED_MINUTES_A_FT2 = 0.2;
export const FLOAT_MINUTES_A_FT2 = 0.5;
export const TROWEL_MINUTES_A_FT2 = 0.75;
/** Time to vibrate the edges from outside the form, minutes a foot of edge. */
export const VIBRATE_MINUTES_A_FT = 0.25;
/** No step is shorter than this, minutes. */
export const LEAST_STEP_MINUTES = 2;
/** Floating and trowelling begin this many working times after water met the first of a piece's concrete, at 20 deg C. From memory. */
export const FLOAT_AFTER_RATIO = 1.5;
export const TROWEL_AFTER_RATIO = 3;

/** Most weight for one pair of hands in the best posture, lb. NIOSH 94-110, load constant. */
export const MOST_LIFT_LB = 51;
/** Most pigment over cement by mass. ASTM C979 1.4. */
export const MOST_PIGMENT_RATIO = 0.1;

/** Concrete or air above this is hot weather, deg C (90 F). ACI 305R, from memory. */
export const HOT_C = 32;
/** Air below this is cold weather, deg C (40 F). ACI 306R, from memory. */
export const COLD_C = 5;
/** Days from the pour on which young concrete must not freeze. ACI 306R, from memory. */
export const FROST_DAYS = 3;
/** Drying above this rate is watched in thin tops and mixes that bleed little, lb/ft2/h. Common practice, from memory. */
export const WATCH_DRYING_LB_FT2_H = 0.1;
/** Drying above this rate cracks fresh concrete unless it is kept from drying, lb/ft2/h. ACI 305R. */
export const MOST_DRYING_LB_FT2_H = 0.2;
