/** What the forms of openings take as given: clearances, bearings, weights, screws. A person may set others. */
import { BRACE_SPACING_IN, PLUG_UP_TO_IN, SCREW_SPACING_IN } from '../edge-forms';
import type { Cutout } from '../job';

export type SinkMounting = NonNullable<Cutout['sink']>['mounting'];

/** Habits and limits that the forms go by. Common practice, no source. */
export interface OpeningPractice {
  /** Room beside the bowl of a dropped-in sink, in: what is aimed at, and the least that still lets it in. */
  readonly bowlClearanceIn: number;
  readonly leastClearanceIn: number;
  /** How far the slab reaches over the bowl of an under-rim sink, so that its joint is not seen from above, in. */
  readonly overBowlIn: number;
  /** Least rim that bears on the slab, or on which the slab bears, in. */
  readonly leastBearingIn: { readonly [M in SinkMounting]: number };
  /** Least slab left beside a rim, to the edge of the piece and to the next opening or rim, in. */
  readonly rimToEdgeIn: number;
  readonly rimToOpeningIn: number;
  /** What a form stands above the top of the slab, in. 0: the straightedge rides over it, and a mark shows where it is. */
  readonly proudIn: number;
  /** What a plug widens on each side for an inch of its height, downward, a ratio. */
  readonly taperRatio: number;
  /** Openings no wider than this, or than two strips, get a solid plug, wider ones a frame of strips, in. */
  readonly mostPlugIn: number;
  /** Thickness of a board laid over a bowl, in. */
  readonly lidIn: number;
  /** Most distance between the braces inside a frame, in. */
  readonly braceSpacingIn: number;
  /** Most distance between the screws along a frame, in. */
  readonly screwSpacingIn: number;
  /** Least wood between the point of a screw and the top of a form, in. */
  readonly screwCoverIn: number;
}

export const DEFAULT_OPENING_PRACTICE: OpeningPractice = {
  bowlClearanceIn: 0.125,
  leastClearanceIn: 0.0625,
  overBowlIn: 0.125,
  leastBearingIn: { 'dropped-in': 0.375, 'under-rim': 0.5, 'cast-over': 0.5 },
  rimToEdgeIn: 0.5,
  rimToOpeningIn: 0.5,
  proudIn: 0,
  taperRatio: 1 / 32,
  mostPlugIn: PLUG_UP_TO_IN,
  lidIn: 0.75,
  braceSpacingIn: BRACE_SPACING_IN,
  screwSpacingIn: SCREW_SPACING_IN,
  screwCoverIn: 0.125,
};

/** Damp sand that fills a bowl while it is cast in, and timber of plugs and frames, lb/ft3. Common practice, no source. */
export const SAND_PCF = 100;
export const TIMBER_PCF = 35;

/** Number 8 wood screw: diameter, and the tip that does not count (two diameters), in. Common sizes. */
export const FORM_SCREW = {
  diameterIn: 0.164,
  tipIn: 0.328,
  lengthsIn: [1.25, 1.5, 1.75, 2, 2.5, 3],
} as const;

/** Least thread of a wood screw in the timber, in diameters. NDS 2018 12.1.5.6, from memory. */
export const LEAST_THREAD_DIAMETERS = 6;

/** Wet service factor of a screw in a form that wet concrete stands against (a ratio). NDS 2018 Table 11.3.3, from memory. */
export const WET_SCREW_FACTOR = 0.7;

/** Most that one 1/4 in threaded rod through the drain of a bowl is trusted with, lbf. Common practice, no source. */
export const ROD_LBF = 300;
