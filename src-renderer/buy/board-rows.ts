/** Backing boards of a piece: the plan of them, each board as it is cut, and the cuts in order. */
import type { BackingBoards, BoardFinding, BoardPart, ShapeCut } from '../../src-core/boards';
import type { Point } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import { printLength, type UnitSystem } from '../../src-core/units';
import type { Fitted, PlacePx } from './fit-to-width';
import { fitToWidth, regionPath } from './fit-to-width';

export interface DrawnPart {
  readonly key: string;
  /** Counted over the piece from 1. */
  readonly number: string;
  readonly outline: string;
  readonly middle: PlacePx;
  readonly isFull: boolean;
  /** The edge that lies to the front, on its board; null in the plan and for a whole board. */
  readonly frontEdge: DrawnLine | null;
}

export interface DrawnLine {
  readonly key: string;
  readonly from: PlacePx;
  readonly to: PlacePx;
}

export interface BoardPlan {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly parts: readonly DrawnPart[];
  readonly seams: readonly (DrawnLine & { readonly isFaulty: boolean })[];
}

const PLAN_ROOM = { mostHeightPx: 220, marginPx: 6 } as const;
const BOARD_ROOM = { mostHeightPx: 190, marginPx: 6 } as const;

/** The boards under the slab with their seams; null while there is no width. */
export function boardPlan({ parts, seams }: BackingBoards, widthPx: number): BoardPlan | null {
  const box = boundingBox(parts.flatMap(({ inPlan }) => inPlan.outer));
  const fitted = fitToWidth(box, { ...PLAN_ROOM, widthPx });
  if (fitted === null) return null;
  return {
    widthPx,
    heightPx: fitted.heightPx,
    parts: parts.map((part, i) => ({
      ...drawnPart(part, i, part.inPlan.outer, fitted),
      outline: regionPath(part.inPlan, fitted),
      frontEdge: null,
    })),
    seams: seams.map(({ id, a, b, faults }) => ({
      key: id,
      from: fitted.toPx(a),
      to: fitted.toPx(b),
      isFaulty: faults.length > 0,
    })),
  };
}

export interface CutBoardDrawing {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly board: string;
  readonly parts: readonly DrawnPart[];
  readonly cuts: readonly (DrawnLine & { readonly number: string })[];
}

/** One board as it is cut, face up, its length across the panel; null while there is no width. */
export function cutBoardDrawing(
  { board, boards, parts }: BackingBoards,
  index: number,
  widthPx: number,
): CutBoardDrawing | null {
  const corners: readonly Point[] = [
    { xIn: 0, yIn: 0 },
    { xIn: board.lengthIn, yIn: 0 },
    { xIn: board.lengthIn, yIn: board.widthIn },
    { xIn: 0, yIn: board.widthIn },
  ];
  const fitted = fitToWidth(boundingBox(corners), { ...BOARD_ROOM, widthPx });
  const cut = boards[index];
  if (fitted === null || cut === undefined) return null;
  return {
    widthPx,
    heightPx: fitted.heightPx,
    board: regionPath({ outer: corners, holes: [] }, fitted),
    parts: parts.flatMap((part, i) =>
      part.placed.board === index
        ? [
            {
              ...drawnPart(part, i, part.onBoard.outer, fitted),
              outline: regionPath(part.onBoard, fitted),
              frontEdge:
                part.mark === null
                  ? null
                  : {
                      key: part.id,
                      from: fitted.toPx(part.mark.frontEdge.a),
                      to: fitted.toPx(part.mark.frontEdge.b),
                    },
            },
          ]
        : [],
    ),
    cuts: cut.cuts.map(({ number, from, to }) => ({
      key: String(number),
      number: String(number),
      from: fitted.toPx(from),
      to: fitted.toPx(to),
    })),
  };
}

function drawnPart(
  { id, isFull }: BoardPart,
  index: number,
  outer: readonly Point[],
  { toPx }: Fitted,
): Pick<DrawnPart, 'key' | 'number' | 'middle' | 'isFull'> {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(outer);
  return {
    key: id,
    number: String(index + 1),
    middle: toPx({ xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 }),
    isFull,
  };
}

export interface PartRow {
  readonly key: string;
  readonly number: string;
  /** "36 in by 25-1/2 in": along its front, and from the front to the back. */
  readonly size: string;
  /** What is sawn within its rectangle, in order. */
  readonly cuts: readonly string[];
}

export interface BoardRow {
  readonly key: string;
  /** "Board 2". */
  readonly title: string;
  readonly index: number;
  readonly isWhole: boolean;
  /** Cuts from edge to edge, in order. */
  readonly cuts: readonly { readonly key: string; readonly words: string }[];
  readonly parts: readonly PartRow[];
  /** "24 in by 11 in, ..." or empty. */
  readonly left: string;
}

/** Every board, in the order in which parts name them. */
export function boardRows({ boards, parts }: BackingBoards, system: UnitSystem): BoardRow[] {
  const length = (valueIn: number) => printLength(valueIn, { system });
  return boards.map(({ cuts, offcuts }, index) => {
    const own = parts.flatMap((part, i) => (part.placed.board === index ? [partRow(part, i, length)] : []));
    return {
      key: String(index),
      title: `Board ${index + 1}`,
      index,
      isWhole: cuts.length === 0 && own.every(({ cuts: sawn }) => sawn.length === 0),
      cuts: cuts.map(({ number, part, runs, atIn }) => ({
        key: String(number),
        words: `${part === 'sheet' ? 'The board' : `Part ${part}`} ${runs === 'across' ? 'across' : 'lengthways'} at ${length(atIn)}`,
      })),
      parts: own,
      left: offcuts.map(({ lengthIn, widthIn }) => `${length(lengthIn)} by ${length(widthIn)}`).join(', '),
    };
  });
}

function partRow(part: BoardPart, index: number, length: (valueIn: number) => string): PartRow {
  return {
    key: part.id,
    number: String(index + 1),
    size: `${length(part.widthIn)} by ${length(part.depthIn)}`,
    cuts: part.shapeCuts.map((cut) => shapeCutWords(cut, length)),
  };
}

function shapeCutWords({ kind, lengthIn, offsetIn }: ShapeCut, length: (valueIn: number) => string): string {
  switch (kind) {
    case 'level':
      return `${length(lengthIn)} from left to right, ${length(offsetIn ?? 0)} from its front`;
    case 'upright':
      return `${length(lengthIn)} from front to back, ${length(offsetIn ?? 0)} from its left`;
    case 'slant':
      return `${length(lengthIn)} aslant`;
    case 'curve':
      return `a curve of ${length(lengthIn)}`;
  }
}

/** "4 boards of 60 in by 36 in, 1/2 in thick; 31 % is offcut." */
export function boardWords({ board, boardCount, wasteRatio }: BackingBoards, system: UnitSystem): string {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const count = boardCount === 1 ? '1 board' : `${boardCount} boards`;
  const size = `${length(board.lengthIn)} by ${length(board.widthIn)}, ${length(board.thicknessIn)} thick`;
  return `${count} of ${size}; ${Math.round(wasteRatio * 100)} % is offcut.`;
}

/** Findings that ask for attention first. */
export function boardFindings({ findings }: BackingBoards): BoardFinding[] {
  return [...findings].sort((a, b) => Number(a.level === 'ok') - Number(b.level === 'ok'));
}
