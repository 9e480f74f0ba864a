/** What is sawn within the rectangle of a part: notches, slanting and rounded ends, openings. */
import type { Point, Region } from '../outline';
import { directionBetween, distanceIn } from '../outline';
import { SAME_IN } from './practice';

/** Measured on the part as it lies, face up, from its front left corner. */
export interface ShapeCut {
  /** From left to right, from front to back, aslant, or a curve of short chords. */
  readonly kind: 'level' | 'upright' | 'slant' | 'curve';
  /** Both ends, and for a curve every point between. */
  readonly points: readonly Point[];
  readonly lengthIn: number;
  /** For a level cut its distance from the front of the part, for an upright one from the left, in; null for others. */
  readonly offsetIn: number | null;
}

/** Size of the rectangle round a part, in. */
interface Size {
  readonly widthIn: number;
  readonly depthIn: number;
}

/** Chords that turn less than this from one to the next belong to one curve, rad; a run of fewer than three is no curve. */
const CURVE_TURN_RAD = 0.6;
const LEAST_CHORDS = 3;
/** An edge this many times the shortest chord is a straight one between curves. */
const STRAIGHT_RATIO = 2.5;
/** Edges that turn less than this are one straight cut, rad. */
const STRAIGHT_RAD = 1e-6;

/** Cuts round the loops of a part. What lies on the rim of its rectangle is sawn with that. */
export function shapeCuts({ outer, holes }: Region, size: Size): ShapeCut[] {
  return [outer, ...holes].flatMap((loop) => runs(loop, size).map((points) => cutOf(points)));
}

/** Chains of the loop's edges that are cut in one go. */
function runs(loop: readonly Point[], size: Size): Point[][] {
  const n = loop.length;
  const edges = loop.map((a, i) => ({ a, b: loop[(i + 1) % n]! }));
  const isCut = edges.map(({ a, b }) => !isOnRim(a, b, size));
  const turns = edges.map((edge, i) => turnRad(edges[(i + n - 1) % n]!, edge));
  // Begin where a new cut surely begins, or with the longest edge of a loop that is smooth all round.
  const isBreak = (i: number) => !isCut[i] || !isCut[(i + n - 1) % n] || turns[i]! > CURVE_TURN_RAD;
  const firstBreak = edges.findIndex((_, i) => isBreak(i));
  const first = firstBreak >= 0 ? firstBreak : longestOf(edges);
  const chains: Point[][] = [];
  for (let k = 0; k < n; k++) {
    const i = (first + k) % n;
    if (!isCut[i]) continue;
    const { a, b } = edges[i]!;
    if (k === 0 || isBreak(i)) chains.push([a, b]);
    else chains.at(-1)!.push(b);
  }
  return chains.flatMap((chain) => straightened(chain));
}

function longestOf(edges: readonly Edge[]): number {
  const lengths = edges.map(({ a, b }) => distanceIn(a, b));
  return lengths.reduce((best, lengthIn, i) => (lengthIn > lengths[best]! + SAME_IN ? i : best), 0);
}

/** A chain without the points on straight stretches; one with few chords falls into single cuts. */
function straightened(chain: readonly Point[]): Point[][] {
  const kept = chain.filter((point, i) => {
    const [before, after] = [chain[i - 1], chain[i + 1]];
    if (before === undefined || after === undefined) return true;
    return turnRad({ a: before, b: point }, { a: point, b: after }) > STRAIGHT_RAD;
  });
  if (kept.length - 1 >= LEAST_CHORDS) return splitOffStraights(kept);
  return kept.slice(1).map((b, i) => [kept[i]!, b]);
}

/** Straight cuts that run smoothly into a curve are cuts of their own: those longer than all chords beside them. */
function splitOffStraights(chain: readonly Point[]): Point[][] {
  const lengths = chain.slice(1).map((b, i) => distanceIn(chain[i]!, b));
  const shortestIn = Math.min(...lengths);
  const parts: Point[][] = [];
  let curve: Point[] = [];
  const closeCurve = () => {
    if (curve.length > 1) parts.push(curve);
    curve = [];
  };
  lengths.forEach((lengthIn, i) => {
    const [a, b] = [chain[i]!, chain[i + 1]!];
    if (lengthIn > STRAIGHT_RATIO * shortestIn) {
      closeCurve();
      parts.push([a, b]);
    } else if (curve.length === 0) curve = [a, b];
    else curve.push(b);
  });
  closeCurve();
  return parts;
}

function cutOf(points: readonly Point[]): ShapeCut {
  const lengthIn = points.slice(1).reduce((sumIn, b, i) => sumIn + distanceIn(points[i]!, b), 0);
  if (points.length > 2) return { kind: 'curve', points, lengthIn, offsetIn: null };
  const [a, b] = [points[0]!, points[1]!];
  if (Math.abs(a.yIn - b.yIn) < SAME_IN) return { kind: 'level', points, lengthIn, offsetIn: a.yIn };
  if (Math.abs(a.xIn - b.xIn) < SAME_IN) return { kind: 'upright', points, lengthIn, offsetIn: a.xIn };
  return { kind: 'slant', points, lengthIn, offsetIn: null };
}

function isOnRim(a: Point, b: Point, { widthIn, depthIn }: Size): boolean {
  const both = (test: (p: Point) => number) => Math.abs(test(a)) < SAME_IN && Math.abs(test(b)) < SAME_IN;
  return (
    both(({ xIn }) => xIn) ||
    both(({ yIn }) => yIn) ||
    both(({ xIn }) => xIn - widthIn) ||
    both(({ yIn }) => yIn - depthIn)
  );
}

interface Edge {
  readonly a: Point;
  readonly b: Point;
}

function turnRad(incoming: Edge, outgoing: Edge): number {
  const p = directionBetween(incoming.a, incoming.b);
  const q = directionBetween(outgoing.a, outgoing.b);
  return Math.abs(Math.atan2(p.x * q.y - p.y * q.x, p.x * q.x + p.y * q.y));
}
