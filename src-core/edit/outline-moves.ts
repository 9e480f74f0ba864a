/** Outlines with an edge moved parallel to itself, a side made longer, or a corner more or less. Pure plan geometry. */
import type { Point } from '../outline';
import { directionBetween, distanceIn, leftOf, moved, nearestOnSegment, signedAreaIn2 } from '../outline';
import { cleanPoint } from './placement';

/** Lines nearer to parallel than this (sine of the angle between them) are not made to meet. */
const LEAST_SINE = 0.01;

/** A line through a point; the direction need not be of unit length. */
interface LineIn {
  readonly at: Point;
  readonly x: number;
  readonly y: number;
}

/**
 * Corners with edge `index` moved outward by `toIn` (inward where negative). Its ends slide along the neighbouring edges, so
 * that the other sides keep their direction; where a neighbour runs on in the same line, the end moves straight out.
 */
export function edgeMoved<At extends Point>(corners: readonly At[], index: number, toIn: number): At[] {
  const n = corners.length;
  const [before, a, b, after] = [index + n - 1, index, index + 1, index + 2].map((i) => corners[i % n]!);
  const along = directionBetween(a!, b!);
  const inward = leftOf(along);
  const outwardIn = signedAreaIn2(corners) >= 0 ? -toIn : toIn;
  const line: LineIn = { at: moved(a!, inward, outwardIn), ...along };
  const newA = meet(line, lineThrough(before!, a!)) ?? moved(a!, inward, outwardIn);
  const newB = meet(line, lineThrough(b!, after!)) ?? moved(b!, inward, outwardIn);
  return corners.map((corner, i) => {
    if (i === index) return cleanPoint({ ...corner, ...newA });
    if (i === (index + 1) % n) return cleanPoint({ ...corner, ...newB });
    return corner;
  });
}

/**
 * Corners with edge `index` given a length: its first corner stays, and the edge after it moves parallel to itself, its far end
 * sliding along the edge beyond.
 */
export function edgeLengthened<At extends Point>(
  corners: readonly At[],
  index: number,
  lengthIn: number,
): At[] {
  const n = corners.length;
  const [a, b, c, d] = [index, index + 1, index + 2, index + 3].map((i) => corners[i % n]!);
  const along = directionBetween(a!, b!);
  const byIn = lengthIn - distanceIn(a!, b!);
  const newB = moved(a!, along, lengthIn);
  const next = lineThrough(b!, c!);
  const newC = meet({ ...next, at: newB }, lineThrough(c!, d!)) ?? moved(c!, along, byIn);
  return corners.map((corner, i) => {
    if (i === (index + 1) % n) return cleanPoint({ ...corner, ...newB });
    if (i === (index + 2) % n) return cleanPoint({ ...corner, ...newC });
    return corner;
  });
}

/** The point of edge `index` nearest to `at`. */
export function pointOnEdge(corners: readonly Point[], index: number, at: Point): Point {
  const a = corners[index]!;
  const b = corners[(index + 1) % corners.length]!;
  return cleanPoint(nearestOnSegment(at, { a, b }));
}

/** Whether an outline has been turned inside out: its corners run the other way round. */
export function isInsideOut(before: readonly Point[], after: readonly Point[]): boolean {
  return signedAreaIn2(before) > 0 !== signedAreaIn2(after) > 0;
}

function lineThrough(a: Point, b: Point): LineIn {
  return { at: a, ...directionBetween(a, b) };
}

/** Where two lines cross; null where they run all but parallel. */
function meet(first: LineIn, second: LineIn): Point | null {
  const sine = first.x * second.y - first.y * second.x;
  if (Math.abs(sine) < LEAST_SINE) return null;
  const byIn = ((second.at.xIn - first.at.xIn) * second.y - (second.at.yIn - first.at.yIn) * second.x) / sine;
  return moved(first.at, first, byIn);
}
