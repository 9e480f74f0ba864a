/** Boards laid in courses over a slab: the place of each, and the seams between them. */
import type { Direction, Point, Region, Segment } from '../outline';
import { boundingBox, clipSegmentToRegion, distanceIn, isPointOnSlab } from '../outline';
import type { BoardStock } from './board-stock';
import { SAME_IN, STAGGER_RATIO } from './practice';

/** One way to lay the boards, in the frame of its axis. */
export interface LayCandidate {
  readonly axis: Direction;
  /** The way in which the boards' length runs, which is the way of the courses. */
  readonly lengthAlong: 'x' | 'y';
  readonly isStaggered: boolean;
  /** Where the first board of the first course begins, at or before the slab, in: along the courses and across them. */
  readonly alongIn: number;
  readonly acrossIn: number;
}

/** The rectangle in which one board lies, in. */
export interface BoardPlace {
  readonly minXIn: number;
  readonly maxXIn: number;
  readonly minYIn: number;
  readonly maxYIn: number;
}

interface Course {
  readonly fromIn: number;
  readonly toIn: number;
  /** Where its boards begin and end, from the first to the last, in. */
  readonly jointsIn: readonly number[];
}

/** Seams are looked at this far to either side, in: slab on both sides makes a seam of a line. */
const BESIDE_IN = 1e-4;

/** The courses that reach over the slab. */
function courses(candidate: LayCandidate, region: Region, board: BoardStock): Course[] {
  const { along, across } = extents(candidate, region);
  const list: Course[] = [];
  let fromIn = candidate.acrossIn;
  for (let row = 0; fromIn < across[1] - SAME_IN; row++) {
    const toIn = fromIn + board.widthIn;
    const shiftIn = candidate.isStaggered && row % 2 === 1 ? -STAGGER_RATIO * board.lengthIn : 0;
    const jointsIn: number[] = [];
    for (let atIn = candidate.alongIn + shiftIn; ; atIn += board.lengthIn) {
      if (atIn + board.lengthIn > along[0] + SAME_IN) jointsIn.push(atIn);
      if (atIn >= along[1] - SAME_IN) break;
    }
    list.push({ fromIn, toIn, jointsIn });
    fromIn = toIn;
  }
  return list;
}

/** The place of every board that may touch the slab, course by course. */
export function boardPlaces(candidate: LayCandidate, region: Region, board: BoardStock): BoardPlace[] {
  return courses(candidate, region, board).flatMap(({ fromIn, toIn, jointsIn }) =>
    jointsIn.slice(1).map((endIn, i) => {
      const beginIn = jointsIn[i]!;
      return candidate.lengthAlong === 'x'
        ? { minXIn: beginIn, maxXIn: endIn, minYIn: fromIn, maxYIn: toIn }
        : { minXIn: fromIn, maxXIn: toIn, minYIn: beginIn, maxYIn: endIn };
    }),
  );
}

/**
 * The seams of a candidate under the slab alone: between its courses, which depend on where these lie and on nothing else, and
 * between the boards of a course. A line along an edge or a lip is none.
 */
export function courseSeams(candidate: LayCandidate, region: Region, board: BoardStock): Segment[] {
  const [lowIn, highIn] = extents(candidate, region).along;
  return courses(candidate, region, board)
    .slice(1)
    .flatMap(({ fromIn }) =>
      betweenBoards({ a: placeAt(candidate, lowIn, fromIn), b: placeAt(candidate, highIn, fromIn) }, region),
    );
}

/** Seams between the boards of every course. */
export function crossSeams(candidate: LayCandidate, region: Region, board: BoardStock): Segment[] {
  return courses(candidate, region, board).flatMap(({ fromIn, toIn, jointsIn }) =>
    jointsIn
      .slice(1, -1)
      .flatMap((atIn) =>
        betweenBoards({ a: placeAt(candidate, atIn, fromIn), b: placeAt(candidate, atIn, toIn) }, region),
      ),
  );
}

function placeAt({ lengthAlong }: LayCandidate, alongIn: number, acrossIn: number): Point {
  return lengthAlong === 'x' ? { xIn: alongIn, yIn: acrossIn } : { xIn: acrossIn, yIn: alongIn };
}

/** From where to where the slab reaches along the courses and across them, in. */
function extents({ lengthAlong }: LayCandidate, region: Region) {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(region.outer);
  const x = [minXIn, maxXIn] as const;
  const y = [minYIn, maxYIn] as const;
  return lengthAlong === 'x' ? { along: x, across: y } : { along: y, across: x };
}

/** The stretches of a line with slab on both sides. */
function betweenBoards(line: Segment, region: Region): Segment[] {
  const isUpright = Math.abs(line.a.xIn - line.b.xIn) < SAME_IN;
  const [dx, dy] = isUpright ? [BESIDE_IN, 0] : [0, BESIDE_IN];
  const seams: Segment[] = [];
  for (const stretch of clipSegmentToRegion(line, region)) {
    const cuts = cutPoints(stretch, region);
    for (let i = 1; i < cuts.length; i++) {
      const [a, b] = [cuts[i - 1]!, cuts[i]!];
      const [xIn, yIn] = [(a.xIn + b.xIn) / 2, (a.yIn + b.yIn) / 2];
      const isBetween =
        isPointOnSlab({ xIn: xIn + dx, yIn: yIn + dy }, region) &&
        isPointOnSlab({ xIn: xIn - dx, yIn: yIn - dy }, region);
      if (!isBetween) continue;
      const last = seams.at(-1);
      if (last !== undefined && distanceIn(last.b, a) < SAME_IN) seams[seams.length - 1] = { a: last.a, b };
      else seams.push({ a, b });
    }
  }
  return seams;
}

/** Both ends of a stretch, and between them the corners of the slab that lie on it, in order. */
function cutPoints(stretch: Segment, region: Region): Point[] {
  const isOnLine = onLine(stretch);
  const corners = [region.outer, ...region.holes].flatMap((loop) => loop.filter(isOnLine));
  const fromA = (p: Point) => distanceIn(stretch.a, p);
  return [stretch.a, stretch.b, ...corners]
    .sort((p, q) => fromA(p) - fromA(q))
    .filter((p, i, sorted) => i === 0 || distanceIn(p, sorted[i - 1]!) > SAME_IN);
}

/** Whether a point lies on an upright or level stretch. */
function onLine({ a, b }: Segment): (point: Point) => boolean {
  const [minX, maxX] = [Math.min(a.xIn, b.xIn) - SAME_IN, Math.max(a.xIn, b.xIn) + SAME_IN];
  const [minY, maxY] = [Math.min(a.yIn, b.yIn) - SAME_IN, Math.max(a.yIn, b.yIn) + SAME_IN];
  return ({ xIn, yIn }) => xIn >= minX && xIn <= maxX && yIn >= minY && yIn <= maxY;
}
