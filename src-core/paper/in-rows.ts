/** Small drawings arranged on one sheet. */
import type { Mark } from '../figure';
import { marksExtent, movedMark } from './extent';

/** White between them, in. */
const BETWEEN_IN = 0.3;

/** Drawings side by side, the next row below where a row is full. */
export function inRows(parts: readonly (readonly Mark[])[], widthIn: number): Mark[] {
  const marks: Mark[] = [];
  let [x, y, rowIn] = [0, 0, 0];
  for (const part of parts) {
    const { minX, minY, maxX, maxY } = marksExtent(part);
    if (x > 0 && x + maxX - minX > widthIn) {
      x = 0;
      y += rowIn + BETWEEN_IN;
      rowIn = 0;
    }
    marks.push(...part.map((mark) => movedMark(mark, { x: x - minX, y: y - minY })));
    x += maxX - minX + BETWEEN_IN;
    rowIn = Math.max(rowIn, maxY - minY);
  }
  return marks;
}
