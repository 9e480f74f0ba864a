import { describe, expect, test } from 'vitest';
import type { CutPoint } from '../../../src-renderer/model/section';
import { crossings, sectionFaces } from '../../../src-renderer/model/section';
import { grainPlaces, mergedSolid } from '../../../src-renderer/model/solid-arrays';
import { boxSolid } from './model-fixtures';

/** Area within a loop, in2 (shoelace). */
function areaIn2(loop: readonly CutPoint[]): number {
  let twice = 0;
  loop.forEach(([y, z], k) => {
    const [nextY, nextZ] = loop[(k + 1) % loop.length]!;
    twice += y * nextZ - nextY * z;
  });
  return Math.abs(twice) / 2;
}

describe('the face that a cut lays open', () => {
  const slab = boxSolid([0, 0, 34], [96, 24, 36]);

  test('a 24 x 2 in slab shows 48 sq in', () => {
    const faces = sectionFaces(slab, 40);
    expect(faces).toHaveLength(1);
    expect(areaIn2(faces[0]!.outer)).toBeCloseTo(48, 4);
  });

  test('a cut beside the slab shows nothing', () => {
    expect(sectionFaces(slab, -1)).toEqual([]);
    expect(sectionFaces(slab, 97)).toEqual([]);
  });

  test('a slab in two strips beside an opening shows two faces', () => {
    const strips = mergedSolid([boxSolid([0, 0, 34], [96, 5, 36]), boxSolid([0, 19, 34], [96, 24, 36])]);
    const faces = sectionFaces(strips, 48);
    expect(faces.map(({ outer }) => Math.round(areaIn2(outer)))).toEqual([10, 10]);
    expect(faces.every(({ holes }) => holes.length === 0)).toBe(true);
  });

  test('a 2 x 2 in tube of 1/8 in wall shows one face with a hollow of 1-3/4 in a side', () => {
    const tube = mergedSolid([
      boxSolid([0, 0, 0], [20, 2, 2]),
      boxSolid([0, 0.125, 0.125], [20, 1.875, 1.875]),
    ]);
    const faces = sectionFaces(tube, 10);
    expect(faces).toHaveLength(1);
    expect(faces[0]!.holes).toHaveLength(1);
    expect(areaIn2(faces[0]!.holes[0]!)).toBeCloseTo(1.75 ** 2, 4);
  });

  test('a cut right through corners of the solid still closes', () => {
    const stepped = mergedSolid([boxSolid([0, 0, 0], [10, 4, 4]), boxSolid([10, 0, 0], [20, 4, 2])]);
    const faces = sectionFaces(stepped, 10);
    expect(faces.map(({ outer }) => Math.round(areaIn2(outer)))).toEqual([16]);
  });
});

describe('steel in a cut', () => {
  const wire = (from: readonly number[], to: readonly number[]) => ({ from, to });

  test('of wires along and across, only those along are met, each at its own place', () => {
    const runs = [
      wire([1, 6, 35], [95, 6, 35]),
      wire([95, 8, 35], [1, 8, 35]),
      wire([40, 1, 35], [40, 23, 35]),
    ];
    expect(crossings(runs, 50)).toEqual([
      [6, 35],
      [8, 35],
    ]);
  });

  test('a slanting bar from (0, 0) to (40, 20) is met at y 5 where x is 10', () => {
    expect(crossings([wire([0, 0, 35], [40, 20, 35])], 10)).toEqual([[5, 35]]);
  });

  test('a bar that ends before the cut is not met', () => {
    expect(crossings([wire([1, 6, 35], [30, 6, 35])], 31)).toEqual([]);
  });
});

describe('solids made ready to draw', () => {
  test('two boxes as one keep their corners, and the second counts on from the first', () => {
    const both = mergedSolid([boxSolid([0, 0, 0], [1, 1, 1]), boxSolid([5, 0, 0], [6, 1, 1])]);
    expect(both.positions).toHaveLength(2 * 24 * 3);
    expect(both.inkLines).toHaveLength(12);
    expect(Math.min(...both.triangles.subarray(36))).toBe(24);
    expect(both.positions[both.triangles[36]! * 3]).toBeGreaterThanOrEqual(5);
  });

  test('grain runs along a stud: its second place grows with height on every upright face', () => {
    const stud = boxSolid([0, 0, 0], [1.5, 3.5, 40]);
    const places = grainPlaces(stud);
    for (let v = 0; v < stud.positions.length / 3; v++) {
      if (stud.normals[v * 3 + 2] !== 0) continue;
      expect(places[v * 2 + 1]).toBeCloseTo(stud.positions[v * 3 + 2]! / 24, 6);
    }
  });

  test('on the top of a slab the places are those of the plan, a tile every 24 in', () => {
    const slab = boxSolid([0, 0, 34], [96, 24, 36]);
    const places = grainPlaces(slab);
    for (let v = 0; v < slab.positions.length / 3; v++) {
      if (slab.normals[v * 3 + 2] !== 1) continue;
      expect(places[v * 2 + 1]).toBeCloseTo(slab.positions[v * 3]! / 24, 6);
      expect(places[v * 2]).toBeCloseTo(slab.positions[v * 3 + 1]! / 24, 6);
    }
  });
});
