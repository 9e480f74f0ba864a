import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  directionAt,
  firstHitIn,
  nearestOnSegment,
  segmentDistanceIn,
  segmentMeeting,
} from '../../../src-core/outline';
import { anyMotion, at } from './motions';

const seg = (ax: number, ay: number, bx: number, by: number) => ({ a: at(ax, ay), b: at(bx, by) });
const right = { x: 1, y: 0 };

describe('two segments', () => {
  test('diagonals of a 6 x 8 rectangle meet in its middle', () => {
    expect(segmentMeeting(seg(0, 0, 6, 8), seg(6, 0, 0, 8))).toEqual(at(3, 4));
    expect(segmentDistanceIn(seg(0, 0, 6, 8), seg(6, 0, 0, 8))).toBe(0);
  });

  test('ends that touch meet, parallels 3 in apart do not', () => {
    expect(segmentMeeting(seg(0, 0, 6, 0), seg(6, 0, 6, 5))).toEqual(at(6, 0));
    expect(segmentMeeting(seg(0, 0, 6, 0), seg(0, 3, 6, 3))).toBeNull();
    expect(segmentDistanceIn(seg(0, 0, 6, 0), seg(2, 3, 9, 3))).toBe(3);
  });

  test('segments on one line meet where they overlap and lie 2 in apart where they do not', () => {
    expect(segmentMeeting(seg(0, 0, 6, 0), seg(4, 0, 9, 0))?.yIn).toBe(0);
    expect(segmentMeeting(seg(0, 0, 6, 0), seg(8, 0, 9, 0))).toBeNull();
    expect(segmentDistanceIn(seg(0, 0, 6, 0), seg(8, 0, 9, 0))).toBe(2);
  });

  test('an end stands 3-4-5 off a corner', () => {
    expect(segmentDistanceIn(seg(0, 0, 6, 0), seg(9, 4, 12, 9))).toBe(5);
    expect(nearestOnSegment(at(9, 4), seg(0, 0, 6, 0))).toEqual(at(6, 0));
    expect(nearestOnSegment(at(2, 4), seg(1, 1, 1, 1))).toEqual(at(1, 1));
  });

  test('the distance is the same when the drawing is turned, moved and mirrored, and either way round', () => {
    const place = fc.integer({ min: -20, max: 20 });
    fc.assert(
      fc.property(fc.array(place, { minLength: 8, maxLength: 8 }), anyMotion, (n, motion) => {
        const one = seg(n[0]!, n[1]!, n[2]!, n[3]!);
        const other = seg(n[4]!, n[5]!, n[6]!, n[7]!);
        const expected = segmentDistanceIn(one, other);
        const image = segmentDistanceIn(
          { a: motion(one.a), b: motion(one.b) },
          { a: motion(other.b), b: motion(other.a) },
        );
        expect(image).toBeCloseTo(expected, 8);
        expect(segmentDistanceIn(other, one)).toBeCloseTo(expected, 10);
      }),
    );
  });
});

describe('what a ray meets first', () => {
  test('of two walls at 5 and 9 in the ray meets the one at 5', () => {
    expect(firstHitIn(at(0, 0), right, [seg(9, -1, 9, 1), seg(5, -1, 5, 1)])).toBe(5);
  });

  test('walls behind the origin and beside the ray are not met', () => {
    expect(firstHitIn(at(0, 0), right, [seg(-5, -1, -5, 1), seg(5, 1, 5, 3)])).toBeNull();
  });

  test('a ray at 45 degrees meets a wall 3 in off after 4.243 in', () => {
    expect(firstHitIn(at(0, 0), directionAt(Math.PI / 4), [seg(3, -9, 3, 9)])).toBeCloseTo(
      3 * Math.SQRT2,
      12,
    );
  });

  test('the end of a wall is met', () => {
    expect(firstHitIn(at(0, 0), right, [seg(5, 0, 5, 3)])).toBe(5);
  });

  test('a wall along the ray is met at its near end, at once from within and not at all from beyond', () => {
    const along = [seg(8, 0, 4, 0)];
    expect(firstHitIn(at(0, 0), right, along)).toBe(4);
    expect(firstHitIn(at(6, 0), right, along)).toBe(0);
    expect(firstHitIn(at(9, 0), right, along)).toBeNull();
    expect(firstHitIn(at(0, 0.001), right, along)).toBeNull();
  });
});
