/** How far a foot may be wound up, or fall short, as a person measures it: never more than was found. */
import type { HeightLimit, HeightLimits } from '../../src-core/sequence';
import type { UnitSystem } from '../../src-core/units';
import { MM_PER_IN } from '../../src-core/units';

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
    raise: limitWords(raise, system, 'as far as it winds'),
    gap: limitWords(gap, system, 'any'),
  }));
}

/** The 64th of an inch, or tenth of a millimetre, below the limit. */
function limitWords({ limitIn, sixtyFourths }: HeightLimit, system: UnitSystem, beyond: string): string {
  if (limitIn === null || sixtyFourths === null) return beyond;
  if (system === 'metric') return `${(Math.floor(limitIn * MM_PER_IN * 10 + 1e-9) / 10).toFixed(1)} mm`;
  return sixtyFourths === 0 ? 'less than 1/64 in' : `${sixtyFourths}/64 in`;
}
