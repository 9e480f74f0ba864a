import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaMoments,
  boundingBox,
  counterClockwise,
  polygonAreaIn2,
  polygonPerimeterIn,
  regionAreaIn2,
  signedAreaIn2,
} from '../../../src-core/outline';
import { anyL, anyMotion, at, movedRegion, points, rectangle } from './motions';

const counter = points([0, 0], [96, 0], [96, 25.5], [26, 25.5], [26, 60], [0, 60]);

describe('area, centroid and second moments', () => {
  test('an L of 96 x 25.5 and 26 x 34.5 in has 3345 in2', () => {
    // 96 * 25.5 = 2448; 26 * (60 - 25.5) = 897; together 3345
    expect(signedAreaIn2(counter)).toBe(3345);
    expect(signedAreaIn2([...counter].reverse())).toBe(-3345);
    expect(polygonAreaIn2([...counter].reverse())).toBe(3345);
    // 96 + 25.5 + 70 + 34.5 + 26 + 60 = 312
    expect(polygonPerimeterIn(counter)).toBe(312);
  });

  test('a 33 x 22 in sink takes 726 in2 out of it', () => {
    expect(regionAreaIn2({ outer: counter, holes: [rectangle(40, 2, 73, 24)] })).toBe(3345 - 726);
  });

  test('the L balances at 38.612 and 17.403 in', () => {
    const moments = areaMoments([...counter].reverse());
    // x: (2448 * 48 + 897 * 13) / 3345 = (117504 + 11661) / 3345; y: (2448 * 12.75 + 897 * 42.75) / 3345
    expect(moments?.centroid.xIn).toBeCloseTo(129165 / 3345, 10);
    expect(moments?.centroid.yIn).toBeCloseTo((31212 + 38346.75) / 3345, 10);
    expect(moments?.areaIn2).toBe(3345);
  });

  test('a 6 x 4 in rectangle anywhere has Ixx 32, Iyy 72 and Ixy 0 in4', () => {
    // 6 * 4^3 / 12 = 32; 4 * 6^3 / 12 = 72
    const moments = areaMoments(rectangle(100, -50, 106, -46));
    expect(moments?.ixxIn4).toBeCloseTo(32, 8);
    expect(moments?.iyyIn4).toBeCloseTo(72, 8);
    expect(moments?.ixyIn4).toBeCloseTo(0, 8);
  });

  test('a right triangle of 6 and 4 in has Ixx 10.667, Iyy 24 and Ixy -8 in4', () => {
    // b h^3 / 36 = 6 * 64 / 36; h b^3 / 36 = 4 * 216 / 36; -b^2 h^2 / 72 = -36 * 16 / 72
    const moments = areaMoments(points([0, 0], [6, 0], [0, 4]));
    expect(moments?.ixxIn4).toBeCloseTo(384 / 36, 10);
    expect(moments?.iyyIn4).toBeCloseTo(24, 10);
    expect(moments?.ixyIn4).toBeCloseTo(-8, 10);
  });

  test('three corners on one line have no moments', () => {
    expect(areaMoments(points([0, 0], [1, 0], [2, 0]))).toBeNull();
  });

  test('a piece keeps its area and polar moment when it is turned, moved and mirrored, and its centroid goes along', () => {
    fc.assert(
      fc.property(anyL, anyMotion, (region, motion) => {
        const before = areaMoments(region.outer)!;
        const after = areaMoments(movedRegion(region, motion).outer)!;
        expect(after.areaIn2 / before.areaIn2).toBeCloseTo(1, 9);
        expect((after.ixxIn4 + after.iyyIn4) / (before.ixxIn4 + before.iyyIn4)).toBeCloseTo(1, 8);
        const goal = motion(before.centroid);
        expect(after.centroid.xIn).toBeCloseTo(goal.xIn, 7);
        expect(after.centroid.yIn).toBeCloseTo(goal.yIn, 7);
      }),
    );
  });
});

describe('bounds and direction of running', () => {
  test('the bounds of a diamond reach its four corners', () => {
    const diamond = points([0, -3], [5, 0], [0, 3], [-5, 0]);
    expect(boundingBox(diamond)).toEqual({ minXIn: -5, minYIn: -3, maxXIn: 5, maxYIn: 3 });
  });

  test('a clockwise outline is turned round and keeps its first corner', () => {
    const clockwise = points([0, 0], [0, 2], [3, 2], [3, 0]);
    expect(counterClockwise(clockwise)).toEqual(points([0, 0], [3, 0], [3, 2], [0, 2]));
    expect(counterClockwise(counter)).toEqual(counter);
    expect(counterClockwise(clockwise)[0]).toEqual(at(0, 0));
  });
});
