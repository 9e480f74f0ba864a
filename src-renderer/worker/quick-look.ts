import type { CheckJobOptions } from '../../src-core/verdict';

/**
 * What a check takes while a drag goes on: a coarse mesh (in), few places of the roving load between corners and midspans, cracks
 * followed once, panels side by side on one node. The whole check follows and has the last word.
 */
export const QUICK_LOOK: CheckJobOptions = {
  meshSizeIn: 6,
  quick: { rovingPlaces: 12, mostFactorisations: 2, mergeContactsIn: 1 },
};
