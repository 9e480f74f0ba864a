/** Room for drawings on a page. */

import type { Paper } from '../figure';
import type { PaperSize } from '../paper';
import { textArea } from '../sheet';
import { LEAST_FIGURE_IN } from './practice';

const PT_PER_IN = 72;

/** The width of the text, and a share of the height of the page. */
export function figureRoom(paper: Paper, share: number): PaperSize {
  const { widthPt, roomPt } = textArea(paper);
  return {
    widthIn: widthPt / PT_PER_IN,
    heightIn: Math.max(LEAST_FIGURE_IN, (roomPt * share) / PT_PER_IN),
  };
}
