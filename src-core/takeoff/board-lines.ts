/** Backing boards by the stock that they come from. */
import type { BoardStock } from '../boards';
import type { Job } from '../job';
import { printLength } from '../units';
import { CUT_BY_LIST, listLine } from './list-line';
import type { PieceTakeoff } from './piece-takeoff';
import { sourceOf } from './sources';
import { priceOfStock } from './stock-prices';
import type { ListLine } from './types';
import { counted, sheetWords } from './words';

/** Boards of one stock, for every copy of every piece. */
export interface BoardsBought {
  readonly id: string;
  readonly board: BoardStock;
  readonly count: number;
  readonly pieceIds: readonly string[];
}

/** Each piece is laid and cut by itself, so that its drawing of boards holds; every copy takes as many. */
export function boardsByStock(pieces: readonly PieceTakeoff[]): BoardsBought[] {
  const found = new Map<string, BoardsBought>();
  for (const { pieceId, copies, boards } of pieces) {
    if (boards === null) continue;
    const id = boardId(boards.board);
    const known = found.get(id);
    found.set(id, {
      id,
      board: boards.board,
      count: (known?.count ?? 0) + copies * boards.boardCount,
      pieceIds: [...(known?.pieceIds ?? []), pieceId],
    });
  }
  return [...found.values()];
}

function boardId({ lengthIn, widthIn, thicknessIn }: BoardStock): string {
  return `board/${lengthIn}x${widthIn}x${thicknessIn}`;
}

/** A line for each stock of boards. */
export function boardLines(
  job: Job,
  pieces: readonly PieceTakeoff[],
  bought: readonly BoardsBought[],
): ListLine[] {
  const { shownIn: system } = job;
  return bought.flatMap(({ id, board, count, pieceIds }) =>
    listLine(
      {
        id,
        group: 'timber-yard',
        name: `Backing board, ${printLength(board.thicknessIn, { system })}`,
        unit: 'in2',
        sources: pieces
          .filter(({ pieceId }) => pieceIds.includes(pieceId))
          .flatMap((piece) =>
            piece.boards!.parts.flatMap((part, i) =>
              sourceOf(job, piece, part, part.areaIn2, `board part ${i + 1}`),
            ),
          ),
        waste: CUT_BY_LIST,
        buy: count,
        buyWords: `${counted(count, 'board', 'boards')} of ${sheetWords(board.lengthIn, board.widthIn, system)}`,
        price: priceOfStock(job, board.stockId),
      },
      system,
    ),
  );
}
