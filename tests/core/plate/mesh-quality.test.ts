import { describe, expect, test } from 'vitest';
import type { PlateMesh } from '../../../src-core/plate/mesh';
import { boundaryEdges, boundaryNodes, nodeNeighbours } from '../../../src-core/plate/mesh-adjacency';
import { meshQuality } from '../../../src-core/plate/mesh-quality';
import { rectangle } from '../../support/mesh-shapes';
import { validateMesh } from '../../support/validate-mesh';

/** A 2 x 1 rectangle cut in four from its middle. */
const fourTriangles: PlateMesh = {
  xIn: Float64Array.of(0, 2, 2, 0, 1),
  yIn: Float64Array.of(0, 0, 1, 1, 0.5),
  triangles: Uint32Array.of(0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4),
  sizeIn: 1,
};
const region = { outer: rectangle(0, 0, 2, 1), holes: [] };

describe('the quality of a mesh', () => {
  test('a 2 x 1 in rectangle cut in four has 5 nodes, 8 edges, 2 sq in and a least angle of 26.57 deg', () => {
    const quality = meshQuality(fourTriangles);
    expect(quality.nodeCount).toBe(5);
    expect(quality.triangleCount).toBe(4);
    expect(quality.edgeCount).toBe(8);
    expect(quality.rimEdgeCount).toBe(4);
    expect(quality.mostTrianglesAtAnEdge).toBe(2);
    expect(quality.eulerNumber).toBe(1);
    expect(quality.areaIn2).toBeCloseTo(2, 12);
    expect(quality.leastTriangleAreaIn2).toBeCloseTo(0.5, 12);
    expect(quality.minAngleDeg).toBeCloseTo((Math.atan(0.5) * 180) / Math.PI, 9);
    expect(quality.maxAngleDeg).toBeCloseTo(180 - 2 * quality.minAngleDeg, 9);
    expect(quality.shortestEdgeIn).toBe(1);
    expect(quality.longestEdgeIn).toBe(2);
  });
});

describe('the mesh validator', () => {
  test('a sound mesh has no faults', () => {
    expect(validateMesh(fourTriangles, region)).toEqual([]);
  });

  test('a triangle turned over is a fault', () => {
    const triangles = fourTriangles.triangles.slice();
    triangles.set([1, 0, 4]);
    expect(validateMesh({ ...fourTriangles, triangles }, region).join()).toContain(
      'a triangle has -0.5 sq in',
    );
  });

  test('a missing triangle is a fault of area', () => {
    const triangles = fourTriangles.triangles.slice(0, 9);
    expect(validateMesh({ ...fourTriangles, triangles }, region).join()).toContain('sum to 1.5 sq in');
  });

  test('a triangle laid twice, a cutout that is not there and an idle node are faults', () => {
    const triangles = Uint32Array.of(...fourTriangles.triangles, 0, 1, 4);
    expect(validateMesh({ ...fourTriangles, triangles }, region).join()).toContain(
      '3 triangles share an edge',
    );
    const holed = { ...region, holes: [rectangle(0.5, 0.2, 0.6, 0.3)] };
    expect(validateMesh(fourTriangles, holed).join()).toContain('Euler number 1 with 1 cutouts');
    const idle = {
      ...fourTriangles,
      xIn: Float64Array.of(0, 2, 2, 0, 1, 1),
      yIn: Float64Array.of(0, 0, 1, 1, 0.5, 0.5),
    };
    const faults = validateMesh(idle, region).join();
    expect(faults).toContain('a node has no triangle');
    expect(faults).toContain('nodes 4 and 5 lie at one place');
  });
});

describe('who borders on whom', () => {
  test('the middle node borders on all four corners, a corner on two corners and the middle', () => {
    const { starts, neighbours } = nodeNeighbours(fourTriangles);
    const of = (node: number): number[] => Array.from(neighbours.slice(starts[node], starts[node + 1]));
    expect(of(4)).toEqual([0, 1, 2, 3]);
    expect(of(0)).toEqual([1, 3, 4]);
  });

  test('the rim runs counter-clockwise through the four corners', () => {
    expect(Array.from(boundaryNodes(fourTriangles))).toEqual([0, 1, 2, 3]);
    expect(Array.from(boundaryEdges(fourTriangles))).toEqual([0, 1, 1, 2, 2, 3, 3, 0]);
  });
});
