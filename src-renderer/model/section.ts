/** The face that a cut across x lays open. */
import type { Solid } from '../../src-core/solid';

/** A point of the cut: y of the plan and height, in. */
export type CutPoint = readonly [yIn: number, zIn: number];

/** One face of the cut with the hollows in it. */
export interface CutFace {
  readonly outer: readonly CutPoint[];
  readonly holes: readonly (readonly CutPoint[])[];
}

/** Ends nearer than this are one point: far below any tape, above the rounding of single precision at 200 ft. */
const SAME_IN = 1e-3;

/** Faces of a closed solid cut at `xIn`; none where the cut misses it. */
export function sectionFaces(solid: Solid, xIn: number): CutFace[] {
  return nested(loopsOf(sectionSegments(solid, xIn)));
}

/** Where the cut meets each triangle. A corner on the cut counts as beyond it, so that a triangle is met at two edges or none. */
function sectionSegments({ positions, triangles }: Solid, xIn: number): (readonly [CutPoint, CutPoint])[] {
  const segments: (readonly [CutPoint, CutPoint])[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const met: CutPoint[] = [];
    for (let k = 0; k < 3; k++) {
      const a = triangles[t + k]! * 3;
      const b = triangles[t + ((k + 1) % 3)]! * 3;
      const [ax, bx] = [positions[a]!, positions[b]!];
      if (ax < xIn === bx < xIn) continue;
      const part = (xIn - ax) / (bx - ax);
      const at = (axis: number) =>
        positions[a + axis]! + (positions[b + axis]! - positions[a + axis]!) * part;
      met.push([at(1), at(2)]);
    }
    const [from, to] = met;
    if (from !== undefined && to !== undefined) segments.push([from, to]);
  }
  return segments;
}

/** Segments chained end to end into closed loops; a chain that does not close is left out. */
function loopsOf(segments: readonly (readonly [CutPoint, CutPoint])[]): CutPoint[][] {
  const nameOf = ([y, z]: CutPoint) => `${Math.round(y / SAME_IN)} ${Math.round(z / SAME_IN)}`;
  const real = segments.filter(([a, b]) => nameOf(a) !== nameOf(b));
  const meeting = new Map<string, number[]>();
  for (const [index, segment] of real.entries()) {
    for (const end of segment) {
      const name = nameOf(end);
      meeting.set(name, [...(meeting.get(name) ?? []), index]);
    }
  }
  const used = new Set<number>();
  const loops: CutPoint[][] = [];
  for (const [first, [start, second]] of real.entries()) {
    if (used.has(first)) continue;
    used.add(first);
    const loop = [start];
    let at = second;
    while (nameOf(at) !== nameOf(start)) {
      loop.push(at);
      const next = meeting.get(nameOf(at))!.find((index) => !used.has(index));
      if (next === undefined) break;
      used.add(next);
      const [a, b] = real[next]!;
      at = nameOf(a) === nameOf(at) ? b : a;
    }
    if (nameOf(at) === nameOf(start) && loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** Loops within an odd number of others are hollows of the smallest that holds them. */
function nested(loops: readonly (readonly CutPoint[])[]): CutFace[] {
  const sorted = [...loops].sort((a, b) => areaOf(b) - areaOf(a));
  const faces: { outer: readonly CutPoint[]; holes: (readonly CutPoint[])[] }[] = [];
  for (const [index, loop] of sorted.entries()) {
    const around = sorted.slice(0, index).filter((other) => holds(other, loop[0]!));
    const face = around.length % 2 === 1 && faces.findLast(({ outer }) => outer === around.at(-1));
    if (face) face.holes.push(loop);
    else faces.push({ outer: loop, holes: [] });
  }
  return faces;
}

function areaOf(loop: readonly CutPoint[]): number {
  let twice = 0;
  for (const [k, [y, z]] of loop.entries()) {
    const [nextY, nextZ] = loop[(k + 1) % loop.length]!;
    twice += y * nextZ - nextY * z;
  }
  return Math.abs(twice) / 2;
}

/** Whether a point lies within a loop (crossings of a ray, Jordan). */
function holds(loop: readonly CutPoint[], [y, z]: CutPoint): boolean {
  let isInside = false;
  for (const [k, [ay, az]] of loop.entries()) {
    const [by, bz] = loop[(k + 1) % loop.length]!;
    if (az > z !== bz > z && y < ay + ((z - az) / (bz - az)) * (by - ay)) isInside = !isInside;
  }
  return isInside;
}

/** Where straight runs of steel pass through the cut. */
export function crossings(
  runs: readonly { readonly from: readonly number[]; readonly to: readonly number[] }[],
  xIn: number,
): CutPoint[] {
  return runs.flatMap(({ from, to }): CutPoint[] => {
    if (from[0]! < xIn === to[0]! < xIn) return [];
    const part = (xIn - from[0]!) / (to[0]! - from[0]!);
    const at = (axis: number) => from[axis]! + (to[axis]! - from[axis]!) * part;
    return [[at(1), at(2)]];
  });
}
