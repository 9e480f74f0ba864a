/** The sticks of a falsework cut from stock lengths, and its deck panels from sheets. */
import {
  cutSheets,
  cutSticks,
  type SheetCut,
  type SheetOffcut,
  type SheetPlace,
  type StickStock,
} from '../cutting';
import type { Job } from '../job';
import type { LumberSize } from '../timber';
import type { BillLine, BillPanel } from './bill';
import { lumberStock, panelStock } from './prices';

/** How the lists are made, as it is shown. */
export const CUTTING_METHOD =
  'a saw kerf between any two pieces, sheets from edge to edge with the strength axis along them; each list says whether it is proved to be the least, or how near it comes';

/** Lengths of lumber and the sheet that are taken where the job's stock has none, in. Common sizes. */
const SHIPPED_LENGTHS_IN = [96, 120, 144, 192];
const SHIPPED_SHEET = { lengthIn: 96, widthIn: 48 } as const;

export interface CutPiece {
  readonly what: string;
  readonly lengthIn: number;
}

export interface CutStick {
  readonly stockLengthIn: number;
  /** Pieces with their places from the first end of the stick, in. */
  readonly cuts: readonly (CutPiece & { readonly atIn: number })[];
  /** Length left over behind the last kerf, in. */
  readonly offcutIn: number;
}

export interface SizeCutList {
  readonly size: LumberSize;
  readonly sticks: readonly CutStick[];
  /** Waste of the stock's length, saw kerf in it (a ratio). */
  readonly wasteRatio: number;
  /** "fewest sticks, proved", or how near the list comes to what is proved. */
  readonly found: string;
  /** Pieces longer than any stock, which must be made otherwise. */
  readonly tooLong: readonly CutPiece[];
}

export interface CutSheet {
  readonly lengthIn: number;
  readonly widthIn: number;
  /** Panels where they lie; the length runs along the sheet. */
  readonly pieces: readonly (SheetPlace & { readonly what: string })[];
  /** Cuts in the order of the work, and what is left over. */
  readonly cuts: readonly SheetCut[];
  readonly offcuts: readonly SheetOffcut[];
}

export interface CutList {
  readonly bySize: readonly SizeCutList[];
  readonly sheets: readonly CutSheet[];
  readonly sheetWasteRatio: number;
  /** "fewest sheets, proved", or how near the list comes to what is proved. */
  readonly sheetsFound: string;
}

/** Everything of a job's falsework cut from stock. */
export function cutList(job: Job, sticks: readonly BillLine[], panels: readonly BillPanel[]): CutList {
  const sizes = [...new Set(sticks.map(({ size }) => size))].sort();
  return {
    bySize: sizes.map((size) =>
      cutSize(
        job,
        size,
        sticks.filter((line) => line.size === size),
      ),
    ),
    ...cutPanels(job, panels),
  };
}

function cutSize(job: Job, size: LumberSize, lines: readonly BillLine[]): SizeCutList {
  const pieces = lines
    .flatMap(({ what, lengthIn, count }) => Array.from({ length: count }, () => ({ what, lengthIn })))
    .map((piece, i) => ({ ...piece, id: `${i}` }));
  const list = cutSticks({ pieces, stocks: stocksOf(job, size), kerfIn: job.forms.kerfIn });
  const sticks = list.sticks.map(({ stockLengthIn, cuts, offcutIn }) => ({
    stockLengthIn,
    cuts: cuts.map(({ id, lengthIn, atIn }) => ({ what: pieces[Number(id)]!.what, lengthIn, atIn })),
    offcutIn,
  }));
  const stockIn = sticks.reduce((sum, { stockLengthIn }) => sum + stockLengthIn, 0);
  const cutIn = sticks.reduce((sum, { cuts }) => cuts.reduce((own, { lengthIn }) => own + lengthIn, sum), 0);
  return {
    size,
    sticks,
    wasteRatio: stockIn > 0 ? 1 - cutIn / stockIn : 0,
    found: list.proof.words,
    tooLong: list.tooLong.map(({ what, lengthIn }) => ({ what, lengthIn })),
  };
}

/** The job's own lumber of a size, else the shipped lengths, of which nobody knows the price. */
function stocksOf(job: Job, size: LumberSize): StickStock[] {
  const own = lumberStock(job, size).map(({ id, lengthIn, price }) => ({ id, lengthIn: lengthIn!, price }));
  if (own.length > 0) return own;
  return SHIPPED_LENGTHS_IN.map((lengthIn) => ({ id: `${size}-${lengthIn}`, lengthIn, price: null }));
}

function sheetSize(job: Job): { readonly lengthIn: number; readonly widthIn: number } {
  const [own] = panelStock(job);
  return own === undefined ? SHIPPED_SHEET : { lengthIn: own.lengthIn!, widthIn: own.widthIn! };
}

/** Panels from sheets; none is turned, since its strength axis runs along the sheet. */
function cutPanels(
  job: Job,
  panels: readonly BillPanel[],
): Pick<CutList, 'sheets' | 'sheetWasteRatio' | 'sheetsFound'> {
  const size = sheetSize(job);
  const parts = panels
    .flatMap((panel) => partsOf(panel, size))
    .map((part, i) => ({ ...part, id: `${i}`, mayTurn: false }));
  const { sheets, proof } = cutSheets({ pieces: parts, sheet: size, kerfIn: job.forms.kerfIn });
  const usedIn2 = panels.reduce((sum, { lengthIn, widthIn }) => sum + lengthIn * widthIn, 0);
  return {
    sheets: sheets.map(({ pieces, cuts, offcuts }) => ({
      ...size,
      pieces: pieces.map(({ id, xIn, yIn, lengthIn, widthIn }) => ({
        what: parts[Number(id)]!.what,
        xIn,
        yIn,
        lengthIn,
        widthIn,
      })),
      cuts,
      offcuts,
    })),
    sheetWasteRatio: sheets.length > 0 ? 1 - usedIn2 / (sheets.length * size.lengthIn * size.widthIn) : 0,
    sheetsFound: proof.words,
  };
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
