/** The window onto the plan: which point of it is in the middle, and how large an inch is. Up on the screen is away from the front. */
import type { BoundingBox, Point } from '../../src-core/outline';

export interface Frame {
  readonly centre: Point;
  readonly pxPerIn: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A place on the screen from the frame's upper left. */
export interface Pixel {
  readonly xPx: number;
  readonly yPx: number;
}

const LEAST_PX_PER_IN = 0.1;
const MOST_PX_PER_IN = 120;
/** Nothing is shown larger than this when it is fitted; a small cap need not fill the window. */
const MOST_FITTED_PX_PER_IN = 24;

/** Where a point of the plan is on the screen. */
export function toPixel(frame: Frame, { xIn, yIn }: Point): Pixel {
  return {
    xPx: frame.widthPx / 2 + (xIn - frame.centre.xIn) * frame.pxPerIn,
    yPx: frame.heightPx / 2 - (yIn - frame.centre.yIn) * frame.pxPerIn,
  };
}

/** Point of the plan at a place on the screen. */
export function toPlan(frame: Frame, { xPx, yPx }: Pixel): Point {
  return {
    xIn: frame.centre.xIn + (xPx - frame.widthPx / 2) / frame.pxPerIn,
    yIn: frame.centre.yIn - (yPx - frame.heightPx / 2) / frame.pxPerIn,
  };
}

/** The same as an SVG transform, for shapes drawn in inches. */
export function planTransform(frame: Frame): string {
  const { xPx, yPx } = toPixel(frame, { xIn: 0, yIn: 0 });
  return `matrix(${frame.pxPerIn} 0 0 ${-frame.pxPerIn} ${xPx} ${yPx})`;
}

/** The frame moved and sized to hold a box with a margin. */
export function fitted(frame: Frame, box: BoundingBox, marginPx: number): Frame {
  const widthIn = Math.max(box.maxXIn - box.minXIn, 1);
  const heightIn = Math.max(box.maxYIn - box.minYIn, 1);
  const pxPerIn = Math.min(
    Math.max(frame.widthPx - 2 * marginPx, 40) / widthIn,
    Math.max(frame.heightPx - 2 * marginPx, 40) / heightIn,
    MOST_FITTED_PX_PER_IN,
  );
  return {
    ...frame,
    centre: { xIn: (box.minXIn + box.maxXIn) / 2, yIn: (box.minYIn + box.maxYIn) / 2 },
    pxPerIn: kept(pxPerIn),
  };
}

/** Whether the whole of a box is on the screen. */
export function isSeen(frame: Frame, box: BoundingBox): boolean {
  const low = toPixel(frame, { xIn: box.minXIn, yIn: box.minYIn });
  const high = toPixel(frame, { xIn: box.maxXIn, yIn: box.maxYIn });
  return low.xPx >= 0 && high.xPx <= frame.widthPx && high.yPx >= 0 && low.yPx <= frame.heightPx;
}

/** The frame larger by `factor`, the point under `about` staying there. */
export function zoomed(frame: Frame, about: Pixel, factor: number): Frame {
  const pxPerIn = kept(frame.pxPerIn * factor);
  const held = toPlan(frame, about);
  return {
    ...frame,
    pxPerIn,
    centre: {
      xIn: held.xIn - (about.xPx - frame.widthPx / 2) / pxPerIn,
      yIn: held.yIn + (about.yPx - frame.heightPx / 2) / pxPerIn,
    },
  };
}

/** The frame with the drawing pushed by so many pixels. */
export function panned(frame: Frame, dxPx: number, dyPx: number): Frame {
  const { xIn, yIn } = frame.centre;
  return { ...frame, centre: { xIn: xIn - dxPx / frame.pxPerIn, yIn: yIn + dyPx / frame.pxPerIn } };
}

/** The frame after two fingers have gone from one pair of places to another: their middle keeps its point. */
export function pinched(frame: Frame, from: readonly [Pixel, Pixel], to: readonly [Pixel, Pixel]): Frame {
  const middle = ([a, b]: readonly [Pixel, Pixel]) => ({
    xPx: (a.xPx + b.xPx) / 2,
    yPx: (a.yPx + b.yPx) / 2,
  });
  const apart = ([a, b]: readonly [Pixel, Pixel]) => Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx);
  const start = middle(from);
  const end = middle(to);
  const moved = panned(frame, end.xPx - start.xPx, end.yPx - start.yPx);
  return apart(from) < 1 ? moved : zoomed(moved, end, apart(to) / apart(from));
}

function kept(pxPerIn: number): number {
  return Math.min(MOST_PX_PER_IN, Math.max(LEAST_PX_PER_IN, pxPerIn));
}
