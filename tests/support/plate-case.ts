/** Plate problems for tests, told by what holds each point; and how far a number is off its published value. */

import { bendingMatrix, crackedBendingMatrix } from '../../src-core/plate/bending-matrix';
import { type MomentField, nodalMoments } from '../../src-core/plate/moments';
import { solvePlate } from '../../src-core/plate/plate-solve';
import type { StructuredMesh } from './structured-mesh';

/** How far `value` is off `expected`, in percent of it. */
export function percentOff(value: number, expected: number): number {
  return 100 * Math.abs(value / expected - 1);
}

/** Bending matrix of a plate of rigidity D = 1. */
export function unitBending(poisson: number): Float64Array {
  return crackedBendingMatrix({ rigidityLbfIn: 1, poisson }, 0, 1);
}

/** Bending matrix of 4000 psi concrete, E = 57000 sqrt(4000) = 3.605e6 psi. */
export function concreteBending(thicknessIn: number, poisson: number): Float64Array {
  return bendingMatrix(57_000 * Math.sqrt(4000), thicknessIn, poisson);
}

/**
 * Mask of held freedoms. `hold` gives the letters of those held at a point: w deflection, x slope along x, y slope along y.
 */
export function heldFreedoms(mesh: StructuredMesh, hold: (x: number, y: number) => string): Uint8Array {
  const fixed = new Uint8Array(3 * mesh.xIn.length);
  for (let i = 0; i < mesh.xIn.length; i++) {
    for (const letter of hold(mesh.xIn[i] ?? 0, mesh.yIn[i] ?? 0)) fixed[3 * i + 'wxy'.indexOf(letter)] = 1;
  }
  return fixed;
}

export interface SolvedCase {
  readonly mesh: StructuredMesh;
  readonly u: Float64Array;
  readonly supportForces: Float64Array;
  readonly moments: MomentField;
}

/** Solves a plate held as told under `loads`. */
export function solveCase(
  mesh: StructuredMesh,
  bending: Float64Array,
  hold: (x: number, y: number) => string,
  loads: Float64Array,
): SolvedCase {
  const solution = solvePlate({ mesh, bending, fixed: heldFreedoms(mesh, hold), springs: [], loads });
  if (!solution.ok) throw new Error(`freedom ${solution.row} of the test plate is loose`);
  return { mesh, ...solution, moments: nodalMoments(mesh, bending, solution.u) };
}

/** A displacement field given by w and its slopes. */
export function fieldOf(
  mesh: StructuredMesh,
  field: (x: number, y: number) => readonly [number, number, number],
): Float64Array {
  return Float64Array.from({ length: 3 * mesh.xIn.length }, (_, i) => {
    const node = Math.floor(i / 3);
    return field(mesh.xIn[node] ?? 0, mesh.yIn[node] ?? 0)[i % 3] ?? 0;
  });
}
