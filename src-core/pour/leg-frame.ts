/** The way across which a leg is struck off, and what the straightedge rides on at both ends. */
import type { Direction, Point } from '../outline';
import { directionBetween, distanceIn, leftOf } from '../outline';
import type { Leg, LegSide } from './legs';

export interface LegFrame {
  readonly along: Direction;
  readonly across: Direction;
  /** Distances of the leg from the origin of the drawing in both directions, in. */
  readonly alongIn: Extent;
  readonly acrossIn: Extent;
  /** What the leg ends on across: on its near side and on its far side. */
  readonly near: LegSide;
  readonly far: LegSide;
}

export interface Extent {
  readonly fromIn: number;
  readonly toIn: number;
}

/** A side turned from the leg's own direction by more than 60 degrees is an end, not a side that is ridden on. */
const LEAST_COSINE = 0.5;
/** Widths closer than this are one, in. */
const SAME_IN = 1e-6;

/** The narrow way of a leg: of the widths across each of its sides the least, the first of those that are equal. */
export function legFrame(leg: Leg): LegFrame {
  const frames = leg.corners.map((corner, k) => {
    const along = directionBetween(corner, leg.corners[(k + 1) % leg.corners.length]!);
    const across = leftOf(along);
    const acrossIn = extentOf(leg.corners, across);
    return { along, across, acrossIn, widthIn: acrossIn.toIn - acrossIn.fromIn };
  });
  const narrow = frames.reduce((best, frame) => (frame.widthIn < best.widthIn - SAME_IN ? frame : best));
  const { along, across, acrossIn } = narrow;
  return {
    along,
    across,
    alongIn: extentOf(leg.corners, along),
    acrossIn,
    near: longestSide(leg, along),
    far: longestSide(leg, { x: -along.x, y: -along.y }),
  };
}

/** How far a set of points reaches in a direction. */
export function extentOf(points: readonly Point[], { x, y }: Direction): Extent {
  const placesIn = points.map(({ xIn, yIn }) => xIn * x + yIn * y);
  return { fromIn: Math.min(...placesIn), toIn: Math.max(...placesIn) };
}

/** What the longest run of sides lies on that go this way round the leg, within 60 degrees. */
function longestSide(leg: Leg, way: Direction): LegSide {
  let best = leg.sides[0]!;
  let longestIn = 0;
  leg.corners.forEach((a, k) => {
    const b = leg.corners[(k + 1) % leg.corners.length]!;
    const direction = directionBetween(a, b);
    const cosine = direction.x * way.x + direction.y * way.y;
    const lengthIn = distanceIn(a, b) * cosine;
    if (cosine < LEAST_COSINE || lengthIn <= longestIn) return;
    best = leg.sides[k]!;
    longestIn = lengthIn;
  });
  return best;
}
