import type { PlateMesh } from './mesh';

/** Where a point lies: the triangle, and its area coordinates (ratios) at the triangle's corners in order. */
export interface MeshPlace {
  readonly triangle: number;
  readonly l1: number;
  readonly l2: number;
  readonly l3: number;
}

export type MeshLocator = (xIn: number, yIn: number) => MeshPlace | null;

/** An area coordinate down to less than zero by this still counts as inside. */
const INSIDE_RATIO = 1e-9;
/** A point outside the mesh by no more than this is taken to the nearest triangle. */
const NEAR_IN = 1e-6;
/** More cells than this a triangle would only spread the buckets thin. */
const MAX_CELLS_PER_TRIANGLE = 2;

/**
 * A function that finds the triangle under a point (inches), by buckets of about the mesh size. On an edge it gives
 * one of the triangles there; within 1e-6 in outside the mesh the nearest triangle, with area coordinates of the
 * nearest place in it; farther out null.
 */
export function buildLocator(mesh: PlateMesh): MeshLocator {
  const { xIn, yIn, triangles } = mesh;
  const triangleCount = triangles.length / 3;
  let left = Number.POSITIVE_INFINITY;
  let bottom = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  for (let node = 0; node < xIn.length; node++) {
    left = Math.min(left, xIn[node]!);
    right = Math.max(right, xIn[node]!);
    bottom = Math.min(bottom, yIn[node]!);
    top = Math.max(top, yIn[node]!);
  }
  const fairIn = Math.sqrt(((right - left) * (top - bottom)) / (MAX_CELLS_PER_TRIANGLE * triangleCount));
  const cellIn = Math.max(mesh.sizeIn, fairIn);
  const columns = Math.floor((right - left) / cellIn) + 1;
  const rows = Math.floor((top - bottom) / cellIn) + 1;
  const columnOf = (x: number): number => Math.min(columns - 1, Math.max(0, Math.floor((x - left) / cellIn)));
  const rowOf = (y: number): number => Math.min(rows - 1, Math.max(0, Math.floor((y - bottom) / cellIn)));

  // Counted first and filled then: starts[cell] to starts[cell + 1] in `members` are the triangles of a cell.
  const starts = new Uint32Array(columns * rows + 1);
  forEachCell((_, cell) => {
    starts[cell + 1]! += 1;
  });
  for (let cell = 0; cell < columns * rows; cell++) starts[cell + 1]! += starts[cell]!;
  const members = new Uint32Array(starts[columns * rows]!);
  const filled = starts.slice();
  forEachCell((triangle, cell) => {
    members[filled[cell]!] = triangle;
    filled[cell]! += 1;
  });

  return (x, y) => {
    if (!(x >= left - NEAR_IN && x <= right + NEAR_IN && y >= bottom - NEAR_IN && y <= top + NEAR_IN))
      return null;
    const cell = rowOf(y) * columns + columnOf(x);
    for (let i = starts[cell]!; i < starts[cell + 1]!; i++) {
      const place = placeIn(mesh, members[i]!, x, y);
      if (Math.min(place.l1, place.l2, place.l3) >= -INSIDE_RATIO) return place;
    }
    let nearest: MeshPlace | null = null;
    let nearestIn = NEAR_IN;
    for (let i = starts[cell]!; i < starts[cell + 1]!; i++) {
      const { awayIn, place } = nearestPlaceIn(mesh, members[i]!, x, y);
      if (awayIn > nearestIn) continue;
      nearestIn = awayIn;
      nearest = place;
    }
    return nearest;
  };

  /** Every pair of a triangle and a cell that its box, widened by the tolerance, touches. */
  function forEachCell(visit: (triangle: number, cell: number) => void): void {
    for (let t = 0; t < triangleCount; t++) {
      const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
      const lastColumn = columnOf(Math.max(xIn[a]!, xIn[b]!, xIn[c]!) + NEAR_IN);
      const lastRow = rowOf(Math.max(yIn[a]!, yIn[b]!, yIn[c]!) + NEAR_IN);
      const firstColumn = columnOf(Math.min(xIn[a]!, xIn[b]!, xIn[c]!) - NEAR_IN);
      for (let row = rowOf(Math.min(yIn[a]!, yIn[b]!, yIn[c]!) - NEAR_IN); row <= lastRow; row++) {
        for (let column = firstColumn; column <= lastColumn; column++) visit(t, row * columns + column);
      }
    }
  }
}

function placeIn(mesh: PlateMesh, triangle: number, x: number, y: number): MeshPlace {
  const { xIn, yIn, triangles } = mesh;
  const a = triangles[3 * triangle]!;
  const b = triangles[3 * triangle + 1]!;
  const c = triangles[3 * triangle + 2]!;
  const bx = xIn[b]! - xIn[a]!;
  const by = yIn[b]! - yIn[a]!;
  const cx = xIn[c]! - xIn[a]!;
  const cy = yIn[c]! - yIn[a]!;
  const px = x - xIn[a]!;
  const py = y - yIn[a]!;
  const doubleAreaIn2 = bx * cy - by * cx;
  const l2 = (px * cy - py * cx) / doubleAreaIn2;
  const l3 = (bx * py - by * px) / doubleAreaIn2;
  return { triangle, l1: 1 - l2 - l3, l2, l3 };
}

/** The place in a triangle nearest to a point outside it: on one of the sides. */
function nearestPlaceIn(
  mesh: PlateMesh,
  triangle: number,
  x: number,
  y: number,
): { readonly awayIn: number; readonly place: MeshPlace } {
  const { xIn, yIn, triangles } = mesh;
  let awayIn = Number.POSITIVE_INFINITY;
  let side = 0;
  let ratio = 0;
  for (let k = 0; k < 3; k++) {
    const a = triangles[3 * triangle + k]!;
    const b = triangles[3 * triangle + ((k + 1) % 3)]!;
    const dx = xIn[b]! - xIn[a]!;
    const dy = yIn[b]! - yIn[a]!;
    const t = Math.min(1, Math.max(0, ((x - xIn[a]!) * dx + (y - yIn[a]!) * dy) / (dx * dx + dy * dy)));
    const sideAwayIn = Math.hypot(xIn[a]! + t * dx - x, yIn[a]! + t * dy - y);
    if (sideAwayIn >= awayIn) continue;
    awayIn = sideAwayIn;
    side = k;
    ratio = t;
  }
  const shares = [0, 0, 0];
  shares[side] = 1 - ratio;
  shares[(side + 1) % 3] = ratio;
  return { awayIn, place: { triangle, l1: shares[0]!, l2: shares[1]!, l3: shares[2]! } };
}
