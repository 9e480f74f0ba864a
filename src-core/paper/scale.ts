/** Standard scales of drawings: the largest on a builder's scale rule at which a thing fits its room. */

import type { UnitSystem } from '../units';
import { IN_PER_FT } from '../units';

/** A width and a height, in. */
export interface PaperSize {
  readonly widthIn: number;
  readonly heightIn: number;
}

/** One scale of drawing. */
export interface PaperScale {
  /** Inches of paper to an inch of the thing; 1/16 for 3/4 in = 1 ft. */
  readonly ratio: number;
  /** "3/4 in = 1 ft", "1 : 20". */
  readonly words: string;
}

const toFoot = (inches: string, aFoot: number): PaperScale => ({
  ratio: aFoot / IN_PER_FT,
  words: `${inches} in = 1 ft`,
});
const oneTo = (parts: number): PaperScale => ({ ratio: 1 / parts, words: `1 : ${parts}` });

/**
 * Scales of plans, largest first: those of an architect's scale rule, and of ISO 5455 with the 1 : 25 of building practice. The last
 * of each are for slabs too long for the rest.
 */
export const PLAN_SCALES: { readonly [S in UnitSystem]: readonly PaperScale[] } = {
  imperial: [
    toFoot('3', 3),
    toFoot('1-1/2', 1.5),
    toFoot('1', 1),
    toFoot('3/4', 3 / 4),
    toFoot('1/2', 1 / 2),
    toFoot('3/8', 3 / 8),
    toFoot('1/4', 1 / 4),
    toFoot('3/16', 3 / 16),
    toFoot('1/8', 1 / 8),
    toFoot('1/16', 1 / 16),
    toFoot('1/32', 1 / 32),
  ],
  metric: [1, 2, 5, 10, 20, 25, 50, 100, 200, 500].map(oneTo),
};

/** Scales of sections through an edge, largest first. */
export const DETAIL_SCALES: { readonly [S in UnitSystem]: readonly PaperScale[] } = {
  imperial: [
    { ratio: 1, words: 'full size' },
    { ratio: 1 / 2, words: 'half size, 6 in = 1 ft' },
    ...PLAN_SCALES.imperial,
  ],
  metric: PLAN_SCALES.metric,
};

/** The largest standard scale at which a thing of a size fits in a room on paper; the smallest there is where none does. */
export function paperScale(sizeIn: PaperSize, roomIn: PaperSize, system: UnitSystem): PaperScale {
  const fits = ({ ratio }: PaperScale) =>
    sizeIn.widthIn * ratio <= roomIn.widthIn && sizeIn.heightIn * ratio <= roomIn.heightIn;
  return PLAN_SCALES[system].find(fits) ?? PLAN_SCALES[system].at(-1)!;
}
