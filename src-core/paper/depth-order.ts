/**
 * Faces from the farthest to the nearest, cut along each other's planes where needed, so that each may be painted over what came
 * before. A binary tree of planes (Fuchs, Kedem & Naylor 1980) gives the order for any faces, also those that pass through each other.
 */
import type { Face, FaceCorner, Place3 } from './view-faces';
import { dot } from './view-faces';

/** Nearer to a plane than this is on it, in. */
const ON_PLANE_IN = 1e-4;
/** So many faces are tried as the one that parts the rest. */
const TRIED = 16;

/** Orders faces for eyes far off in the direction `toEye`. */
export function farthestFirst(faces: readonly Face[], toEye: Place3): Face[] {
  const ordered: Face[] = [];
  visit(faces, toEye, ordered);
  return ordered;
}

function visit(faces: readonly Face[], toEye: Place3, ordered: Face[]): void {
  if (faces.length === 0) return;
  const plane = partingFace(faces);
  const on: Face[] = [];
  const before: Face[] = [];
  const behind: Face[] = [];
  for (const face of faces) {
    const side = sideOf(face, plane);
    if (side === 'on') on.push(face);
    else if (side === 'before') before.push(face);
    else if (side === 'behind') behind.push(face);
    else {
      const parts = [cutFace(face, plane, 1), cutFace(face, plane, -1)];
      if (parts[0] !== null) before.push(parts[0]!);
      if (parts[1] !== null) behind.push(parts[1]!);
    }
  }
  const isFacingEye = dot(plane.normal, toEye) > 0;
  visit(isFacingEye ? behind : before, toEye, ordered);
  ordered.push(...on);
  visit(isFacingEye ? before : behind, toEye, ordered);
}

/** Of some faces the one whose plane cuts the fewest others and parts them most evenly. */
function partingFace(faces: readonly Face[]): Face {
  let best = faces[0]!;
  let bestCost = Number.POSITIVE_INFINITY;
  const step = Math.max(1, Math.floor(faces.length / TRIED));
  for (let i = 0; i < faces.length; i += step) {
    let [cut, before, behind] = [0, 0, 0];
    for (const face of faces) {
      const side = sideOf(face, faces[i]!);
      if (side === 'both') cut++;
      else if (side === 'before') before++;
      else if (side === 'behind') behind++;
    }
    const cost = CUT_COST * cut + Math.abs(before - behind);
    if (cost < bestCost) [best, bestCost] = [faces[i]!, cost];
  }
  return best;
}

/** A cut face weighs as much as this many faces too many on one side. */
const CUT_COST = 8;

function sideOf({ loops }: Face, plane: Face): 'on' | 'before' | 'behind' | 'both' {
  let [isBefore, isBehind] = [false, false];
  for (const loop of loops) {
    for (const corner of loop) {
      const offIn = dot(plane.normal, corner) - plane.offIn;
      if (offIn > ON_PLANE_IN) isBefore = true;
      else if (offIn < -ON_PLANE_IN) isBehind = true;
    }
  }
  if (isBefore && isBehind) return 'both';
  if (isBefore) return 'before';
  return isBehind ? 'behind' : 'on';
}

/** What of a face lies on one side of a plane, its new side without ink; null where nothing is left. */
function cutFace(face: Face, plane: Face, side: 1 | -1): Face | null {
  const loops = face.loops.map((loop) => cutLoop(loop, plane, side)).filter((loop) => loop.length >= 3);
  return loops.length === 0 ? null : { ...face, loops, partOf: face.partOf ?? face };
}

/** Clipping of a loop by a half space (Sutherland & Hodgman 1974); parts are joined along the plane, where nothing is drawn. */
function cutLoop(loop: readonly FaceCorner[], { normal, offIn }: Face, side: 1 | -1): FaceCorner[] {
  const offs = loop.map((corner) => {
    const off = side * (dot(normal, corner) - offIn);
    return Math.abs(off) <= ON_PLANE_IN ? 0 : off;
  });
  const kept: FaceCorner[] = [];
  loop.forEach((corner, i) => {
    const k = (i + 1) % loop.length;
    const [off, next] = [offs[i]!, offs[k]!];
    const to = loop[k]!;
    // a side that leaves, or runs along the plane, is not inked on the far side of it
    if (off >= 0) kept.push({ ...corner, isInked: corner.isInked && (off > 0 || next > 0) });
    if ((off > 0 && next < 0) || (off < 0 && next > 0)) {
      const share = off / (off - next);
      kept.push({
        x: corner.x + (to.x - corner.x) * share,
        y: corner.y + (to.y - corner.y) * share,
        z: corner.z + (to.z - corner.z) * share,
        isInked: off < 0 && corner.isInked,
      });
    }
  });
  return kept;
}
