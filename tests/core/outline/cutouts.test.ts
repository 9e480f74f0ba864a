import { describe, expect, test } from 'vitest';
import type { CutoutShape, Point } from '../../../src-core/outline';
import {
  boundingBox,
  cutoutClearance,
  cutoutGaps,
  cutoutOutline,
  signedAreaIn2,
} from '../../../src-core/outline';
import { at, points, rectangle } from './motions';

function outlineOf(shape: CutoutShape, toleranceIn = 0.001): readonly Point[] {
  const outline = cutoutOutline(shape, toleranceIn);
  if (!outline.ok) throw new Error(outline.problems.map(({ sentence }) => sentence).join(' '));
  return outline.points;
}

const sink: CutoutShape = {
  kind: 'rectangle',
  centre: at(40, 12),
  widthIn: 30,
  depthIn: 16,
  radiusIn: 3,
  angleDeg: 0,
};

describe('outlines of cutouts', () => {
  test('a 30 x 16 in sink with 3 in corners takes 472.27 in2, runs counter-clockwise and keeps its bounds', () => {
    // 480 - (4 - pi) * 9 = 472.274
    expect(signedAreaIn2(outlineOf(sink))).toBeCloseTo(480 - (4 - Math.PI) * 9, 1);
    expect(boundingBox(outlineOf(sink))).toEqual({ minXIn: 25, minYIn: 4, maxXIn: 55, maxYIn: 20 });
  });

  test('turned by 90 degrees it is 16 wide and 30 deep', () => {
    const box = boundingBox(outlineOf({ ...sink, angleDeg: 90 }));
    expect(box.maxXIn - box.minXIn).toBeCloseTo(16, 10);
    expect(box.maxYIn - box.minYIn).toBeCloseTo(30, 10);
  });

  test('turned by 30 degrees a square-cornered 30 x 16 reaches 33.981 in across', () => {
    // 30 cos 30 + 16 sin 30 = 25.981 + 8
    const box = boundingBox(outlineOf({ ...sink, radiusIn: 0, angleDeg: 30 }));
    expect(box.maxXIn - box.minXIn).toBeCloseTo(30 * Math.cos(Math.PI / 6) + 8, 10);
  });

  test('a 1-3/8 in tap hole in chords is a regular polygon within its tolerance', () => {
    const hole = outlineOf({ kind: 'circle', centre: at(5, 5), diameterIn: 1.375 }, 0.01);
    expect(hole.length % 4).toBe(0);
    // regular n-gon in a circle of r: n r^2 sin(2 pi / n) / 2
    const n = hole.length;
    expect(signedAreaIn2(hole)).toBeCloseTo((n * 0.6875 ** 2 * Math.sin((2 * Math.PI) / n)) / 2, 10);
    expect(0.6875 * (1 - Math.cos(Math.PI / n))).toBeLessThanOrEqual(0.01);
  });

  test('a polygon drawn clockwise with a rounded corner comes back counter-clockwise', () => {
    const corners = [...rectangle(0, 0, 8, 4)].reverse().map((p, i) => ({ ...p, radiusIn: i === 0 ? 1 : 0 }));
    // 32 - (1 - pi / 4)
    expect(signedAreaIn2(outlineOf({ kind: 'polygon', corners }))).toBeCloseTo(31 + Math.PI / 4, 2);
  });

  test('a 16 in deep cutout takes 8 in corners and no more', () => {
    expect(cutoutOutline({ ...sink, radiusIn: 8 }, 0.01).ok).toBe(true);
    expect(cutoutOutline({ ...sink, radiusIn: 8.5 }, 0.01)).toEqual({
      ok: false,
      problems: [
        {
          code: 'radius-does-not-fit',
          path: ['radiusIn'],
          sentence: 'The corner radius does not fit the cutout.',
          radius: { askedIn: 8.5, largestIn: 8 },
        },
      ],
    });
  });
});

describe('concrete left beside cutouts', () => {
  const top = rectangle(0, 0, 96, 25.5);

  test('a sink from y 4 to 20 leaves 4 in at the front, edge 0', () => {
    const clearance = cutoutClearance(top, outlineOf(sink));
    expect(clearance.isInside).toBe(true);
    expect(clearance.clearanceIn).toBeCloseTo(4, 9);
    expect(clearance.edge).toBe(0);
    expect(clearance.at.yIn).toBeCloseTo(4, 9);
  });

  test('a cutout that touches, crosses or lies beyond the edge is not inside', () => {
    for (const [y, clearanceIn] of [
      [0, 0],
      [-2, 0],
      [-30, 14],
    ] as const) {
      const clearance = cutoutClearance(top, rectangle(40, y, 50, y + 16));
      expect(clearance.isInside).toBe(false);
      expect(clearance.clearanceIn).toBeCloseTo(clearanceIn, 9);
    }
  });

  test('a cutout round the inside corner of an L is not inside though its corners are on the L', () => {
    const ell = points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]);
    expect(cutoutClearance(ell, points([1, 1], [8, 2], [2, 8])).isInside).toBe(false);
  });

  test('two cutouts 2.5 in apart leave 2.5 in, two that overlap by 1 x 3 in share 3 in2', () => {
    const gaps = cutoutGaps([rectangle(0, 0, 4, 3), rectangle(6.5, 0, 9, 3), rectangle(8, 0, 12, 3)]);
    expect(gaps.map(({ first, second }) => [first, second])).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    expect(gaps[0]).toMatchObject({ gapIn: 2.5, overlapIn2: 0 });
    expect(gaps[2]?.gapIn).toBe(0);
    expect(gaps[2]?.overlapIn2).toBeCloseTo(3, 5);
  });

  test('a tap hole within the sink overlaps it by its whole area', () => {
    const [gap] = cutoutGaps([rectangle(0, 0, 30, 16), rectangle(5, 5, 7, 7)]);
    expect(gap?.gapIn).toBe(0);
    expect(gap?.overlapIn2).toBeCloseTo(4, 5);
  });
});
