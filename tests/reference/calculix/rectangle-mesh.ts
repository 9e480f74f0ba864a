import type { PlanNode, Triangle } from './plate-input';

/** A rectangle from (0, 0) cut into right triangles, diagonals turned alternately; node (i, j) is j * (columns + 1) + i. */
export function rectangleMesh(
  widthIn: number,
  depthIn: number,
  columns: number,
  rows: number,
): { nodes: PlanNode[]; triangles: Triangle[] } {
  const nodes: PlanNode[] = [];
  const triangles: Triangle[] = [];
  for (let j = 0; j <= rows; j += 1) {
    for (let i = 0; i <= columns; i += 1)
      nodes.push({ xIn: (widthIn * i) / columns, yIn: (depthIn * j) / rows });
  }
  for (let j = 0; j < rows; j += 1) {
    for (let i = 0; i < columns; i += 1) {
      const a = j * (columns + 1) + i;
      const [b, d] = [a + 1, a + columns + 1];
      const c = d + 1;
      if ((i + j) % 2 === 0) triangles.push([a, b, c], [a, c, d]);
      else triangles.push([a, b, d], [b, c, d]);
    }
  }
  return { nodes, triangles };
}
