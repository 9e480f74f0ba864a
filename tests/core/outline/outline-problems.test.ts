import { describe, expect, test } from 'vitest';
import {
  coincidingCorners,
  crossingEdges,
  isSimplePolygon,
  outlineProblems,
} from '../../../src-core/outline';
import { points, rectangle } from './motions';

describe('soundness of an outline', () => {
  test('a rectangle and an L are simple', () => {
    expect(isSimplePolygon(rectangle(0, 0, 96, 25.5))).toBe(true);
    expect(isSimplePolygon(points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]))).toBe(true);
    expect(outlineProblems(rectangle(0, 0, 96, 25.5))).toEqual([]);
  });

  test('a bow-tie names the two edges that cross', () => {
    const bowTie = points([0, 0], [10, 0], [0, 5], [10, 5]);
    expect(crossingEdges(bowTie)).toEqual([{ first: 1, second: 3 }]);
    expect(outlineProblems(bowTie)).toEqual([
      { code: 'edges-cross', path: ['corners', 1], sentence: 'Edge 2 and edge 4 cross or touch.' },
    ]);
  });

  test('a corner that touches a far edge is a crossing, 0.01 in off it is not', () => {
    const pinched = (y: number) => points([0, 0], [10, 0], [10, 5], [5, y], [0, 5]);
    expect(crossingEdges(pinched(0))).toEqual([
      { first: 0, second: 2 },
      { first: 0, second: 3 },
    ]);
    expect(isSimplePolygon(pinched(0.01))).toBe(true);
  });

  test('an edge that runs back along the one before it is a crossing', () => {
    const spur = points([0, 0], [10, 0], [10, 5], [15, 5], [5, 5], [0, 5]);
    expect(crossingEdges(spur)).toEqual([
      { first: 1, second: 3 },
      { first: 2, second: 3 },
    ]);
    expect(isSimplePolygon(spur)).toBe(false);
  });

  test('corners 0.01 in apart are one spot drawn twice, 0.02 in apart they are two', () => {
    const twice = (gapIn: number) => points([0, 0], [10, 0], [10, gapIn], [10, 5], [0, 5]);
    expect(outlineProblems(twice(0.01))).toEqual([
      { code: 'corners-coincide', path: ['corners', 2], sentence: 'Corners 2 and 3 lie on the same spot.' },
    ]);
    expect(outlineProblems(twice(0.02))).toEqual([]);
  });

  test('corners far apart in the list that meet are found with their distance', () => {
    const eight = points([0, 0], [5, 2], [10, 0], [10, 5], [5, 2.005], [0, 5]);
    const [pair] = coincidingCorners(eight, 0.01);
    expect(pair).toMatchObject({ first: 1, second: 4 });
    expect(pair?.distanceIn).toBeCloseTo(0.005, 9);
  });

  test('two corners are too few', () => {
    expect(outlineProblems(points([0, 0], [1, 0])).map(({ code }) => code)).toEqual(['too-few-corners']);
  });

  test('three corners on one line fold back on themselves', () => {
    expect(outlineProblems(points([0, 0], [4, 0], [9, 0])).map(({ code }) => code)).toContain('edges-cross');
  });
});
