/** A rectangular load patch on the slab: its outline, and whether it lies wholly on concrete. */
import { isPointOnSlab } from './containment';
import type { Point, Region } from './point';
import { directionAt, leftOf, moved, turned } from './point';

/** A patch may pass an edge by this and still fit, in: it is laid tight against edges on purpose. */
export const PATCH_TOUCH_IN = 1e-6;

/** Corners of a patch, counter-clockwise. Its width runs along `angleRad`, its depth across. */
export function patchOutline(centre: Point, widthIn: number, depthIn: number, angleRad: number): Point[] {
  const along = directionAt(angleRad);
  const across = leftOf(along);
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return signs.map(([w, d]) => moved(moved(centre, along, (w * widthIn) / 2), across, (d * depthIn) / 2));
}

/**
 * True where a patch (in, rad) lies wholly on the slab: no edge of the outline or of a cutout runs through it and its
 * middle is on concrete. Tight against an edge fits.
 */
export function patchFits(
  region: Region,
  centre: Point,
  widthIn: number,
  depthIn: number,
  angleRad: number,
): boolean {
  return fitsUpright(turnedRegion(region, -angleRad), turned(centre, -angleRad), widthIn, depthIn);
}

/** The slab turned by `angleRad` about the origin. */
export function turnedRegion(region: Region, angleRad: number): Region {
  return {
    outer: region.outer.map((p) => turned(p, angleRad)),
    holes: region.holes.map((hole) => hole.map((p) => turned(p, angleRad))),
  };
}

/** As `patchFits` for a patch whose width runs along x. */
export function fitsUpright(region: Region, centre: Point, widthIn: number, depthIn: number): boolean {
  const halfWidthIn = widthIn / 2 - PATCH_TOUCH_IN;
  const halfDepthIn = depthIn / 2 - PATCH_TOUCH_IN;
  if (loopEnters(region.outer, centre, halfWidthIn, halfDepthIn)) return false;
  for (const hole of region.holes) if (loopEnters(hole, centre, halfWidthIn, halfDepthIn)) return false;
  return isPointOnSlab(centre, region);
}

function loopEnters(
  loop: readonly Point[],
  centre: Point,
  halfWidthIn: number,
  halfDepthIn: number,
): boolean {
  for (let i = 0, j = loop.length - 1; i < loop.length; j = i++) {
    const p = loop[j]!;
    const q = loop[i]!;
    if (
      segmentEnters(
        p.xIn - centre.xIn,
        p.yIn - centre.yIn,
        q.xIn - centre.xIn,
        q.yIn - centre.yIn,
        halfWidthIn,
        halfDepthIn,
      )
    )
      return true;
  }
  return false;
}

/** True where a segment passes through the open box of half sizes hx, hy about the origin (separating axes). */
function segmentEnters(px: number, py: number, qx: number, qy: number, hx: number, hy: number): boolean {
  if ((px >= hx && qx >= hx) || (px <= -hx && qx <= -hx)) return false;
  if ((py >= hy && qy >= hy) || (py <= -hy && qy <= -hy)) return false;
  const dx = qx - px;
  const dy = qy - py;
  return Math.abs(dx * py - dy * px) < hx * Math.abs(dy) + hy * Math.abs(dx);
}
