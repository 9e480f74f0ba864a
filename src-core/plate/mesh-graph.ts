import { isInsideRings, type MeshPoint, type MeshSegment, type Ring } from './mesh-region';

/**
 * The lines that a mesh keeps: rings and constraint segments, cut where they meet one another or a fixed point.
 * No vertex lies within the merging distance of an edge that it does not end, save where two ring edges do.
 */
export interface MeshGraph {
  readonly xIn: number[];
  readonly yIn: number[];
  readonly edges: GraphEdge[];
  /** Vertex of each fixed point, -1 outside the slab. */
  readonly fixedVertices: Int32Array;
}

export interface GraphEdge {
  a: number;
  b: number;
  readonly isRing: boolean;
}

/** Points nearer to one another than this are one node; a point nearer to an edge than this lies on it. A rough mesh may take more. */
export const MERGE_IN = 0.02;

/** Segments bend to the vertices that they pass within the merging distance; a cap on how often one is cut. */
const MAX_CUTS = 400;

/**
 * Lays fixed points and segments on the rings (inches). Fixed points go first, in the order given, so that a
 * segment bends to them and not the reverse; the parts of a segment outside the slab are left out. `mergeIn` is how near fixed
 * points become one vertex.
 */
export function buildGraph(
  rings: readonly Ring[],
  fixedPoints: readonly MeshPoint[],
  segments: readonly MeshSegment[],
  mergeIn = MERGE_IN,
): MeshGraph {
  const graph: MeshGraph = {
    xIn: [],
    yIn: [],
    edges: [],
    fixedVertices: new Int32Array(fixedPoints.length).fill(-1),
  };
  for (const ring of rings) {
    const first = graph.xIn.length;
    for (const [i, point] of ring.entries()) {
      graph.xIn.push(point.xIn);
      graph.yIn.push(point.yIn);
      graph.edges.push({ a: first + i, b: first + ((i + 1) % ring.length), isRing: true });
    }
  }
  for (const [i, point] of fixedPoints.entries()) {
    graph.fixedVertices[i] = placeVertex(graph, rings, point.xIn, point.yIn, mergeIn);
  }
  for (const segment of segments) {
    for (const [from, to] of insideParts(graph, rings, segment)) {
      const a = placeVertex(graph, rings, from.xIn, from.yIn);
      const b = placeVertex(graph, rings, to.xIn, to.yIn);
      if (a >= 0 && b >= 0) insertPieces(graph, rings, a, b);
    }
  }
  return graph;
}

/** Vertex at a point: one near enough, else one on an edge near enough, which it splits, else a new one; -1 outside. */
function placeVertex(
  graph: MeshGraph,
  rings: readonly Ring[],
  xIn: number,
  yIn: number,
  mergeIn = MERGE_IN,
): number {
  const { xIn: vx, yIn: vy, edges } = graph;
  let nearest = -1;
  let nearestIn = mergeIn;
  for (let v = 0; v < vx.length; v++) {
    const awayIn = Math.hypot(vx[v]! - xIn, vy[v]! - yIn);
    if (awayIn < nearestIn) {
      nearest = v;
      nearestIn = awayIn;
    }
  }
  if (nearest >= 0) return nearest;
  let onEdge = -1;
  nearestIn = mergeIn;
  for (let e = 0; e < edges.length; e++) {
    const { a, b } = edges[e]!;
    const awayIn = segmentDistanceIn(xIn, yIn, vx[a]!, vy[a]!, vx[b]!, vy[b]!);
    if (awayIn < nearestIn) {
      onEdge = e;
      nearestIn = awayIn;
    }
  }
  if (onEdge < 0) return isInsideRings(rings, xIn, yIn) ? addVertex(graph, xIn, yIn) : -1;

  const edge = edges[onEdge]!;
  const { a, b, isRing } = edge;
  const t = footRatio(xIn, yIn, vx[a]!, vy[a]!, vx[b]!, vy[b]!);
  const vertex = addVertex(graph, vx[a]! + t * (vx[b]! - vx[a]!), vy[a]! + t * (vy[b]! - vy[a]!));
  edge.b = vertex;
  edges.push({ a: vertex, b, isRing });
  return vertex;
}

function addVertex(graph: MeshGraph, xIn: number, yIn: number): number {
  graph.yIn.push(yIn);
  return graph.xIn.push(xIn) - 1;
}

/** The parts of a segment that lie inside the slab, found by cutting it at every ring. */
function insideParts(
  graph: MeshGraph,
  rings: readonly Ring[],
  segment: MeshSegment,
): [MeshPoint, MeshPoint][] {
  const { a, b } = segment;
  const dx = b.xIn - a.xIn;
  const dy = b.yIn - a.yIn;
  const lengthIn = Math.hypot(dx, dy);
  if (!(lengthIn > MERGE_IN)) return [];
  const cuts = [0, 1];
  for (const edge of graph.edges) {
    if (!edge.isRing) continue;
    const px = graph.xIn[edge.a]!;
    const py = graph.yIn[edge.a]!;
    if (segmentDistanceIn(px, py, a.xIn, a.yIn, b.xIn, b.yIn) < MERGE_IN) {
      cuts.push(footRatio(px, py, a.xIn, a.yIn, b.xIn, b.yIn));
    }
    const t = crossingRatio(a.xIn, a.yIn, b.xIn, b.yIn, px, py, graph.xIn[edge.b]!, graph.yIn[edge.b]!);
    if (t !== null) cuts.push(t);
  }
  cuts.sort((s, t) => s - t);
  const parts: [MeshPoint, MeshPoint][] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const s = cuts[i]!;
    const t = cuts[i + 1]!;
    if ((t - s) * lengthIn < MERGE_IN) continue;
    const middle = (s + t) / 2;
    if (!isInsideRings(rings, a.xIn + middle * dx, a.yIn + middle * dy)) continue;
    parts.push([
      { xIn: a.xIn + s * dx, yIn: a.yIn + s * dy },
      { xIn: a.xIn + t * dx, yIn: a.yIn + t * dy },
    ]);
  }
  return parts;
}

/** Lays an edge between two vertices, through the vertices it passes closely, cutting the edges it crosses. */
function insertPieces(graph: MeshGraph, rings: readonly Ring[], from: number, to: number): void {
  const { xIn: vx, yIn: vy, edges } = graph;
  const pending: [number, number][] = [[from, to]];
  for (let cuts = 0; cuts < MAX_CUTS; cuts++) {
    const piece = pending.pop();
    if (!piece) return;
    const [a, b] = piece;
    if (a === b || edges.some((edge) => (edge.a === a && edge.b === b) || (edge.a === b && edge.b === a)))
      continue;
    let via = passedVertex(graph, a, b);
    if (via < 0) {
      let nearest = Number.POSITIVE_INFINITY;
      for (const edge of edges) {
        if (edge.a === a || edge.b === a || edge.a === b || edge.b === b) continue;
        const ex = vx[edge.a]!;
        const ey = vy[edge.a]!;
        const t = crossingRatio(vx[a]!, vy[a]!, vx[b]!, vy[b]!, ex, ey, vx[edge.b]!, vy[edge.b]!);
        if (t !== null && t < nearest) nearest = t;
      }
      if (nearest < 1) {
        via = placeVertex(
          graph,
          rings,
          vx[a]! + nearest * (vx[b]! - vx[a]!),
          vy[a]! + nearest * (vy[b]! - vy[a]!),
        );
        // A crossing that merges with an end leaves nothing to keep apart from the edge crossed.
        if (via === a || via === b || via < 0) continue;
      }
    }
    if (via >= 0) pending.push([via, b], [a, via]);
    else if (isInsideRings(rings, (vx[a]! + vx[b]!) / 2, (vy[a]! + vy[b]!) / 2))
      edges.push({ a, b, isRing: false });
  }
}

/** The first vertex within the merging distance of the line between two others, -1 if none. */
function passedVertex(graph: MeshGraph, a: number, b: number): number {
  const { xIn: vx, yIn: vy } = graph;
  let first = -1;
  let firstRatio = 1;
  for (let v = 0; v < vx.length; v++) {
    if (v === a || v === b) continue;
    if (segmentDistanceIn(vx[v]!, vy[v]!, vx[a]!, vy[a]!, vx[b]!, vy[b]!) >= MERGE_IN) continue;
    const t = footRatio(vx[v]!, vy[v]!, vx[a]!, vy[a]!, vx[b]!, vy[b]!);
    if (t > 0 && t < firstRatio) {
      first = v;
      firstRatio = t;
    }
  }
  return first;
}

/** Distance of p from the segment ab, in the unit of the coordinates. */
export function segmentDistanceIn(
  px: number,
  py: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): number {
  const t = footRatio(px, py, ax, ay, bx, by);
  return Math.hypot(px - ax - t * (bx - ax), py - ay - t * (by - ay));
}

/** Where on ab, 0 to 1, the point nearest to p lies. */
export function footRatio(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const t = ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy);
  return Math.min(1, Math.max(0, t));
}

/** Where on ab it crosses cd, or null where it does not or runs alongside. */
function crossingRatio(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number | null {
  const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  if (c * d > 0 || c === d) return null;
  const s = c / (c - d);
  const t = (cx + s * (dx - cx) - ax) * (bx - ax) + (cy + s * (dy - cy) - ay) * (by - ay);
  const ratio = t / ((bx - ax) ** 2 + (by - ay) ** 2);
  return ratio >= 0 && ratio <= 1 ? ratio : null;
}
