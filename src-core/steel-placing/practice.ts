/** What the placing of steel takes as given: stock sizes, clearances, limits and habits of the trade. */

/**
 * Weight of steel, lb/in3: 490 lb/ft3, the figure on which the nominal weights of ASTM A615 bars and ASTM A1064 wire
 * rest.
 */
export const STEEL_LB_PER_IN3 = 0.2836;

/** Sheet of mesh and length of bar where the job's stock has none, in. Common sizes, no source. */
export const SHIPPED_MESH_SHEET = { lengthIn: 96, widthIn: 48 } as const;
export const SHIPPED_BAR_IN = 240;
/** A bar of the stock is the bar of a layer where the diameters differ by no more than this, in. */
export const SAME_BAR_IN = 0.02;

/** A sheet end that is kept this far from a bending peak is clear of it; more is not sought, in. Common practice, no source. */
export const PEAK_CLEAR_IN = 6;
/** A support narrower than this along the steel is one peak; a wider one peaks at both its edges, in. */
export const LINE_SUPPORT_IN = 6;
/** Gaps between supports shorter than this have no sag worth keeping clear of, in. Common practice, no source. */
export const SHORT_SPAN_IN = 12;
/** Peaks this far to either side of a bar count for it, in. */
export const BESIDE_BAR_IN = 6;
/** Lap places are tried every so far, in. */
export const LAP_STEP_IN = 1;

/** A corner counts as an inside corner from this turn beyond straight, as in the load check, rad. */
export const INSIDE_TURN_RAD = 0.1;
/** Mesh that reaches an inside corner runs on through the corner to the far edge, up to this far, in. Common practice, no source. */
export const THROUGH_MOST_IN = 36;
/** Mesh saved must be worth another sheet end to cut, lap and tie: what one counts in choosing, in2. Common practice, no source. */
export const STRIP_COUNTS_IN2 = 144;

/** Corners rounded wider than this get no trimmer, in. Common practice, no source. */
export const SHARP_RADIUS_IN = 3;
/** The trimmer: bar by its name, cover from the corner, least length and least end beyond it, in. Common practice, no source. */
export const TRIMMER = { barId: '#3', coverIn: 1, leastIn: 24, leastSideIn: 6 } as const;
/** Drawn bars within this of a corner, and turned by no more than this from square across it, trim it. Common practice, no source. */
export const TRIMMER_NEAR_IN = 3;
export const TRIMMER_TURN_DEG = 30;

/**
 * Cover, in. Common practice, no source: below the cover that ACI 318-19 20.5.1.3.1 asks of concrete cast in place
 * (3/4 in indoors, 1-1/2 in to weather).
 */
export const COVER_IN = 0.5;
export const WET_COVER_IN = 0.75;
/** The same, to be said wherever covers are shown. */
export const COVER_NOTE =
  'Cover of 1/2 in, 3/4 in outdoors on faces that get wet, is common practice for thin tops, no source: ACI 318-19 20.5.1.3.1 asks 3/4 in indoors and 1-1/2 in to weather.';

/** Steel whose underside is within this of the steel below rests on it, in. */
export const RESTS_WITHIN_IN = 1 / 8;
/** Bars that differ by less than this in direction lie beside each other and cannot carry one another, degree. */
export const SAME_WAY_DEG = 10;

/** A shovelful of wet concrete set down on the mesh: its weight, lbf, and the width over which it lies, in. Common practice, no source. */
export const PLACING_LOAD_LBF = 20;
export const PLACING_WIDTH_IN = 8;
/** Sag of mesh that is worth a caution, in. Common practice, no source. */
export const SAG_LIMIT_IN = 0.25;

/** Standoffs apart where the job does not say, in. Common practice, no source. */
export const STANDOFFS_APART_IN = 10;
/** Nobody sets standoffs closer than a hand reaches between, in. Common practice, no source. */
export const STANDOFFS_CLOSEST_IN = 4;
/** A spacing that the placing picks is a whole number of these, in. */
export const STANDOFF_STEP_IN = 0.5;
