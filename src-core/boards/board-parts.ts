/** What of each board lies under the slab. */
import type { Point, Region } from '../outline';
import {
  boundingBox,
  intersectRegions,
  isPointInPolygon,
  loopsAreaIn2,
  polygonAreaIn2,
  signedAreaIn2,
} from '../outline';
import type { BoardStock } from './board-stock';
import type { BoardPlace } from './layout';
import { SAME_IN } from './practice';

/** One part of a board, in the frame of the layout. */
export interface LaidPart {
  readonly outer: readonly Point[];
  /** Openings wholly inside it, clockwise. */
  readonly holes: readonly (readonly Point[])[];
  readonly areaIn2: number;
  /** The rectangle that it is cut from, in. */
  readonly minXIn: number;
  readonly minYIn: number;
  readonly widthIn: number;
  readonly depthIn: number;
  /** The whole board, uncut. */
  readonly isFull: boolean;
}

/** The parts of every board, from the front to the back, and of those alike from left to right. */
export function laidParts(places: readonly BoardPlace[], region: Region, board: BoardStock): LaidPart[] {
  return places
    .flatMap((place) => partsIn(place, region, board))
    .sort((p, q) => (Math.abs(p.minYIn - q.minYIn) < SAME_IN ? p.minXIn - q.minXIn : p.minYIn - q.minYIn));
}

function partsIn(
  { minXIn, maxXIn, minYIn, maxYIn }: BoardPlace,
  region: Region,
  board: BoardStock,
): LaidPart[] {
  const rectangle = [
    { xIn: minXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: maxYIn },
    { xIn: minXIn, yIn: maxYIn },
  ];
  const loops = intersectRegions(region, { outer: rectangle, holes: [] });
  const outers = loops.filter((loop) => signedAreaIn2(loop) > SAME_IN);
  const openings = loops.filter((loop) => signedAreaIn2(loop) < 0);
  return outers.map((outer): LaidPart => {
    const holes = openings.filter((hole) => isPointInPolygon(hole[0]!, outer));
    const areaIn2 = loopsAreaIn2([outer, ...holes]);
    const box = boundingBox(outer);
    return {
      outer,
      holes,
      areaIn2,
      minXIn: box.minXIn,
      minYIn: box.minYIn,
      widthIn: box.maxXIn - box.minXIn,
      depthIn: box.maxYIn - box.minYIn,
      isFull: Math.abs(areaIn2 - board.lengthIn * board.widthIn) < SAME_IN * polygonAreaIn2(rectangle),
    };
  });
}
