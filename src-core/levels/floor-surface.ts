/**
 * The floor between scattered readings: triangles between them (Delaunay), a line where they lie on one, level where there is only
 * one. Beyond the readings it goes on at their mean slope.
 */
import Delaunator from 'delaunator';
import type { Direction } from '../outline';
import { distanceIn } from '../outline';
import type { FloorPoint } from './floor-heights';

/** Rise of the floor for each inch to the right and each inch back, ratios. */
export interface FloorSlope {
  readonly x: number;
  readonly y: number;
}

export type FloorRemarkCode = 'no-readings' | 'one-reading' | 'readings-in-line' | 'readings-disagree';

export interface FloorRemark {
  readonly code: FloorRemarkCode;
  readonly sentence: string;
}

interface FloorBase {
  /** The readings, those at one place taken together. */
  readonly points: readonly FloorPoint[];
  /** Slope of the best plane, or best line, through all readings: how the floor goes on beyond them. */
  readonly meanSlope: FloorSlope;
  readonly remarks: readonly FloorRemark[];
}

export interface LevelFloor extends FloorBase {
  readonly kind: 'level';
  readonly heightIn: number;
}

/** Readings in a line: level across it. */
export interface LineFloor extends FloorBase {
  readonly kind: 'line';
  readonly along: Direction;
  /** `points` in order along the line, with their distance along it from the drawing's origin. */
  readonly stations: readonly { readonly atIn: number; readonly heightIn: number }[];
  /** Distance of the line from the drawing's origin, to its left. */
  readonly offsetIn: number;
}

export interface TriangleFloor extends FloorBase {
  readonly kind: 'triangles';
  /** Three indices into `points` a triangle. */
  readonly triangles: readonly number[];
  /** Indices into `points` round the outside. */
  readonly hull: readonly number[];
}

export type FloorSurface = LevelFloor | LineFloor | TriangleFloor;

/** Readings nearer than the foot of a rod are one place, in. Common practice, no source. */
export const SAME_PLACE_IN = 1;

/** Readings at one place that differ by more than this are worth a word, in: 1/16. Common practice, no source. */
const DISAGREE_IN = 1 / 16;

/** Readings this much narrower than they are long say nothing about the fall across them. Judgement, no source. */
const LINE_WIDTH_RATIO = 1 / 20;

/** The floor that a set of heights describes. Linear interpolation on a Delaunay triangulation (Lawson 1977). */
export function floorSurface(readings: readonly FloorPoint[]): FloorSurface {
  const { points, remarks } = mergedReadings(readings);
  if (points.length < 2) return levelFloor(points, remarks);
  const spread = spreadOf(points);
  if (spread.widthIn <= Math.max(SAME_PLACE_IN, spread.lengthIn * LINE_WIDTH_RATIO)) {
    return lineFloor(points, spread.along, remarks);
  }
  const flat = new Float64Array(points.flatMap(({ xIn, yIn }) => [xIn, yIn]));
  const { triangles, hull } = new Delaunator(flat);
  return {
    kind: 'triangles',
    points,
    remarks,
    meanSlope: planeSlope(points),
    triangles: [...triangles],
    hull: [...hull],
  };
}

/** Readings at one place become their mean, with a word where they disagree. */
function mergedReadings(readings: readonly FloorPoint[]) {
  const groups: FloorPoint[][] = [];
  for (const reading of readings) {
    const group = groups.find(([first]) => distanceIn(first!, reading) < SAME_PLACE_IN);
    if (group === undefined) groups.push([reading]);
    else group.push(reading);
  }
  const remarks = groups.flatMap((group): FloorRemark[] => {
    const heights = group.map(({ heightIn }) => heightIn);
    if (Math.max(...heights) - Math.min(...heights) <= DISAGREE_IN) return [];
    const sentence =
      'Readings at one place differ by more than 1/16 in; their mean is used. Read that place again.';
    return [{ code: 'readings-disagree', sentence }];
  });
  return { points: groups.map(meanPoint), remarks: remarks.slice(0, 1) };
}

function meanPoint(group: readonly FloorPoint[]): FloorPoint {
  const mean = (of: (point: FloorPoint) => number) =>
    group.reduce((sum, point) => sum + of(point), 0) / group.length;
  return { xIn: mean((p) => p.xIn), yIn: mean((p) => p.yIn), heightIn: mean((p) => p.heightIn) };
}

function levelFloor(points: readonly FloorPoint[], remarks: readonly FloorRemark[]): LevelFloor {
  const [only] = points;
  const remark: FloorRemark =
    only === undefined
      ? {
          code: 'no-readings',
          sentence: 'The floor has not been read. It is taken as level; every leg will differ from this.',
        }
      : {
          code: 'one-reading',
          sentence: 'The floor has been read at one place only. It is taken as level; read it at every leg.',
        };
  return {
    kind: 'level',
    points,
    heightIn: only?.heightIn ?? 0,
    meanSlope: { x: 0, y: 0 },
    remarks: [...remarks, remark],
  };
}

interface Spread {
  /** The direction in which the readings spread most. */
  readonly along: Direction;
  readonly lengthIn: number;
  readonly widthIn: number;
}

function spreadOf(points: readonly FloorPoint[]): Spread {
  const { xx, xy, yy } = centred(points);
  const angleRad = Math.atan2(2 * xy, xx - yy) / 2;
  const along = { x: Math.cos(angleRad), y: Math.sin(angleRad) };
  const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return {
    along,
    lengthIn: range(points.map((p) => alongIn(p, along))),
    widthIn: range(points.map((p) => acrossIn(p, along))),
  };
}

/** Distance of a place along a direction from the drawing's origin, in. */
export function alongIn(point: { readonly xIn: number; readonly yIn: number }, along: Direction): number {
  return point.xIn * along.x + point.yIn * along.y;
}

/** Distance of a place to the left of a direction through the drawing's origin, in. */
export function acrossIn(point: { readonly xIn: number; readonly yIn: number }, along: Direction): number {
  return point.yIn * along.x - point.xIn * along.y;
}

function lineFloor(
  points: readonly FloorPoint[],
  along: Direction,
  remarks: readonly FloorRemark[],
): LineFloor {
  const sorted = points
    .map((point) => ({ point, atIn: alongIn(point, along) }))
    .sort((a, b) => a.atIn - b.atIn);
  // Two readings beside each other across the line are one station, or the line would step there.
  const stations: { atIn: number; heightIn: number; count: number }[] = [];
  for (const { point, atIn } of sorted) {
    const last = stations.at(-1);
    if (last === undefined || atIn - last.atIn >= SAME_PLACE_IN) {
      stations.push({ atIn, heightIn: point.heightIn, count: 1 });
    } else {
      last.heightIn += (point.heightIn - last.heightIn) / (last.count + 1);
      last.count += 1;
    }
  }
  const offsetIn = points.reduce((sum, point) => sum + acrossIn(point, along), 0) / points.length;
  const grade = lineGrade(stations);
  const sentence =
    'The floor has been read along one line only. It is taken as level across that line; read it beside the line too.';
  return {
    kind: 'line',
    points,
    along,
    stations: stations.map(({ atIn, heightIn }) => ({ atIn, heightIn })),
    offsetIn,
    meanSlope: { x: grade * along.x, y: grade * along.y },
    remarks: [...remarks, { code: 'readings-in-line', sentence }],
  };
}

/** Least-squares grade of a line (a ratio), 0 for one station. */
function lineGrade(stations: readonly { readonly atIn: number; readonly heightIn: number }[]): number {
  const meanAt = stations.reduce((sum, s) => sum + s.atIn, 0) / stations.length;
  const meanHeight = stations.reduce((sum, s) => sum + s.heightIn, 0) / stations.length;
  let top = 0;
  let bottom = 0;
  for (const { atIn, heightIn } of stations) {
    top += (atIn - meanAt) * (heightIn - meanHeight);
    bottom += (atIn - meanAt) ** 2;
  }
  return bottom > 0 ? top / bottom : 0;
}

/** Least-squares plane through readings that do not lie on a line. Any statistics text. */
function planeSlope(points: readonly FloorPoint[]): FloorSlope {
  const { xx, xy, yy, xh, yh } = centred(points);
  const determinant = xx * yy - xy ** 2;
  return { x: (xh * yy - yh * xy) / determinant, y: (yh * xx - xh * xy) / determinant };
}

/** Sums of products about the mean of all points. */
function centred(points: readonly FloorPoint[]) {
  const mean = meanPoint(points);
  const sums = { xx: 0, xy: 0, yy: 0, xh: 0, yh: 0 };
  for (const { xIn, yIn, heightIn } of points) {
    const [dx, dy, dh] = [xIn - mean.xIn, yIn - mean.yIn, heightIn - mean.heightIn];
    sums.xx += dx * dx;
    sums.xy += dx * dy;
    sums.yy += dy * dy;
    sums.xh += dx * dh;
    sums.yh += dy * dh;
  }
  return sums;
}
