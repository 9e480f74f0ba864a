/** Dimensions on the screen: where their lines and their figures go, and which figures have room. */
import type { Dimension } from '../../src-core/drawing';
import type { Frame, Pixel } from './frame';
import { toPixel } from './frame';

export interface PlacedDimension {
  readonly dimension: Dimension;
  readonly text: string;
  /** Ends of the dimension line. */
  readonly from: Pixel;
  readonly to: Pixel;
  /** Lines from what is measured out to the dimension line; none where it is measured on the spot. */
  readonly witness: readonly (readonly [Pixel, Pixel])[];
  /** Middle of the figure. */
  readonly at: Pixel;
  /** Turn of the figure on the screen, clockwise, so that it reads from below or from the right. */
  readonly turnDeg: number;
  /** False where the figure would cover another; its line stays. */
  readonly hasRoom: boolean;
}

const FIRST_ROW_PX = 26;
const ROW_PX = 26;
const WITNESS_GAP_PX = 5;
const WITNESS_PAST_PX = 5;
const CHARACTER_PX = 7;
const FIGURE_HEIGHT_PX = 18;
const FIGURE_SIDE_PX = 6;
/** Shorter than this on the screen a dimension is not drawn at all. */
const LEAST_LINE_PX = 4;

/**
 * Places dimensions, those that come first having the first right to a place. A figure breaks its line where it fits
 * there, else it stands beyond the line.
 */
export function placeDimensions(
  frame: Frame,
  dimensions: readonly Dimension[],
  print: (dimension: Dimension) => string,
): PlacedDimension[] {
  const taken: Box[] = [];
  return dimensions.flatMap((dimension) => {
    const placed = placeOne(frame, dimension, print(dimension));
    if (Math.hypot(placed.to.xPx - placed.from.xPx, placed.to.yPx - placed.from.yPx) < LEAST_LINE_PX)
      return [];
    const box = boxOf(placed);
    const hasRoom = !taken.some((other) => overlap(box, other));
    if (hasRoom) taken.push(box);
    return [{ ...placed, hasRoom }];
  });
}

type Placed = Omit<PlacedDimension, 'hasRoom'>;

function placeOne(frame: Frame, dimension: Dimension, text: string): Placed {
  const a = toPixel(frame, dimension.from);
  const b = toPixel(frame, dimension.to);
  return dimension.place.kind === 'on'
    ? placeOnTheSpot(dimension, text, a, b)
    : placeBeside(dimension, text, a, b, dimension.place);
}

function placeBeside(
  dimension: Dimension,
  text: string,
  a: Pixel,
  b: Pixel,
  place: Extract<Dimension['place'], { kind: 'beside' }>,
): Placed {
  const out = (p: Pixel, byPx: number): Pixel => ({
    xPx: p.xPx + place.outward.x * byPx,
    yPx: p.yPx - place.outward.y * byPx,
  });
  const offPx = FIRST_ROW_PX + place.row * ROW_PX;
  const from = out(a, offPx);
  const to = out(b, offPx);
  const middle = midway(from, to);
  return {
    dimension,
    text,
    from,
    to,
    witness: [a, b].map((p) => [out(p, WITNESS_GAP_PX), out(p, offPx + WITNESS_PAST_PX)]),
    at: fits(text, from, to) ? middle : out(middle, FIGURE_HEIGHT_PX),
    turnDeg: readable(from, to),
  };
}

/** Where the line is too short the figure stands level, to its right or above it. */
function placeOnTheSpot(dimension: Dimension, text: string, from: Pixel, to: Pixel): Placed {
  const middle = midway(from, to);
  const base = { dimension, text, from, to, witness: [] };
  if (fits(text, from, to)) return { ...base, at: middle, turnDeg: readable(from, to) };
  const isUpright = Math.abs(to.yPx - from.yPx) > Math.abs(to.xPx - from.xPx);
  const at = isUpright
    ? { xPx: middle.xPx + widthOf(text) / 2 + FIGURE_SIDE_PX, yPx: middle.yPx }
    : { xPx: middle.xPx, yPx: middle.yPx - FIGURE_HEIGHT_PX };
  return { ...base, at, turnDeg: 0 };
}

function midway(a: Pixel, b: Pixel): Pixel {
  return { xPx: (a.xPx + b.xPx) / 2, yPx: (a.yPx + b.yPx) / 2 };
}

function fits(text: string, from: Pixel, to: Pixel): boolean {
  return Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) >= widthOf(text) + 2 * FIGURE_SIDE_PX;
}

function widthOf(text: string): number {
  return text.length * CHARACTER_PX + 2 * FIGURE_SIDE_PX;
}

/** Direction of a line on the screen as an angle above -90 and up to 90: upright lines read from the right. */
function readable(from: Pixel, to: Pixel): number {
  const deg = (Math.atan2(to.yPx - from.yPx, to.xPx - from.xPx) * 180) / Math.PI;
  if (deg >= 90 - 1e-6) return deg - 180;
  return deg < -90 - 1e-6 ? deg + 180 : deg;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boxOf({ text, at, turnDeg }: Placed): Box {
  const c = Math.abs(Math.cos((turnDeg * Math.PI) / 180));
  const s = Math.abs(Math.sin((turnDeg * Math.PI) / 180));
  const halfX = (c * widthOf(text) + s * FIGURE_HEIGHT_PX) / 2;
  const halfY = (s * widthOf(text) + c * FIGURE_HEIGHT_PX) / 2;
  return { left: at.xPx - halfX, right: at.xPx + halfX, top: at.yPx - halfY, bottom: at.yPx + halfY };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
