/** What the straightedge rides on in each piece of a pour. */
import type { PieceScreed, Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';

export interface ScreedRow {
  readonly pieceId: string;
  readonly name: string;
  /** "31-1/2 in": the longest straightedge that the piece asks for. */
  readonly straightedge: string;
  readonly datum: string;
  readonly lines: readonly { readonly id: string; readonly words: string }[];
}

/** One row a piece: its straightedge, its datum, then its parts, rails and plugs in words. */
export function screedRows({ screed, pieces }: Pour, system: UnitSystem): ScreedRow[] {
  return screed.map((own) => ({
    pieceId: own.pieceId,
    name: pieces.find(({ pieceId }) => pieceId === own.pieceId)?.name ?? own.pieceId,
    straightedge: printLength(longestIn(own), { system }),
    datum: own.datumWords,
    lines: [...own.runs, ...own.rails, ...own.plugs].map(({ id, words }) => ({ id, words })),
  }));
}

/** Strips beside an opening take a shorter one, or a trowel. */
function longestIn({ runs }: PieceScreed): number {
  return Math.max(
    0,
    ...runs.filter(({ trace }) => trace.part.kind === 'piece').map((run) => run.straightedgeIn),
  );
}
