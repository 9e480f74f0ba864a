/** Lumber and panels of all falsework together, cut from stock: the list that is bought. */
import { CUTTING_METHOD } from '../falsework';
import type { Block } from '../sheet';
import { heading, list, paragraph } from './blocks';
import type { BookContext } from './context';
import { sheetFigures, stickFigures } from './cut-figures';
import { figureRoom } from './figure-room';
import { FIGURE_SHARES } from './practice';
import { counted } from './print';

/** Every panel of a deck by its short name, as most are too small for more. */
const PANEL = 'panel';

/** Cut diagrams of every size of lumber, and of the deck panels; nothing where nothing is bought. */
export function lumberBlocks({ facts, paper, print }: BookContext): Block[] {
  const cuts = facts.takeoff.falseworkCuts;
  if (cuts === null || cuts.bySize.length + cuts.sheets.length === 0) return [];
  const room = figureRoom(paper, FIGURE_SHARES.sticks);
  const { system } = print;
  const percent = (ratio: number) => `${Math.round(100 * ratio)} %`;
  return [
    heading('hold-up-cuts', 'Cut lists of the falsework'),
    paragraph(
      `For all pieces together; what is used again from an earlier pour is not cut twice. Legs are cut last, to the lengths of the tables of legs. How: ${CUTTING_METHOD}.`,
    ),
    ...cuts.bySize.flatMap(({ size, sticks, wasteRatio, found, tooLong }) => [
      ...stickFigures(
        sticks.map(({ stockLengthIn, cuts: own, offcutIn }) => ({
          lengthIn: stockLengthIn,
          cuts: own.map(({ what, lengthIn, atIn }) => ({ label: what, lengthIn, atIn })),
          offcutIn,
          count: 1,
        })),
        room,
        {
          id: `hold-up-lumber-${size}`,
          title: `Falsework, ${size}`,
          system,
          caption: `${size}: ${counted(sticks.length, 'stick')}, ${percent(wasteRatio)} left over; ${found}.`,
        },
      ),
      ...list(
        tooLong.map(
          ({ what, lengthIn }) =>
            `A ${what} of ${print.length(lengthIn)} is longer than any stock: find a longer stick, or make the section smaller.`,
        ),
      ),
    ]),
    ...sheetFigures(
      cuts.sheets.map(({ lengthIn, widthIn, pieces }) => ({
        widthIn: lengthIn,
        depthIn: widthIn,
        pieces: pieces.map((piece) => ({
          label: PANEL,
          xIn: piece.xIn,
          yIn: piece.yIn,
          widthIn: piece.lengthIn,
          depthIn: piece.widthIn,
        })),
        count: 1,
      })),
      figureRoom(paper, FIGURE_SHARES.sheets),
      {
        id: 'hold-up-panels',
        title: 'Deck panels',
        system,
        caption: `Deck panels: ${counted(cuts.sheets.length, 'sheet')}, ${percent(cuts.sheetWasteRatio)} left over; ${cuts.sheetsFound}. The strength axis runs along the sheet.`,
      },
    ),
  ];
}
