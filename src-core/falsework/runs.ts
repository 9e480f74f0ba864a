/** A piece cut into upright rectangles of its own directions, with what already stands below it left out. */
import type { Direction, Point } from '../outline';
import { leftOf, pieceDirection } from '../outline';

/** A rectangle along the piece's own directions u and v, measured from the drawing's origin, in. */
export interface Run {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

/** The direction u of a piece: along its longest edge, to the right or to the back. */
export function runDirection(corners: readonly Point[]): Direction {
  const { x, y } = pieceDirection(corners);
  const isForward = x > 1e-9 || (Math.abs(x) <= 1e-9 && y > 0);
  return isForward ? { x, y } : { x: -x, y: -y };
}

/** A place in plan along u and v. */
export function alongRun(point: Point, u: Direction): { u: number; v: number } {
  const v = leftOf(u);
  return { u: point.xIn * u.x + point.yIn * u.y, v: point.xIn * v.x + point.yIn * v.y };
}

/** The place in plan of a place along u and v. */
export function inPlan(uIn: number, vIn: number, u: Direction): Point {
  const v = leftOf(u);
  return { xIn: uIn * u.x + vIn * v.x, yIn: uIn * u.y + vIn * v.y };
}

/** The upright box of a polygon along u and v. */
export function boxOf(points: readonly Point[], u: Direction): Run {
  const places = points.map((point) => alongRun(point, u));
  const us = places.map((place) => place.u);
  const vs = places.map((place) => place.v);
  return { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...vs), v1: Math.max(...vs) };
}

/** Rounding, in. */
const SAME_IN = 1e-6;
/** An edge is taken as square to the others within this slope (a ratio): a degree. */
const SQUARE_RATIO = 0.0175;

/** Both ways of cutting a piece into rectangles, fewest first; a piece that is not square gives its one box. */
export function rectangleCuts(corners: readonly Point[], u: Direction): Run[][] {
  const places = corners.map((corner) => alongRun(corner, u));
  const isSquare = places.every((a, i) => {
    const b = places[(i + 1) % places.length]!;
    const [du, dv] = [Math.abs(b.u - a.u), Math.abs(b.v - a.v)];
    return Math.min(du, dv) <= SQUARE_RATIO * Math.max(du, dv) + SAME_IN;
  });
  if (!isSquare) return [[boxOf(corners, u)]];
  const upright = stripsOf(places.map(({ u: along, v }) => ({ along, across: v })));
  const level = stripsOf(places.map(({ u: across, v }) => ({ along: v, across })));
  const cuts = [
    upright.map(({ a0, a1, b0, b1 }) => ({ u0: a0, u1: a1, v0: b0, v1: b1 })),
    level.map(({ a0, a1, b0, b1 }) => ({ u0: b0, u1: b1, v0: a0, v1: a1 })),
  ];
  return cuts.sort((a, b) => a.length - b.length);
}

interface Strip {
  readonly a0: number;
  readonly a1: number;
  readonly b0: number;
  readonly b1: number;
}

/** Cuts square to `along` at every corner; neighbouring strips as wide as each other become one. */
function stripsOf(places: readonly { readonly along: number; readonly across: number }[]): Strip[] {
  const cuts = [...new Set(places.map(({ along }) => Math.round(along / SAME_IN) * SAME_IN))].sort(
    (a, b) => a - b,
  );
  const strips: Strip[] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [a0, a1] = [cuts[i]!, cuts[i + 1]!];
    const crossings = places
      .flatMap((p, k) => {
        const q = places[(k + 1) % places.length]!;
        const middle = (a0 + a1) / 2;
        if (p.along < middle === q.along < middle) return [];
        return [p.across + ((q.across - p.across) * (middle - p.along)) / (q.along - p.along)];
      })
      .sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const [b0, b1] = [crossings[k]!, crossings[k + 1]!];
      const last = strips.findIndex(
        (s) =>
          Math.abs(s.a1 - a0) < SAME_IN && Math.abs(s.b0 - b0) < SAME_IN && Math.abs(s.b1 - b1) < SAME_IN,
      );
      if (last >= 0) strips[last] = { ...strips[last]!, a1 };
      else strips.push({ a0, a1, b0, b1 });
    }
  }
  return strips;
}

/** An obstacle that covers this share of a run's width cuts it in two; a smaller one is an opening in its deck. */
const CUTTING_SHARE = 0.6;

/** A run with the obstacles that cut it taken out; what is left narrower than `leastIn` needs no deck. */
export function withoutObstacles(run: Run, obstacles: readonly Run[], leastIn: number): Run[] {
  const wideEnough = ({ u0, u1, v0, v1 }: Run) =>
    u1 - u0 >= leastIn - SAME_IN && v1 - v0 >= leastIn - SAME_IN;
  let runs = [run].filter(wideEnough);
  for (const obstacle of obstacles) runs = runs.flatMap((each) => cutBy(each, obstacle)).filter(wideEnough);
  return runs;
}

/** Length that two stretches share, in; negative where they are apart. */
export function sharedIn(a0: number, a1: number, b0: number, b1: number): number {
  return Math.min(a1, b1) - Math.max(a0, b0);
}

function cutBy(run: Run, obstacle: Run): Run[] {
  const shareU = sharedIn(run.u0, run.u1, obstacle.u0, obstacle.u1);
  const shareV = sharedIn(run.v0, run.v1, obstacle.v0, obstacle.v1);
  if (shareU <= SAME_IN || shareV <= SAME_IN) return [run];
  const [ofU, ofV] = [shareU / (run.u1 - run.u0), shareV / (run.v1 - run.v0)];
  if (Math.max(ofU, ofV) < CUTTING_SHARE) return [run];
  if (ofV >= ofU) {
    return [
      { ...run, u1: Math.max(run.u0, obstacle.u0) },
      { ...run, u0: Math.min(run.u1, obstacle.u1) },
    ];
  }
  return [
    { ...run, v1: Math.max(run.v0, obstacle.v0) },
    { ...run, v0: Math.min(run.v1, obstacle.v1) },
  ];
}
