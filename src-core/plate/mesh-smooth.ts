import { nextOf, prevOf, type Triangulation } from './mesh-triangulation';

/** Cosine of an angle that needs no improving. */
const GOOD_COSINE = Math.cos((40 * Math.PI) / 180);
/** A move that gains less than this in the cosine is left, lest rounding decide. */
const LEAST_GAIN = 1e-6;

/**
 * Moves every free node to the middle of its neighbours where that widens the narrowest angle round it. All nodes
 * move at once, from the places before the pass, so that their order does not matter; a node whose move turns out
 * to harm a triangle together with its neighbour's move goes back.
 */
export function smoothNodes(mesh: Triangulation): void {
  const { x, y, corner, isFree, nodeCount, triangleCount } = mesh;
  const oldX = x.slice(0, nodeCount);
  const oldY = y.slice(0, nodeCount);
  const worst = new Float64Array(nodeCount);
  const newX = oldX.slice();
  const newY = oldY.slice();
  const isMoved = new Uint8Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) {
    if (isFree[node] === 0 || mesh.leaving[node]! < 0) continue;
    worst[node] = starCosine(mesh, node, x[node]!, y[node]!);
    if (worst[node]! <= GOOD_COSINE) continue;
    const { xIn, yIn } = middleOfNeighbours(mesh, node);
    if (starCosine(mesh, node, xIn, yIn) > worst[node]! - LEAST_GAIN) continue;
    newX[node] = xIn;
    newY[node] = yIn;
    isMoved[node] = 1;
  }
  x.set(newX);
  y.set(newY);

  // Each round takes back at least one move, or ends.
  for (let harm = true; harm; ) {
    harm = false;
    for (let t = 0; t < triangleCount; t++) {
      const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!];
      if (isMoved[a]! + isMoved[b]! + isMoved[c]! === 0) continue;
      const allowed = Math.max(isMoved[a]! && worst[a]!, isMoved[b]! && worst[b]!, isMoved[c]! && worst[c]!);
      if (triangleCosine(x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!) <= allowed) continue;
      for (const node of [a, b, c]) {
        if (isMoved[node] === 0) continue;
        x[node] = oldX[node]!;
        y[node] = oldY[node]!;
        isMoved[node] = 0;
        harm = true;
      }
    }
  }
}

function middleOfNeighbours(
  mesh: Triangulation,
  node: number,
): { readonly xIn: number; readonly yIn: number } {
  const { x, y, corner, twin } = mesh;
  const start = mesh.leaving[node]!;
  let xIn = 0;
  let yIn = 0;
  let count = 0;
  let e = start;
  do {
    const neighbour = corner[nextOf(e)]!;
    xIn += x[neighbour]!;
    yIn += y[neighbour]!;
    count++;
    e = twin[prevOf(e)]!;
  } while (e !== start);
  return { xIn: xIn / count, yIn: yIn / count };
}

/** Largest cosine, that is of the narrowest angle, of the triangles round a free node if it lay at the given place. */
function starCosine(mesh: Triangulation, node: number, xIn: number, yIn: number): number {
  const { x, y, corner, twin } = mesh;
  const start = mesh.leaving[node]!;
  let worst = -1;
  let e = start;
  do {
    const b = corner[nextOf(e)]!;
    const c = corner[prevOf(e)]!;
    worst = Math.max(worst, triangleCosine(xIn, yIn, x[b]!, y[b]!, x[c]!, y[c]!));
    e = twin[prevOf(e)]!;
  } while (e !== start);
  return worst;
}

/** Cosine of the narrowest angle of a triangle; 2 where it is not counter-clockwise. */
export function triangleCosine(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
): number {
  const ab = (bx - ax) ** 2 + (by - ay) ** 2;
  const bc = (cx - bx) ** 2 + (cy - by) ** 2;
  const ca = (ax - cx) ** 2 + (ay - cy) ** 2;
  if (!((bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0)) return 2;
  // The narrowest angle faces the shortest side.
  if (ab <= bc && ab <= ca) return (bc + ca - ab) / (2 * Math.sqrt(bc * ca));
  if (bc <= ca) return (ca + ab - bc) / (2 * Math.sqrt(ca * ab));
  return (ab + bc - ca) / (2 * Math.sqrt(ab * bc));
}
