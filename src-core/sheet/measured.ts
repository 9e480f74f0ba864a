/** A block with its height, before it has a page. */
import type { BookProblem, PlacedContent } from './laid-out';
import { HAIR_PT, LEAST_TOGETHER, SMALL_SCALE } from './practice';
import type { PageOf } from './set-text';

export interface Measured {
  readonly kind: PlacedContent['kind'];
  /** Anchor of its beginning; null for none. */
  readonly id: string | null;
  readonly gapPt: number;
  /** Heights of what is never parted: lines, rows, items, or the whole block. */
  readonly unitsPt: readonly number[];
  /** Height of what is repeated above the units that go over to a new page. */
  readonly againPt: number;
  /** Fewest units before and after the end of a page. */
  readonly leastTogether: number;
  /** No page ends between it and the next block. */
  readonly keepsNext: boolean;
  readonly problems: readonly BookProblem[];
  /** The units from one number up to another, once the pages are known. */
  readonly place: (pageOf: PageOf, from: number, to: number) => PlacedContent;
}

/** A measured block from what is not as usual in it: no anchor, nothing repeated, no fewer than two units together. */
export function measured(
  block: Pick<Measured, 'kind' | 'gapPt' | 'unitsPt' | 'place'> & Partial<Measured>,
): Measured {
  return { id: null, againPt: 0, leastTogether: LEAST_TOGETHER, keepsNext: false, problems: [], ...block };
}

/** A hairline in points of the smallest scale: it does not shrink with the type. */
export const HAIR_RECKONED_PT = HAIR_PT / SMALL_SCALE;
