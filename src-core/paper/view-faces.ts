/** Flat faces of straight-sided solids for a view: slabs, boxes, struts. z is up from the floor, in. */
import type { Fill, Pen } from '../figure';

/** A place or a way in space, in; z up from the floor. */
export interface Place3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A corner of a face; `isInked` says whether the side from it to the next is drawn. */
export interface FaceCorner extends Place3 {
  readonly isInked: boolean;
}

/** A flat face, filled by the even-odd rule. */
export interface Face {
  readonly loops: readonly (readonly FaceCorner[])[];
  /** Outward unit normal, and the face's distance from the origin along it. */
  readonly normal: Place3;
  readonly offIn: number;
  readonly fill: Fill;
  readonly pen: Pen;
  /** The face that this is a part of; null for a whole one. */
  readonly partOf: Face | null;
}

/** How the faces of a solid are drawn. */
export interface FaceLook {
  readonly pen: Pen;
  /** The fill of a face by its outward normal. */
  readonly fillOf: (normal: Place3) => Fill;
}

/** Sides that turn less than this into each other (cosine) are one round side, with no line between. */
const ROUND_COSINE = Math.cos((25 * Math.PI) / 180);

/**
 * Faces of a flat shape drawn out along a way: loops counter-clockwise seen against the way, those of openings clockwise.
 */
export function drawnOutFaces(loops: readonly (readonly Place3[])[], way: Place3, look: FaceLook): Face[] {
  const lid = loops.map((loop) => loop.map((p) => plus(p, way)));
  const floor = loops.map((loop) => [...loop].reverse());
  return [
    faceOf(lid.map(inked), look),
    faceOf(floor.map(inked), look),
    ...loops.flatMap((loop) => sidesOf(loop, way, look)),
  ].filter((face) => face !== null);
}

function sidesOf(loop: readonly Place3[], way: Place3, look: FaceLook): (Face | null)[] {
  const n = loop.length;
  const isSharp = loop.map((corner, i) => {
    const before = minus(corner, loop[(i + n - 1) % n]!);
    const after = minus(loop[(i + 1) % n]!, corner);
    return dot(before, after) < ROUND_COSINE * lengthOf(before) * lengthOf(after);
  });
  return loop.map((a, i) => {
    const b = loop[(i + 1) % n]!;
    const corners: FaceCorner[] = [
      { ...a, isInked: true },
      { ...b, isInked: isSharp[(i + 1) % n]! },
      { ...plus(b, way), isInked: true },
      { ...plus(a, way), isInked: isSharp[i]! },
    ];
    return faceOf([corners], look);
  });
}

/** null for a loop without area. */
function faceOf(loops: readonly (readonly FaceCorner[])[], { pen, fillOf }: FaceLook): Face | null {
  const area = areaVector(loops[0]!);
  const size = lengthOf(area);
  if (size < LEAST_AREA_IN2) return null;
  const normal = { x: area.x / size, y: area.y / size, z: area.z / size };
  return { loops, normal, offIn: dot(normal, loops[0]![0]!), fill: fillOf(normal), pen, partOf: null };
}

const LEAST_AREA_IN2 = 1e-6;

function inked(loop: readonly Place3[]): FaceCorner[] {
  return loop.map((corner) => ({ ...corner, isInked: true }));
}

/** Twice the area of a flat loop as a vector square to it (Newell). */
function areaVector(loop: readonly Place3[]): Place3 {
  let sum = { x: 0, y: 0, z: 0 };
  loop.forEach((a, i) => {
    sum = plus(sum, cross(a, loop[(i + 1) % loop.length]!));
  });
  return sum;
}

/** Inner product. */
export function dot(a: Place3, b: Place3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

function cross(a: Place3, b: Place3): Place3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

function plus(a: Place3, b: Place3): Place3 {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

function minus(a: Place3, b: Place3): Place3 {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

function lengthOf(a: Place3): number {
  return Math.sqrt(dot(a, a));
}
