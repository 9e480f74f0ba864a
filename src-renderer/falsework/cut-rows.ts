/** Parts of a design and what they are cut from, those alike taken together. */
import type { CutPiece, CutStick, FalseworkDesign } from '../../src-core/falsework';
import { printLength, type UnitSystem } from '../../src-core/units';
import { gathered } from './gathered';

export interface PartRow {
  readonly key: string;
  readonly what: string;
  readonly size: string;
  readonly length: string;
  readonly count: number;
}

export interface StickRow {
  readonly key: string;
  /** Sticks that are cut alike. */
  readonly count: number;
  readonly stock: string;
  /** "3 × joist 25-1/4 in, sole 12 in" */
  readonly cuts: string;
  readonly left: string;
}

export interface SizeRows {
  readonly size: string;
  /** "15 sticks, 7 % waste; fewest sticks, proved" */
  readonly words: string;
  readonly rows: readonly StickRow[];
  /** A sentence for each part that no stock is long enough for. */
  readonly tooLong: readonly string[];
}

export interface SheetRow {
  readonly key: string;
  readonly count: number;
  readonly stock: string;
  readonly cuts: string;
}

/** Every stick of the design by what it is, longest first within each. */
export function partRows({ sections }: FalseworkDesign, system: UnitSystem): PartRow[] {
  const lines = sections.flatMap(({ bill }) => bill.sticks);
  const names = [...new Set(lines.map(({ what }) => what))];
  return gathered(lines, ({ what, size, lengthIn }) =>
    [what, size, printLength(lengthIn, { system })].join('|'),
  )
    .sort(
      (a, b) =>
        names.indexOf(a.first.what) - names.indexOf(b.first.what) || b.first.lengthIn - a.first.lengthIn,
    )
    .map(({ key, first, all }) => ({
      key,
      what: first.what,
      size: first.size,
      length: printLength(first.lengthIn, { system }),
      count: all.reduce((sum, { count }) => sum + count, 0),
    }));
}

/** Stock sticks of each size, and how each is cut. */
export function sizeRows({ cuts }: FalseworkDesign, system: UnitSystem): SizeRows[] {
  const length = (valueIn: number) => printLength(valueIn, { system });
  return cuts.bySize.map(({ size, sticks, wasteRatio, found, tooLong }) => ({
    size,
    words: `${counted(sticks.length, 'stick')}, ${Math.round(wasteRatio * 100)} % waste; ${found}`,
    rows: stickRows(sticks, length),
    tooLong: tooLong.map(
      ({ what, lengthIn }) => `A ${what} of ${length(lengthIn)} is longer than any stock.`,
    ),
  }));
}

/** Sheets, and the deck panels cut from each; the first measure of a panel runs along the sheet. */
export function sheetRows({ cuts }: FalseworkDesign, system: UnitSystem): SheetRow[] {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const written = cuts.sheets.map(({ lengthIn, widthIn, pieces }) => ({
    stock: `${length(lengthIn)} by ${length(widthIn)}`,
    cuts: tallied(pieces.map((piece) => `${length(piece.lengthIn)} by ${length(piece.widthIn)}`)),
  }));
  return gathered(written, ({ stock, cuts: each }) => `${stock}|${each}`).map(({ key, first, all }) => ({
    key,
    count: all.length,
    ...first,
  }));
}

/** What stands above the sheets: "Deck panels, 12 % waste; fewest sheets, proved. The first measure runs along the sheet." */
export function sheetWords({ cuts }: FalseworkDesign): string {
  return `Deck panels, ${Math.round(cuts.sheetWasteRatio * 100)} % waste; ${cuts.sheetsFound}. The first measure runs along the sheet.`;
}

/** "15 sticks and 3 sheets", the stock to take. */
export function stockWords({ cuts }: FalseworkDesign): string {
  const sticks = cuts.bySize.reduce((sum, size) => sum + size.sticks.length, 0);
  return `${counted(sticks, 'stick')} and ${counted(cuts.sheets.length, 'sheet')}`;
}

function stickRows(sticks: readonly CutStick[], length: (valueIn: number) => string): StickRow[] {
  const written = sticks.map(({ stockLengthIn, cuts, offcutIn }) => ({
    stock: length(stockLengthIn),
    cuts: tallied(cuts.map(({ what, lengthIn }: CutPiece) => `${what} ${length(lengthIn)}`)),
    left: length(offcutIn),
  }));
  return gathered(written, ({ stock, cuts, left }) => [stock, cuts, left].join('|')).map(
    ({ key, first, all }) => ({ key, count: all.length, ...first }),
  );
}

/** Words that repeat, once each with how often: "3 × joist 25-1/4 in, sole 12 in". */
function tallied(words: readonly string[]): string {
  return gathered(words, (each) => each)
    .map(({ key, all }) => (all.length === 1 ? key : `${all.length} × ${key}`))
    .join(', ');
}

function counted(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`;
}
