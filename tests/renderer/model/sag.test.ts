import { describe, expect, test } from 'vitest';
import type { DeflectedShape } from '../../../src-core/field-map';
import { reactionMarks } from '../../../src-renderer/model/reaction-marks';
import {
  exaggerationFor,
  exaggerationOf,
  isSameMesh,
  outerSides,
  sagPositions,
} from '../../../src-renderer/model/sag';
import { squareMap } from './model-fixtures';

const map = squareMap([0, 0, 0, 0]);
const shape: DeflectedShape = {
  pieceId: 'square',
  words: '250 lbf sitting in the middle',
  bound: 'low',
  wIn: Float32Array.from([0, 0.01, 0.02, -0.005]),
  mostIn: 0.02,
  asIfHeld: false,
  contacts: [],
};

describe('how much larger a sag is drawn', () => {
  test('0.02 in on a 96 in slab is drawn 200 times larger, 4 in deep', () => {
    expect(exaggerationFor(0.02, 96)).toBe(200);
  });

  test('the factor is 1, 2 or 5 times a power of ten, and the drawing at most 6 % of the length', () => {
    for (const mostIn of [0.0007, 0.004, 0.013, 0.11, 0.9]) {
      const factor = exaggerationFor(mostIn, 96);
      expect([1, 2, 5]).toContain(Number(String(factor).replace(/0+$/, '')));
      expect(factor * mostIn).toBeLessThanOrEqual(0.06 * 96);
      expect(factor * mostIn).toBeGreaterThan((0.06 * 96) / 2.5 - 1e-9);
    }
  });

  test('a slab that does not bend, or bends by more than that, is drawn at its true size', () => {
    expect(exaggerationFor(0, 96)).toBe(1);
    expect(exaggerationFor(40, 96)).toBe(1);
  });

  test('a 10 in square that sags 0.02 in is drawn 20 times larger', () => {
    expect(exaggerationOf(map, shape)).toBe(20);
  });
});

describe('the bent surface', () => {
  test('each node goes down by its own sag times the factor, and up where it rises', () => {
    const positions = sagPositions(map, shape, 36, 100);
    const heights = [0, 1, 2, 3].map((node) => positions[node * 3 + 2]);
    [36, 35, 34, 36.5].forEach((expected, node) => {
      expect(heights[node]).toBeCloseTo(expected, 5);
    });
    expect(positions[6]).toBe(10);
  });

  test('a shape of another piece or of another mesh is not drawn on this one', () => {
    expect(isSameMesh(map, shape)).toBe(true);
    expect(isSameMesh(map, { ...shape, pieceId: 'other' })).toBe(false);
    expect(isSameMesh(map, { ...shape, wIn: new Float32Array(5) })).toBe(false);
  });

  test('two triangles of a square have four outer sides; the one between them is not among them', () => {
    const sides = outerSides(map.triangles);
    expect(sides).toHaveLength(8);
    const names = [0, 2, 4, 6].map((i) => [sides[i]!, sides[i + 1]!].sort().join(' '));
    expect(names.sort()).toEqual(['0 1', '0 3', '1 2', '2 3']);
  });
});

describe('reactions', () => {
  const at = (supportId: string, xIn: number, reactionLbf: number) => ({
    supportId,
    xIn,
    yIn: 0,
    reactionLbf,
  });

  test('300 lbf is drawn twice as long as 150 lbf, a tie the other way, and 450 lbf printed for the two of one support', () => {
    const { arrows, biggest } = reactionMarks([at('a', 0, 300), at('a', 10, 150), at('b', 20, -75)]);
    expect(arrows[0]!.lengthIn).toBeCloseTo(2 * arrows[1]!.lengthIn, 10);
    expect(arrows.map(({ isPush }) => isPush)).toEqual([true, true, false]);
    expect(biggest).toEqual({ supportId: 'a', xIn: 5, yIn: 0, totalLbf: 450 });
  });

  test('points that have come off get a ring each and one word a support', () => {
    const { off, offLabels, arrows } = reactionMarks([
      at('a', 0, 200),
      at('b', 10, 0),
      at('b', 20, 0),
      at('c', 30, 0),
    ]);
    expect(arrows).toHaveLength(1);
    expect(off).toHaveLength(3);
    expect(offLabels.map(({ xIn }) => xIn)).toEqual([10, 30]);
  });

  test('a force a hundredth of the biggest is still long enough to see', () => {
    const { arrows } = reactionMarks([at('a', 0, 500), at('b', 10, 5)]);
    expect(arrows[1]!.lengthIn).toBeGreaterThan(0.5);
  });

  test('a piece on nothing has no arrows', () => {
    expect(reactionMarks([])).toEqual({ arrows: [], off: [], offLabels: [], biggest: null });
  });
});
