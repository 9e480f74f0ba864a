/** Numbers beside the colour scale. */

import type { UnitSystem } from '../../src-core/units';
import { printDeflection, printMoment } from '../../src-core/units';

export interface LegendTick {
  readonly share: number;
  readonly words: string;
}

/** Shares of the cracking limit that are named: none, half, close to it, and the limit. */
const NAMED_SHARES = [0, 0.5, 0.8, 1] as const;

/** The shares as such: 0, 0.5, 0.8, 1.0. */
export function shareTicks(): LegendTick[] {
  return NAMED_SHARES.map((share) => ({ share, words: share === 0 ? '0' : share.toFixed(1) }));
}

/** The moments at those shares in the user's unit, and the unit by itself. */
export function momentTicks(
  limitLbfInPerIn: number,
  system: UnitSystem,
): { readonly ticks: readonly LegendTick[]; readonly unit: string } {
  const printed = NAMED_SHARES.map((share) => {
    const [words, unit] = apart(printMoment(share * limitLbfInPerIn, { system, digits: 3 }));
    return { share, words, unit };
  });
  return { ticks: printed.map(({ share, words }) => ({ share, words })), unit: printed[0]!.unit };
}

/** Sag at none, half and the whole of the scale. */
export function sagTicks(mostIn: number, system: UnitSystem): LegendTick[] {
  return [0, 0.5, 1].map((share) => ({
    share,
    words: share === 0 ? '0' : printDeflection(share * mostIn, { system, digits: 2 }),
  }));
}

/** "132.6 lbf-in/in" as number and unit. */
function apart(printed: string): readonly [words: string, unit: string] {
  const at = printed.indexOf(' ');
  return [printed.slice(0, at), printed.slice(at + 1)];
}
