/** What each support carries, as rows of a table: both bounds of stiffness under each support's name. */
import type { UnitSystem } from '../../src-core/units';
import { printForce } from '../../src-core/units';
import type { SupportReaction } from '../../src-core/verdict';

export interface ReactionRow {
  /** "soft" or "stiff": the bound of the supports' stiffness. */
  readonly bound: string;
  readonly dead: string;
  readonly most: string;
  readonly least: string;
  readonly tie: string;
}

export interface SupportRows {
  readonly supportId: string;
  readonly words: string;
  readonly rows: readonly ReactionRow[];
}

const BOUND_WORDS: { readonly [B in SupportReaction['bound']]: string } = { low: 'soft', high: 'stiff' };

/** Supports in the order of the file, each with a row for soft and one for stiff supports. */
export function reactionRows(reactions: readonly SupportReaction[], system: UnitSystem): SupportRows[] {
  // Whole pounds: a tenth would claim more than the stiffness of a support is known to.
  const force = (lbf: number) => printForce(Math.round(lbf), { system, digits: 3 });
  const ids = [...new Set(reactions.map(({ supportId }) => supportId))];
  return ids.map((id) => {
    const own = reactions.filter(({ supportId }) => supportId === id);
    return {
      supportId: id,
      words: own[0]?.words ?? id,
      rows: own.map(({ bound, deadLbf, mostLbf, leastLbf, tieLbf }) => ({
        bound: BOUND_WORDS[bound],
        dead: force(deadLbf),
        most: force(mostLbf),
        least: force(leastLbf),
        tie: tieLbf > 0.5 ? force(tieLbf) : 'none',
      })),
    };
  });
}
