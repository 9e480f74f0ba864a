import type { PlateMesh } from './mesh';

export interface MeshQuality {
  readonly nodeCount: number;
  readonly triangleCount: number;
  readonly edgeCount: number;
  /** Edges of one triangle only. */
  readonly rimEdgeCount: number;
  /** Most triangles at one edge: 2 in a sound mesh. */
  readonly mostTrianglesAtAnEdge: number;
  /** Nodes less edges plus triangles: 1 less the number of cutouts in a sound mesh of one piece. */
  readonly eulerNumber: number;
  readonly areaIn2: number;
  /** Negative or zero where a triangle is turned over. */
  readonly leastTriangleAreaIn2: number;
  readonly minAngleDeg: number;
  readonly maxAngleDeg: number;
  readonly shortestEdgeIn: number;
  readonly longestEdgeIn: number;
}

/** Counts, areas (square inches), angles (degrees) and edge lengths (inches) of a mesh. */
export function meshQuality(mesh: PlateMesh): MeshQuality {
  const { xIn, yIn, triangles } = mesh;
  const nodeCount = xIn.length;
  const atEdge = new Map<number, number>();
  let areaIn2 = 0;
  let leastTriangleAreaIn2 = Number.POSITIVE_INFINITY;
  let minAngleRad = Math.PI;
  let maxAngleRad = 0;
  let shortestEdgeIn = Number.POSITIVE_INFINITY;
  let longestEdgeIn = 0;
  for (let e = 0; e < triangles.length; e++) {
    const a = triangles[e]!;
    const b = triangles[e % 3 === 2 ? e - 2 : e + 1]!;
    const c = triangles[e % 3 === 0 ? e + 2 : e - 1]!;
    const key = Math.min(a, b) * nodeCount + Math.max(a, b);
    atEdge.set(key, (atEdge.get(key) ?? 0) + 1);
    const bx = xIn[b]! - xIn[a]!;
    const by = yIn[b]! - yIn[a]!;
    const cx = xIn[c]! - xIn[a]!;
    const cy = yIn[c]! - yIn[a]!;
    const doubleAreaIn2 = bx * cy - by * cx;
    const angleRad = Math.abs(Math.atan2(doubleAreaIn2, bx * cx + by * cy));
    minAngleRad = Math.min(minAngleRad, angleRad);
    maxAngleRad = Math.max(maxAngleRad, angleRad);
    const lengthIn = Math.hypot(bx, by);
    shortestEdgeIn = Math.min(shortestEdgeIn, lengthIn);
    longestEdgeIn = Math.max(longestEdgeIn, lengthIn);
    if (e % 3 > 0) continue;
    areaIn2 += doubleAreaIn2 / 2;
    leastTriangleAreaIn2 = Math.min(leastTriangleAreaIn2, doubleAreaIn2 / 2);
  }
  const counts = [...atEdge.values()];
  const triangleCount = triangles.length / 3;
  return {
    nodeCount,
    triangleCount,
    edgeCount: counts.length,
    rimEdgeCount: counts.filter((count) => count === 1).length,
    mostTrianglesAtAnEdge: counts.reduce((most, count) => Math.max(most, count), 0),
    eulerNumber: nodeCount - counts.length + triangleCount,
    areaIn2,
    leastTriangleAreaIn2,
    minAngleDeg: (minAngleRad * 180) / Math.PI,
    maxAngleDeg: (maxAngleRad * 180) / Math.PI,
    shortestEdgeIn,
    longestEdgeIn,
  };
}
