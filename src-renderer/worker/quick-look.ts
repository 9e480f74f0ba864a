import type { CheckJobOptions } from '../../src-core/verdict';

/**
 * What a check takes while a drag goes on: a coarse mesh (in), a quarter of the places of the roving load, cracks
 * followed once, panels side by side on one node. The whole check follows and has the last word.
 */
export const QUICK_LOOK: CheckJobOptions = {
  meshSizeIn: 5,
  quick: { rovingPlaces: 30, mostFactorisations: 2, mergeContactsIn: 1 },
};
