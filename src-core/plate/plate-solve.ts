/** One plate, held and sprung at nodes, under one load: for references and tests. Supports that only push are not its business. */

import { factorPlate } from './band-factor';
import { solveMany } from './band-solve';
import type { TriangleMesh } from './dkt';
import { assemblePlate, layOutPlate, plateForces } from './plate-stiffness';

export interface PlateProblem {
  readonly mesh: TriangleMesh;
  /** One bending matrix (9 numbers) for all triangles or one for each, lbf-in. */
  readonly bending: Float64Array;
  /** 1 for each freedom (3 * node + 0, 1 or 2) held at zero. */
  readonly fixed: Uint8Array;
  /** Springs under nodes, lbf/in. */
  readonly springs: readonly { readonly node: number; readonly stiffnessLbfPerIn: number }[];
  /** A number a freedom: lbf, and lbf-in for slopes. */
  readonly loads: Float64Array;
}

export type PlateSolution =
  | {
      readonly ok: true;
      /** Deflections (in, down positive) and slopes, three a node. */
      readonly u: Float64Array;
      /** Forces of the supports on the plate, lbf and lbf-in, down positive: a leg that pushes up shows negative. */
      readonly supportForces: Float64Array;
    }
  /** Nothing resists freedom `row`. */
  | { readonly ok: false; readonly row: number };

/** Displacements and support forces of a plate. Source: Batoz, Bathe & Ho 1980 by way of the files it calls. */
export function solvePlate(problem: PlateProblem): PlateSolution {
  const { mesh, bending, fixed, loads } = problem;
  const springs = new Float64Array(loads.length);
  for (const { node, stiffnessLbfPerIn } of problem.springs) {
    springs[3 * node] = springs[3 * node]! + stiffnessLbfPerIn;
  }
  const matrix = assemblePlate(mesh, bending, layOutPlate(mesh));
  const result = factorPlate(matrix, { fixed, springs });
  if (!result.ok) return result;
  const u = solveMany(result.factor, loads);
  const supportForces = plateForces(matrix, u);
  for (let i = 0; i < loads.length; i++) supportForces[i] = supportForces[i]! - loads[i]!;
  return { ok: true, u, supportForces };
}
