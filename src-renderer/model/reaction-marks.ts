/** What the supports give back to the slab, as arrows to draw, and the places where it has come off. */
import type { ContactArrow } from '../../src-core/field-map';

export interface ReactionArrow {
  readonly xIn: number;
  readonly yIn: number;
  readonly lengthIn: number;
  /** True for a push from below; false for a tie that holds down. */
  readonly isPush: boolean;
}

/** What one support gives in all, and the middle of it: the number of contact points is the engine's own affair. */
export interface SupportTotal {
  readonly supportId: string;
  readonly xIn: number;
  readonly yIn: number;
  /** Up positive. */
  readonly totalLbf: number;
}

export interface ReactionMarks {
  readonly arrows: readonly ReactionArrow[];
  /** Contact points where the slab has come off. */
  readonly off: readonly { readonly xIn: number; readonly yIn: number }[];
  /** One place a support with contact points that are off, for the word. */
  readonly offLabels: readonly { readonly xIn: number; readonly yIn: number }[];
  /** The support that gives most, all of its contact points together; null where nothing bears. */
  readonly biggest: SupportTotal | null;
}

/** The longest arrow, in. */
const LONGEST_IN = 14;
/** Arrows below this share of the biggest are drawn this long, so that they can still be seen. */
const LEAST_SHARE = 0.06;

/** Arrows by force, the biggest the longest; a force below a thousandth of it is none. */
export function reactionMarks(contacts: readonly ContactArrow[]): ReactionMarks {
  const size = ({ reactionLbf }: ContactArrow) => Math.abs(reactionLbf);
  const most = contacts.reduce((so, one) => Math.max(so, size(one)), 0);
  if (most === 0) return { arrows: [], off: [], offLabels: [], biggest: null };
  const bears = (one: ContactArrow) => size(one) > most / 1000;
  const off = contacts.filter((one) => !bears(one));
  const bySupport = new Map<string, ContactArrow>();
  for (const one of off) if (!bySupport.has(one.supportId)) bySupport.set(one.supportId, one);
  return {
    arrows: contacts.filter(bears).map((one) => ({
      xIn: one.xIn,
      yIn: one.yIn,
      lengthIn: LONGEST_IN * Math.max(LEAST_SHARE, size(one) / most),
      isPush: one.reactionLbf > 0,
    })),
    off,
    offLabels: [...bySupport.values()],
    biggest: biggestSupport(contacts),
  };
}

function biggestSupport(contacts: readonly ContactArrow[]): SupportTotal | null {
  const totals = [...new Set(contacts.map(({ supportId }) => supportId))].map((supportId): SupportTotal => {
    const own = contacts.filter((one) => one.supportId === supportId);
    const mean = (of: (one: ContactArrow) => number) =>
      own.reduce((sum, one) => sum + of(one), 0) / own.length;
    return {
      supportId,
      xIn: mean(({ xIn }) => xIn),
      yIn: mean(({ yIn }) => yIn),
      totalLbf: own.reduce((sum, { reactionLbf }) => sum + reactionLbf, 0),
    };
  });
  return totals.reduce<SupportTotal | null>(
    (so, one) => (Math.abs(one.totalLbf) > Math.abs(so?.totalLbf ?? 0) ? one : so),
    null,
  );
}
