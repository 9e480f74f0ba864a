/**
 * A triangulation that can be changed in place.
 *
 *            c            half-edge e = 3t + k runs from corner k of triangle t to the next corner,
 *           / \           counter-clockwise; its twin runs the other way in the neighbour, -1 at the slab's edge
 *    prev  /   \  next
 *         / t   \         twin[e]   the half-edge on the other side
 *        a-------b        line[e]   graph edge that this half-edge lies on, plus one; 0 where it may be flipped
 *            e
 */
export interface Triangulation {
  readonly x: Float64Array;
  readonly y: Float64Array;
  nodeCount: number;
  /** 1 where a node may be moved. */
  readonly isFree: Uint8Array;
  /** Graph edge that a node lies on, plus one; 0 for a free node and for a vertex of the graph. */
  readonly nodeLine: Int32Array;
  /** A half-edge that leaves each node, -1 for a node without triangles. */
  readonly leaving: Int32Array;
  readonly corner: Int32Array;
  readonly twin: Int32Array;
  readonly line: Int32Array;
  triangleCount: number;
}

/** Numbers that rank a cut from node a to node b, to compare one after the other. */
export type TieRank = (a: number, b: number) => readonly number[];

/** An edge counts as Delaunay while the sine of its two opposite angles' sum is above this. */
const FLIP_BELOW_SINE = -1e-9;
/** Angle sums this near to 180 deg are ties, settled by `settleTies`. */
const TIE_SINE = 1e-7;
const MAX_TIE_PASSES = 20;

export function nextOf(e: number): number {
  return e % 3 === 2 ? e - 2 : e + 1;
}

export function prevOf(e: number): number {
  return e % 3 === 0 ? e + 2 : e - 1;
}

/** Twice the area of the triangle a, b, c; positive counter-clockwise. */
export function doubleArea(mesh: Triangulation, a: number, b: number, c: number): number {
  const { x, y } = mesh;
  return (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);
}

/** The half-edges that leave a node: counter-clockwise round it, from the first at the rim if it lies there. */
export function leavingEdges(mesh: Triangulation, node: number): number[] {
  const { twin } = mesh;
  const start = mesh.leaving[node]!;
  if (start < 0) return [];
  let first = start;
  while (twin[first]! >= 0) {
    first = nextOf(twin[first]!);
    if (first === start) break;
  }
  const edges = [first];
  for (let e = twin[prevOf(first)]!; e >= 0 && e !== first; e = twin[prevOf(e)]!) edges.push(e);
  return edges;
}

/** The half-edge from a to b, -1 where the two are not joined that way round. */
export function findHalfEdge(mesh: Triangulation, a: number, b: number): number {
  return leavingEdges(mesh, a).find((e) => mesh.corner[nextOf(e)] === b) ?? -1;
}

/** Turns the edge between two triangles into the other diagonal of their four corners. */
export function flipEdge(mesh: Triangulation, e: number): void {
  //        c                    c
  //      / | \                /   \
  //     a  e  b    becomes   a --- b     (e runs up the page on the left)
  //      \ | /                \   /
  //        d                    d
  const { corner, twin, line, leaving } = mesh;
  const f = twin[e]!;
  const en = nextOf(e);
  const ep = prevOf(e);
  const fn = nextOf(f);
  const fp = prevOf(f);
  const from = corner[e]!;
  const to = corner[f]!;
  const left = corner[ep]!;
  const right = corner[fp]!;
  const outerE = twin[fp]!;
  const outerF = twin[ep]!;
  corner[e] = right;
  corner[f] = left;
  link(mesh, e, outerE);
  link(mesh, f, outerF);
  line[e] = line[fp]!;
  line[f] = line[ep]!;
  link(mesh, ep, fp);
  line[ep] = 0;
  line[fp] = 0;
  leaving[from] = fn;
  leaving[to] = en;
  leaving[left] = ep;
  leaving[right] = fp;
}

/** Puts a new node inside triangle t; gives the node. The edges round it still have to be made Delaunay. */
export function splitTriangle(mesh: Triangulation, t: number, xIn: number, yIn: number): number {
  const { corner, twin, line, leaving } = mesh;
  const p = addNode(mesh, xIn, yIn, 0);
  const [e0, e1, e2] = [3 * t, 3 * t + 1, 3 * t + 2];
  const [a, b, c] = [corner[e0]!, corner[e1]!, corner[e2]!];
  const t1 = 3 * mesh.triangleCount;
  const t2 = t1 + 3;
  mesh.triangleCount += 2;
  setTriangle(mesh, t1, b, c, p);
  setTriangle(mesh, t2, c, a, p);
  link(mesh, t1, twin[e1]!);
  link(mesh, t2, twin[e2]!);
  line[t1] = line[e1]!;
  line[t2] = line[e2]!;
  corner[e2] = p;
  line[e1] = 0;
  line[e2] = 0;
  link(mesh, e1, t1 + 2);
  link(mesh, t1 + 1, t2 + 2);
  link(mesh, t2 + 1, e2);
  leaving[a] = e0;
  leaving[b] = t1;
  leaving[c] = t2;
  leaving[p] = e2;
  return p;
}

/** Puts a new node in the middle of an edge; gives the node. The edges round it still have to be made Delaunay. */
export function splitEdge(mesh: Triangulation, e: number): number {
  const { x, y, corner, twin, line } = mesh;
  const a = corner[e]!;
  const b = corner[nextOf(e)]!;
  const m = addNode(mesh, (x[a]! + x[b]!) / 2, (y[a]! + y[b]!) / 2, line[e]!);
  const f = twin[e]!;
  const near = cutTriangle(mesh, e, m);
  if (f < 0) return m;
  const far = cutTriangle(mesh, f, m);
  link(mesh, e, far);
  link(mesh, f, near);
  return m;
}

/** Cuts the triangle left of e = a-b into a-m-c and m-b-c; gives the half-edge m-b. */
function cutTriangle(mesh: Triangulation, e: number, m: number): number {
  const { corner, twin, line, leaving } = mesh;
  const en = nextOf(e);
  const b = corner[en]!;
  const c = corner[prevOf(e)]!;
  const added = 3 * mesh.triangleCount;
  mesh.triangleCount += 1;
  setTriangle(mesh, added, m, b, c);
  twin[added] = -1;
  line[added] = line[e]!;
  link(mesh, added + 1, twin[en]!);
  line[added + 1] = line[en]!;
  corner[en] = m;
  line[en] = 0;
  link(mesh, en, added + 2);
  leaving[b] = added + 1;
  leaving[c] = prevOf(e);
  leaving[m] = added;
  return added;
}

function addNode(mesh: Triangulation, xIn: number, yIn: number, line: number): number {
  const node = mesh.nodeCount;
  mesh.x[node] = xIn;
  mesh.y[node] = yIn;
  mesh.isFree[node] = line === 0 ? 1 : 0;
  mesh.nodeLine[node] = line;
  mesh.nodeCount += 1;
  return node;
}

function setTriangle(mesh: Triangulation, e: number, a: number, b: number, c: number): void {
  mesh.corner[e] = a;
  mesh.corner[e + 1] = b;
  mesh.corner[e + 2] = c;
  mesh.line.fill(0, e, e + 3);
}

function link(mesh: Triangulation, e: number, f: number): void {
  mesh.twin[e] = f;
  if (f >= 0) mesh.twin[f] = e;
}

/** Sine of the sum of the two angles opposite an edge: negative where the other diagonal is the Delaunay one. */
function oppositeSine(mesh: Triangulation, e: number): number {
  const { x, y, corner, twin } = mesh;
  const f = twin[e]!;
  const a = corner[e]!;
  const b = corner[f]!;
  const c = corner[prevOf(e)]!;
  const d = corner[prevOf(f)]!;
  const cax = x[a]! - x[c]!;
  const cay = y[a]! - y[c]!;
  const cbx = x[b]! - x[c]!;
  const cby = y[b]! - y[c]!;
  const dax = x[a]! - x[d]!;
  const day = y[a]! - y[d]!;
  const dbx = x[b]! - x[d]!;
  const dby = y[b]! - y[d]!;
  const crossC = cax * cby - cay * cbx;
  const dotC = cax * cbx + cay * cby;
  const crossD = dbx * day - dby * dax;
  const dotD = dax * dbx + day * dby;
  const lengths =
    (cax * cax + cay * cay) * (cbx * cbx + cby * cby) * (dax * dax + day * day) * (dbx * dbx + dby * dby);
  return (crossC * dotD + dotC * crossD) / Math.sqrt(lengths);
}

/** Flips edges until those given, and those they disturb, are Delaunay as far as the kept lines allow. */
export function restoreDelaunay(mesh: Triangulation, stack: number[]): void {
  const { twin, line } = mesh;
  for (let e = stack.pop(); e !== undefined; e = stack.pop()) {
    if (twin[e]! < 0 || line[e]! > 0 || oppositeSine(mesh, e) >= FLIP_BELOW_SINE || !canFlip(mesh, e))
      continue;
    const f = twin[e]!;
    flipEdge(mesh, e);
    stack.push(e, nextOf(e), f, nextOf(f));
  }
}

/** All edges of the mesh, each once, as work for `restoreDelaunay`. */
export function allEdges(mesh: Triangulation): number[] {
  const edges: number[] = [];
  for (let e = 0; e < 3 * mesh.triangleCount; e++) if (mesh.twin[e]! > e) edges.push(e);
  return edges;
}

/** Whether the other diagonal lies inside the four corners. */
export function canFlip(mesh: Triangulation, e: number): boolean {
  const { corner, twin } = mesh;
  const f = twin[e]!;
  const c = corner[prevOf(e)]!;
  const d = corner[prevOf(f)]!;
  return doubleArea(mesh, c, d, corner[f]!) > 0 && doubleArea(mesh, d, c, corner[e]!) > 0;
}

/**
 * Four corners on one circle may be cut either way; the cut with the lower rank is taken, so that the choice comes
 * from the slab and not from rounding.
 */
export function settleTies(mesh: Triangulation, rank: TieRank): void {
  const { corner, twin, line } = mesh;
  for (let pass = 0; pass < MAX_TIE_PASSES; pass++) {
    let flips = 0;
    for (let e = 0; e < 3 * mesh.triangleCount; e++) {
      const f = twin[e]!;
      if (f < e || line[e]! > 0 || Math.abs(oppositeSine(mesh, e)) > TIE_SINE || !canFlip(mesh, e)) continue;
      if (!isLower(rank(corner[prevOf(e)]!, corner[prevOf(f)]!), rank(corner[e]!, corner[f]!))) continue;
      flipEdge(mesh, e);
      flips++;
    }
    if (flips === 0) return;
  }
}

/** Whether the first of two rankings comes before the second. */
export function isLower(first: readonly number[], second: readonly number[]): boolean {
  for (let i = 0; i < first.length; i++) {
    const difference = first[i]! - second[i]!;
    if (Math.abs(difference) > TIE_SINE) return difference < 0;
  }
  return false;
}
