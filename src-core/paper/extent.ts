/** How far marks reach on paper. */
import type { Mark, PaperPoint } from '../figure';
import { boxOfText, cornersOfBox } from './words-box';

/** An upright rectangle on paper, in. */
export interface PaperBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Points that bound a mark; of words the corners of the room that they take. */
export function pointsOfMark(mark: Mark): readonly PaperPoint[] {
  switch (mark.kind) {
    case 'line':
      return [mark.from, mark.to];
    case 'run':
      return mark.points;
    case 'area':
      return mark.loops.flat();
    case 'circle': {
      const { centre, radius } = mark;
      return [
        { x: centre.x - radius, y: centre.y - radius },
        { x: centre.x + radius, y: centre.y + radius },
      ];
    }
    case 'text':
      return cornersOfBox(boxOfText(mark));
  }
}

/** The upright rectangle round all marks; a point at the corner where there are none. */
export function marksExtent(marks: readonly Mark[]): PaperBox {
  const points = marks.flatMap(pointsOfMark);
  if (points.length === 0) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/** A mark moved over the paper. */
export function movedMark(mark: Mark, by: PaperPoint): Mark {
  const to = ({ x, y }: PaperPoint): PaperPoint => ({ x: x + by.x, y: y + by.y });
  switch (mark.kind) {
    case 'line':
      return { ...mark, from: to(mark.from), to: to(mark.to) };
    case 'run':
      return { ...mark, points: mark.points.map(to) };
    case 'area':
      return { ...mark, loops: mark.loops.map((loop) => loop.map(to)) };
    case 'circle':
      return { ...mark, centre: to(mark.centre) };
    case 'text':
      return { ...mark, at: to(mark.at) };
  }
}
