/** Where a point goes that a hand has put nearly right: onto what is drawn, or else onto the grid. */
import type { Direction, Point } from '../outline';
import { distanceIn, nearestOnSegment, segmentMeeting, TOUCH_IN } from '../outline';

export type SnapTarget =
  | { readonly kind: 'point'; readonly key: string; readonly words: string; readonly at: Point }
  | {
      readonly kind: 'line';
      readonly key: string;
      readonly words: string;
      readonly a: Point;
      readonly b: Point;
    };

export interface SnapOptions {
  /** Spacing of the grid that takes what nothing else takes. */
  readonly gridIn: number;
  readonly targets: readonly SnapTarget[];
  /** How far a target reaches out for a point. */
  readonly reachIn: number;
}

/** What a point was drawn to. `aligned` shares x or y with a target that is not itself within reach. */
export type SnappedTo =
  | { readonly kind: 'on'; readonly target: SnapTarget }
  | { readonly kind: 'aligned'; readonly axis: 'x' | 'y'; readonly target: SnapTarget };

export interface Snapped {
  readonly at: Point;
  /** Empty where only the grid took it. */
  readonly to: readonly SnappedTo[];
}

export interface SnappedDistance {
  readonly distanceIn: number;
  readonly to: SnapTarget | null;
}

/**
 * A point of a drawing comes first, then the meeting of two lines, then one line (at a step of the grid along it where it runs
 * straight across or up), then x and y each on their own: those of a point within reach, or the grid.
 */
export function snapPoint(point: Point, { gridIn, targets, reachIn }: SnapOptions): Snapped {
  const own = nearestPoint(point, targets, reachIn);
  if (own !== null) return { at: own.at, to: [{ kind: 'on', target: own }] };
  const lines = linesNear(point, targets, reachIn);
  const meeting = nearestMeeting(point, lines, reachIn);
  if (meeting !== null) return meeting;
  const line = lines[0];
  if (line !== undefined) return { at: onLine(point, line, gridIn), to: [{ kind: 'on', target: line }] };
  return alignedOrGrid(point, { gridIn, targets, reachIn });
}

/**
 * Snaps a move of `distanceIn` from `origin` along a unit vector: to where it is level with the nearest end or point of a target,
 * else so that it ends on a line of the grid.
 */
export function snapDistance(
  origin: Point,
  direction: Direction,
  distance: number,
  { gridIn, targets, reachIn }: SnapOptions,
): SnappedDistance {
  const along = (p: Point) => direction.x * (p.xIn - origin.xIn) + direction.y * (p.yIn - origin.yIn);
  let best: { readonly toIn: number; readonly target: SnapTarget } | null = null;
  for (const target of targets) {
    for (const end of endsOf(target)) {
      const toIn = along(end);
      const missIn = Math.abs(toIn - distance);
      if (missIn <= reachIn && (best === null || missIn < Math.abs(best.toIn - distance))) {
        best = { toIn, target };
      }
    }
  }
  if (best !== null) return { distanceIn: best.toIn, to: best.target };
  const fromIn = direction.x * origin.xIn + direction.y * origin.yIn;
  return { distanceIn: toGrid(fromIn + distance, gridIn) - fromIn, to: null };
}

/** The nearest multiple of the grid's spacing, in. */
export function toGrid(valueIn: number, gridIn: number): number {
  return Math.round(valueIn / gridIn) * gridIn;
}

type PointTarget = Extract<SnapTarget, { kind: 'point' }>;
type LineTarget = Extract<SnapTarget, { kind: 'line' }>;

function nearestPoint(point: Point, targets: readonly SnapTarget[], withinIn: number): PointTarget | null {
  let best: PointTarget | null = null;
  for (const target of targets) {
    if (target.kind !== 'point') continue;
    const awayIn = distanceIn(point, target.at);
    if (awayIn <= withinIn && (best === null || awayIn < distanceIn(point, best.at))) best = target;
  }
  return best;
}

/** Lines within reach, nearest first. */
function linesNear(point: Point, targets: readonly SnapTarget[], withinIn: number): LineTarget[] {
  return targets
    .flatMap((target) => {
      if (target.kind !== 'line') return [];
      const awayIn = distanceIn(point, nearestOnSegment(point, target));
      return awayIn <= withinIn ? [{ target, awayIn }] : [];
    })
    .sort((one, other) => one.awayIn - other.awayIn)
    .map(({ target }) => target);
}

function nearestMeeting(point: Point, lines: readonly LineTarget[], withinIn: number): Snapped | null {
  const [first] = lines;
  if (first === undefined) return null;
  let best: Snapped | null = null;
  for (const other of lines.slice(1)) {
    if (areParallel(first, other)) continue;
    const at = segmentMeeting(first, other);
    if (at === null || distanceIn(point, at) > withinIn) continue;
    if (best === null || distanceIn(point, at) < distanceIn(point, best.at)) {
      best = { at, to: [first, other].map((target) => ({ kind: 'on', target })) };
    }
  }
  return best;
}

function areParallel(one: LineTarget, other: LineTarget): boolean {
  const turn =
    (one.b.xIn - one.a.xIn) * (other.b.yIn - other.a.yIn) -
    (one.b.yIn - one.a.yIn) * (other.b.xIn - other.a.xIn);
  return Math.abs(turn) <= TOUCH_IN;
}

function onLine(point: Point, line: LineTarget, gridIn: number): Point {
  const stepped = { xIn: toGrid(point.xIn, gridIn), yIn: toGrid(point.yIn, gridIn) };
  const isAcross = Math.abs(line.a.yIn - line.b.yIn) <= TOUCH_IN;
  const isUp = Math.abs(line.a.xIn - line.b.xIn) <= TOUCH_IN;
  return nearestOnSegment(isAcross || isUp ? stepped : point, line);
}

function alignedOrGrid(point: Point, { gridIn, targets, reachIn }: SnapOptions): Snapped {
  const x = nearestLevel(point.xIn, ({ xIn }) => xIn, targets, reachIn);
  const y = nearestLevel(point.yIn, ({ yIn }) => yIn, targets, reachIn);
  const to: SnappedTo[] = [];
  if (x !== null) to.push({ kind: 'aligned', axis: 'x', target: x });
  if (y !== null) to.push({ kind: 'aligned', axis: 'y', target: y });
  return {
    at: { xIn: x?.at.xIn ?? toGrid(point.xIn, gridIn), yIn: y?.at.yIn ?? toGrid(point.yIn, gridIn) },
    to,
  };
}

function nearestLevel(
  valueIn: number,
  read: (point: Point) => number,
  targets: readonly SnapTarget[],
  withinIn: number,
): PointTarget | null {
  let best: PointTarget | null = null;
  for (const target of targets) {
    if (target.kind !== 'point') continue;
    const missIn = Math.abs(read(target.at) - valueIn);
    if (missIn <= withinIn && (best === null || missIn < Math.abs(read(best.at) - valueIn))) best = target;
  }
  return best;
}

function endsOf(target: SnapTarget): readonly Point[] {
  return target.kind === 'point' ? [target.at] : [target.a, target.b];
}
