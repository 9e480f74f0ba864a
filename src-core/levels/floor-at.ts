/** The floor at a place: its height, its slope, and whether that place was read or only supposed. */
import type { Point } from '../outline';
import { distanceIn, nearestOnOutline } from '../outline';
import type { FloorPoint } from './floor-heights';
import {
  acrossIn,
  alongIn,
  type FloorSlope,
  type FloorSurface,
  type LineFloor,
  SAME_PLACE_IN,
  type TriangleFloor,
} from './floor-surface';

export interface FloorPlace {
  readonly heightIn: number;
  readonly slope: FloorSlope;
  /** True an inch and more beyond the readings: the height there is carried on from them. */
  readonly isBeyond: boolean;
}

/**
 * Height of the floor above the datum, in, and its slope at a place. Between the readings the height is linear over each triangle;
 * beyond them it goes on from the nearest place between them at their mean slope, without a step.
 */
export function floorAt(floor: FloorSurface, place: Point): FloorPlace {
  switch (floor.kind) {
    case 'level': {
      const [only] = floor.points;
      const isBeyond = only === undefined || distanceIn(only, place) >= SAME_PLACE_IN;
      return { heightIn: floor.heightIn, slope: floor.meanSlope, isBeyond };
    }
    case 'line':
      return onLine(floor, place);
    case 'triangles':
      return inTriangle(floor, place) ?? outside(floor, place);
  }
}

/** Highest and lowest of the readings; null where there are none. Between readings the floor is nowhere higher or lower. */
export function floorRange(
  floor: FloorSurface,
): { readonly highest: FloorPoint; readonly lowest: FloorPoint } | null {
  const [first] = floor.points;
  if (first === undefined) return null;
  const pick = (isBetter: (a: FloorPoint, b: FloorPoint) => boolean) =>
    floor.points.reduce((best, point) => (isBetter(point, best) ? point : best), first);
  return {
    highest: pick((a, b) => a.heightIn > b.heightIn),
    lowest: pick((a, b) => a.heightIn < b.heightIn),
  };
}

function onLine({ stations, along, offsetIn, meanSlope }: LineFloor, place: Point): FloorPlace {
  const atIn = alongIn(place, along);
  const [first, last] = [stations[0]!, stations.at(-1)!];
  const nearIn = Math.min(last.atIn, Math.max(first.atIn, atIn));
  const i = Math.max(
    1,
    stations.findIndex((station) => station.atIn >= nearIn),
  );
  const [a, b] = [stations[i - 1]!, stations[i] ?? last];
  const lengthIn = b.atIn - a.atIn;
  const grade = lengthIn > 0 ? (b.heightIn - a.heightIn) / lengthIn : 0;
  const meanGrade = meanSlope.x * along.x + meanSlope.y * along.y;
  const pastIn = Math.abs(atIn - nearIn);
  return {
    heightIn: a.heightIn + grade * (nearIn - a.atIn) + meanGrade * (atIn - nearIn),
    slope: pastIn > 0 ? meanSlope : { x: grade * along.x, y: grade * along.y },
    isBeyond: Math.hypot(pastIn, acrossIn(place, along) - offsetIn) >= SAME_PLACE_IN,
  };
}

/** A place may miss its triangle by this share of the triangle and still be in it: rounding. */
const INSIDE_RATIO = 1e-9;

function inTriangle({ points, triangles }: TriangleFloor, place: Point): FloorPlace | null {
  for (let t = 0; t < triangles.length; t += 3) {
    const corner = (i: number) => points[triangles[t + i]!]!;
    const [a, b, c] = [corner(0), corner(1), corner(2)];
    const whole = doubleAreaIn2(a, b, c);
    const shares = [
      doubleAreaIn2(b, c, place) / whole,
      doubleAreaIn2(c, a, place) / whole,
      doubleAreaIn2(a, b, place) / whole,
    ];
    if (!shares.every((share) => share >= -INSIDE_RATIO)) continue;
    const heightIn = shares[0]! * a.heightIn + shares[1]! * b.heightIn + shares[2]! * c.heightIn;
    return { heightIn, slope: triangleSlope(a, b, c), isBeyond: false };
  }
  return null;
}

/** Twice the signed area of a triangle in plan, in2. */
function doubleAreaIn2(a: Point, b: Point, c: Point): number {
  return (b.xIn - a.xIn) * (c.yIn - a.yIn) - (b.yIn - a.yIn) * (c.xIn - a.xIn);
}

function triangleSlope(a: FloorPoint, b: FloorPoint, c: FloorPoint): FloorSlope {
  const whole = doubleAreaIn2(a, b, c);
  const [hb, hc] = [b.heightIn - a.heightIn, c.heightIn - a.heightIn];
  return {
    x: (hb * (c.yIn - a.yIn) - hc * (b.yIn - a.yIn)) / whole,
    y: (hc * (b.xIn - a.xIn) - hb * (c.xIn - a.xIn)) / whole,
  };
}

function outside({ points, hull, meanSlope }: TriangleFloor, place: Point): FloorPlace {
  const corners = hull.map((i) => points[i]!);
  const { edge, at, distanceIn: offIn } = nearestOnOutline(place, corners);
  const [a, b] = [corners[edge]!, corners[(edge + 1) % corners.length]!];
  const edgeHeightIn = a.heightIn + ((b.heightIn - a.heightIn) * distanceIn(a, at)) / distanceIn(a, b);
  return {
    heightIn: edgeHeightIn + meanSlope.x * (place.xIn - at.xIn) + meanSlope.y * (place.yIn - at.yIn),
    slope: meanSlope,
    isBeyond: offIn >= SAME_PLACE_IN,
  };
}
