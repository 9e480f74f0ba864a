/** Cutouts by their middle and their size, whatever their shape. */
import type { CutoutShape } from '../job';
import type { Point } from '../outline';
import { boundingBox } from '../outline';
import { cleanIn, cleanPoint, movedShape, shift } from './placement';

/** Middle of a cutout; of a polygon the middle of the rectangle round it. */
export function cutoutCentre(shape: CutoutShape): Point {
  if (shape.kind !== 'polygon') return shape.centre;
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(shape.corners);
  return { xIn: (minXIn + maxXIn) / 2, yIn: (minYIn + maxYIn) / 2 };
}

/** Width and depth of a cutout along its own directions, in. */
export function cutoutSize(shape: CutoutShape): { readonly widthIn: number; readonly depthIn: number } {
  switch (shape.kind) {
    case 'rectangle':
      return { widthIn: shape.widthIn, depthIn: shape.depthIn };
    case 'circle':
      return { widthIn: shape.diameterIn, depthIn: shape.diameterIn };
    case 'polygon': {
      const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(shape.corners);
      return { widthIn: maxXIn - minXIn, depthIn: maxYIn - minYIn };
    }
  }
}

/** The cutout with its middle on a point. */
export function centredShape(shape: CutoutShape, to: Point): CutoutShape {
  const from = cutoutCentre(shape);
  return movedShape(shape, shift(to.xIn - from.xIn, to.yIn - from.yIn));
}

/**
 * The cutout with another size about its middle. A circle takes the size that was changed; a rectangle's rounding shrinks where it
 * would no longer fit; a polygon is stretched.
 */
export function resizedShape(shape: CutoutShape, widthIn: number, depthIn: number): CutoutShape {
  switch (shape.kind) {
    case 'rectangle':
      return { ...shape, widthIn, depthIn, radiusIn: Math.min(shape.radiusIn, widthIn / 2, depthIn / 2) };
    case 'circle':
      return { ...shape, diameterIn: changedDiameterIn(shape.diameterIn, widthIn, depthIn) };
    case 'polygon': {
      const centre = cutoutCentre(shape);
      const size = cutoutSize(shape);
      const corners = shape.corners.map((corner) =>
        cleanPoint({
          ...corner,
          xIn: centre.xIn + ((corner.xIn - centre.xIn) * widthIn) / size.widthIn,
          yIn: centre.yIn + ((corner.yIn - centre.yIn) * depthIn) / size.depthIn,
        }),
      );
      return { ...shape, corners };
    }
  }
}

/** New diameter of a circle whose width and depth were asked for: whichever of them differs more from the old. */
export function changedDiameterIn(oldIn: number, widthIn: number, depthIn: number): number {
  return cleanIn(Math.abs(widthIn - oldIn) >= Math.abs(depthIn - oldIn) ? widthIn : depthIn);
}
