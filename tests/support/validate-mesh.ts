import type { PlateMesh } from '../../src-core/plate/mesh';
import { meshQuality } from '../../src-core/plate/mesh-quality';
import { type MeshPoint, ringAreaIn2 } from '../../src-core/plate/mesh-region';

export interface MeshedRegion {
  readonly outer: readonly MeshPoint[];
  readonly holes: readonly (readonly MeshPoint[])[];
}

/** Share of the area by which the triangles' sum may miss it. */
const AREA_RATIO = 1e-9;
/** Nodes nearer than this are one node twice. */
const SAME_NODE_IN = 1e-6;

/** What is wrong with a mesh of an outline with cutouts, one sentence each; empty for a sound mesh. */
export function validateMesh(mesh: PlateMesh, region: MeshedRegion): string[] {
  const faults: string[] = [];
  const quality = meshQuality(mesh);
  const holesIn2 = region.holes.reduce((sum, hole) => sum + Math.abs(ringAreaIn2(hole)), 0);
  const areaIn2 = Math.abs(ringAreaIn2(region.outer)) - holesIn2;
  if (!(Math.abs(quality.areaIn2 - areaIn2) <= AREA_RATIO * areaIn2)) {
    faults.push(`triangles sum to ${quality.areaIn2} sq in, the slab has ${areaIn2}`);
  }
  if (!(quality.leastTriangleAreaIn2 > 0))
    faults.push(`a triangle has ${quality.leastTriangleAreaIn2} sq in`);
  if (quality.mostTrianglesAtAnEdge > 2)
    faults.push(`${quality.mostTrianglesAtAnEdge} triangles share an edge`);
  if (quality.eulerNumber !== 1 - region.holes.length) {
    faults.push(`Euler number ${quality.eulerNumber} with ${region.holes.length} cutouts`);
  }
  if (new Set(mesh.triangles).size !== mesh.xIn.length) faults.push('a node has no triangle');
  if (mesh.triangles.some((node) => node >= mesh.xIn.length))
    faults.push('a triangle names a node that is not there');
  const order = Array.from(mesh.xIn.keys()).sort((i, j) => mesh.xIn[i]! - mesh.xIn[j]!);
  for (const [place, i] of order.entries()) {
    for (let k = place + 1; k < order.length && mesh.xIn[order[k]!]! - mesh.xIn[i]! < SAME_NODE_IN; k++) {
      const awayIn = Math.abs(mesh.yIn[order[k]!]! - mesh.yIn[i]!);
      if (awayIn < SAME_NODE_IN) faults.push(`nodes ${i} and ${order[k]!} lie at one place`);
    }
  }
  return faults;
}
