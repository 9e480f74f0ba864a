import type { Solid } from './types';

/**
 * Volume within closed shells, in3: a sixth of the triple product of each triangle's corners, summed.
 * Source: the divergence theorem, any handbook of mathematics. Corners are taken from the first one, so that a solid
 * far from the origin loses nothing.
 */
export function slabVolumeIn3({ positions, triangles }: Solid): number {
  const [ox, oy, oz] = [positions[0] ?? 0, positions[1] ?? 0, positions[2] ?? 0];
  let sixfoldIn3 = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ax, ay, az] = [positions[a]! - ox, positions[a + 1]! - oy, positions[a + 2]! - oz];
    const [bx, by, bz] = [positions[b]! - ox, positions[b + 1]! - oy, positions[b + 2]! - oz];
    const [cx, cy, cz] = [positions[c]! - ox, positions[c + 1]! - oy, positions[c + 2]! - oz];
    sixfoldIn3 += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return sixfoldIn3 / 6;
}
