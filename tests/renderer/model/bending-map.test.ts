import { describe, expect, test } from 'vitest';
import { bendingAt } from '../../../src-renderer/model/bending-at';
import { trianglesOver } from '../../../src-renderer/model/over-limit';
import { squareMap } from './model-fixtures';

/** Area of plan triangles, in2 (shoelace). */
function areaIn2(triangles: Float32Array): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 6) {
    const [ax, ay, bx, by, cx, cy] = triangles.subarray(t, t + 6) as unknown as number[];
    sum += ((bx! - ax!) * (cy! - ay!) - (cx! - ax!) * (by! - ay!)) / 2;
  }
  return sum;
}

describe('bending at a point', () => {
  const map = squareMap([0, 1, 1, 0]);

  test('at a node it is the share of the node', () => {
    expect(bendingAt(map, 10, 10)).toBeCloseTo(1, 6);
    expect(bendingAt(map, 0, 0)).toBeCloseTo(0, 6);
  });

  test('a share that grows along x is 0.37 at 3.7 in of 10, in both triangles', () => {
    expect(bendingAt(map, 3.7, 1)).toBeCloseTo(0.37, 6);
    expect(bendingAt(map, 3.7, 9)).toBeCloseTo(0.37, 6);
  });

  test('off the slab there is none', () => {
    expect(bendingAt(map, 10.1, 5)).toBeNull();
    expect(bendingAt(map, -1, -1)).toBeNull();
  });
});

describe('the part of a map over the limit', () => {
  test('nothing is hatched where no share passes 1', () => {
    expect(trianglesOver(squareMap([0.2, 1, 1, 0.9]), 1)).toHaveLength(0);
  });

  test('the whole square of 100 sq in is hatched where every share passes 1', () => {
    expect(areaIn2(trianglesOver(squareMap([1.1, 1.2, 1.3, 1.4]), 1))).toBeCloseTo(100, 4);
  });

  test('a share from 0 to 2 along x passes 1 over half of the square, 50 sq in', () => {
    expect(areaIn2(trianglesOver(squareMap([0, 2, 2, 0]), 1))).toBeCloseTo(50, 4);
  });

  test('one corner at 2 among noughts passes 1 in the two half-size triangles that meet there, 12.5 sq in each', () => {
    expect(areaIn2(trianglesOver(squareMap([0, 0, 2, 0]), 1))).toBeCloseTo(25, 4);
  });
});
