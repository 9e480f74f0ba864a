import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isPointInPolygon,
  isPointOnSlab,
  nearestOnOutline,
  signedDistanceIn,
  slabDistanceIn,
  whereInPolygon,
} from '../../../src-core/outline';
import { anyL, anyMotion, at, movedRegion, points, rectangle } from './motions';

const ell = points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]);

describe('points and polygons', () => {
  test('the notch of an L is outside, its inside corner on the edge', () => {
    expect(whereInPolygon(at(1, 8), ell)).toBe('inside');
    expect(whereInPolygon(at(4, 4), ell)).toBe('outside');
    expect(whereInPolygon(at(3, 3), ell)).toBe('edge');
    expect(whereInPolygon(at(6, 3), ell)).toBe('edge');
    expect(isPointInPolygon(at(6, 3), ell)).toBe(true);
  });

  test('a point level with a corner is counted once', () => {
    const diamond = points([0, -3], [5, 0], [0, 3], [-5, 0]);
    expect(whereInPolygon(at(0, 0), diamond)).toBe('inside');
    expect(whereInPolygon(at(-6, 0), diamond)).toBe('outside');
    expect(whereInPolygon(at(6, 0), diamond)).toBe('outside');
  });

  test('the lip of a cutout is on the slab, its inside is not', () => {
    const region = { outer: rectangle(0, 0, 20, 10), holes: [rectangle(5, 3, 8, 6)] };
    expect(isPointOnSlab(at(6, 4), region)).toBe(false);
    expect(isPointOnSlab(at(5, 4), region)).toBe(true);
    expect(isPointOnSlab(at(20.5, 4), region)).toBe(false);
  });

  test('distances are positive within and negative without', () => {
    expect(signedDistanceIn(at(1, 5), ell)).toBe(1);
    // from the notch at (7, 6) straight down to y 3
    expect(signedDistanceIn(at(7, 6), ell)).toBe(-3);
    expect(nearestOnOutline(at(7, 6), ell)).toEqual({ edge: 2, at: at(7, 3), distanceIn: 3 });
    const region = { outer: rectangle(0, 0, 20, 10), holes: [rectangle(5, 3, 8, 6)] };
    expect(slabDistanceIn(at(10, 4), region)).toBe(2);
    expect(slabDistanceIn(at(6, 4), region)).toBe(-1);
    // corner to corner: 3-4-5
    expect(slabDistanceIn(at(12, 6 + 3), region)).toBe(1);
    expect(slabDistanceIn(at(23, 14), region)).toBe(-5);
  });

  test('a point keeps its side and distance when the drawing is turned, moved and mirrored', () => {
    const place = fc.integer({ min: -10, max: 220 }).map((n) => n / 2);
    fc.assert(
      fc.property(anyL, anyMotion, place, place, (region, motion, x, y) => {
        const image = movedRegion(region, motion);
        expect(isPointOnSlab(motion(at(x, y)), image)).toBe(isPointOnSlab(at(x, y), region));
        expect(slabDistanceIn(motion(at(x, y)), image)).toBeCloseTo(slabDistanceIn(at(x, y), region), 8);
      }),
    );
  });
});
