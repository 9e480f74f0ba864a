import type { MeshGraph } from './mesh-graph';
import { triangleCosine } from './mesh-smooth';
import { type SpacingField, spacingAtIn } from './mesh-spacing';
import {
  isLower,
  leavingEdges,
  nextOf,
  prevOf,
  restoreDelaunay,
  splitEdge,
  splitTriangle,
  type TieRank,
  type Triangulation,
} from './mesh-triangulation';

/** Triangles narrower than this are mended. */
const NARROW_DEG = 26;
const NARROW_COSINE = Math.cos((NARROW_DEG * Math.PI) / 180);
/** Two lines that meet at less than this force narrow triangles between them, which no node can mend. */
const SHARP_CORNER_COSINE = Math.cos((60 * Math.PI) / 180);
/** No edge is made shorter than this share of the spacing wanted there. */
const LEAST_EDGE_RATIO = 0.3;

/** Cosines that differ by less than this count as equal. */
const EQUAL_COSINE = 1e-7;

interface Narrow {
  readonly corners: readonly [number, number, number];
  /** What to mend first: the narrowest, and of equal ones the nearest to the middle of the outline. */
  readonly order: readonly number[];
}

/**
 * Mends narrow triangles by a node at the centre of their circle, or in the middle of the kept line that this centre
 * would crowd (Ruppert 1995, "A Delaunay refinement algorithm for quality 2-dimensional mesh generation"). Worst
 * first, one round through the triangles that are narrow now; gives the count of nodes added.
 */
export function refineNarrow(
  mesh: Triangulation,
  graph: MeshGraph,
  field: SpacingField,
  rank: TieRank,
): number {
  const before = mesh.nodeCount;
  for (const narrow of narrowTriangles(mesh, graph, rank)) {
    // Room for one node and its triangles must remain; a mesh that needs more than this is left as it is.
    if (mesh.nodeCount + 2 > mesh.x.length) break;
    const t = triangleWith(mesh, narrow.corners);
    if (t >= 0) mendTriangle(mesh, field, t);
  }
  return mesh.nodeCount - before;
}

function narrowTriangles(mesh: Triangulation, graph: MeshGraph, rank: TieRank): Narrow[] {
  const { x, y, corner } = mesh;
  const narrow: Narrow[] = [];
  for (let t = 0; t < mesh.triangleCount; t++) {
    const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!];
    const cosine = triangleCosine(x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!);
    if (cosine <= NARROW_COSINE || isForced(mesh, graph, t)) continue;
    const e = shortestEdge(mesh, t);
    const order = [-Math.round(cosine / EQUAL_COSINE), ...rank(corner[e]!, corner[nextOf(e)]!)];
    narrow.push({ corners: [a, b, c], order });
  }
  return narrow.sort((s, t) => (isLower(s.order, t.order) ? -1 : isLower(t.order, s.order) ? 1 : 0));
}

/** Whether the narrow angle is the input's own, or lies across two lines that meet sharply. */
function isForced(mesh: Triangulation, graph: MeshGraph, t: number): boolean {
  const { corner, line, nodeLine } = mesh;
  const shortest = shortestEdge(mesh, t);
  if (line[nextOf(shortest)]! > 0 && line[prevOf(shortest)]! > 0) return true;
  const first = graph.edges[nodeLine[corner[shortest]!]! - 1];
  const second = graph.edges[nodeLine[corner[nextOf(shortest)]!]! - 1];
  if (!first || !second || first === second) return false;
  const shared = first.a === second.a || first.a === second.b ? first.a : first.b;
  if (shared !== second.a && shared !== second.b) return false;
  const p = first.a === shared ? first.b : first.a;
  const q = second.a === shared ? second.b : second.a;
  const ux = graph.xIn[p]! - graph.xIn[shared]!;
  const uy = graph.yIn[p]! - graph.yIn[shared]!;
  const vx = graph.xIn[q]! - graph.xIn[shared]!;
  const vy = graph.yIn[q]! - graph.yIn[shared]!;
  return ux * vx + uy * vy > SHARP_CORNER_COSINE * Math.hypot(ux, uy) * Math.hypot(vx, vy);
}

/** The triangle with these corners, if it is still there; -1 if not. */
function triangleWith(mesh: Triangulation, corners: readonly [number, number, number]): number {
  const { corner } = mesh;
  const [a, b, c] = corners;
  for (const e of leavingEdges(mesh, a)) {
    if (corner[nextOf(e)] === b && corner[prevOf(e)] === c) return Math.floor(e / 3);
  }
  return -1;
}

function mendTriangle(mesh: Triangulation, field: SpacingField, t: number): void {
  const { x, y, corner, line } = mesh;
  const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!];
  const centre = circleCentre(x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!);
  const leastIn = LEAST_EDGE_RATIO * spacingAtIn(field, centre.xIn, centre.yIn);

  // Walk towards the centre; a kept line in the way is split instead.
  let at = t;
  let crowded = -1;
  for (let step = 0; step < mesh.triangleCount; step++) {
    const out = edgeTowards(mesh, at, centre.xIn, centre.yIn);
    if (out < 0) break;
    if (line[out]! > 0) {
      crowded = out;
      break;
    }
    at = Math.floor(mesh.twin[out]! / 3);
  }
  if (crowded < 0) crowded = crowdedLine(mesh, at, centre.xIn, centre.yIn);
  if (crowded >= 0) {
    if (edgeIn(mesh, crowded) < 2 * leastIn) return;
    restoreDelaunay(mesh, around(mesh, splitEdge(mesh, crowded)));
    return;
  }
  for (let e = 3 * at; e < 3 * at + 3; e++) {
    if (Math.hypot(x[corner[e]!]! - centre.xIn, y[corner[e]!]! - centre.yIn) < leastIn) return;
  }
  restoreDelaunay(mesh, around(mesh, splitTriangle(mesh, at, centre.xIn, centre.yIn)));
}

/** The edge of triangle t beyond which the point lies farthest, -1 where it lies inside. */
function edgeTowards(mesh: Triangulation, t: number, xIn: number, yIn: number): number {
  const { x, y, corner } = mesh;
  let out = -1;
  let farthest = 0;
  for (let e = 3 * t; e < 3 * t + 3; e++) {
    const a = corner[e]!;
    const b = corner[nextOf(e)]!;
    const beyond = ((y[b]! - y[a]!) * (xIn - x[a]!) - (x[b]! - x[a]!) * (yIn - y[a]!)) / edgeIn(mesh, e);
    if (beyond > farthest) {
      farthest = beyond;
      out = e;
    }
  }
  return out;
}

/** A kept line of triangle t or of a neighbour that has the point in the circle over it, -1 if none. */
function crowdedLine(mesh: Triangulation, t: number, xIn: number, yIn: number): number {
  const { x, y, corner, twin, line } = mesh;
  const triangles = [t];
  for (let e = 3 * t; e < 3 * t + 3; e++) {
    if (twin[e]! >= 0 && line[e] === 0) triangles.push(Math.floor(twin[e]! / 3));
  }
  for (const triangle of triangles) {
    for (let e = 3 * triangle; e < 3 * triangle + 3; e++) {
      if (line[e] === 0) continue;
      const a = corner[e]!;
      const b = corner[nextOf(e)]!;
      if ((x[a]! - xIn) * (x[b]! - xIn) + (y[a]! - yIn) * (y[b]! - yIn) < 0) return e;
    }
  }
  return -1;
}

/** The edges of the triangles round a node. */
function around(mesh: Triangulation, node: number): number[] {
  return leavingEdges(mesh, node).flatMap((e) => [e, nextOf(e)]);
}

function shortestEdge(mesh: Triangulation, t: number): number {
  let shortest = 3 * t;
  for (let e = 3 * t + 1; e < 3 * t + 3; e++) {
    if (edgeIn(mesh, e) < edgeIn(mesh, shortest)) shortest = e;
  }
  return shortest;
}

function edgeIn(mesh: Triangulation, e: number): number {
  const { x, y, corner } = mesh;
  const a = corner[e]!;
  const b = corner[nextOf(e)]!;
  return Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!);
}

function circleCentre(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
): { readonly xIn: number; readonly yIn: number } {
  const dx = bx - ax;
  const dy = by - ay;
  const ex = cx - ax;
  const ey = cy - ay;
  const b2 = dx * dx + dy * dy;
  const c2 = ex * ex + ey * ey;
  const half = 0.5 / (dx * ey - dy * ex);
  return { xIn: ax + (ey * b2 - dy * c2) * half, yIn: ay + (dx * c2 - ex * b2) * half };
}
