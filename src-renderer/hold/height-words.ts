/** How far a foot may be wound up, or fall short, as a person measures it: never more than was found. */
import type { HeightLimits } from '../../src-core/sequence';
import { heightWords } from '../../src-core/sequence';
import type { UnitSystem } from '../../src-core/units';

export interface HeightRow {
  readonly key: string;
  /** "left side of R1 alone". */
  readonly words: string;
  readonly raise: string;
  readonly gap: string;
}

/** One row a foot or side of what comes in. */
export function heightRows(heights: readonly HeightLimits[], system: UnitSystem): HeightRow[] {
  return heights.map(({ supportId, part, words, raise, gap }) => ({
    key: `${supportId} ${part}`,
    words,
    raise: heightWords(raise, system, 'as far as it winds'),
    gap: heightWords(gap, system, 'any'),
  }));
}
