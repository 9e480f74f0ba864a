/** Reads the map of a slab between its nodes. */
import type { PieceMap } from '../../src-core/field-map';

/** A point this far outside a triangle, as a share of it, still lies on it: rounding of the nodes. */
const EDGE_SHARE = 1e-5;

/** Bending share at a point of the plan, in, linear within the triangle that holds it; null off the slab. */
export function bendingAt(map: PieceMap, xIn: number, yIn: number): number | null {
  const { triangles, bendingShare } = map;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    const abx = map.xIn[b]! - map.xIn[a]!;
    const aby = map.yIn[b]! - map.yIn[a]!;
    const acx = map.xIn[c]! - map.xIn[a]!;
    const acy = map.yIn[c]! - map.yIn[a]!;
    const twiceIn2 = abx * acy - acx * aby;
    const px = xIn - map.xIn[a]!;
    const py = yIn - map.yIn[a]!;
    const atB = (px * acy - acx * py) / twiceIn2;
    const atC = (abx * py - px * aby) / twiceIn2;
    if (atB < -EDGE_SHARE || atC < -EDGE_SHARE || atB + atC > 1 + EDGE_SHARE) continue;
    return bendingShare[a]! * (1 - atB - atC) + bendingShare[b]! * atB + bendingShare[c]! * atC;
  }
  return null;
}
