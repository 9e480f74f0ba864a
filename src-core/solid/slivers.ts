/** Triangles without height, which stitch a face to a longer edge below, are flipped away. */

/** A triangle lower than this over its longest side has no height, in. */
const NO_HEIGHT_IN = 1e-5;
/** Rounds of flips; each takes away all slivers that lie beside a sound triangle. */
const MOST_ROUNDS = 8;

/**
 * The triangles (three point numbers each) with every sliver's longest side flipped to the far corner of the triangle
 * beyond it. The shells stay closed and keep their shape; a sliver among slivers only may remain.
 */
export function flippedSlivers(points: readonly number[], corners: readonly number[]): readonly number[] {
  const slivers = sliversIn(points, corners);
  if (slivers.length === 0) return corners;
  const flipped = [...corners];
  let left = slivers;
  for (let round = 0; round < MOST_ROUNDS && left.length > 0; round++) {
    for (const corner of left) flip(flipped, corner);
    left = sliversIn(points, flipped);
  }
  return flipped;
}

/** For each sliver the corner at which its longest side begins. Two points that all but coincide make no sliver. */
function sliversIn(points: readonly number[], corners: readonly number[]): number[] {
  const slivers: number[] = [];
  for (let first = 0; first < corners.length; first += 3) {
    const a = corners[first]!;
    const b = corners[first + 1]!;
    const c = corners[first + 2]!;
    const ab = lengthIn(points, a, b);
    const bc = lengthIn(points, b, c);
    const ca = lengthIn(points, c, a);
    const longest = Math.max(ab, bc, ca);
    const around = ab + bc + ca;
    // Heron: sixteen times the square of the area.
    const heron = around * (around - 2 * ab) * (around - 2 * bc) * (around - 2 * ca);
    const heightIn = Math.sqrt(Math.max(0, heron)) / 2 / longest;
    if (heightIn >= NO_HEIGHT_IN || Math.min(ab, bc, ca) < NO_HEIGHT_IN) continue;
    slivers.push(first + [ab, bc, ca].indexOf(longest));
  }
  return slivers;
}

/** Turns the side a-b that a sliver a, b, c shares with its neighbour b, a, d into c-d, where no such side is yet. */
function flip(corners: number[], corner: number): void {
  const first = corner - (corner % 3);
  const a = corners[corner]!;
  const b = corners[first + ((corner + 1) % 3)]!;
  const c = corners[first + ((corner + 2) % 3)]!;
  const twin = findSide(corners, b, a);
  if (twin < 0) return;
  const beyond = twin - (twin % 3);
  const d = corners[beyond + ((twin + 2) % 3)]!;
  if (d === c || findSide(corners, c, d) >= 0 || findSide(corners, d, c) >= 0) return;
  [a, d, c].forEach((point, k) => {
    corners[first + k] = point;
  });
  [d, b, c].forEach((point, k) => {
    corners[beyond + k] = point;
  });
}

/** The corner at which the side from a to b begins, or -1. */
function findSide(corners: readonly number[], a: number, b: number): number {
  for (let corner = 0; corner < corners.length; corner++) {
    if (corners[corner] !== a) continue;
    if (corners[corner - (corner % 3) + ((corner + 1) % 3)] === b) return corner;
  }
  return -1;
}

function lengthIn(points: readonly number[], a: number, b: number): number {
  return Math.hypot(
    points[3 * b]! - points[3 * a]!,
    points[3 * b + 1]! - points[3 * a + 1]!,
    points[3 * b + 2]! - points[3 * a + 2]!,
  );
}
