import { describe, expect, test } from 'vitest';
import { fitted, poseForView } from '../../../src-renderer/model/camera-pose';
import { isSeenWell, withNeighbours } from '../../../src-renderer/model/framing';
import type { Bounds } from '../../../src-renderer/model/scene-bounds';
import { cornerBounds } from '../../../src-renderer/model/scene-bounds';
import { pieceOf } from '../../core/drawing/pieces';

const counter: Bounds = { least: [0, 0, 0], most: [96, 24, 36] };
const near: Bounds = { least: [0, 40, 0], most: [96, 58, 42] };
const far: Bounds = { least: [600, 0, 0], most: [640, 20, 36] };
const corner = poseForView('corner', [counter], 1.5);

describe('the picture of a piece', () => {
  test('takes in a ledge 16 in behind it and leaves out a cap 42 ft away', () => {
    expect(withNeighbours(corner, [counter], [far, near], 1.5)).toEqual([counter, near]);
  });

  test('with its neighbours, the piece is seen well, wide or tall', () => {
    for (const aspect of [1.6, 0.5]) {
      const pose = fitted(corner, withNeighbours(corner, [counter], [near, far], aspect), aspect);
      expect(isSeenWell(pose, [counter], aspect)).toBe(true);
    }
  });

  test('fitted for a wide picture, the piece is cut off in a tall one', () => {
    expect(isSeenWell(fitted(corner, [counter], 1.6), [counter], 0.5)).toBe(false);
  });

  test('from ten times as far a piece is too small to be seen well, from behind the eye not at all', () => {
    expect(isSeenWell({ ...corner, distanceIn: corner.distanceIn * 10 }, [counter], 1.5)).toBe(false);
    expect(isSeenWell({ ...corner, distanceIn: 0, target: [0, 400, 0] }, [counter], 1.5)).toBe(false);
  });

  test('an L is bounded by its six corners from the floor to its top', () => {
    const corners = [
      [0, 0],
      [96, 0],
      [96, 24],
      [24, 24],
      [24, 60],
      [0, 60],
    ].map(([xIn, yIn]) => ({ xIn: xIn!, yIn: yIn!, radiusIn: 0 }));
    const bounds = cornerBounds(pieceOf({ corners }));
    expect(bounds).toHaveLength(6);
    expect(bounds[3]!.least.slice(0, 2)).toEqual([24, 24]);
    expect(bounds[3]!.least[2]).toBe(0);
  });
});
