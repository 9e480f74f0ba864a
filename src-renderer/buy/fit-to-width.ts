/** A plan drawn to the width of a panel: right is to the right, the front at the bottom. */
import type { BoundingBox, Point, Region } from '../../src-core/outline';

export interface PlacePx {
  readonly x: number;
  readonly y: number;
}

export interface Fitted {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerIn: number;
  readonly toPx: (point: Point) => PlacePx;
}

export interface Room {
  readonly widthPx: number;
  /** The drawing becomes narrower rather than higher than this. */
  readonly mostHeightPx: number;
  /** Left free all round. */
  readonly marginPx: number;
}

/** What lies in a box, as large as the room takes it and in the middle; null while the room has no width. */
export function fitToWidth(box: BoundingBox, { widthPx, mostHeightPx, marginPx }: Room): Fitted | null {
  if (widthPx <= 2 * marginPx) return null;
  const [acrossIn, deepIn] = [box.maxXIn - box.minXIn, box.maxYIn - box.minYIn];
  const pxPerIn = Math.min((widthPx - 2 * marginPx) / acrossIn, (mostHeightPx - 2 * marginPx) / deepIn);
  const leftPx = (widthPx - acrossIn * pxPerIn) / 2;
  return {
    widthPx,
    heightPx: deepIn * pxPerIn + 2 * marginPx,
    pxPerIn,
    toPx: ({ xIn, yIn }) => ({
      x: leftPx + (xIn - box.minXIn) * pxPerIn,
      y: marginPx + (box.maxYIn - yIn) * pxPerIn,
    }),
  };
}

/** A closed loop as the data of an SVG path. */
export function loopPath(places: readonly PlacePx[]): string {
  const line = places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`);
  return `${line.join('')}Z`;
}

/** A region with its openings, one path; fill it by the even-odd rule. */
export function regionPath({ outer, holes }: Region, { toPx }: Fitted): string {
  return [outer, ...holes].map((loop) => loopPath(loop.map(toPx))).join('');
}
