/** A closed line walked with the slab on the left: its corners with their turns, its edges less what the radii take. */
import type { Corner, Direction, Point } from '../outline';
import { directionBetween, distanceIn, leftOf, moved, signedAreaIn2 } from '../outline';
import { STRAIGHT_RAD } from './practice';

export interface WalkCorner {
  /** Number of the corner as drawn. */
  readonly index: number;
  readonly at: Point;
  readonly radiusIn: number;
  /** Positive to the left: at an outside corner of the slab. */
  readonly turnRad: number;
  /** From the corner to where its arc begins and ends; 0 at a sharp corner. */
  readonly tangentIn: number;
  readonly incoming: Direction;
  readonly outgoing: Direction;
}

export interface WalkEdge {
  /** Number of the edge as drawn. */
  readonly index: number;
  /** The straight part between the arcs. */
  readonly from: Point;
  readonly to: Point;
  readonly lengthIn: number;
  readonly direction: Direction;
}

/** Edge k runs from corner k to corner k + 1. */
export interface Walk {
  readonly corners: readonly WalkCorner[];
  readonly edges: readonly WalkEdge[];
}

/** Walks a sound outline, drawn either way round, with what lies `slabSide` of it on the left. */
export function walkOutline(drawn: readonly Corner[], slabSide: 'inside' | 'outside'): Walk {
  const n = drawn.length;
  const isForward = signedAreaIn2(drawn) > 0 === (slabSide === 'inside');
  const order = drawn.map((_, k) => (isForward ? k : n - 1 - k));
  const corners = order.map((index, k) =>
    walkCorner(index, [drawn[order[(k + n - 1) % n]!]!, drawn[index]!, drawn[order[(k + 1) % n]!]!]),
  );
  const edges = corners.map((corner, k): WalkEdge => {
    const next = corners[(k + 1) % n]!;
    const direction = corner.outgoing;
    const from = moved(corner.at, direction, corner.tangentIn);
    const to = moved(next.at, direction, -next.tangentIn);
    const lengthIn = distanceIn(corner.at, next.at) - corner.tangentIn - next.tangentIn;
    return { index: isForward ? corner.index : next.index, from, to, lengthIn, direction };
  });
  return { corners, edges };
}

function walkCorner(index: number, [before, corner, after]: readonly [Corner, Corner, Corner]): WalkCorner {
  const incoming = directionBetween(before, corner);
  const outgoing = directionBetween(corner, after);
  const turnRad = Math.atan2(
    incoming.x * outgoing.y - incoming.y * outgoing.x,
    incoming.x * outgoing.x + incoming.y * outgoing.y,
  );
  const isRound = corner.radiusIn > 0 && !isStraight(turnRad);
  const tangentIn = isRound ? corner.radiusIn * Math.tan(Math.abs(turnRad) / 2) : 0;
  const at = { xIn: corner.xIn, yIn: corner.yIn };
  return { index, at, radiusIn: isRound ? corner.radiusIn : 0, turnRad, tangentIn, incoming, outgoing };
}

/** Whether a corner turns too little to be one. */
export function isStraight(turnRad: number): boolean {
  return Math.abs(turnRad) < STRAIGHT_RAD;
}

/** Where the arc of a rounded corner begins and ends, and its centre. */
export function arcOf({ at, radiusIn, turnRad, tangentIn, incoming, outgoing }: WalkCorner): {
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
} {
  const from = moved(at, incoming, -tangentIn);
  const centre = moved(from, leftOf(incoming), Math.sign(turnRad) * radiusIn);
  return { from, to: moved(at, outgoing, tangentIn), centre };
}
