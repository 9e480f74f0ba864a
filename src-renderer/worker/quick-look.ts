import type { CheckJobOptions } from '../../src-core/verdict';

/**
 * What a check takes while a drag goes on: a coarse mesh (in), few places of the roving load between corners and midspans, cracks
 * followed once. A 12 ft counter takes some 40 ms; the whole check follows and has the last word.
 */
export const QUICK_LOOK: CheckJobOptions = { meshSizeIn: 8, rovingPlaces: 12, mostFactorisations: 2 };
