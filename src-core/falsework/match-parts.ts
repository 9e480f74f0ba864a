/** Which parts of falsework that has come out serve the sections that are built later. */
import type { LumberSize } from '../timber';
import type { ReuseEnd } from './reused-part';
import { CUT_DOWN_IN, LOOSE_PARTS } from './reused-part';

/** A section with its days: what holds a part. */
export interface Holder extends Omit<ReuseEnd, 'day'> {
  readonly firstDay: number;
  readonly freeFromDay: number;
}

/** A stick, or a panel (size null). */
export interface Part {
  readonly what: string;
  readonly size: LumberSize | null;
  readonly lengthIn: number;
  /** 0 for a stick. */
  readonly widthIn: number;
  /** What is cut in a panel; empty for a whole one. */
  readonly openings: string;
}

export interface Need {
  readonly holder: Holder;
  readonly part: Part;
}

/** A bought part, as it is now and where it is now. */
export interface HeldPart extends Need {
  readonly bought: Need;
}

/** A part that goes from where it was to where it is needed. */
export interface Move extends Need {
  readonly given: HeldPart;
  /** Whether it goes on with the deck and frame that it was in. */
  readonly isWhole: boolean;
}

/**
 * Goes through the sections by the day on which they are built. A part is free from the day on which its section comes out. A section
 * whose deck and frame are alike goes on whole; then every part, longest first, takes the shortest free one of its size that is long
 * enough, and is cut down where it is longer. One part serves one part; a panel is not turned. What finds nothing is bought.
 */
export function matchParts(needs: readonly Need[]): {
  readonly moves: readonly Move[];
  readonly held: readonly HeldPart[];
} {
  const days = [...new Set(needs.map(({ holder }) => holder.firstDay))].sort((a, b) => a - b);
  const moves: Move[] = [];
  let held: readonly HeldPart[] = [];
  for (const day of days) {
    const wanted = needs.filter(({ holder }) => holder.firstDay === day);
    const whole = wholeMoves(wanted, held, day);
    const served = new Set(whole.map(({ part }) => part));
    const given = new Set(whole.map((move) => move.given));
    for (const move of singleMoves(
      wanted.filter(({ part }) => !served.has(part)),
      held.filter((one) => !given.has(one) && one.holder.freeFromDay <= day),
    )) {
      whole.push(move);
      served.add(move.part);
      given.add(move.given);
    }
    moves.push(...whole);
    held = [
      ...held.filter((one) => !given.has(one)),
      ...whole.map(({ holder, part, given: from }) => ({ holder, part, bought: from.bought })),
      ...wanted.filter(({ part }) => !served.has(part)).map((need) => ({ ...need, bought: need })),
    ];
  }
  return { moves, held };
}

/** Sections whose deck and frame are those of one that is free and that nothing was taken from. */
function wholeMoves(wanted: readonly Need[], held: readonly HeldPart[], day: number): Move[] {
  const taken = new Set<Holder>();
  return [...new Set(wanted.map(({ holder }) => holder))].flatMap((holder) => {
    const own = wanted.filter((need) => need.holder === holder && isOfDeck(need));
    const givers = [...new Set(held.map((one) => one.holder))].filter(
      (giver) => giver.freeFromDay <= day && !taken.has(giver),
    );
    for (const giver of givers) {
      const pairs = pairedAlike(
        own,
        held.filter((one) => one.holder === giver && isOfDeck(one)),
      );
      if (pairs === null) continue;
      taken.add(giver);
      return pairs;
    }
    return [];
  });
}

function isOfDeck({ part }: Need): boolean {
  return !LOOSE_PARTS.includes(part.what);
}

/** Each part with one just like it, or null where any on either side has none. */
function pairedAlike(own: readonly Need[], offered: readonly HeldPart[]): Move[] | null {
  if (own.length === 0 || own.length !== offered.length) return null;
  const left = [...offered];
  const moves: Move[] = [];
  for (const need of own) {
    const at = left.findIndex(({ part }) => isAlike(part, need.part));
    if (at < 0) return null;
    moves.push({ ...need, given: left.splice(at, 1)[0]!, isWhole: true });
  }
  return moves;
}

function isAlike(a: Part, b: Part): boolean {
  return (
    a.what === b.what &&
    a.size === b.size &&
    a.openings === b.openings &&
    Math.abs(a.lengthIn - b.lengthIn) < CUT_DOWN_IN &&
    Math.abs(a.widthIn - b.widthIn) < CUT_DOWN_IN
  );
}

/** Part by part, the longest first, each from the shortest that serves. */
function singleMoves(wanted: readonly Need[], offered: readonly HeldPart[]): Move[] {
  const free = [...offered];
  return [...wanted]
    .sort((a, b) => extent(b.part) - extent(a.part))
    .flatMap((need) => {
      let best = -1;
      free.forEach(({ part }, i) => {
        if (serves(part, need.part) && (best < 0 || extent(part) < extent(free[best]!.part) - CUT_DOWN_IN))
          best = i;
      });
      return best < 0 ? [] : [{ ...need, given: free.splice(best, 1)[0]!, isWhole: false }];
    });
}

/** Length of a stick, in; area of a panel, in2. */
function extent({ size, lengthIn, widthIn }: Part): number {
  return size === null ? lengthIn * widthIn : lengthIn;
}

/** Whether a part can be used as another, cut down or as it is. What is cut in a panel must be cut in the other at the same place. */
function serves(given: Part, wanted: Part): boolean {
  if (given.size !== wanted.size) return false;
  if (given.openings !== '') return given.openings === wanted.openings && isAlike(given, wanted);
  return given.lengthIn >= wanted.lengthIn - CUT_DOWN_IN && given.widthIn >= wanted.widthIn - CUT_DOWN_IN;
}
