/** Parts cut from boards: which board each comes from, and the cuts in order. Offcuts are used again. */
import type { SheetCut, SheetOffcut } from '../cutting';
import { cutSheets } from '../cutting';
import type { LaidPart } from './board-parts';
import type { BoardStock } from './board-stock';

/** Where on its board a part is cut: from the board's left end and front side, in, turned a quarter or not. */
export interface Placed {
  /** Counted from 0. */
  readonly board: number;
  readonly xIn: number;
  readonly yIn: number;
  readonly isTurned: boolean;
}

/** One board: its cuts from edge to edge in order, and what is left of it. A whole board has none of either. */
export interface CutBoard {
  readonly cuts: readonly SheetCut[];
  readonly offcuts: readonly SheetOffcut[];
}

export interface BoardCutting {
  readonly boards: readonly CutBoard[];
  /** One a part, in the order given. */
  readonly placed: readonly Placed[];
  /** No cutting of these parts needs fewer boards. */
  readonly isProved: boolean;
}

/** Lengths of a part and of its place on the sheet agree within this, in. */
const AGREE_IN = 1e-5;

/** Cuts parts from the fewest boards, each from the rectangle round it. Boards have no grain, so a part may be turned. */
export function cutBoards(parts: readonly LaidPart[], board: BoardStock, kerfIn: number): BoardCutting {
  const cut = parts.flatMap((part, i) =>
    part.isFull ? [] : [{ id: String(i), lengthIn: part.widthIn, widthIn: part.depthIn, mayTurn: true }],
  );
  const sheet = { lengthIn: board.lengthIn, widthIn: board.widthIn };
  const list = cutSheets({ pieces: cut, sheet, kerfIn });
  if (list.tooLarge.length > 0)
    throw new Error(`Parts ${list.tooLarge.map(({ id }) => id)} are larger than a board`);
  const placed: Placed[] = [];
  list.sheets.forEach(({ pieces }, number) => {
    for (const { id, xIn, yIn, lengthIn } of pieces) {
      const isTurned = Math.abs(lengthIn - parts[Number(id)]!.widthIn) > AGREE_IN;
      placed[Number(id)] = { board: number, xIn, yIn, isTurned };
    }
  });
  const boards: CutBoard[] = list.sheets.map(({ cuts, offcuts }) => ({ cuts, offcuts }));
  parts.forEach((part, i) => {
    if (!part.isFull) return;
    const isTurned = Math.abs(part.widthIn - board.lengthIn) > AGREE_IN;
    placed[i] = { board: boards.length, xIn: 0, yIn: 0, isTurned };
    boards.push({ cuts: [], offcuts: [] });
  });
  return { boards, placed, isProved: list.proof.isProved };
}
