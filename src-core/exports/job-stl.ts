/** Slabs as binary STL. */
import type { Job } from '../job';
import type { Solid } from '../solid';
import { slabSolid } from '../solid';
import { MM_PER_IN } from '../units';

/**
 * 80 bytes of header, a count, then 50 bytes a triangle: normal and three corners as little-endian float32, and two bytes that
 * stay zero. Source: M. Burns, Automated Fabrication (1993), section 6.5, from memory.
 */
const HEADER_BYTES = 80;
const COUNT_BYTES = 4;
const TRIANGLE_BYTES = 50;
/** Not to begin with "solid", by which readers know the text form. */
const HEADER = 'Ledgewright slabs, millimetres, z up';

/**
 * The slabs of a job, or of one piece, as closed shells of triangles in millimetres: x and y as in the plan, z up from the floor, each
 * piece once and level. A piece that cannot be drawn adds nothing.
 */
export function jobStl(job: Job, pieceId?: string): Uint8Array<ArrayBuffer> {
  const pieces = pieceId === undefined ? job.pieces : job.pieces.filter(({ id }) => id === pieceId);
  if (pieces.length === 0) throw new Error(`No piece ${pieceId} in the job`);
  const solids = pieces.map((piece) => slabSolid(piece));
  const count = solids.reduce((sum, { triangles }) => sum + triangles.length / 3, 0);
  const bytes = new Uint8Array(HEADER_BYTES + COUNT_BYTES + TRIANGLE_BYTES * count);
  for (let i = 0; i < HEADER.length; i++) bytes[i] = HEADER.charCodeAt(i);
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER_BYTES, count, true);
  let offset = HEADER_BYTES + COUNT_BYTES;
  for (const solid of solids) {
    for (let t = 0; t < solid.triangles.length; t += 3) {
      writeTriangle(view, offset, solid, t);
      offset += TRIANGLE_BYTES;
    }
  }
  return bytes;
}

function writeTriangle(view: DataView, offset: number, { positions, triangles }: Solid, t: number): void {
  const corners = [0, 1, 2].map((k) => {
    const at = 3 * triangles[t + k]!;
    return [0, 1, 2].map((axis) => Math.fround(positions[at + axis]! * MM_PER_IN));
  });
  [normalOf(corners), ...corners].flat().forEach((value, i) => {
    view.setFloat32(offset + 4 * i, value, true);
  });
}

/** Unit normal by the right-hand rule; zero for a triangle without area, which readers then work out themselves. */
function normalOf(corners: readonly (readonly number[])[]): number[] {
  const [a, b, c] = corners as [number[], number[], number[]];
  const [ux, uy, uz] = [0, 1, 2].map((k) => b[k]! - a[k]!) as [number, number, number];
  const [vx, vy, vz] = [0, 1, 2].map((k) => c[k]! - a[k]!) as [number, number, number];
  const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(...normal);
  return normal.map((part) => (length > 0 ? part / length : 0));
}
