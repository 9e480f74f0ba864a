/** What belongs in the picture beside a piece, and whether the piece can be seen well where the eye stands. */
import type { CameraPose } from './camera-pose';
import { fitted, seenFrom } from './camera-pose';
import type { Bounds } from './scene-bounds';
import { united } from './scene-bounds';

/** Neighbours join the picture while the eye need not go back farther than this, as a multiple. */
const MOST_BACK = 1.45;
/** A little less than the half picture, so that nothing touches its rim. */
const RIM_SHARE = 0.97;
/** Smaller than this share of the picture, across and up, a piece is not seen well. */
const LEAST_SEEN_SHARE = 0.3;

/** What takes up a piece, with as many of its neighbours, the nearest first, as leave it large. */
export function withNeighbours(
  pose: CameraPose,
  own: readonly Bounds[],
  others: readonly Bounds[],
  aspect: number,
): readonly Bounds[] {
  const box = own.reduce(united);
  const mostIn = fitted(pose, own, aspect).distanceIn * MOST_BACK;
  const nearest = [...others].sort((a, b) => gapIn(box, a) - gapIn(box, b));
  let all = own;
  for (const other of nearest) {
    const more = [...all, other];
    if (fitted(pose, more, aspect).distanceIn <= mostIn) all = more;
  }
  return all;
}

/** Whether all of `boxes` lies within the picture and is not too small in it. */
export function isSeenWell(pose: CameraPose, boxes: readonly Bounds[], aspect: number): boolean {
  const seen = seenFrom(pose, boxes, aspect);
  const isWithin = seen.every(
    ({ across, up, isInFront }) => isInFront && Math.abs(across) <= RIM_SHARE && Math.abs(up) <= RIM_SHARE,
  );
  if (!isWithin) return false;
  const shareOf = (places: readonly number[]) => (Math.max(...places) - Math.min(...places)) / 2;
  return (
    Math.max(shareOf(seen.map(({ across }) => across)), shareOf(seen.map(({ up }) => up))) >= LEAST_SEEN_SHARE
  );
}

/** Clear distance in plan between two boxes, 0 where they overlap. */
function gapIn(a: Bounds, b: Bounds): number {
  const along = (i: 0 | 1) => Math.max(0, a.least[i] - b.most[i], b.least[i] - a.most[i]);
  return Math.hypot(along(0), along(1));
}
