/** Edge forms, backing boards and openings: what is cut, marked and set. */

import type { Block, Chapter } from '../sheet';
import { stripName } from '../takeoff';
import { heading, list, paragraph } from './blocks';
import { boardBlocks } from './board-blocks';
import type { BookContext } from './context';
import { stickFigures } from './cut-figures';
import { edgeFormBlocks } from './edge-form-blocks';
import { figureRoom } from './figure-room';
import { marksByPart } from './form-marks';
import { drawingName, namesWords } from './names';
import { openingBlocks } from './opening-blocks';
import { FIGURE_SHARES } from './practice';
import { counted } from './print';
import { steelCutBlocks } from './steel-cuts';

const FORM_IT = 'form-it';

export function formItChapter(context: BookContext): Chapter {
  const { facts } = context;
  return {
    id: FORM_IT,
    title: 'Form it, and cut the steel',
    startsPage: true,
    blocks: [
      paragraph(
        'Every strip has a mark: the number of its piece and F with its own. Write it on the strip as it is cut. Lengths are from long point to long point. The first end is where the edge begins on a walk round the plan with the slab to the left.',
      ),
      ...facts.pieces.flatMap((found, k) => {
        const id = `${FORM_IT}-${k + 1}`;
        return [
          heading(id, `${k + 1}: ${drawingName(found)}`),
          ...edgeFormBlocks(context, found, id),
          ...boardBlocks(context, found, id),
          ...openingBlocks(context, found, id),
        ];
      }),
      ...stripCuts(context),
      ...steelCutBlocks(context),
    ],
  };
}

/** Cut diagrams of every kind of strip, for all pieces and copies together. */
function stripCuts({ job, facts, paper, print }: BookContext): Block[] {
  const { lists, blocks, reuses } = facts.takeoff.formCuts;
  const marks = marksByPart(facts);
  const room = figureRoom(paper, FIGURE_SHARES.sticks);
  const markOf = (partId: string) => marks.get(partId) ?? partId;
  if (lists.length === 0) return [];
  return [
    heading(`${FORM_IT}-cuts`, 'Cut lists of the form strips'),
    paragraph(
      'For all pieces and copies together. Strips with a profile are cut square apart at their long points and mitred after; keep the slab face to one edge of the stick.',
    ),
    ...lists.flatMap(({ of, sticks, proof, notCut }, k) => [
      ...stickFigures(
        sticks.map(({ stockLengthIn, cuts, offcutIn }) => ({
          lengthIn: stockLengthIn,
          cuts: cuts.map(({ strip, atIn }) => ({
            label: markOf(strip.partId),
            lengthIn: strip.longIn,
            atIn,
          })),
          offcutIn: Math.max(0, offcutIn),
          count: 1,
        })),
        room,
        {
          id: `${FORM_IT}-strips-${k + 1}`,
          title: stripName(job, of),
          system: print.system,
          caption: `${stripName(job, of)}: ${counted(sticks.length, 'stick')}; ${proof.words}.`,
        },
      ),
      ...list(
        notCut.map(
          ({ partId, longIn }) =>
            `${markOf(partId)}, ${print.length(longIn)}, comes from no stick in stock: make it up on site.`,
        ),
      ),
    ]),
    ...list([
      ...(blocks.length === 0
        ? []
        : [`Shaped from blocks: ${namesWords([...new Set(blocks.map(({ partId }) => markOf(partId)))])}.`]),
      ...reuses.map(
        ({ fromId, toId, strippedDay }) =>
          `${markOf(partOf(toId))} is ${markOf(partOf(fromId))} used again: it is free from day ${strippedDay}.`,
      ),
    ]),
  ];
}

/** Strips of later copies carry the id of their part and the number of the copy. */
function partOf(stripId: string): string {
  return stripId.replace(/\/copy\/\d+$/, '');
}
