/** Sticks cut from stock lengths and deck panels from sheets, by first-fit decreasing: a good rule, not a proof of least waste. */
import type { Job } from '../job';
import type { LumberSize } from '../timber';
import type { BillLine, BillPanel } from './bill';
import { lumberStock, panelStock } from './prices';

/** How the lists are made, as it is shown. */
export const CUTTING_METHOD =
  'first-fit decreasing: longest first, each into the first stock piece with room; not proved to be the least waste';

/** Lengths of lumber and the sheet that are taken where the job's stock has none, in. Common sizes. */
const SHIPPED_LENGTHS_IN = [96, 120, 144, 192];
const SHIPPED_SHEET = { lengthIn: 96, widthIn: 48 } as const;

export interface CutPiece {
  readonly what: string;
  readonly lengthIn: number;
}

export interface CutStick {
  readonly stockLengthIn: number;
  readonly cuts: readonly CutPiece[];
  readonly wasteIn: number;
}

export interface SizeCutList {
  readonly size: LumberSize;
  readonly sticks: readonly CutStick[];
  /** Waste of the stock's length, saw kerf in it (a ratio). */
  readonly wasteRatio: number;
  /** Pieces longer than any stock, which must be made otherwise. */
  readonly tooLong: readonly CutPiece[];
}

export interface CutSheet {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly strips: readonly {
    readonly widthIn: number;
    readonly pieces: readonly BillPanel[];
  }[];
}

export interface CutList {
  readonly bySize: readonly SizeCutList[];
  readonly sheets: readonly CutSheet[];
  readonly sheetWasteRatio: number;
}

/** Everything of a job's falsework cut from stock. */
export function cutList(job: Job, sticks: readonly BillLine[], panels: readonly BillPanel[]): CutList {
  const sizes = [...new Set(sticks.map(({ size }) => size))].sort();
  const sheets = cutSheets(job, panels);
  const sheetIn2 = sheets.reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
  const usedIn2 = panels.reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
  return {
    bySize: sizes.map((size) =>
      cutSize(
        job,
        size,
        sticks.filter((line) => line.size === size),
      ),
    ),
    sheets,
    sheetWasteRatio: sheetIn2 > 0 ? 1 - usedIn2 / sheetIn2 : 0,
  };
}

function cutSize(job: Job, size: LumberSize, lines: readonly BillLine[]): SizeCutList {
  const own = lumberStock(job, size).map(({ lengthIn }) => lengthIn!);
  const lengths = [...new Set(own.length > 0 ? own : SHIPPED_LENGTHS_IN)].sort((a, b) => a - b);
  const pieces = lines.flatMap(({ what, lengthIn, count }) =>
    Array.from({ length: count }, () => ({ what, lengthIn })),
  );
  const longestIn = lengths.at(-1)!;
  const fitting = pieces.filter(({ lengthIn }) => lengthIn <= longestIn + 1e-9);
  const lists = lengths
    .filter((lengthIn) => fitting.every((piece) => piece.lengthIn <= lengthIn + 1e-9))
    .map((lengthIn) => firstFitDecreasing(fitting, lengthIn, job.forms.kerfIn));
  const totalIn = (sticks: readonly CutStick[]) => sticks.reduce((sum, each) => sum + each.stockLengthIn, 0);
  const sticks = lists.reduce<readonly CutStick[]>(
    (best, list, i) => (i === 0 || totalIn(list) < totalIn(best) ? list : best),
    [],
  );
  const cutIn = fitting.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
  return {
    size,
    sticks,
    wasteRatio: sticks.length > 0 ? 1 - cutIn / totalIn(sticks) : 0,
    tooLong: pieces.filter(({ lengthIn }) => lengthIn > longestIn + 1e-9),
  };
}

/** Pieces cut from sticks of one length, longest first, each into the first stick that has room for it and its kerf, in. */
export function firstFitDecreasing(
  pieces: readonly CutPiece[],
  stockLengthIn: number,
  kerfIn: number,
): CutStick[] {
  const sticks: { cuts: CutPiece[]; leftIn: number }[] = [];
  for (const piece of [...pieces].sort((a, b) => b.lengthIn - a.lengthIn)) {
    const stick = sticks.find(({ leftIn }) => piece.lengthIn <= leftIn + 1e-9);
    const into = stick ?? { cuts: [], leftIn: stockLengthIn };
    if (stick === undefined) sticks.push(into);
    into.cuts.push(piece);
    // The last cut of a stick may end at its end: a kerf is only lost before the next piece.
    into.leftIn -= piece.lengthIn + kerfIn;
  }
  return sticks.map(({ cuts, leftIn }) => ({ stockLengthIn, cuts, wasteIn: Math.max(0, leftIn + kerfIn) }));
}

function sheetSize(job: Job): { readonly lengthIn: number; readonly widthIn: number } {
  const [own] = panelStock(job);
  return own === undefined ? SHIPPED_SHEET : { lengthIn: own.lengthIn!, widthIn: own.widthIn! };
}

/** Panels from sheets, strip by strip across the sheet; none is turned, since its strength axis runs along the sheet. */
function cutSheets(job: Job, panels: readonly BillPanel[]): CutSheet[] {
  const size = sheetSize(job);
  const { kerfIn } = job.forms;
  const sheets: { leftIn: number; strips: { widthIn: number; leftIn: number; pieces: BillPanel[] }[] }[] = [];
  const pieces = panels.flatMap((panel) => partsOf(panel, size));
  for (const piece of pieces.sort((a, b) => b.widthIn - a.widthIn || b.lengthIn - a.lengthIn)) {
    const strip = sheets
      .flatMap(({ strips }) => strips)
      .find((each) => piece.widthIn <= each.widthIn + 1e-9 && piece.lengthIn <= each.leftIn + 1e-9);
    if (strip !== undefined) {
      strip.pieces.push(piece);
      strip.leftIn -= piece.lengthIn + kerfIn;
      continue;
    }
    let sheet = sheets.find(({ leftIn }) => piece.widthIn <= leftIn + 1e-9);
    if (sheet === undefined) {
      sheet = { leftIn: size.widthIn, strips: [] };
      sheets.push(sheet);
    }
    sheet.strips.push({
      widthIn: piece.widthIn,
      leftIn: size.lengthIn - piece.lengthIn - kerfIn,
      pieces: [piece],
    });
    sheet.leftIn -= piece.widthIn + kerfIn;
  }
  return sheets.map(({ strips }) => ({
    ...size,
    strips: strips.map(({ widthIn, pieces: cut }) => ({ widthIn, pieces: cut })),
  }));
}

/** A panel larger than a sheet in as few equal parts as fit; its seams lie on joists and are the carpenter's to place. */
function partsOf(
  panel: BillPanel,
  size: { readonly lengthIn: number; readonly widthIn: number },
): BillPanel[] {
  const along = Math.ceil(panel.lengthIn / size.lengthIn - 1e-9);
  const across = Math.ceil(panel.widthIn / size.widthIn - 1e-9);
  return Array.from({ length: along * across }, () => ({
    ...panel,
    lengthIn: panel.lengthIn / along,
    widthIn: panel.widthIn / across,
  }));
}
