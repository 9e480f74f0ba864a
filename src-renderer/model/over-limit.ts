/** The part of a map that passes the limit, to be hatched. */
import type { PieceMap } from '../../src-core/field-map';

/**
 * Triangles of the plan in which the bending share is above `limitShare`: x and y of each corner, cut where the share, linear
 * within a triangle of the map, passes the limit. Counter-clockwise as the map's own.
 */
export function trianglesOver(map: PieceMap, limitShare: number): Float32Array {
  const found: number[] = [];
  for (let t = 0; t < map.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => cornerOf(map, map.triangles[t + k]!));
    const cut = cutAbove(corners, limitShare);
    for (let k = 2; k < cut.length; k++) {
      for (const { x, y } of [cut[0]!, cut[k - 1]!, cut[k]!]) found.push(x, y);
    }
  }
  return Float32Array.from(found);
}

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly share: number;
}

function cornerOf(map: PieceMap, node: number): Corner {
  return { x: map.xIn[node]!, y: map.yIn[node]!, share: map.bendingShare[node]! };
}

/** The polygon of what lies above, walked edge by edge (Sutherland & Hodgman 1974, one clipping edge). */
function cutAbove(corners: readonly Corner[], limit: number): Corner[] {
  return corners.flatMap((from, k) => {
    const to = corners[(k + 1) % corners.length]!;
    const kept = from.share > limit ? [from] : [];
    if (from.share > limit === to.share > limit) return kept;
    const part = (limit - from.share) / (to.share - from.share);
    const at = (a: number, b: number) => a + (b - a) * part;
    return [...kept, { x: at(from.x, to.x), y: at(from.y, to.y), share: limit }];
  });
}
