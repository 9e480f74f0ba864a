/** Bearings in plan, and where a straight line over the slab meets them. */
import { lineCuts, stretchesOnSlab } from './clipping';
import { whereInPolygon } from './containment';
import type { Direction, Point, Region } from './point';
import { moved, TOUCH_IN } from './point';
import type { Stretch } from './segments';
import { sideIn, touchAlong } from './segments';

export type Bearing =
  | { readonly kind: 'line'; readonly a: Point; readonly b: Point }
  | { readonly kind: 'polygon'; readonly points: readonly Point[] };

/** A stretch of a line that lies on a bearing, or the one point where it touches it. */
export interface BearingStretch extends Stretch {
  readonly bearing: number;
}

/** What a straight line passes over, by distance from its origin, in. */
export interface LineReading {
  readonly slab: readonly Stretch[];
  readonly bearings: readonly BearingStretch[];
}

/** Reach from a point of a line to the first bearing on one side. */
export interface Reach {
  readonly distanceIn: number;
  readonly bearing: number;
}

/**
 * Reads the line through `origin` along the unit vector `direction`: where it is over slab, where over bearings. Bearings that
 * are known to lie beside it may be left out by their index.
 */
export function readLine(
  origin: Point,
  direction: Direction,
  region: Region,
  bearings: readonly Bearing[],
  mayMeet: (bearing: number) => boolean = () => true,
): LineReading {
  return {
    slab: stretchesOnSlab(origin, direction, region),
    bearings: bearings.flatMap((bearing, index) =>
      mayMeet(index)
        ? bearingStretches(origin, direction, bearing).map((stretch) => ({ ...stretch, bearing: index }))
        : [],
    ),
  };
}

/** The stretch of slab that holds the point `atIn` of a line and goes on ahead of it, or null. */
export function slabAhead(reading: LineReading, atIn: number): Stretch | null {
  return reading.slab.find(({ fromIn, toIn }) => fromIn <= atIn + TOUCH_IN && toIn > atIn + TOUCH_IN) ?? null;
}

/** First bearing ahead of the point `atIn` that is met before the slab ends at `slabEndIn`, or null. */
export function bearingAhead(reading: LineReading, atIn: number, slabEndIn: number): Reach | null {
  let first: Reach | null = null;
  for (const { fromIn, toIn, bearing } of reading.bearings) {
    if (toIn < atIn - TOUCH_IN || fromIn > slabEndIn + TOUCH_IN) continue;
    const distanceIn = Math.max(0, fromIn - atIn);
    if (first === null || distanceIn < first.distanceIn) first = { distanceIn, bearing };
  }
  return first;
}

/** As `bearingAhead`, looking back to where the slab begins at `slabStartIn`. */
export function bearingBehind(reading: LineReading, atIn: number, slabStartIn: number): Reach | null {
  let first: Reach | null = null;
  for (const { fromIn, toIn, bearing } of reading.bearings) {
    if (fromIn > atIn + TOUCH_IN || toIn < slabStartIn - TOUCH_IN) continue;
    const distanceIn = Math.max(0, atIn - toIn);
    if (first === null || distanceIn < first.distanceIn) first = { distanceIn, bearing };
  }
  return first;
}

function bearingStretches(origin: Point, direction: Direction, bearing: Bearing): Stretch[] {
  if (bearing.kind === 'line') {
    const touch = touchAlong(origin, direction, bearing);
    return touch === null ? [] : [touch];
  }
  if (liesBeside(origin, direction, bearing.points)) return [];
  const cuts = lineCuts(origin, direction, [bearing.points]);
  const points = cuts.map((atIn) => ({ fromIn: atIn, toIn: atIn }));
  const inside = cuts.slice(1).flatMap((toIn, i) => {
    const fromIn = cuts[i]!;
    const middle = moved(origin, direction, (fromIn + toIn) / 2);
    return whereInPolygon(middle, bearing.points) === 'outside' ? [] : [{ fromIn, toIn }];
  });
  return [...points, ...inside];
}

/** Whether a polygon lies wholly on one side of a line, as most do. */
function liesBeside(origin: Point, direction: Direction, points: readonly Point[]): boolean {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const side = sideIn(origin, direction, point);
    least = Math.min(least, side);
    most = Math.max(most, side);
  }
  return least > TOUCH_IN || most < -TOUCH_IN;
}
