/** What the design takes as given: limits, sizes, weights and fasteners of falsework. A person may set others. */
import type { LumberSize } from '../timber';

/** Limits and habits that a design goes by. */
export interface FalseworkPractice {
  /** Most width along the front and most depth of a section that comes out in one go, in. */
  readonly mostWidthIn: number;
  readonly mostDepthIn: number;
  /** Most weight of a section without its legs, lb: two people, from their knees. */
  readonly mostWeightLb: number;
  /** Saw kerf beside every section, so that it slides past the next, in. */
  readonly seamIn: number;
  /** Strip of slab that its edge form carries beside a wall or pier, in: no deck below it. */
  readonly bareEdgeIn: number;
  /** Openings up to this size across the joists are bored between them, not framed, in. */
  readonly boredOpeningIn: number;
  /** Least weight of deck, joists and beams that is counted, psf. */
  readonly leastFormPsf: number;
  /** Distance of the studs of a wall that carries a ledger, in. */
  readonly studSpacingIn: number;
  /** Falsework taller than this is for an engineer, in. */
  readonly engineerHeightIn: number;
}

/**
 * Two people carry 75 lb from knee height (NIOSH 94-110 gives 51 lb for one in the best posture); 5 psf of form and
 * 8 ft: common practice, no source, like all the rest.
 */
export const DEFAULT_PRACTICE: FalseworkPractice = {
  mostWidthIn: 42,
  mostDepthIn: 48,
  mostWeightLb: 75,
  seamIn: 0.125,
  bareEdgeIn: 3,
  boredOpeningIn: 4,
  leastFormPsf: 5,
  studSpacingIn: 16,
  engineerHeightIn: 96,
};

/** Weight of damp sawn lumber and of panels, lb/ft3. Common practice, no source. */
export const LUMBER_PCF = 35;
export const PANEL_PCF = 40;

/** Sole under a leg: a 2x4 laid flat, in. */
export const SOLE = { size: '2x4', thicknessIn: 1.5, lengthIn: 12 } as const satisfies {
  readonly size: LumberSize;
  readonly thicknessIn: number;
  readonly lengthIn: number;
};

/** The structural wood screw of joints that come apart, and the lag screw of ledgers. Sizes in. */
export interface Fastener {
  readonly words: string;
  readonly kind: 'screws' | 'lags';
  readonly diameterIn: number;
  readonly lengthIn: number;
  /** Tip that does not count, in. */
  readonly tipIn: number;
}

/** Number 10 wood screw, 3 in. Common size. */
export const SCREW: Fastener = {
  words: '#10 x 3 in wood screws',
  kind: 'screws',
  diameterIn: 0.19,
  lengthIn: 3,
  tipIn: 0.38,
};

/** Lag screw 1/4 x 4 in. Common size; tip from NDS 2018 Appendix L, from memory. */
export const LAG: Fastener = {
  words: '1/4 x 4 in lag screws with washers',
  kind: 'lags',
  diameterIn: 0.25,
  lengthIn: 4,
  tipIn: 0.16,
};

/** Short screw that holds the backing board to the deck from below, in. */
export const BOARD_SCREW_IN = 0.75;

/** Wet service factor of a fastener that is driven or stands in wet wood (a ratio). NDS 2018 Table 11.3.3, from memory. */
export function wetFastenerFactor(isWet: boolean): number {
  return isWet ? 0.7 : 1;
}
