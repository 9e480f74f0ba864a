/** The chapter of one drawing: plan, sections, supports, steel, amounts, verdict. */
import { edgeSections, overhangSection, piecePlan } from '../paper';
import type { Block, Chapter } from '../sheet';
import { drawing, heading, paragraph } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';
import { figureRoom } from './figure-room';
import { castingWords, drawingName, pieceChapterId } from './names';
import { amountBlocks } from './piece-amounts';
import { steelBlocks } from './piece-steel';
import { supportBlocks } from './piece-supports';
import { pieceVerdicts, verdictBlocks } from './piece-verdict';
import { FIGURE_SHARES } from './practice';

/** The chapter of the k-th drawing. */
export function pieceChapter(context: BookContext, found: PieceFacts, k: number): Chapter {
  const id = pieceChapterId(k);
  const castings = castingWords(found.alike);
  return {
    id,
    title: `Piece ${k + 1}: ${drawingName(found)}`,
    startsPage: true,
    blocks: [
      ...(castings === null ? [] : [paragraph(castings)]),
      { kind: 'verdicts', rows: pieceVerdicts(context, found) },
      ...planBlocks(context, found, id),
      ...amountBlocks(context, found, id),
      ...sectionBlocks(context, found, id),
      ...supportBlocks(context, found.piece, id),
      ...steelBlocks(context, found, id),
      ...verdictBlocks(context, found, id),
    ],
  };
}

function planBlocks({ job, paper }: BookContext, { piece }: PieceFacts, id: string): Block[] {
  const plan = piecePlan(job, piece, figureRoom(paper, FIGURE_SHARES.plan));
  return [
    heading(`${id}-plan`, 'Plan'),
    ...(plan === null
      ? [paragraph('Its outline cannot be built as drawn: mend it, and print a new book.')]
      : []),
    ...drawing(`${id}-plan-figure`, plan, `Plan of ${piece.name}, seen from above.`),
  ];
}

function sectionBlocks({ job, paper }: BookContext, { piece }: PieceFacts, id: string): Block[] {
  const overhang = overhangSection(job, piece, figureRoom(paper, FIGURE_SHARES.overhang));
  return [
    heading(`${id}-sections`, 'Sections'),
    ...drawing(
      `${id}-edges-figure`,
      edgeSections(job, piece, figureRoom(paper, FIGURE_SHARES.sections)),
      `Edges of ${piece.name}.`,
    ),
    ...drawing(`${id}-overhang-figure`, overhang, `Across ${piece.name} at its longest overhang.`),
  ];
}
