/** Where a run longer than its stock is butt jointed. */
import type { Point, Segment } from '../outline';
import { directionBetween, distanceIn, moved, segmentMeeting } from '../outline';
import { JOINT_TO_CORNER_IN, JOINT_TO_LINE_IN, SEAM_REACH_IN } from './practice';

export interface Run {
  /** Of its slab face, in. */
  readonly lengthIn: number;
  /** How far its long points run past the slab face at each end, in. */
  readonly startPastIn: number;
  readonly endPastIn: number;
  readonly stockIn: number;
  /** Places along the slab face that a joint keeps off, in. */
  readonly keepOffIn: readonly number[];
}

export interface SplitRun {
  /** Along the slab face, in, rising. */
  readonly jointsIn: readonly number[];
  /** Joints that could not keep off a cutout's corner or a seam, or a run whose sharp end alone is longer than its stock. */
  readonly isForced: boolean;
}

const ROUNDING_IN = 1e-9;

/**
 * The fewest parts that the stock allows: from the start each part is as long as it can be, which no other choice of joints
 * beats, since a joint farther on never leaves more to do.
 */
export function splitRun({ lengthIn, startPastIn, endPastIn, stockIn, keepOffIn }: Run): SplitRun {
  const mostPastIn = stockIn - 2 * JOINT_TO_CORNER_IN;
  if (Math.max(startPastIn, endPastIn) > mostPastIn) return { jointsIn: [], isForced: true };
  const jointsIn: number[] = [];
  let isForced = false;
  let fromIn = 0;
  let pastIn = startPastIn;
  while (lengthIn - fromIn + pastIn + endPastIn > stockIn + ROUNDING_IN) {
    const farthestIn = Math.min(fromIn + stockIn - pastIn, lengthIn - JOINT_TO_CORNER_IN);
    const clearIn = clearPlaceIn(farthestIn, keepOffIn);
    const isClear = clearIn >= fromIn + JOINT_TO_CORNER_IN - ROUNDING_IN;
    isForced ||= !isClear;
    fromIn = isClear ? clearIn : farthestIn;
    pastIn = 0;
    jointsIn.push(fromIn);
  }
  return { jointsIn, isForced };
}

/** The last place up to `farthestIn` that is clear of all lines. */
function clearPlaceIn(farthestIn: number, keepOffIn: readonly number[]): number {
  const falling = [...keepOffIn].sort((a, b) => b - a);
  return falling.reduce(
    (placeIn, lineIn) =>
      Math.abs(placeIn - lineIn) < JOINT_TO_LINE_IN - ROUNDING_IN ? lineIn - JOINT_TO_LINE_IN : placeIn,
    farthestIn,
  );
}

/** Places along an edge that lie square across from cutout corners, or that seams run into, in from its start. */
export function linesAcross(
  edge: Segment,
  corners: readonly Point[],
  seams: readonly Segment[],
): readonly number[] {
  const along = directionBetween(edge.a, edge.b);
  const placeIn = ({ xIn, yIn }: Point) => (xIn - edge.a.xIn) * along.x + (yIn - edge.a.yIn) * along.y;
  const met = seams.flatMap((seam) => {
    const at = segmentMeeting(edge, lengthened(seam));
    return at === null ? [] : [placeIn(at)];
  });
  return [...corners.map(placeIn), ...met];
}

function lengthened({ a, b }: Segment): Segment {
  if (distanceIn(a, b) === 0) return { a, b };
  const along = directionBetween(a, b);
  return { a: moved(a, along, -SEAM_REACH_IN), b: moved(b, along, SEAM_REACH_IN) };
}
