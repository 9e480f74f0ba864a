import type { MeshInput } from '../../src-core/plate/mesh';
import type { MeshPoint, MeshSegment } from '../../src-core/plate/mesh-region';

/** A slab to mesh, without its mesh size. */
export type MeshShape = Omit<MeshInput, 'sizeIn'>;

/** An ideal motion of the plan: mirrored in the y axis if asked, then scaled, turned and moved. */
export interface PlanMotion {
  readonly angleRad: number;
  readonly scaleRatio: number;
  readonly isMirrored: boolean;
  readonly moveXIn: number;
  readonly moveYIn: number;
}

export function rectangle(x0: number, y0: number, x1: number, y1: number): MeshPoint[] {
  return points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
}

export function circle(xIn: number, yIn: number, radiusIn: number, sides: number): MeshPoint[] {
  return Array.from({ length: sides }, (_, i) => {
    const angleRad = (2 * Math.PI * i) / sides;
    return { xIn: xIn + radiusIn * Math.cos(angleRad), yIn: yIn + radiusIn * Math.sin(angleRad) };
  });
}

/** A rectangle with rounded corners, each of the given number of chords. */
export function roundedRectangle(
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  radiusIn: number,
  chords: number,
): MeshPoint[] {
  const centres = rectangle(x0 + radiusIn, y0 + radiusIn, x1 - radiusIn, y1 - radiusIn);
  return centres.flatMap((centre, corner) =>
    Array.from({ length: chords + 1 }, (_, i) => {
      const angleRad = Math.PI + (corner + i / chords) * (Math.PI / 2);
      return {
        xIn: centre.xIn + radiusIn * Math.cos(angleRad),
        yIn: centre.yIn + radiusIn * Math.sin(angleRad),
      };
    }),
  );
}

export function points(...pairs: readonly (readonly [number, number])[]): MeshPoint[] {
  return pairs.map(([xIn, yIn]) => ({ xIn, yIn }));
}

export function segment(ax: number, ay: number, bx: number, by: number): MeshSegment {
  return { a: { xIn: ax, yIn: ay }, b: { xIn: bx, yIn: by } };
}

/** Points at even spacing along a support line, both ends included. */
export function pointsAlong(line: MeshSegment, count: number): MeshPoint[] {
  return Array.from({ length: count }, (_, i) => {
    const ratio = i / (count - 1);
    return {
      xIn: line.a.xIn + ratio * (line.b.xIn - line.a.xIn),
      yIn: line.a.yIn + ratio * (line.b.yIn - line.a.yIn),
    };
  });
}

const supportLines = [
  segment(0, 1, 96, 1),
  segment(0, 24, 96, 24),
  segment(0.75, 0, 0.75, 25.5),
  segment(36, 0, 36, 25.5),
  segment(95.25, 0, 95.25, 25.5),
];

/** Worktops as builders cast them, with the troubles they bring. */
export const worktopShapes: Readonly<Record<string, MeshShape>> = {
  plain: { outer: rectangle(0, 0, 96, 25.5), holes: [], fixedPoints: [], segments: [] },
  'over five supports': {
    outer: rectangle(0, 0, 96, 25.5),
    holes: [],
    fixedPoints: supportLines.flatMap((line) => pointsAlong(line, 9)),
    segments: supportLines,
  },
  'with a sink': {
    outer: rectangle(0, 0, 96, 25.5),
    holes: [roundedRectangle([40, 2.5, 73, 24.5], 1, 6)],
    fixedPoints: pointsAlong(segment(0, 1, 96, 1), 13),
    segments: [segment(0, 1, 96, 1), segment(38, 0, 38, 25.5), segment(75, 0, 75, 25.5)],
  },
  'L shape': {
    outer: points([0, 0], [96, 0], [96, 25.5], [25.5, 25.5], [25.5, 72], [0, 72]),
    holes: [],
    fixedPoints: pointsAlong(segment(1, 1, 1, 71), 8),
    segments: [segment(1, 0, 1, 72), segment(0, 24.5, 96, 24.5), segment(24.5, 0, 24.5, 72)],
  },
  'with a round basin': {
    outer: rectangle(0, 0, 60, 22),
    holes: [circle(30, 11, 9, 48)],
    fixedPoints: points([2, 2], [58, 2], [58, 20], [2, 20]),
    segments: [segment(0, 1, 60, 1), segment(0, 21, 60, 21)],
  },
  'with two round cutouts': {
    outer: rectangle(0, 0, 72, 26),
    holes: [circle(18, 13, 9, 64), circle(50, 13, 9, 32)],
    fixedPoints: [],
    segments: [segment(34, 0, 34, 26)],
  },
  'ledge with strips an inch in': {
    outer: rectangle(0, 0, 48, 16.5),
    holes: [],
    fixedPoints: points([0, 0], [24, 0], [48, 16.5], [24.2, 0.15], [24.2, 0.4], [12, 8], [12.3, 8]),
    segments: rectangle(1, 1, 47, 15.5).map((a, i, all) => ({ a, b: all[(i + 1) % all.length]! })),
  },
};

/** The shape after a motion. */
export function moveShape(shape: MeshShape, motion: PlanMotion): MeshShape {
  const move = (point: MeshPoint): MeshPoint => {
    const x = motion.scaleRatio * (motion.isMirrored ? -point.xIn : point.xIn);
    const y = motion.scaleRatio * point.yIn;
    const cosine = Math.cos(motion.angleRad);
    const sine = Math.sin(motion.angleRad);
    return { xIn: cosine * x - sine * y + motion.moveXIn, yIn: sine * x + cosine * y + motion.moveYIn };
  };
  return {
    outer: shape.outer.map(move),
    holes: shape.holes.map((hole) => hole.map(move)),
    fixedPoints: shape.fixedPoints.map(move),
    segments: shape.segments.map(({ a, b }) => ({ a: move(a), b: move(b) })),
  };
}
