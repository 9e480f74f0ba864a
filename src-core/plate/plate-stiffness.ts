/**
 * Stiffness of a meshed plate in profile form, in blocks of the three freedoms of a node.
 *
 * Glossary
 *   row      3 * position + freedom, position being the node's place in the elimination order
 *   block    the three rows of a position
 *   values   block after block; within a block, column after column from the first of the profile to the block's own
 *            last; within a column the three rows side by side:
 *
 *              values[offset[position] + 3 * (column - 3 * first[position]) + freedom]
 *
 *            Only columns up to the diagonal count; the upper half of the block on the diagonal mirrors the lower one.
 */

import { BENDING_ENTRIES } from './bending-matrix';
import { createDktRoom, dktStiffness, FREEDOMS_PER_NODE, type TriangleMesh, triangleGeometry } from './dkt';
import { firstPositions, type NodeOrder, nodeGraph, nodeParts, orderNodes } from './ordering';
import type { PlateParts } from './rigid-hold';

/** Where each entry of the matrix and of its factor lies. */
export interface PlateLayout {
  readonly nodeCount: number;
  readonly order: NodeOrder;
  /** First position of each position's profile. */
  readonly first: Int32Array;
  /** Start of each block in `values`; one more entry for the end. */
  readonly offset: Int32Array;
  readonly parts: PlateParts;
}

export interface PlateMatrix {
  readonly layout: PlateLayout;
  readonly values: Float64Array;
}

/** Elimination order and profile of a mesh. Build it once a mesh; every stiffness and factor of the mesh shares it. */
export function layOutPlate(mesh: TriangleMesh): PlateLayout {
  const nodeCount = mesh.xIn.length;
  const graph = nodeGraph(nodeCount, mesh.triangles);
  const order = orderNodes(graph, mesh.xIn, mesh.yIn);
  const first = firstPositions(graph, order);
  const offset = new Int32Array(nodeCount + 1);
  for (let position = 0; position < nodeCount; position++) {
    offset[position + 1] = offset[position]! + 9 * (position - first[position]! + 1);
  }
  const parts = { xIn: mesh.xIn, yIn: mesh.yIn, ...nodeParts(graph) };
  return { nodeCount, order, first, offset, parts };
}

/** Row of a freedom (3 * node + 0, 1 or 2) in the elimination order. */
export function eliminationRow(layout: PlateLayout, freedom: number): number {
  const node = Math.floor(freedom / FREEDOMS_PER_NODE);
  return FREEDOMS_PER_NODE * layout.order.positionOf[node]! + (freedom - FREEDOMS_PER_NODE * node);
}

/**
 * Stiffness of the free plate, lbf/in, lbf and lbf-in by its freedoms. `bending` holds one bending matrix (9 numbers) for
 * all triangles or one for each. Source: Batoz, Bathe & Ho 1980.
 */
export function assemblePlate(mesh: TriangleMesh, bending: Float64Array, layout: PlateLayout): PlateMatrix {
  const triangleCount = mesh.triangles.length / 3;
  const step = bendingStep(bending, triangleCount);
  const values = new Float64Array(layout.offset[layout.nodeCount]!);
  const room = createDktRoom();
  const element = room.stiffness;
  const { positionOf } = layout.order;
  for (let t = 0; t < triangleCount; t++) {
    dktStiffness(triangleGeometry(mesh, t), bending, step * t, room);
    for (let i = 0; i < 3; i++) {
      const row = positionOf[mesh.triangles[3 * t + i]!]!;
      for (let j = 0; j < 3; j++) {
        const column = positionOf[mesh.triangles[3 * t + j]!]!;
        if (column > row) continue;
        const at = layout.offset[row]! + 9 * (column - layout.first[row]!);
        for (let f = 0; f < 3; f++) {
          for (let g = 0; g < 3; g++) {
            values[at + 3 * g + f] = values[at + 3 * g + f]! + element[9 * (3 * i + f) + 3 * j + g]!;
          }
        }
      }
    }
  }
  return { layout, values };
}

/** How far to step in `bending` from one triangle to the next: 0 where one matrix serves all. A count. */
export function bendingStep(bending: Float64Array, triangleCount: number): number {
  if (bending.length === BENDING_ENTRIES) return 0;
  if (bending.length === BENDING_ENTRIES * triangleCount) return BENDING_ENTRIES;
  throw new Error(`${bending.length} bending entries for ${triangleCount} triangles`);
}

/**
 * Forces K u on the plate's freedoms (mesh order, lbf and lbf-in) at the displacements `u` (mesh order). What is left of it
 * after the loads is the supports' push.
 */
export function plateForces(matrix: PlateMatrix, u: Float64Array): Float64Array {
  const { layout, values } = matrix;
  const { nodeAt } = layout.order;
  const forces = new Float64Array(u.length);
  for (let row = 0; row < layout.nodeCount; row++) {
    const own = 3 * nodeAt[row]!;
    let at = layout.offset[row]!;
    for (let column = layout.first[row]!; column <= row; column++) {
      const other = 3 * nodeAt[column]!;
      for (let g = 0; g < 3; g++) {
        for (let f = 0; f < 3; f++) {
          const value = values[at++]!;
          forces[own + f] = forces[own + f]! + value * u[other + g]!;
          if (column < row) forces[other + g] = forces[other + g]! + value * u[own + f]!;
        }
      }
    }
  }
  return forces;
}
