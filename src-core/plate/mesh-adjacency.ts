import type { PlateMesh } from './mesh';

/** Neighbours of all nodes in one list: those of node i stand from `starts[i]` to before `starts[i + 1]`, rising. */
export interface NodeNeighbours {
  readonly starts: Uint32Array;
  readonly neighbours: Uint32Array;
}

/** The nodes that share an edge with each node. */
export function nodeNeighbours(mesh: PlateMesh): NodeNeighbours {
  const nodeCount = mesh.xIn.length;
  const of = Array.from({ length: nodeCount }, () => new Set<number>());
  forEachSide(mesh, (a, b) => {
    of[a]!.add(b);
    of[b]!.add(a);
  });
  const starts = new Uint32Array(nodeCount + 1);
  for (let node = 0; node < nodeCount; node++) starts[node + 1] = starts[node]! + of[node]!.size;
  const neighbours = new Uint32Array(starts[nodeCount]!);
  for (let node = 0; node < nodeCount; node++) {
    neighbours.set(Uint32Array.from(of[node]!).sort(), starts[node]!);
  }
  return { starts, neighbours };
}

/** The edges at the rim of the mesh, outside and round cutouts, as node pairs a, b with the slab left of a to b. */
export function boundaryEdges(mesh: PlateMesh): Uint32Array {
  const nodeCount = mesh.xIn.length;
  const open = new Map<number, number>();
  forEachSide(mesh, (a, b) => {
    if (!open.delete(b * nodeCount + a)) open.set(a * nodeCount + b, a);
  });
  const pairs: number[] = [];
  for (const [key, a] of open) pairs.push(a, key - a * nodeCount);
  return Uint32Array.from(pairs);
}

/** The nodes at the rim of the mesh, outside and round cutouts, rising. */
export function boundaryNodes(mesh: PlateMesh): Uint32Array {
  return Uint32Array.from(new Set(boundaryEdges(mesh))).sort();
}

function forEachSide(mesh: PlateMesh, visit: (a: number, b: number) => void): void {
  const { triangles } = mesh;
  for (let e = 0; e < triangles.length; e += 3) {
    visit(triangles[e]!, triangles[e + 1]!);
    visit(triangles[e + 1]!, triangles[e + 2]!);
    visit(triangles[e + 2]!, triangles[e]!);
  }
}
