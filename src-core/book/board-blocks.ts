/** Backing boards of one piece: how they are cut, marked and laid. */
import type { BackingBoards, BoardPart, ShapeCut } from '../boards';
import { boundingBox } from '../outline';
import type { Block } from '../sheet';
import { columns, list, paragraph, table } from './blocks';
import type { BookContext } from './context';
import { sheetFigures } from './cut-figures';
import type { PieceFacts } from './facts';
import { figureRoom } from './figure-room';
import { placesOf } from './place';
import { FIGURE_SHARES } from './practice';
import { counted, sentence } from './print';

export function boardBlocks(context: BookContext, { piece, takeoff }: PieceFacts, id: string): Block[] {
  const { boards } = takeoff;
  if (boards === null) return [];
  const { job, print, paper } = context;
  const { board, parts } = boards;
  const place = placesOf(job, piece);
  const size = `${print.length(board.lengthIn)} by ${print.length(board.widthIn)}`;
  return [
    ...sheetFigures(drawnBoards(boards), figureRoom(paper, FIGURE_SHARES.sheets), {
      id: `${id}-boards`,
      title: `Backing boards of ${piece.name}`,
      system: print.system,
      caption: `Backing boards of ${piece.name}, cut with the face up: ${counted(boards.boardCount, 'board')} of ${size}, ${print.length(board.thicknessIn)} thick.`,
    }),
    ...table(
      `${id}-boards-table`,
      'Board parts, and where they lie under the slab',
      columns(
        ['Part', 0.6],
        ['Left to right', 1.1, 'end'],
        ['Front to back', 1.1, 'end'],
        ['Its left edge from the left', 1.2, 'end'],
        ['Its front edge from the front', 1.2, 'end'],
        ['Write on it', 2],
        ['Its front edge on the board', 1.6],
      ),
      parts.map((part, k) => {
        const { minXIn, minYIn } = boundingBox(part.inPlan.outer);
        const { fromLeft, fromFront } = place({ xIn: minXIn, yIn: minYIn });
        return [
          partName(k),
          print.length(part.widthIn),
          print.length(part.depthIn),
          fromLeft,
          fromFront,
          part.mark === null ? 'nothing: a whole board' : `${part.mark.onFace}. ${part.mark.onFrontEdge}.`,
          part.mark === null ? '' : frontWords(part),
        ];
      }),
    ),
    ...cutBlocks(context, parts, id),
    paragraph(
      parts.length === 1
        ? 'One board, no seam.'
        : `Tape the seams, ${print.length(boards.tapeIn)} in all. ${boards.findings.map(({ words }) => sentence(words)).join(' ')}`,
    ),
    ...list(
      parts.some(({ mark, shapeCuts }) => mark !== null && shapeCuts.length > 0)
        ? ['Cut from the back, a part is drawn left for right; its front edge stays in front.']
        : [],
    ),
  ];
}

function partName(k: number): string {
  return `B${k + 1}`;
}

function drawnBoards({ board, boards, parts }: BackingBoards) {
  return boards.map((_, number) => ({
    widthIn: board.lengthIn,
    depthIn: board.widthIn,
    pieces: parts.flatMap((part, k) => {
      const { placed, widthIn, depthIn } = part;
      if (placed.board !== number) return [];
      const [alongIn, acrossIn] = placed.isTurned ? [depthIn, widthIn] : [widthIn, depthIn];
      return [{ label: partName(k), xIn: placed.xIn, yIn: placed.yIn, widthIn: alongIn, depthIn: acrossIn }];
    }),
    count: 1,
  }));
}

/** Where the front edge of a part lies on the board as it is drawn: a turned part has it on the right. */
function frontWords({ placed }: BoardPart): string {
  return placed.isTurned ? 'its right side on the drawing' : 'its lower side on the drawing';
}

/** What is sawn within the rectangles of the parts. */
function cutBlocks({ print }: BookContext, parts: readonly BoardPart[], id: string): Block[] {
  const rows = parts.flatMap(({ shapeCuts }, k) =>
    shapeCuts.map((cut) => [partName(k), cutName(cut), ...cutPlaces(cut, print.length)]),
  );
  return table(
    `${id}-board-cuts`,
    'Cuts within the parts, from the left and the front of each as it lies',
    columns(['Part', 0.6], ['Cut', 1.6], ['From', 2.2], ['To', 2.2], ['Length', 1, 'end']),
    rows,
  );
}

function cutName({ kind }: ShapeCut): string {
  return { level: 'left to right', upright: 'front to back', slant: 'aslant', curve: 'a curve' }[kind];
}

function cutPlaces({ points, lengthIn }: ShapeCut, length: (valueIn: number) => string): string[] {
  const at = ({ xIn, yIn }: { readonly xIn: number; readonly yIn: number }) =>
    `${length(xIn)}, ${length(yIn)}`;
  return [at(points[0]!), at(points.at(-1)!), length(lengthIn)];
}
