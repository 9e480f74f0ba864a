/** A part as it lies, as it is drawn on its board, and as it is drawn when it is cut from the back. */
import { mirroredPoints } from '../openings';
import type { Point, Region, Segment } from '../outline';
import type { LaidPart } from './board-parts';
import type { Placed } from './cut-boards';

export interface BoardMark {
  /** Written on the face that lies up, and along the edge that lies to the front. */
  readonly onFace: string;
  readonly onFrontEdge: string;
  /** That edge on the board as it is cut face up, and its length, in. */
  readonly frontEdge: Segment;
  readonly frontEdgeIn: number;
  /** What to draw when the board is cut from its back: left for right, the front edge still in front. From the part's own front left. */
  readonly faceDown: Region;
}

/** The part as it lies, measured from the front left corner of the rectangle round it, in. Openings run clockwise. */
export function partShape(part: LaidPart): Region {
  const move = (points: readonly Point[]) =>
    points.map(({ xIn, yIn }) => ({ xIn: xIn - part.minXIn, yIn: yIn - part.minYIn }));
  return { outer: move(part.outer), holes: part.holes.map(move) };
}

/** The part on its board, face up, from the board's left end and front side, in. A turned part is turned, never mirrored. */
export function shapeOnBoard(shape: Region, depthIn: number, placed: Placed): Region {
  const place = (points: readonly Point[]) => points.map((point) => onBoard(point, depthIn, placed));
  return { outer: place(shape.outer), holes: shape.holes.map(place) };
}

/** The marks of a part that is cut. */
export function boardMark(part: LaidPart, shape: Region, placed: Placed): BoardMark {
  const middleIn = part.widthIn / 2;
  const flip = (points: readonly Point[]) => mirroredPoints(points, middleIn);
  return {
    onFace: 'This face up',
    onFrontEdge: 'This edge to the front',
    frontEdge: {
      a: onBoard({ xIn: 0, yIn: 0 }, part.depthIn, placed),
      b: onBoard({ xIn: part.widthIn, yIn: 0 }, part.depthIn, placed),
    },
    frontEdgeIn: part.widthIn,
    faceDown: { outer: flip(shape.outer), holes: shape.holes.map(flip) },
  };
}

/** A quarter turn counter-clockwise brings (x, y) to (depth - y, x). */
function onBoard({ xIn, yIn }: Point, depthIn: number, placed: Placed): Point {
  const [x, y] = placed.isTurned ? [depthIn - yIn, xIn] : [xIn, yIn];
  return { xIn: placed.xIn + x, yIn: placed.yIn + y };
}
