import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexHull, isPointInPolygon, signedDistanceToHullIn } from '../../../src-core/outline';
import { anyL, anyMotion, at, movedRegion, points, rectangle } from './motions';

describe('convex hull of the bearings', () => {
  test('the hull of four legs and a fifth among them is the four, counter-clockwise', () => {
    const legs = points([30, 20], [0, 0], [15, 10], [30, 0], [0, 20], [15, 0]);
    expect(convexHull(legs)).toEqual(points([0, 0], [30, 0], [30, 20], [0, 20]));
  });

  test('a centre of gravity 4 in within the nearest side is 4 in safe, 3 in beyond it is -3', () => {
    const hull = convexHull(rectangle(0, 0, 30, 20));
    expect(signedDistanceToHullIn(at(10, 4), hull)).toBe(4);
    expect(signedDistanceToHullIn(at(10, -3), hull)).toBe(-3);
    expect(signedDistanceToHullIn(at(33, 24), hull)).toBe(-5);
    expect(signedDistanceToHullIn(at(10, 0), hull)).toBe(0);
  });

  test('legs on one line hold nothing: every point is outside by its distance', () => {
    const hull = convexHull(points([0, 0], [5, 0], [10, 0], [5, 0]));
    expect(hull).toEqual(points([0, 0], [10, 0]));
    expect(signedDistanceToHullIn(at(4, 2), hull)).toBe(-2);
    expect(signedDistanceToHullIn(at(4, 2), convexHull([at(1, 6)]))).toBe(-5);
  });

  test('every corner of a piece lies in its hull, and the hull goes along when the piece is moved', () => {
    fc.assert(
      fc.property(anyL, anyMotion, (region, motion) => {
        const image = movedRegion(region, motion).outer;
        const hull = convexHull(image);
        expect(hull).toHaveLength(5);
        for (const corner of image) expect(isPointInPolygon(corner, hull)).toBe(true);
        const before = signedDistanceToHullIn(at(3, 40), convexHull(region.outer));
        expect(signedDistanceToHullIn(motion(at(3, 40)), hull)).toBeCloseTo(before, 8);
      }),
    );
  });
});
