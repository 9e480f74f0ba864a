/** A layer's own frame: u along its direction, v across, so that strips and bars lie square to the axes. */
import type { Point, Region } from '../outline';
import { boundingBox, intersectRegions, regionsOf, turned } from '../outline';

/** A stretch along one axis of the frame, in. */
export interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
}

/** An upright rectangle of the frame. */
export interface Box {
  readonly u: Stretch;
  readonly v: Stretch;
}

export type Axis = 'u' | 'v';

/** Both ways between the drawing and a frame turned by an angle. */
export interface Frame {
  readonly into: (point: Point) => Point;
  readonly outOf: (point: Point) => Point;
}

/** The frame whose u axis runs at an angle from the drawing's x axis, degree. */
export function frameAt(angleDeg: number): Frame {
  const angleRad = (angleDeg * Math.PI) / 180;
  return { into: (point) => turned(point, -angleRad), outOf: (point) => turned(point, angleRad) };
}

/** A slab with every point moved by a function that keeps its shape. */
export function mapRegion({ outer, holes }: Region, move: (point: Point) => Point): Region {
  return { outer: outer.map(move), holes: holes.map((hole) => hole.map(move)) };
}

export function boxOf(points: readonly Point[]): Box {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(points);
  return { u: { fromIn: minXIn, toIn: maxXIn }, v: { fromIn: minYIn, toIn: maxYIn } };
}

export function boxCorners({ u, v }: Box): Point[] {
  return [
    { xIn: u.fromIn, yIn: v.fromIn },
    { xIn: u.toIn, yIn: v.fromIn },
    { xIn: u.toIn, yIn: v.toIn },
    { xIn: u.fromIn, yIn: v.toIn },
  ];
}

export function sizeIn({ fromIn, toIn }: Stretch): number {
  return toIn - fromIn;
}

/** Length that two stretches share, in; below 0 the gap between them. */
export function sharedIn(first: Stretch, second: Stretch): number {
  return Math.min(first.toIn, second.toIn) - Math.max(first.fromIn, second.fromIn);
}

/** The parts of a slab within an upright rectangle. */
export function withinBox(region: Region, box: Box): Region[] {
  return regionsOf(intersectRegions(region, { outer: boxCorners(box), holes: [] }));
}
