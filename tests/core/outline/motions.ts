import fc from 'fast-check';
import type { Bearing, Point, Region } from '../../../src-core/outline';

/** A rigid motion of the drawing: turned, moved, perhaps mirrored. */
export type Motion = (point: Point) => Point;

export const anyMotion: fc.Arbitrary<Motion> = fc
  .record({
    angleRad: fc.double({ min: 0, max: 6.28, noNaN: true }),
    xIn: fc.double({ min: -300, max: 300, noNaN: true }),
    yIn: fc.double({ min: -300, max: 300, noNaN: true }),
    isMirrored: fc.boolean(),
  })
  .map(({ angleRad, xIn, yIn, isMirrored }) => {
    const c = Math.cos(angleRad);
    const s = Math.sin(angleRad);
    return (p: Point) => {
      const x = isMirrored ? -p.xIn : p.xIn;
      return { xIn: xIn + c * x - s * p.yIn, yIn: yIn + s * x + c * p.yIn };
    };
  });

/** L-shaped tops in half inches, with an opening well inside the long leg. */
export const anyL: fc.Arbitrary<Region> = fc
  .record({
    long: fc.integer({ min: 60, max: 200 }),
    deep: fc.integer({ min: 60, max: 120 }),
    legWidth: fc.integer({ min: 20, max: 40 }),
    legDepth: fc.integer({ min: 20, max: 40 }),
  })
  .map(({ long, deep, legWidth, legDepth }) => {
    const [l, d, w, t] = [long / 2, deep / 2, legWidth / 2, legDepth / 2];
    return {
      outer: points([0, 0], [l, 0], [l, t], [w, t], [w, d], [0, d]),
      holes: [points([l - 6, 3], [l - 3, 3], [l - 3, 6], [l - 6, 6])],
    };
  });

const half = (min: number, max: number) => fc.integer({ min: 2 * min, max: 2 * max }).map((n) => n / 2);

export const anyBearings: fc.Arbitrary<Bearing[]> = fc.array(
  fc.oneof(
    fc
      .record({ ax: half(-5, 100), ay: half(-5, 60), bx: half(-5, 100), by: half(-5, 60) })
      .map(({ ax, ay, bx, by }): Bearing => ({ kind: 'line', a: at(ax, ay), b: at(bx, by) })),
    fc.record({ x: half(-5, 90), y: half(-5, 50), w: half(1, 20), d: half(1, 20) }).map(
      ({ x, y, w, d }): Bearing => ({
        kind: 'polygon',
        points: points([x, y], [x + w, y], [x + w, y + d], [x, y + d]),
      }),
    ),
  ),
  { minLength: 1, maxLength: 5 },
);

export function at(xIn: number, yIn: number): Point {
  return { xIn, yIn };
}

export function points(...pairs: readonly (readonly [number, number])[]): Point[] {
  return pairs.map(([xIn, yIn]) => ({ xIn, yIn }));
}

export function rectangle(x0: number, y0: number, x1: number, y1: number): Point[] {
  return points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
}

export function movedRegion(region: Region, motion: Motion): Region {
  return { outer: region.outer.map(motion), holes: region.holes.map((hole) => hole.map(motion)) };
}

export function movedBearing(bearing: Bearing, motion: Motion): Bearing {
  return bearing.kind === 'line'
    ? { kind: 'line', a: motion(bearing.a), b: motion(bearing.b) }
    : { kind: 'polygon', points: bearing.points.map(motion) };
}
