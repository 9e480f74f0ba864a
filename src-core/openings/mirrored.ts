/** A shape traced from below, or cut from its back, is the other way round from left to right. */
import type { CutoutShape } from '../job';
import type { Point } from '../outline';

/** A point left for right about an upright line of the drawing. */
function flipped<P extends Point>(point: P, axisXIn: number): P {
  return { ...point, xIn: 2 * axisXIn - point.xIn };
}

/**
 * The corners of a polygon left for right about the upright line at `axisXIn`; front stays front. Corner i stays corner
 * i, so a polygon that ran counter-clockwise comes back clockwise.
 */
export function mirroredPoints(points: readonly Point[], axisXIn: number): Point[] {
  return points.map((point) => flipped(point, axisXIn));
}

/**
 * A cutout's shape as it looks from below, left for right about its own middle; front stays front. Mirrored twice it is
 * the same shape: an opening traced from below becomes the drawing in the same way.
 */
export function mirrored(shape: CutoutShape): CutoutShape {
  switch (shape.kind) {
    case 'circle':
      return shape;
    case 'rectangle':
      return { ...shape, angleDeg: shape.angleDeg === 0 ? 0 : -shape.angleDeg };
    case 'polygon': {
      const xs = shape.corners.map(({ xIn }) => xIn);
      const axisXIn = (Math.min(...xs) + Math.max(...xs)) / 2;
      return { ...shape, corners: shape.corners.map((corner) => flipped(corner, axisXIn)) };
    }
  }
}
