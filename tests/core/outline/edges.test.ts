import { describe, expect, test } from 'vitest';
import { cornerAnglesRad, insideCorners, outlineEdges, pieceDirection } from '../../../src-core/outline';
import { points, rectangle } from './motions';

const ell = points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]);

describe('edges and corners', () => {
  test('inward normals point to the concrete whichever way round the outline runs', () => {
    const front = outlineEdges(rectangle(0, 0, 10, 4))[0];
    expect(front).toMatchObject({ edge: 0, lengthIn: 10, direction: { x: 1, y: 0 } });
    expect(front?.inward.y).toBe(1);
    const clockwise = outlineEdges(points([10, 0], [0, 0], [0, 4], [10, 4]));
    expect(clockwise[0]?.inward.y).toBe(1);
    expect(clockwise[1]?.inward.x).toBe(1);
  });

  test('an L has one inside corner, corner 3, of 270 degrees', () => {
    const [corner, ...others] = insideCorners(ell, 0.01);
    expect(others).toEqual([]);
    expect(corner?.corner).toBe(3);
    expect(corner?.angleRad).toBeCloseTo(1.5 * Math.PI, 12);
    expect(insideCorners([...ell].reverse(), 0.01).map(({ at }) => at)).toEqual([{ xIn: 3, yIn: 3 }]);
  });

  test('the angles of an n-cornered outline sum to (n - 2) half turns', () => {
    const sum = cornerAnglesRad(ell).reduce((a, b) => a + b, 0);
    expect(sum).toBeCloseTo(4 * Math.PI, 12);
  });

  test('the 15 degree bend of a curved inside edge is passed over at 20 degrees', () => {
    const bent = points([0, 0], [10, 2.68], [20, 0], [20, 10], [0, 10]);
    // the bend at (10, 2.68) passes half a turn by 2 atan(.268) = 30 degrees
    expect(insideCorners(bent, (29 * Math.PI) / 180)).toHaveLength(1);
    expect(insideCorners(bent, (31 * Math.PI) / 180)).toHaveLength(0);
  });

  test('the direction of a piece is that of its longest edge', () => {
    expect(pieceDirection(points([0, 0], [3, 0], [3, 9], [0, 9]))).toEqual({ x: 0, y: 1 });
  });
});
