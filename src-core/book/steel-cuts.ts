/** Mesh of all pieces cut from sheets, and bars from lengths. */
import type { Block } from '../sheet';
import { heading, list, paragraph } from './blocks';
import type { BookContext } from './context';
import { sheetFigures, stickFigures } from './cut-figures';
import { figureRoom } from './figure-room';
import { drawingNumber } from './names';
import { FIGURE_SHARES } from './practice';
import { counted } from './print';

/** Cut diagrams of mesh and bars; nothing where none is cut. */
export function steelCutBlocks({ facts, paper, print }: BookContext): Block[] {
  const { meshCuts, barCuts } = facts.takeoff;
  if (meshCuts.length + barCuts.length === 0) return [];
  const { system } = print;
  const markOf = ({ pieceId, label }: { readonly pieceId: string; readonly label: string }) =>
    `${drawingNumber(facts, pieceId)}-${label}`;
  return [
    heading('steel-cuts', 'Cut lists of mesh and bars'),
    paragraph(
      'For all pieces and copies together. A mark is the number of the piece and the mark on its plan of steel; T is a trimmer.',
    ),
    ...meshCuts.flatMap(({ mesh, stock, list: cuts, pieces }, k) => {
      const name = mesh.label ?? 'Mesh';
      const markById = new Map(pieces.map((piece) => [piece.id, markOf(piece)]));
      return [
        ...sheetFigures(
          cuts.sheets.map((sheet) => ({
            widthIn: stock.lengthIn,
            depthIn: stock.widthIn,
            pieces: sheet.pieces.map(({ id, xIn, yIn, lengthIn, widthIn }) => ({
              label: markById.get(id)!,
              xIn,
              yIn,
              widthIn: lengthIn,
              depthIn: widthIn,
            })),
            count: 1,
          })),
          figureRoom(paper, FIGURE_SHARES.sheets),
          {
            id: `mesh-cuts-${k + 1}`,
            title: `${name}, cut from sheets`,
            system,
            caption: `${name}: ${counted(cuts.sheets.length, 'sheet')}; ${cuts.proof.words}.`,
          },
        ),
        ...list(cuts.tooLarge.map((piece) => `${markOf(piece)} is larger than any sheet.`)),
      ];
    }),
    ...barCuts.flatMap(({ barIn, list: cuts, pieces }, k) => {
      const markById = new Map(pieces.map((piece) => [piece.id, markOf(piece)]));
      return [
        ...stickFigures(
          cuts.sticks.map(({ stockLengthIn, cuts: own, offcutIn }) => ({
            lengthIn: stockLengthIn,
            cuts: own.map(({ id, lengthIn, atIn }) => ({ label: markById.get(id)!, lengthIn, atIn })),
            offcutIn,
            count: 1,
          })),
          figureRoom(paper, FIGURE_SHARES.sticks),
          {
            id: `bar-cuts-${k + 1}`,
            title: `Bars of ${print.length(barIn)}, cut from lengths`,
            system,
            caption: `Bars of ${print.length(barIn)}: ${counted(cuts.sticks.length, 'length')}; ${cuts.proof.words}.`,
          },
        ),
        ...list(
          cuts.tooLong.map(
            (piece) => `${markOf(piece)}, ${print.length(piece.lengthIn)}, is longer than any bar in stock.`,
          ),
        ),
      ];
    }),
  ];
}
