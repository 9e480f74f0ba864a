/**
 * Shear of a thin plate from the slope of its moments, Q = grad M, averaged along a line across the shear.
 * One-way shear is the action of a wide beam: beside a point of contact, the edge of a load or the corner of an opening the
 * thin-plate shear has no limit and means nothing (punching looks there). So nodes nearer than one thickness to a contact or
 * the load are left out, and the rest is averaged over four thicknesses. Source of Q: Timoshenko & Woinowsky-Krieger,
 * equilibrium of a plate element; widths: decision of this project, no source.
 */
import type { Locate, MomentField, PlateMesh } from '../plate';
import { averagingWeights } from '../plate';
import type { Contact, LiveLoad } from './types';

export interface ShearReader {
  readonly mesh: PlateMesh;
  readonly locate: Locate;
  readonly widthIn: number;
  /** Nodes that may govern. */
  readonly open: Uint8Array;
  readonly qx: Float64Array;
  readonly qy: Float64Array;
  /** Rows by nodes that a slope reads, those of node i from start[i] to start[i + 1] - 1, two slopes each. */
  readonly start: Int32Array;
  readonly node: Int32Array;
  readonly slope: Float64Array;
}

/** Shear at a node along the direction in which it acts there, averaged. */
export interface ShearFound {
  readonly shearLbfPerIn: number;
  readonly widthIn: number;
  readonly node: number;
  readonly alongRad: number;
}

/** Places averaged a case: the highest peaks, a quarter of the averaging width apart at the least. */
const MOST_PLACES = 8;
/** Averaging width as a multiple of the thickness. */
const WIDTH_SHARE = 4;
/** Below this share of the averaging line on open slab a mean says too little. */
const LEAST_OPEN_SHARE = 0.5;

/** Prepares shear reading for a mesh; `thicknessIn` is the distance kept from contacts. */
export function shearReader(
  mesh: PlateMesh,
  locate: Locate,
  contacts: readonly Contact[],
  thicknessIn: number,
): ShearReader {
  const n = mesh.xIn.length;
  const open = new Uint8Array(n).fill(1);
  for (const { at } of contacts)
    for (let i = 0; i < n; i++) {
      const dx = mesh.xIn[i]! - at.xIn;
      const dy = mesh.yIn[i]! - at.yIn;
      if (dx * dx + dy * dy < thicknessIn * thicknessIn) open[i] = 0;
    }
  return {
    mesh,
    locate,
    widthIn: WIDTH_SHARE * thicknessIn,
    open,
    qx: new Float64Array(n),
    qy: new Float64Array(n),
    ...slopeOperator(mesh),
  };
}

/** Largest averaged shear of a case beyond `least`, away from its load patch; null where none is. */
export function worstShear(
  reader: ShearReader,
  field: MomentField,
  live: LiveLoad,
  least: number,
): ShearFound | null {
  fillShear(reader, field);
  const { mesh, open, qx, qy } = reader;
  const size = (i: number) => qx[i]! * qx[i]! + qy[i]! * qy[i]!;
  const offers: number[] = [];
  for (let i = 0; i < open.length; i++) {
    if (open[i] === 0 || size(i) <= least * least) continue;
    if (!isUnder(live, mesh.xIn[i]!, mesh.yIn[i]!, mesh.sizeIn)) offers.push(i);
  }
  offers.sort((a, b) => size(b) - size(a));
  let best: ShearFound | null = null;
  let most = least;
  const tried: number[] = [];
  for (const node of offers) {
    if (size(node) <= most * most || tried.length === MOST_PLACES) break;
    if (tried.some((other) => isNear(mesh, node, other, reader.widthIn / 4))) continue;
    tried.push(node);
    const alongRad = Math.atan2(qy[node]!, qx[node]!);
    const average = averageShear(reader, node, alongRad);
    if (average === null || average.shearLbfPerIn <= most) continue;
    most = average.shearLbfPerIn;
    best = { ...average, node, alongRad };
  }
  return best;
}

function isNear(mesh: PlateMesh, a: number, b: number, withinIn: number): boolean {
  const dx = mesh.xIn[a]! - mesh.xIn[b]!;
  const dy = mesh.yIn[a]! - mesh.yIn[b]!;
  return dx * dx + dy * dy < withinIn * withinIn;
}

/** Shear of another field at the place and in the direction of one that was found, averaged over the same line. */
export function shearAlong(reader: ShearReader, field: MomentField, found: ShearFound): number {
  fillShear(reader, field);
  return averageShear(reader, found.node, found.alongRad)?.shearLbfPerIn ?? 0;
}

function averageShear(
  reader: ShearReader,
  node: number,
  alongRad: number,
): { readonly shearLbfPerIn: number; readonly widthIn: number } | null {
  const { mesh, locate, open, qx, qy, widthIn } = reader;
  const line = { xIn: mesh.xIn[node]!, yIn: mesh.yIn[node]!, acrossRad: alongRad, widthIn };
  const weights = averagingWeights(mesh, locate, line);
  if (weights === null) return null;
  const c = Math.cos(alongRad);
  const s = Math.sin(alongRad);
  let sum = 0;
  let counted = 0;
  for (let k = 0; k < weights.node.length; k++) {
    const i = weights.node[k]!;
    if (open[i] === 0) continue;
    counted += weights.weight[k]!;
    sum += weights.weight[k]! * (c * qx[i]! + s * qy[i]!);
  }
  if (counted < LEAST_OPEN_SHARE) return null;
  return { shearLbfPerIn: sum / counted, widthIn: weights.widthIn * counted };
}

function isUnder(live: LiveLoad, x: number, y: number, marginIn: number): boolean {
  if (live.kind !== 'roving') return false;
  const reach = Math.hypot(live.widthIn, live.depthIn) / 2 + marginIn;
  return Math.hypot(x - live.centre.xIn, y - live.centre.yIn) < reach;
}

function fillShear(reader: ShearReader, field: MomentField): void {
  const { open, qx, qy, start, node, slope } = reader;
  const { mx, my, mxy } = field;
  for (let i = 0; i < open.length; i++) {
    if (open[i] === 0) continue;
    let x = 0;
    let y = 0;
    for (let entry = start[i]!; entry < start[i + 1]!; entry++) {
      const j = node[entry]!;
      const b = slope[2 * entry]!;
      const c = slope[2 * entry + 1]!;
      x += b * mx[j]! + c * mxy[j]!;
      y += b * mxy[j]! + c * my[j]!;
    }
    qx[i] = x;
    qy[i] = y;
  }
}

/** Slopes d/dx and d/dy of a nodal field at each node, averaged by area over its triangles, as weights on nodes. */
function slopeOperator(mesh: PlateMesh): Pick<ShearReader, 'start' | 'node' | 'slope'> {
  const { triangles, xIn, yIn } = mesh;
  const rows: Map<number, [number, number]>[] = Array.from(xIn, () => new Map());
  const around = new Float64Array(xIn.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!] as const;
    const [i, j, k] = corners;
    const twice = (xIn[j]! - xIn[i]!) * (yIn[k]! - yIn[i]!) - (xIn[k]! - xIn[i]!) * (yIn[j]! - yIn[i]!);
    for (const at of corners) {
      around[at] = around[at]! + twice;
      corners.forEach((other, c) => {
        const next = corners[(c + 1) % 3]!;
        const last = corners[(c + 2) % 3]!;
        // slope of the shape function times twice the area: the area cancels in the average
        const [b, s] = rows[at]!.get(other) ?? [0, 0];
        rows[at]!.set(other, [b + yIn[next]! - yIn[last]!, s + xIn[last]! - xIn[next]!]);
      });
    }
  }
  const start = new Int32Array(xIn.length + 1);
  rows.forEach((row, i) => {
    start[i + 1] = start[i]! + row.size;
  });
  const node = new Int32Array(start[xIn.length]!);
  const slope = new Float64Array(2 * node.length);
  rows.forEach((row, i) => {
    let entry = start[i]!;
    for (const [j, [b, s]] of row) {
      node[entry] = j;
      slope[2 * entry] = b / around[i]!;
      slope[2 * entry + 1] = s / around[i]!;
      entry++;
    }
  });
  return { start, node, slope };
}
