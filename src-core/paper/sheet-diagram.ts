/** Cut diagrams of sheets: each sheet with its pieces and their sizes. */
import type { Figure, Mark } from '../figure';
import type { UnitSystem } from '../units';
import type { Board, Spot } from './board';
import { boardMarks, draw, newBoard, placeWords } from './board';
import { marksExtent } from './extent';
import { bareLength, dimensionNote } from './figure-words';
import { atLargestScale, finishedFigure } from './finish';
import { drawNotes } from './furniture';
import { inRows } from './in-rows';
import { areaMark, rectanglePoints, textMark } from './marks';
import { NAME_PT, PT_PER_IN, SMALL_PT } from './practice';
import type { PaperScale, PaperSize } from './scale';
import { PLAN_SCALES } from './scale';
import { wordsWidthIn } from './words-box';

/** A piece on its sheet. */
export interface DrawnSheetPiece {
  readonly label: string;
  /** Of its lower left corner, from the lower left corner of the sheet, in. */
  readonly xIn: number;
  readonly yIn: number;
  readonly widthIn: number;
  readonly depthIn: number;
}

/** A sheet as it is cut. */
export interface DrawnSheet {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly pieces: readonly DrawnSheetPiece[];
  /** How many are cut just so. */
  readonly count: number;
}

/** What a diagram is made of. */
export interface SheetDrawing {
  /** Kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly sheets: readonly DrawnSheet[];
  readonly system: UnitSystem;
}

/** Sheets that are cut alike drawn once, with how many; null where there are none. What no piece takes is shaded. */
export function sheetDiagram({ id, title, sheets, system }: SheetDrawing, room: PaperSize): Figure | null {
  const merged = mergedSheets(sheets);
  if (merged.length === 0) return null;
  const drawAt = (scale: PaperScale): Figure => {
    const parts = merged.map((sheet) => boardMarks(sheetBoard(sheet, scale.ratio, system)));
    const marks = inRows(parts, room.widthIn);
    return finishedFigure({ id, title, scaleWords: scale.words, words: sheetWords(title, merged, system) }, [
      ...marks,
      ...noteBelow(marks, system),
    ]);
  };
  return atLargestScale(PLAN_SCALES[system], room, drawAt);
}

function noteBelow(marks: readonly Mark[], system: UnitSystem): Mark[] {
  const { minX, maxX, maxY } = marksExtent(marks);
  const board = newBoard();
  drawNotes(
    board,
    [`${dimensionNote(system)} Shaded: what is left over.`],
    { x: minX, y: maxY + 0.1 },
    Math.max(maxX - minX, 2.5),
  );
  return boardMarks(board);
}

/** Sheets with the same pieces counted together, in the order in which they first come. */
function mergedSheets(sheets: readonly DrawnSheet[]): DrawnSheet[] {
  const merged = new Map<string, DrawnSheet>();
  for (const sheet of sheets) {
    const key = JSON.stringify([sheet.widthIn, sheet.depthIn, sheet.pieces]);
    const before = merged.get(key);
    merged.set(key, { ...sheet, count: sheet.count + (before?.count ?? 0) });
  }
  return [...merged.values()].filter(({ count }) => count > 0);
}

function sheetBoard(
  { widthIn, depthIn, pieces, count }: DrawnSheet,
  ratio: number,
  system: UnitSystem,
): Board {
  const board = newBoard();
  const boxOf = (piece: Omit<DrawnSheetPiece, 'label'>) =>
    rectanglePoints(
      piece.xIn * ratio,
      (depthIn - piece.yIn - piece.depthIn) * ratio,
      piece.widthIn * ratio,
      piece.depthIn * ratio,
    );
  const whole = boxOf({ xIn: 0, yIn: 0, widthIn, depthIn });
  draw(board, areaMark([whole], 'light', 'visible'));
  for (const piece of pieces) draw(board, areaMark([boxOf(piece)], 'paper', 'visible'));
  for (const piece of pieces) {
    const [a, , c] = boxOf(piece);
    const size = `${bareLength(piece.widthIn, system)} x ${bareLength(piece.depthIn, system)}`;
    inPiece(
      board,
      [piece.label, size],
      { x: (a!.x + c!.x) / 2, y: (a!.y + c!.y) / 2 },
      c!.x - a!.x,
      c!.y - a!.y,
    );
  }
  const size = `${bareLength(widthIn, system)} x ${bareLength(depthIn, system)}`;
  const { maxY } = marksExtent(boardMarks(board));
  const words = count > 1 ? `${count} sheets ${size}` : `Sheet ${size}`;
  draw(board, textMark(words, { x: 0, y: maxY + (NAME_PT * 1.3) / PT_PER_IN }, NAME_PT, { isBold: true }));
  return board;
}

/** White beside words in a piece, on paper, in. */
const PIECE_WHITE_IN = 0.06;

/** A label with its size below, level or turned; in one line on a leader where it does not fit. */
function inPiece(
  board: Board,
  [label, size]: readonly [string, string],
  centre: { readonly x: number; readonly y: number },
  widthIn: number,
  heightIn: number,
): void {
  const lineIn = (NAME_PT * 1.15) / PT_PER_IN;
  const wide = Math.max(wordsWidthIn(label, NAME_PT), wordsWidthIn(size, SMALL_PT)) + PIECE_WHITE_IN;
  const fitsLevel = wide <= widthIn && 2 * lineIn <= heightIn;
  const fitsTurned = wide <= heightIn && 2 * lineIn <= widthIn;
  if (fitsLevel || fitsTurned) {
    const turnDeg = fitsLevel ? 0 : -90;
    const step = fitsLevel ? { x: 0, y: lineIn / 2 } : { x: lineIn / 2, y: 0 };
    const spot = (sign: number): Spot => ({
      centre: { x: centre.x + sign * step.x, y: centre.y + sign * step.y },
      turnDeg,
      leaderTo: null,
      cost: 0,
    });
    placeWords(board, { words: label, sizePt: NAME_PT, isBold: true }, [spot(-1)], centre);
    placeWords(board, { words: size, sizePt: SMALL_PT }, [spot(1)], centre);
    return;
  }
  const spots = [0, -90].map(
    (turnDeg): Spot => ({ centre, turnDeg, leaderTo: null, cost: turnDeg === 0 ? 0 : 0.1 }),
  );
  const words = `${label}: ${size}`;
  const oneWide = wordsWidthIn(words, SMALL_PT) + PIECE_WHITE_IN;
  const fitting = spots.filter(({ turnDeg }) => oneWide <= (turnDeg === 0 ? widthIn : heightIn));
  placeWords(board, { words, sizePt: SMALL_PT }, fitting, centre);
}

function sheetWords(title: string, sheets: readonly DrawnSheet[], system: UnitSystem): string {
  const size = (width: number, depth: number) =>
    `${bareLength(width, system)} by ${bareLength(depth, system)}`;
  const each = sheets.map(({ count, widthIn, depthIn, pieces }) => {
    const parts = pieces.map((piece) => `${piece.label} ${size(piece.widthIn, piece.depthIn)}`);
    return `${count} of ${size(widthIn, depthIn)} cut to ${parts.join(', ')}`;
  });
  return `${title}: ${each.join('; ')}. ${dimensionNote(system)}`;
}
