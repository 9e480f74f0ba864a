import Delaunator from 'delaunator';
import {
  canFlip,
  doubleArea,
  findHalfEdge,
  flipEdge,
  leavingEdges,
  nextOf,
  prevOf,
  type Triangulation,
} from './mesh-triangulation';

/** Nodes and the pieces of kept lines between them, before they are triangulated. */
export interface MeshSketch {
  readonly xIn: readonly number[];
  readonly yIn: readonly number[];
  readonly isFree: readonly boolean[];
  /** Graph edge that a node lies on, plus one; 0 for none. */
  readonly nodeLine: readonly number[];
  readonly pieces: readonly SketchPiece[];
}

export interface SketchPiece {
  readonly a: number;
  readonly b: number;
  /** Graph edge, plus one. */
  readonly line: number;
  readonly isRing: boolean;
}

/** Room for nodes added later, as a share of the nodes given and at least so many. */
const SPARE_NODE_RATIO = 1;
const SPARE_NODES = 1000;

/**
 * Triangulates the nodes (Delaunay), forces every piece to be an edge, and keeps the triangles inside the rings.
 * Sloan 1993, "A fast algorithm for generating constrained Delaunay triangulations", for the forcing.
 */
export function triangulateSketch(sketch: MeshSketch): Triangulation {
  const hull = hullTriangulation(sketch);
  for (const piece of sketch.pieces) {
    forceEdge(hull, piece.a, piece.b);
    const e = findHalfEdge(hull, piece.a, piece.b);
    const f = e >= 0 ? hull.twin[e]! : findHalfEdge(hull, piece.b, piece.a);
    if (e >= 0) hull.line[e] = piece.line;
    if (f >= 0) hull.line[f] = piece.line;
  }
  return insideOnly(hull, sketch);
}

/** Delaunay triangulation of all nodes, out to their convex hull. */
function hullTriangulation(sketch: MeshSketch): Triangulation {
  const nodeCount = sketch.xIn.length;
  const nodeRoom = nodeCount + Math.ceil(nodeCount * SPARE_NODE_RATIO) + SPARE_NODES;
  const coords = new Float64Array(2 * nodeCount);
  for (let i = 0; i < nodeCount; i++) {
    // The library counts y downwards; turned over, its triangles come out counter-clockwise here.
    coords[2 * i] = sketch.xIn[i]!;
    coords[2 * i + 1] = -sketch.yIn[i]!;
  }
  const { triangles, halfedges } = new Delaunator(coords);
  const mesh: Triangulation = {
    x: new Float64Array(nodeRoom),
    y: new Float64Array(nodeRoom),
    nodeCount,
    isFree: new Uint8Array(nodeRoom),
    nodeLine: new Int32Array(nodeRoom),
    leaving: new Int32Array(nodeRoom).fill(-1),
    corner: new Int32Array(6 * nodeRoom),
    twin: new Int32Array(6 * nodeRoom),
    line: new Int32Array(6 * nodeRoom),
    triangleCount: triangles.length / 3,
  };
  mesh.corner.set(triangles);
  mesh.twin.set(halfedges);
  for (let e = 0; e < triangles.length; e++) mesh.leaving[triangles[e]!] = e;
  for (let i = 0; i < nodeCount; i++) {
    mesh.x[i] = sketch.xIn[i]!;
    mesh.y[i] = sketch.yIn[i]!;
    mesh.isFree[i] = sketch.isFree[i] ? 1 : 0;
    mesh.nodeLine[i] = sketch.nodeLine[i]!;
  }
  return mesh;
}

/** Flips edges that cross the line from a to b until a and b are joined. */
function forceEdge(mesh: Triangulation, a: number, b: number): void {
  if (findHalfEdge(mesh, a, b) >= 0 || findHalfEdge(mesh, b, a) >= 0) return;
  const crossing = crossedEdges(mesh, a, b);
  const cap = 100 + 20 * crossing.length * crossing.length;
  for (let step = 0; crossing.length > 0; step++) {
    if (step > cap) throw new Error(`Line between nodes ${a} and ${b} cannot be forced into the mesh`);
    const [p, q] = crossing.shift()!;
    const e = findHalfEdge(mesh, p, q);
    if (mesh.line[e]! > 0) throw new Error(`Line between nodes ${a} and ${b} crosses the line ${p} to ${q}`);
    if (!canFlip(mesh, e)) {
      crossing.push([p, q]);
      continue;
    }
    const c = mesh.corner[prevOf(e)]!;
    const d = mesh.corner[prevOf(mesh.twin[e]!)]!;
    flipEdge(mesh, e);
    if (c === a || c === b || d === a || d === b) continue;
    if (doubleArea(mesh, a, b, c) * doubleArea(mesh, a, b, d) < 0) crossing.push([d, c]);
  }
}

/** End nodes of the edges that the line from a to b crosses, from a on. */
function crossedEdges(mesh: Triangulation, a: number, b: number): [number, number][] {
  const { corner, twin } = mesh;
  const crossed: [number, number][] = [];
  let e = firstCrossed(mesh, a, b);
  while (e >= 0) {
    // p lies right of the line, q left of it, and the line runs on into the triangle beyond.
    crossed.push([corner[e]!, corner[nextOf(e)]!]);
    const f = twin[e]!;
    if (f < 0) break;
    const beyond = corner[prevOf(f)]!;
    if (beyond === b) return crossed;
    e = doubleArea(mesh, a, b, beyond) > 0 ? nextOf(f) : prevOf(f);
  }
  throw new Error(`Line from node ${a} to node ${b} leaves the triangles or runs through a node`);
}

/** The edge opposite a that the line from a to b crosses first. */
function firstCrossed(mesh: Triangulation, a: number, b: number): number {
  for (const e of leavingEdges(mesh, a)) {
    const p = mesh.corner[nextOf(e)]!;
    const q = mesh.corner[prevOf(e)]!;
    if (doubleArea(mesh, a, b, p) < 0 && doubleArea(mesh, a, b, q) > 0 && doubleArea(mesh, p, q, b) < 0) {
      return nextOf(e);
    }
  }
  return -1;
}

/** Drops the triangles outside the rings: crossing a ring piece from the hull inwards changes side. */
function insideOnly(hull: Triangulation, sketch: MeshSketch): Triangulation {
  const { corner, twin, line, leaving } = hull;
  const isRingLine = new Set(sketch.pieces.filter((piece) => piece.isRing).map((piece) => piece.line));
  const edgeCount = 3 * hull.triangleCount;
  const side = new Int8Array(hull.triangleCount).fill(-1);
  const pending: number[] = [];
  const reach = (e: number, from: number): void => {
    const t = Math.floor(e / 3);
    if (side[t]! >= 0) return;
    side[t] = isRingLine.has(line[e]!) ? 1 - from : from;
    pending.push(t);
  };
  for (let e = 0; e < edgeCount; e++) if (twin[e]! < 0) reach(e, 0);
  for (let t = pending.pop(); t !== undefined; t = pending.pop()) {
    for (let e = 3 * t; e < 3 * t + 3; e++) if (twin[e]! >= 0) reach(twin[e]!, side[t]!);
  }

  // Close up the kept triangles in place; a kept one never moves to a later number.
  const moved = new Int32Array(hull.triangleCount).fill(-1);
  let kept = 0;
  for (let t = 0; t < hull.triangleCount; t++) if (side[t] === 1) moved[t] = kept++;
  leaving.fill(-1);
  for (let e = 0; e < edgeCount; e++) {
    const t = moved[Math.floor(e / 3)]!;
    if (t < 0) continue;
    const to = 3 * t + (e % 3);
    const f = twin[e]!;
    const across = f < 0 ? -1 : moved[Math.floor(f / 3)]!;
    corner[to] = corner[e]!;
    line[to] = line[e]!;
    twin[to] = across < 0 ? -1 : 3 * across + (f % 3);
    leaving[corner[to]!] = to;
  }
  hull.triangleCount = kept;
  return hull;
}
