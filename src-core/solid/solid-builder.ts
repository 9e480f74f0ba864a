/** Collects points and triangles of closed shells and shades them: smooth over curves, sharp over creases. */
import { flippedSlivers } from './slivers';
import type { Solid } from './types';

/** Faces that turn by more than this are a crease. Common practice, no source: wider than any chord of a curve here. */
const CREASE_COSINE = Math.cos((32 * Math.PI) / 180);
/** Vertices of one point whose normals agree within this are one vertex. */
const SAME_NORMAL_COSINE = 1 - 1e-6;

export interface SolidBuilder {
  /** Adds a point, inches, and gives its number. Shells are closed where their triangles share numbers. */
  readonly addPoint: (xIn: number, yIn: number, zIn: number) => number;
  /**
   * Counter-clockwise seen from outside. A triangle with a point twice is passed over. One of a flat face keeps its own
   * normal, so that a wide top does not shade off towards a rounded arris.
   */
  readonly addTriangle: (a: number, b: number, c: number, isFlat?: boolean) => void;
  /** Asks for an ink line between two points, crease or not. */
  readonly ink: (a: number, b: number) => void;
  readonly finish: () => Solid;
}

/** A builder of one solid, which may be several closed shells. Every crease gets an ink line. */
export function solidBuilder(): SolidBuilder {
  const points: number[] = [];
  const corners: number[] = [];
  const inked: number[] = [];
  const flats: boolean[] = [];
  return {
    addPoint: (xIn, yIn, zIn) => points.push(xIn, yIn, zIn) / 3 - 1,
    addTriangle: (a, b, c, isFlat = false) => {
      if (a === b || b === c || c === a) return;
      corners.push(a, b, c);
      flats.push(isFlat);
    },
    ink: (a, b) => {
      if (a !== b) inked.push(a, b);
    },
    finish: () => shaded(points, flippedSlivers(points, corners), flats, inked),
  };
}

function shaded(
  points: readonly number[],
  corners: readonly number[],
  flats: readonly boolean[],
  inked: readonly number[],
): Solid {
  const faces = faceNormals(points, corners);
  const { starts, fans } = trianglesOfPoints(points.length / 3, corners);
  const positions: number[] = [];
  const normals: number[] = [];
  const triangles = new Uint32Array(corners.length);
  for (let point = 0; point < starts.length - 1; point++) {
    const firstVertex = positions.length / 3;
    for (let at = starts[point]!; at < starts[point + 1]!; at++) {
      const corner = fans[at]!;
      const normal = flats[Math.floor(corner / 3)]
        ? faceNormal(faces, corner)
        : cornerNormal(faces, fans, corner, starts[point]!, starts[point + 1]!);
      let vertex = firstVertex;
      const end = positions.length / 3;
      while (vertex < end && dot(normals, 3 * vertex, normal, 0) < SAME_NORMAL_COSINE) vertex++;
      if (vertex === end) {
        positions.push(points[3 * point]!, points[3 * point + 1]!, points[3 * point + 2]!);
        normals.push(...normal);
      }
      triangles[corner] = vertex;
    }
  }
  return {
    positions: Float32Array.from(positions),
    normals: Float32Array.from(normals),
    triangles,
    inkLines: inkLines(points, corners, faces, inked),
  };
}

/** For each triangle its unit normal and its area: nx, ny, nz, area. */
function faceNormals(points: readonly number[], corners: readonly number[]): Float64Array {
  const faces = new Float64Array((corners.length / 3) * 4);
  for (let t = 0; t < corners.length / 3; t++) {
    const [a, b, c] = [3 * corners[3 * t]!, 3 * corners[3 * t + 1]!, 3 * corners[3 * t + 2]!];
    const ux = points[b]! - points[a]!;
    const uy = points[b + 1]! - points[a + 1]!;
    const uz = points[b + 2]! - points[a + 2]!;
    const vx = points[c]! - points[a]!;
    const vy = points[c + 1]! - points[a + 1]!;
    const vz = points[c + 2]! - points[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const length = Math.hypot(nx, ny, nz);
    if (length === 0) continue;
    faces.set([nx / length, ny / length, nz / length, length / 2], 4 * t);
  }
  return faces;
}

/** Corners that meet at each point, one list after another. */
function trianglesOfPoints(
  pointCount: number,
  corners: readonly number[],
): { readonly starts: Uint32Array; readonly fans: Uint32Array } {
  const starts = new Uint32Array(pointCount + 1);
  for (const point of corners) starts[point + 1]!++;
  for (let point = 0; point < pointCount; point++) starts[point + 1]! += starts[point]!;
  const fans = new Uint32Array(corners.length);
  const filled = starts.slice();
  corners.forEach((point, corner) => {
    fans[filled[point]!++] = corner;
  });
  return { starts, fans };
}

function faceNormal(faces: Float64Array, corner: number): readonly [number, number, number] {
  const face = 4 * Math.floor(corner / 3);
  return [faces[face]!, faces[face + 1]!, faces[face + 2]!];
}

/** Mean normal, by area, of the faces round a point that turn from a corner's own face by less than a crease. */
function cornerNormal(
  faces: Float64Array,
  fans: Uint32Array,
  corner: number,
  from: number,
  to: number,
): readonly [number, number, number] {
  const own = 4 * Math.floor(corner / 3);
  let x = 0;
  let y = 0;
  let z = 0;
  for (let at = from; at < to; at++) {
    const face = 4 * Math.floor(fans[at]! / 3);
    if (face !== own && dot(faces, own, faces, face) < CREASE_COSINE) continue;
    const areaIn2 = faces[face + 3]!;
    x += areaIn2 * faces[face]!;
    y += areaIn2 * faces[face + 1]!;
    z += areaIn2 * faces[face + 2]!;
  }
  const length = Math.hypot(x, y, z);
  return length > 0 ? [x / length, y / length, z / length] : [0, 0, 1];
}

/** Ends of all creases and of the lines asked for, each once. */
function inkLines(
  points: readonly number[],
  corners: readonly number[],
  faces: Float64Array,
  inked: readonly number[],
): Float32Array {
  const pointCount = points.length / 3;
  const lines = new Set<number>();
  const key = (a: number, b: number) => Math.min(a, b) * pointCount + Math.max(a, b);
  const firstFace = new Map<number, number>();
  corners.forEach((a, corner) => {
    const face = Math.floor(corner / 3);
    const edge = key(a, corners[3 * face + ((corner + 1) % 3)]!);
    const other = firstFace.get(edge);
    if (other === undefined) firstFace.set(edge, face);
    else if (dot(faces, 4 * face, faces, 4 * other) < CREASE_COSINE) lines.add(edge);
  });
  for (let i = 0; i < inked.length; i += 2) lines.add(key(inked[i]!, inked[i + 1]!));
  const ends = new Float32Array(6 * lines.size);
  let at = 0;
  for (const line of lines) {
    for (const point of [Math.floor(line / pointCount), line % pointCount]) {
      for (let axis = 0; axis < 3; axis++) ends[at++] = points[3 * point + axis]!;
    }
  }
  return ends;
}

function dot(p: ArrayLike<number>, i: number, q: ArrayLike<number>, j: number): number {
  return p[i]! * q[j]! + p[i + 1]! * q[j + 1]! + p[i + 2]! * q[j + 2]!;
}
