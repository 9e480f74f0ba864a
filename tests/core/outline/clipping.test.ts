import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clipPatchToRegion,
  clipSegmentToRegion,
  clipStripToRegion,
  differenceAreaIn2,
  distanceIn,
  intersectionAreaIn2,
  loopsAreaIn2,
  offsetPolygon,
  polygonAreaIn2,
  polygonPerimeterIn,
  regionAreaIn2,
} from '../../../src-core/outline';
import { anyL, anyMotion, at, movedRegion, points, rectangle } from './motions';

const ell = points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]);

describe('offsets', () => {
  test('a 10 x 6 in rectangle grows to 12 x 8 and shrinks to 8 x 4 by 1 in', () => {
    expect(loopsAreaIn2(offsetPolygon(rectangle(0, 0, 10, 6), 1, 'mitre'))).toBeCloseTo(96, 6);
    expect(loopsAreaIn2(offsetPolygon(rectangle(0, 0, 10, 6), -1, 'mitre'))).toBeCloseTo(32, 6);
    expect(loopsAreaIn2(offsetPolygon([...rectangle(0, 0, 10, 6)].reverse(), -1, 'mitre'))).toBeCloseTo(
      32,
      6,
    );
  });

  test('a rounded offset adds edge times offset and one circle', () => {
    // 60 + 32 * 1 + pi
    expect(loopsAreaIn2(offsetPolygon(rectangle(0, 0, 10, 6), 1, 'round'))).toBeCloseTo(92 + Math.PI, 1);
  });

  test('inward by half its depth and more nothing is left, and a waist parts in two', () => {
    expect(offsetPolygon(rectangle(0, 0, 10, 6), -3.01, 'mitre')).toEqual([]);
    const waist = points(
      [0, 0],
      [4, 0],
      [4, 1.5],
      [6, 1.5],
      [6, 0],
      [10, 0],
      [10, 4],
      [6, 4],
      [6, 2.5],
      [4, 2.5],
      [4, 4],
      [0, 4],
    );
    expect(offsetPolygon(waist, -0.6, 'mitre')).toHaveLength(2);
  });
});

describe('shared and left areas', () => {
  test('two 10 x 6 rectangles shifted by 4 and 2 in share 24 in2 and leave 36', () => {
    const one = { outer: rectangle(0, 0, 10, 6), holes: [] };
    const other = { outer: rectangle(4, 2, 14, 8), holes: [] };
    expect(intersectionAreaIn2(one, other)).toBeCloseTo(24, 6);
    expect(differenceAreaIn2(one, other)).toBeCloseTo(36, 6);
  });

  test('openings count once where they overlap, whichever way round they are drawn', () => {
    const slab = {
      outer: [...rectangle(0, 0, 10, 10)].reverse(),
      holes: [rectangle(2, 2, 4, 4), [...rectangle(3, 3, 5, 5)].reverse()],
    };
    // 100 - (4 + 4 - 1)
    expect(intersectionAreaIn2(slab, { outer: rectangle(-5, -5, 15, 15), holes: [] })).toBeCloseTo(93, 6);
  });

  test('the clipping library finds the same areas as the shoelace sums in any place', () => {
    fc.assert(
      fc.property(anyL, anyMotion, (region, motion) => {
        const image = movedRegion(region, motion);
        const all = { outer: rectangle(-900, -900, 900, 900), holes: [] };
        expect(intersectionAreaIn2(image, all)).toBeCloseTo(regionAreaIn2(image), 3);
        const mitredIn2 = loopsAreaIn2(offsetPolygon(image.outer, 0.5, 'mitre'));
        // mitred: perimeter * d + 4 d^2 for six square corners, one of them an inside corner
        const expectedIn2 = polygonAreaIn2(image.outer) + polygonPerimeterIn(image.outer) * 0.5 + 4 * 0.25;
        expect(mitredIn2).toBeCloseTo(expectedIn2, 2);
      }),
    );
  });
});

describe('what lies on the slab', () => {
  const slab = { outer: ell, holes: [rectangle(1, 5, 2, 7)] };

  test('a line across the L and its opening falls into its parts', () => {
    // along y 6 from x -2: slab 0..1, opening 1..2, slab 2..3, notch beyond
    expect(clipSegmentToRegion({ a: at(-2, 6), b: at(20, 6) }, slab)).toEqual([
      { a: at(0, 6), b: at(1, 6) },
      { a: at(2, 6), b: at(3, 6) },
    ]);
  });

  test('a line along an edge and over the inside corner is on the slab from end to end', () => {
    expect(clipSegmentToRegion({ a: at(-1, 3), b: at(12, 3) }, slab)).toEqual([{ a: at(0, 3), b: at(9, 3) }]);
  });

  test('a line within stays whole, one that grazes a corner from outside vanishes', () => {
    expect(clipSegmentToRegion({ a: at(4, 1), b: at(8, 2) }, slab)).toHaveLength(1);
    expect(clipSegmentToRegion({ a: at(8, 4), b: at(10, 2) }, slab)).toEqual([]);
    expect(clipSegmentToRegion({ a: at(1, 1), b: at(1, 1) }, slab)).toEqual([]);
  });

  test('a 4 x 4 in patch half over the front leaves 8 in2, a 2 in strip over the end 10', () => {
    expect(loopsAreaIn2(clipPatchToRegion(rectangle(3, -2, 7, 2), slab))).toBeCloseTo(8, 6);
    // from x 4 to 9 of a strip that runs on to 12
    expect(loopsAreaIn2(clipStripToRegion({ a: at(4, 1.5), b: at(12, 1.5) }, 2, slab))).toBeCloseTo(10, 6);
  });

  test('a line keeps its length on the slab when the drawing is turned, moved and mirrored', () => {
    const place = fc.integer({ min: -10, max: 220 }).map((n) => n / 2);
    fc.assert(
      fc.property(
        anyL,
        anyMotion,
        fc.tuple(place, place, place, place),
        (region, motion, [ax, ay, bx, by]) => {
          const lengthOf = (parts: ReturnType<typeof clipSegmentToRegion>) =>
            parts.reduce((sumIn, { a, b }) => sumIn + distanceIn(a, b), 0);
          const before = lengthOf(clipSegmentToRegion({ a: at(ax, ay), b: at(bx, by) }, region));
          const image = { a: motion(at(ax, ay)), b: motion(at(bx, by)) };
          expect(lengthOf(clipSegmentToRegion(image, movedRegion(region, motion)))).toBeCloseTo(before, 6);
        },
      ),
      { numRuns: 300 },
    );
  });
});
