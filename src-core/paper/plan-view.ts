/** Plan inches on paper: right is to the right, the front at the bottom. */
import type { PaperPoint } from '../figure';
import type { BoundingBox, Direction, Point } from '../outline';

/** How a plan lies on paper. */
export interface PlanView {
  /** Inches of paper to an inch of the plan. */
  readonly ratio: number;
  readonly box: BoundingBox;
  readonly at: (point: Point) => PaperPoint;
  readonly loop: (points: readonly Point[]) => PaperPoint[];
  /** A plan direction on paper. */
  readonly way: (direction: Direction) => PaperPoint;
}

/** The view of what lies in a box, its back left corner at the top left of the paper. */
export function planView(box: BoundingBox, ratio: number): PlanView {
  const at = ({ xIn, yIn }: Point): PaperPoint => ({
    x: (xIn - box.minXIn) * ratio,
    y: (box.maxYIn - yIn) * ratio,
  });
  return { ratio, box, at, loop: (points) => points.map(at), way: ({ x, y }) => ({ x, y: -y }) };
}

/** A point moved over the paper along a direction of the paper. */
export function movedOn(point: PaperPoint, way: PaperPoint, byIn: number): PaperPoint {
  return { x: point.x + way.x * byIn, y: point.y + way.y * byIn };
}

/** Clockwise turn of words along a line of the paper, so that they read from the front or from the right. */
export function readableTurnDeg(from: PaperPoint, to: PaperPoint): number {
  const deg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  if (deg >= 90 - 1e-6) return deg - 180;
  return deg < -90 - 1e-6 ? deg + 180 : deg;
}

/** Up from words that are turned so: the side of a line on which they stand. */
export function aboveWords(turnDeg: number): PaperPoint {
  const rad = (turnDeg * Math.PI) / 180;
  return { x: Math.sin(rad), y: -Math.cos(rad) };
}

/** The point a share of the way from one to another. */
export function onWay(a: PaperPoint, b: PaperPoint, ratio: number): PaperPoint {
  return { x: a.x + (b.x - a.x) * ratio, y: a.y + (b.y - a.y) * ratio };
}

/** Distance on paper, in. */
export function apartIn(a: PaperPoint, b: PaperPoint): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
