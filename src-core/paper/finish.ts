/** Marks made a figure: moved to the corner of their paper, and the largest scale at which they fit their room. */
import type { Figure, Mark } from '../figure';
import { marksExtent, movedMark } from './extent';
import { FIGURE_MARGIN_IN } from './practice';
import type { PaperScale, PaperSize } from './scale';

/** What a figure says of itself. */
export interface FigureHead {
  readonly id: string;
  readonly title: string;
  readonly scaleWords: string | null;
  readonly words: string;
}

/** A figure just as large as its marks and a margin round them. */
export function finishedFigure(head: FigureHead, marks: readonly Mark[]): Figure {
  const { minX, minY, maxX, maxY } = marksExtent(marks);
  const by = { x: FIGURE_MARGIN_IN - minX, y: FIGURE_MARGIN_IN - minY };
  return {
    ...head,
    widthIn: maxX - minX + 2 * FIGURE_MARGIN_IN,
    heightIn: maxY - minY + 2 * FIGURE_MARGIN_IN,
    marks: marks.map((mark) => movedMark(mark, by)),
  };
}

/** The drawing at the largest of some scales at which it fits its room with all its words; at the smallest where none fits. */
export function atLargestScale(
  scales: readonly PaperScale[],
  room: PaperSize,
  draw: (scale: PaperScale) => Figure,
): Figure {
  let figure: Figure | null = null;
  for (const scale of scales) {
    figure = draw(scale);
    if (figure.widthIn <= room.widthIn && figure.heightIn <= room.heightIn) return figure;
  }
  if (figure === null) throw new Error('A drawing needs a scale');
  return figure;
}
