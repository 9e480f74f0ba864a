/** Falsework of several pours: what is used again, and what is left to buy. */
import type { Job } from '../job';
import type { Bill, BillLine, BillPanel } from './bill';
import { billPrice } from './bill';
import type { Holder, Move, Need, Part } from './match-parts';
import { matchParts } from './match-parts';
import type { Prices } from './prices';
import type { ReusedPanel, ReusedStick, ReuseEnd, SectionReuse } from './reused-part';
import { reuseWords } from './reused-part';
import type { Section } from './section';

/** What the search needs of a piece's falsework. */
export interface BuiltFalsework {
  readonly pieceId: string;
  readonly pieceName: string;
  readonly sections: readonly { readonly section: Section; readonly bill: Bill }[];
}

/** What one piece's falsework is built of, and what of that is bought for it; every copy of the piece counted. */
export interface PieceStock {
  readonly pieceId: string;
  readonly asked: Bill;
  readonly bought: Bill;
  readonly askedPrice: number;
  readonly boughtPrice: number;
}

/** Falsework of several pieces with what is used again. Bought parts are told at the length to which they are first cut. */
export interface FalseworkReuse {
  /** In the order in which the later sections are built. */
  readonly uses: readonly SectionReuse[];
  /** Every part of every section, and what of that is bought; each copy of a piece counted. */
  readonly asked: Bill;
  readonly bought: Bill;
  readonly askedPrice: number;
  readonly boughtPrice: number;
  /** The same of each piece, in the order given. */
  readonly byPiece: readonly PieceStock[];
}

/** Said with every reuse. Common practice, no source. */
export const REUSE_CAUTION =
  'Look every part over before it stands again: pull the screws, scrape and dry the panels, and leave out what is split, swollen, or bored where it bends or bears.';

/**
 * What of the falsework of the given pieces is used again by `matchParts`, so that what is bought is what stands at once where parts
 * are alike, and never more than the sum. Every copy of a piece is counted, all poured on its day.
 */
export function reuseFalsework(job: Job, built: readonly BuiltFalsework[], prices: Prices): FalseworkReuse {
  const needs = built.flatMap((each) => needsOf(job, each));
  const { moves, held } = matchParts(needs);
  const bought = held.map((part) => part.bought);
  return {
    uses: usesOf(moves),
    ...stockOf(needs, bought, prices),
    byPiece: built.map(({ pieceId }) => {
      const own = (parts: readonly Need[]) => parts.filter(({ holder }) => holder.pieceId === pieceId);
      return { pieceId, ...stockOf(own(needs), own(bought), prices) };
    }),
  };
}

function stockOf(
  needs: readonly Need[],
  fresh: readonly Need[],
  prices: Prices,
): Omit<PieceStock, 'pieceId'> {
  const asked = billOfParts(needs);
  const bought = billOfParts(fresh);
  return { asked, bought, askedPrice: billPrice(asked, prices), boughtPrice: billPrice(bought, prices) };
}

/** Every part of every copy of a piece's sections. */
function needsOf(job: Job, { pieceId, pieceName, sections }: BuiltFalsework): Need[] {
  const copies = job.pieces.find(({ id }) => id === pieceId)?.copies ?? 1;
  return Array.from({ length: copies }, (_, i) => i + 1).flatMap((copy) =>
    sections.flatMap(({ section, bill }) => {
      const { id: sectionId, name, firstDay, lastDay } = section;
      const holder: Holder = { sectionId, name, pieceId, pieceName, copy, firstDay, freeFromDay: lastDay };
      return partsOf(section, bill).map((part) => ({ holder, part }));
    }),
  );
}

function partsOf({ openings }: Section, { sticks, panels }: Bill): Part[] {
  const cut =
    openings.length === 0 ? '' : JSON.stringify(openings.map(({ patch, isFramed }) => [patch, isFramed]));
  return [
    ...sticks.flatMap(({ what, size, lengthIn, count }) =>
      Array.from({ length: count }, () => ({ what, size, lengthIn, widthIn: 0, openings: '' })),
    ),
    ...panels.map(({ what, lengthIn, widthIn }) => ({ what, size: null, lengthIn, widthIn, openings: cut })),
  ];
}

function billOfParts(needs: readonly Need[]): Bill {
  const sticks = new Map<string, BillLine>();
  for (const { part } of needs) {
    const { what, size, lengthIn } = part;
    if (size === null) continue;
    const key = `${what} ${size} ${lengthIn.toFixed(4)}`;
    sticks.set(key, { what, size, lengthIn, count: (sticks.get(key)?.count ?? 0) + 1 });
  }
  return {
    sticks: [...sticks.values()],
    panels: needs.flatMap(({ part: { what, size, lengthIn, widthIn } }): BillPanel[] =>
      size === null ? [{ what, lengthIn, widthIn }] : [],
    ),
  };
}

/** Moves by the two sections that they join, in the order in which the later ones are built. */
function usesOf(moves: readonly Move[]): SectionReuse[] {
  const groups = new Map<string, Move[]>();
  for (const move of moves) {
    const id = `${keyOf(move.given.holder)}>${keyOf(move.holder)}`;
    groups.set(id, [...(groups.get(id) ?? []), move]);
  }
  return [...groups].map(([id, all]) => {
    const { given, holder } = all[0]!;
    const use = {
      id,
      from: endOf(given.holder, given.holder.freeFromDay),
      to: endOf(holder, holder.firstDay),
      isWhole: all.some(({ isWhole }) => isWhole),
      sticks: reusedSticks(all),
      panels: reusedPanels(all),
    };
    const trace = { pieceId: holder.pieceId, part: { kind: 'section' as const, id: holder.sectionId } };
    return { ...use, trace, words: reuseWords(use) };
  });
}

function keyOf({ sectionId, copy }: Holder): string {
  return copy === 1 ? sectionId : `${sectionId}#${copy}`;
}

function endOf({ sectionId, name, pieceId, pieceName, copy }: Holder, day: number): ReuseEnd {
  return { sectionId, name, pieceId, pieceName, copy, day };
}

function reusedSticks(moves: readonly Move[]): ReusedStick[] {
  const found = new Map<string, ReusedStick>();
  for (const { part, given } of moves) {
    const { what, size, lengthIn } = part;
    if (size === null) continue;
    const fromLengthIn = given.part.lengthIn;
    const key = [what, size, lengthIn.toFixed(4), fromLengthIn.toFixed(4)].join(' ');
    found.set(key, { what, size, lengthIn, count: (found.get(key)?.count ?? 0) + 1, fromLengthIn });
  }
  return [...found.values()];
}

function reusedPanels(moves: readonly Move[]): ReusedPanel[] {
  return moves.flatMap(({ part: { what, size, lengthIn, widthIn }, given }): ReusedPanel[] => {
    if (size !== null) return [];
    const { lengthIn: fromLengthIn, widthIn: fromWidthIn } = given.part;
    return [{ what, lengthIn, widthIn, count: 1, fromLengthIn, fromWidthIn }];
  });
}
