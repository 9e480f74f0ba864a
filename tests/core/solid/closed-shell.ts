/** Tests of a solid that must be closed. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import type { Solid } from '../../../src-core/solid';

const JOBS = new URL('../../../assets/jobs/', import.meta.url);

/** Every example job by its file's name. */
export function exampleJobs(): { readonly file: string; readonly job: Job }[] {
  return readdirSync(JOBS)
    .filter((file) => file.endsWith('.json'))
    .map((file) => {
      const reading = readJobText(readFileSync(new URL(file, JOBS), 'utf8'));
      if (!reading.ok) throw new Error(`${file} cannot be read`);
      return { file, job: reading.job };
    });
}

/**
 * What keeps a solid from being closed, once vertices at one place are welded: directed edges that do not run exactly
 * as often one way as the other, or edges that more than two triangles share.
 */
export function openEdges(solid: Solid): string[] {
  return edgeUses(solid).flatMap(({ edge, count, back }) =>
    count === 1 && back === 1 ? [] : [`${edge}: ${count} one way, ${back} back`],
  );
}

/** The same for several closed shells that may touch: edges that do not run as often one way as the other. */
export function unbalancedEdges(solid: Solid): string[] {
  return edgeUses(solid).flatMap(({ edge, count, back }) => (count === back ? [] : [edge]));
}

function edgeUses({ positions, triangles }: Solid): { edge: string; count: number; back: number }[] {
  const numbers = new Map<string, number>();
  const welded = Array.from({ length: positions.length / 3 }, (_, vertex) => {
    const place = positions.slice(3 * vertex, 3 * vertex + 3).join(' ');
    if (!numbers.has(place)) numbers.set(place, numbers.size);
    return numbers.get(place)!;
  });
  const uses = new Map<string, number>();
  for (let corner = 0; corner < triangles.length; corner++) {
    const next = corner - (corner % 3) + ((corner + 1) % 3);
    const edge = `${welded[triangles[corner]!]}>${welded[triangles[next]!]}`;
    uses.set(edge, (uses.get(edge) ?? 0) + 1);
  }
  return [...uses].map(([edge, count]) => ({
    edge,
    count,
    back: uses.get(edge.split('>').reverse().join('>')) ?? 0,
  }));
}

/** Vertices whose normal is no unit vector, or points into the triangle's own back. */
export function wrongNormals({ positions, normals, triangles }: Solid): number[] {
  const wrong: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const edge = (p: number, q: number) =>
      [0, 1, 2].map((axis) => positions[3 * q + axis]! - positions[3 * p + axis]!);
    const [ux, uy, uz] = edge(a, b) as [number, number, number];
    const [vx, vy, vz] = edge(a, c) as [number, number, number];
    const face = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const vertex of [a, b, c]) {
      const normal = normals.slice(3 * vertex, 3 * vertex + 3);
      const outward = face.reduce((sum, part, axis) => sum + part * normal[axis]!, 0);
      if (Math.abs(Math.hypot(...normal) - 1) > 1e-5 || outward <= 0) wrong.push(vertex);
    }
  }
  return wrong;
}
