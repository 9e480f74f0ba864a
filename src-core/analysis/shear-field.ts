/**
 * Shear of a thin plate from the slope of its moments, Q = grad M, averaged round each node.
 * Next to a point of contact or the edge of a load the thin-plate shear means little (punching looks there), so nodes nearer
 * than one thickness are left out. Source: Timoshenko & Woinowsky-Krieger, equilibrium of a plate element.
 */
import type { MomentField, PlateMesh } from '../plate';
import type { Contact, LiveLoad } from './types';

export interface ShearReader {
  readonly mesh: PlateMesh;
  readonly widthIn: number;
  /** Nodes that may govern. */
  readonly open: Uint8Array;
  /** Shear at one node, lbf/in. */
  readonly at: (field: MomentField, node: number) => number;
  readonly qx: Float64Array;
  readonly qy: Float64Array;
  /** By triangle, nine numbers; see `cornerShares`. */
  readonly shares: Float64Array;
}

/** Prepares shear reading for a mesh; `thicknessIn` is the distance kept from contacts. */
export function shearReader(mesh: PlateMesh, contacts: readonly Contact[], thicknessIn: number): ShearReader {
  const n = mesh.xIn.length;
  const open = new Uint8Array(n).fill(1);
  for (const { at } of contacts)
    for (let i = 0; i < n; i++) {
      const dx = mesh.xIn[i]! - at.xIn;
      const dy = mesh.yIn[i]! - at.yIn;
      if (dx * dx + dy * dy < thicknessIn * thicknessIn) open[i] = 0;
    }
  const shares = cornerShares(mesh);
  const qx = new Float64Array(n);
  const qy = new Float64Array(n);
  const reader: ShearReader = {
    mesh,
    widthIn: 2 * mesh.sizeIn,
    open,
    qx,
    qy,
    shares,
    at: (field, node) => {
      fillShear(reader, field);
      return Math.hypot(qx[node]!, qy[node]!);
    },
  };
  return reader;
}

/** Largest shear of a case beyond `least`, away from its load patch; null where none is. */
export function worstShear(
  reader: ShearReader,
  field: MomentField,
  live: LiveLoad,
  least: number,
): { readonly shearLbfPerIn: number; readonly node: number } | null {
  fillShear(reader, field);
  const { mesh, open, qx, qy } = reader;
  let bestSquare = least * least;
  let bestNode = -1;
  for (let i = 0; i < open.length; i++) {
    if (open[i] === 0) continue;
    const square = qx[i]! * qx[i]! + qy[i]! * qy[i]!;
    if (square <= bestSquare || isUnder(live, mesh.xIn[i]!, mesh.yIn[i]!, mesh.sizeIn)) continue;
    bestSquare = square;
    bestNode = i;
  }
  return bestNode < 0 ? null : { shearLbfPerIn: Math.sqrt(bestSquare), node: bestNode };
}

function isUnder(live: LiveLoad, x: number, y: number, marginIn: number): boolean {
  if (live.kind !== 'roving') return false;
  const reach = Math.hypot(live.widthIn, live.depthIn) / 2 + marginIn;
  return Math.hypot(x - live.centre.xIn, y - live.centre.yIn) < reach;
}

function fillShear(reader: ShearReader, field: MomentField): void {
  const { mesh, qx, qy, shares } = reader;
  const { triangles } = mesh;
  const { mx, my, mxy } = field;
  qx.fill(0);
  qy.fill(0);
  for (let t = 0, p = 0; t < triangles.length; t += 3, p += 9) {
    let x = 0;
    let y = 0;
    for (let k = 0; k < 3; k++) {
      const node = triangles[t + k]!;
      x += shares[p + k]! * mx[node]! + shares[p + 3 + k]! * mxy[node]!;
      y += shares[p + k]! * mxy[node]! + shares[p + 3 + k]! * my[node]!;
    }
    for (let k = 0; k < 3; k++) {
      const node = triangles[t + k]!;
      qx[node] = qx[node]! + x * shares[p + 6 + k]!;
      qy[node] = qy[node]! + y * shares[p + 6 + k]!;
    }
  }
}

/** By triangle: slopes of its shape functions along x (3) and y (3), and its share of the area round each corner (3). */
function cornerShares(mesh: PlateMesh): Float64Array {
  const { triangles, xIn, yIn } = mesh;
  const shares = new Float64Array(triangles.length * 3);
  const around = new Float64Array(xIn.length);
  const twiceArea = (t: number): number => {
    const [i, j, k] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    return (xIn[j]! - xIn[i]!) * (yIn[k]! - yIn[i]!) - (xIn[k]! - xIn[i]!) * (yIn[j]! - yIn[i]!);
  };
  for (let t = 0; t < triangles.length; t += 3)
    for (let c = 0; c < 3; c++) around[triangles[t + c]!] = around[triangles[t + c]!]! + twiceArea(t);
  for (let t = 0, p = 0; t < triangles.length; t += 3, p += 9) {
    const twice = twiceArea(t);
    for (let c = 0; c < 3; c++) {
      const next = triangles[t + ((c + 1) % 3)]!;
      const last = triangles[t + ((c + 2) % 3)]!;
      shares[p + c] = (yIn[next]! - yIn[last]!) / twice;
      shares[p + 3 + c] = (xIn[last]! - xIn[next]!) / twice;
      shares[p + 6 + c] = twice / around[triangles[t + c]!]!;
    }
  }
  return shares;
}
