/**
 * An outline whose every edge is moved inward by an amount of its own. Neighbouring edges meet in mitres. The chords
 * of an arc that is tighter than its edge moves in run out one after another, and their neighbours meet instead.
 */
import type { Direction, Point } from '../outline';
import { directionBetween, leftOf, moved } from '../outline';

/** A line of the ring: a segment of the outline, or a return across which two different faces end. */
export interface RingLine {
  readonly through: Point;
  readonly direction: Direction;
  /** Number of the face that follows this line; null for a return, which stays where it is. */
  readonly face: number | null;
}

/** Where the outline turns by less than this, a mitre between different faces would be drawn out into a needle. */
const RETURN_BELOW_RAD = (30 * Math.PI) / 180;
/** A moved segment shorter than this has run out: points closer than it are one in the numbers of a drawing, in. */
export const RUN_OUT_IN = 1e-4;
/** Sine of the angle below which two lines are one. */
const PARALLEL_SINE = 1e-7;

/** The lines of a counter-clockwise outline; `faceOf` numbers the face of the segment from point k to k + 1. */
export function ringLines(outer: readonly Point[], faceOf: readonly number[]): readonly RingLine[] {
  const n = outer.length;
  return outer.flatMap((through, k): RingLine[] => {
    const direction = directionBetween(through, outer[(k + 1) % n]!);
    const line = { through, direction, face: faceOf[k]! };
    const before = (k + n - 1) % n;
    if (faceOf[before] === faceOf[k]) return [line];
    const incoming = directionBetween(outer[before]!, through);
    const turnRad = Math.abs(
      Math.atan2(sine(incoming, direction), incoming.x * direction.x + incoming.y * direction.y),
    );
    if (turnRad >= RETURN_BELOW_RAD) return [line];
    const cosine = Math.cos(turnRad / 2);
    const mean = { x: (incoming.x + direction.x) / 2 / cosine, y: (incoming.y + direction.y) / 2 / cosine };
    return [{ through, direction: leftOf(mean), face: null }, line];
  });
}

/**
 * Where each line meets the next once all are moved inward by the inset of their face, in. A line that has run out
 * repeats the point before it, the very same object. null where nothing is left.
 */
export function movedRing(lines: readonly RingLine[], insetsIn: readonly number[]): readonly Point[] | null {
  const n = lines.length;
  const origins = lines.map(({ through, direction, face }) =>
    face === null ? through : moved(through, leftOf(direction), insetsIn[face]!),
  );
  const before = lines.map((_, i) => (i + n - 1) % n);
  const after = lines.map((_, i) => (i + 1) % n);
  const meet = (i: number, j: number): Point => meeting(lines[i]!, origins[i]!, lines[j]!, origins[j]!);
  const ends = lines.map((_, i) => meet(i, after[i]!));
  const isOut = lines.map(() => false);
  const lengthIn = (i: number): number => {
    const { direction } = lines[i]!;
    const from = ends[before[i]!]!;
    return (ends[i]!.xIn - from.xIn) * direction.x + (ends[i]!.yIn - from.yIn) * direction.y;
  };
  for (let left = n; ; left--) {
    let worst = -1;
    let shortestIn = RUN_OUT_IN;
    for (let i = 0; i < n; i++) {
      if (isOut[i] || lines[i]!.face === null) continue;
      const ownIn = lengthIn(i);
      if (ownIn >= shortestIn) continue;
      worst = i;
      shortestIn = ownIn;
    }
    if (worst < 0) break;
    if (left <= 3) return null;
    isOut[worst] = true;
    const [previous, next] = [before[worst]!, after[worst]!];
    after[previous] = next;
    before[next] = previous;
    ends[previous] = meet(previous, next);
  }
  for (let i = 0; i < n; i++) {
    if (!isOut[i]) continue;
    let live = i;
    while (isOut[live]) live = (live + n - 1) % n;
    ends[i] = ends[live]!;
  }
  return ends;
}

/** Where two moved lines cross; for lines that are one, where the second begins. */
function meeting(first: RingLine, from: Point, second: RingLine, to: Point): Point {
  const cross = sine(first.direction, second.direction);
  if (Math.abs(cross) < PARALLEL_SINE) return to;
  const alongIn =
    ((to.xIn - from.xIn) * second.direction.y - (to.yIn - from.yIn) * second.direction.x) / cross;
  return moved(from, first.direction, alongIn);
}

function sine(first: Direction, second: Direction): number {
  return first.x * second.y - first.y * second.x;
}
