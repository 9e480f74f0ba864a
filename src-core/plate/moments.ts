/**
 * Moments from displacements by an operator built once a mesh and stiffness. Signs as in dkt: M = -Db k, sagging positive,
 * lbf-in per inch of width.
 *
 * Glossary
 *   entry    one node that a row of the operator reads: nine numbers, its three freedoms by Mx, My, Mxy
 */

import { LANES_PER_BANK } from './band-solve';
import {
  CURVATURE_ENTRIES,
  dktCurvature,
  dktCurvatureMatrix,
  FREEDOMS_PER_NODE,
  multiplyBending,
  type TriangleMesh,
  triangleGeometry,
} from './dkt';
import { nodeGraph } from './ordering';
import { bendingStep, type PlateLayout } from './plate-stiffness';

/** Moments at many points, lbf-in per inch of width: one number a node or a triangle. */
export interface MomentField {
  readonly mx: Float64Array;
  readonly my: Float64Array;
  readonly mxy: Float64Array;
}

/** Rows by entries: those of row i are `start[i]` up to `start[i + 1] - 1`. */
export interface MomentOperator {
  readonly start: Int32Array;
  readonly node: Int32Array;
  readonly values: Float64Array;
}

const CORNERS: readonly (readonly [number, number, number])[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const CENTROID: readonly [number, number, number] = [1 / 3, 1 / 3, 1 / 3];

/** Room for the moments of every row of an operator. */
export function createMomentField(operator: MomentOperator): MomentField {
  const count = operator.start.length - 1;
  return { mx: new Float64Array(count), my: new Float64Array(count), mxy: new Float64Array(count) };
}

/**
 * Operator for nodal moments: the corner moments of the triangles round a node, averaged by their areas. `bending` holds one
 * matrix for all triangles or one for each. Common practice, no source.
 */
export function momentOperator(mesh: TriangleMesh, bending: Float64Array): MomentOperator {
  const nodeCount = mesh.xIn.length;
  const triangleCount = mesh.triangles.length / 3;
  const step = bendingStep(bending, triangleCount);
  const areaRound = new Float64Array(nodeCount);
  for (let t = 0; t < triangleCount; t++) {
    const { areaIn2 } = triangleGeometry(mesh, t);
    for (let corner = 0; corner < 3; corner++) {
      const node = mesh.triangles[3 * t + corner]!;
      areaRound[node] = areaRound[node]! + areaIn2;
    }
  }
  const { start, node } = entriesRound(nodeCount, mesh.triangles);
  const values = new Float64Array(9 * node.length);
  const b = new Float64Array(CURVATURE_ENTRIES);
  const db = new Float64Array(CURVATURE_ENTRIES);
  for (let t = 0; t < triangleCount; t++) {
    const geometry = triangleGeometry(mesh, t);
    for (let corner = 0; corner < 3; corner++) {
      const row = mesh.triangles[3 * t + corner]!;
      multiplyBending(bending, step * t, dktCurvatureMatrix(geometry, CORNERS[corner]!, b), db);
      for (let other = 0; other < 3; other++) {
        const column = mesh.triangles[3 * t + other]!;
        let entry = start[row]!;
        while (node[entry] !== column) entry++;
        addEntry(values, entry, db, other, geometry.areaIn2 / areaRound[row]!);
      }
    }
  }
  return { start, node, values };
}

/** Operator for the moments at the centroid of each triangle. Source: Batoz, Bathe & Ho 1980. */
export function centroidMomentOperator(mesh: TriangleMesh, bending: Float64Array): MomentOperator {
  const triangleCount = mesh.triangles.length / 3;
  const step = bendingStep(bending, triangleCount);
  const start = Int32Array.from({ length: triangleCount + 1 }, (_, t) => 3 * t);
  const values = new Float64Array(CURVATURE_ENTRIES * triangleCount);
  const b = new Float64Array(CURVATURE_ENTRIES);
  const db = new Float64Array(CURVATURE_ENTRIES);
  for (let t = 0; t < triangleCount; t++) {
    multiplyBending(bending, step * t, dktCurvatureMatrix(triangleGeometry(mesh, t), CENTROID, b), db);
    for (let corner = 0; corner < 3; corner++) addEntry(values, 3 * t + corner, db, corner, 1);
  }
  return { start, node: Int32Array.from(mesh.triangles), values };
}

/** Each node followed by its neighbours. */
function entriesRound(
  nodeCount: number,
  triangles: Uint32Array,
): { readonly start: Int32Array; readonly node: Int32Array } {
  const graph = nodeGraph(nodeCount, triangles);
  const start = graph.start.map((at, i) => at + i);
  const node = new Int32Array(graph.list.length + nodeCount);
  for (let i = 0; i < nodeCount; i++) {
    node[start[i]!] = i;
    node.set(graph.list.subarray(graph.start[i]!, graph.start[i + 1]!), start[i]! + 1);
  }
  return { start, node };
}

/** Adds one corner's columns of -Db B, weighted, to an entry. */
function addEntry(
  values: Float64Array,
  entry: number,
  db: Float64Array,
  corner: number,
  weight: number,
): void {
  for (let moment = 0; moment < 3; moment++) {
    for (let f = 0; f < 3; f++) {
      const at = 9 * entry + 3 * moment + f;
      values[at] = values[at]! - weight * db[9 * moment + 3 * corner + f]!;
    }
  }
}

/** Moments of every row under the displacements `u` (three a node, mesh order), written into `into`. */
export function applyMomentOperator(
  operator: MomentOperator,
  u: Float64Array,
  into: MomentField,
): MomentField {
  const { start, node, values } = operator;
  let p = 0;
  for (let row = 0; row + 1 < start.length; row++) {
    let mx = 0;
    let my = 0;
    let mxy = 0;
    const end = start[row + 1]!;
    for (let entry = start[row]!; entry < end; entry++, p += 9) {
      const at = 3 * node[entry]!;
      const w = u[at]!;
      const gx = u[at + 1]!;
      const gy = u[at + 2]!;
      mx += values[p]! * w + values[p + 1]! * gx + values[p + 2]! * gy;
      my += values[p + 3]! * w + values[p + 4]! * gx + values[p + 5]! * gy;
      mxy += values[p + 6]! * w + values[p + 7]! * gx + values[p + 8]! * gy;
    }
    into.mx[row] = mx;
    into.my[row] = my;
    into.mxy[row] = mxy;
  }
  return into;
}

/**
 * Moments of every row for the first `lanes` of a bank of solutions as `backwardMany` leaves it, without unpacking. `operator` is as
 * `bankedOperator` gives. Four lanes go together, so that each number of the operator serves four solutions.
 */
export function applyBankedOperator(
  operator: MomentOperator,
  bank: Float64Array,
  lanes: number,
  into: readonly MomentField[],
): void {
  const { start, node, values } = operator;
  for (let lane = 0; lane < lanes; lane += 4) {
    const fields = [0, 1, 2, 3].map((k) => into[Math.min(lane + k, into.length - 1)]!);
    const [f0, f1, f2, f3] = fields as [MomentField, MomentField, MomentField, MomentField];
    let p = 0;
    for (let row = 0; row + 1 < start.length; row++) {
      let x0 = 0;
      let x1 = 0;
      let x2 = 0;
      let x3 = 0;
      let y0 = 0;
      let y1 = 0;
      let y2 = 0;
      let y3 = 0;
      let t0 = 0;
      let t1 = 0;
      let t2 = 0;
      let t3 = 0;
      const end = start[row + 1]!;
      for (let entry = start[row]!; entry < end; entry++) {
        let at = node[entry]! + lane;
        for (let freedom = 0; freedom < 3; freedom++, p++, at += LANES_PER_BANK) {
          const u0 = bank[at]!;
          const u1 = bank[at + 1]!;
          const u2 = bank[at + 2]!;
          const u3 = bank[at + 3]!;
          const vx = values[p]!;
          const vy = values[p + 3]!;
          const vt = values[p + 6]!;
          x0 += vx * u0;
          x1 += vx * u1;
          x2 += vx * u2;
          x3 += vx * u3;
          y0 += vy * u0;
          y1 += vy * u1;
          y2 += vy * u2;
          y3 += vy * u3;
          t0 += vt * u0;
          t1 += vt * u1;
          t2 += vt * u2;
          t3 += vt * u3;
        }
        p += 6;
      }
      f3.mx[row] = x3;
      f3.my[row] = y3;
      f3.mxy[row] = t3;
      f2.mx[row] = x2;
      f2.my[row] = y2;
      f2.mxy[row] = t2;
      f1.mx[row] = x1;
      f1.my[row] = y1;
      f1.mxy[row] = t1;
      f0.mx[row] = x0;
      f0.my[row] = y0;
      f0.mxy[row] = t0;
    }
  }
}

/** The operator with its nodes replaced by their places in a bank of right-hand sides. */
export function bankedOperator(operator: MomentOperator, layout: PlateLayout): MomentOperator {
  const { positionOf } = layout.order;
  return {
    ...operator,
    node: operator.node.map((node) => FREEDOMS_PER_NODE * LANES_PER_BANK * positionOf[node]!),
  };
}

/** Nodal moments of one solution; for many, keep the operator. */
export function nodalMoments(mesh: TriangleMesh, bending: Float64Array, u: Float64Array): MomentField {
  const operator = momentOperator(mesh, bending);
  return applyMomentOperator(operator, u, createMomentField(operator));
}

/** Centroid moments of one solution; for many, keep the operator. */
export function centroidMoments(mesh: TriangleMesh, bending: Float64Array, u: Float64Array): MomentField {
  const operator = centroidMomentOperator(mesh, bending);
  return applyMomentOperator(operator, u, createMomentField(operator));
}

/**
 * Moments Mx, My, Mxy, lbf-in per inch, at area coordinates `at` of one triangle, not averaged. Source: Batoz, Bathe & Ho 1980.
 */
export function dktMoments(
  mesh: TriangleMesh,
  triangle: number,
  at: readonly [number, number, number],
  solution: { readonly u: Float64Array; readonly bending: Float64Array },
): [number, number, number] {
  const { bending, u } = solution;
  const d = bendingStep(bending, mesh.triangles.length / 3) * triangle;
  const [kxx, kyy, kxy2] = dktCurvature(mesh, triangle, at, u);
  const row = (i: number): number =>
    -(bending[d + 3 * i]! * kxx + bending[d + 3 * i + 1]! * kyy + bending[d + 3 * i + 2]! * kxy2);
  return [row(0), row(1), row(2)];
}
