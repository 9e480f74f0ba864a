/** Plan geometry of the swap: where a cabinet goes, the way by which it comes in, and what lies over either. */
import type { CabinetSupport, FalseworkSection, Piece, Support } from '../job';
import { bearingPatches } from '../job';
import type { Direction, Point } from '../outline';
import { directionAt, intersectionAreaIn2, leftOf, moved, polygonAreaIn2 } from '../outline';

/** Plan overlap below this is a touch, in2: half an inch of a panel's edge. */
const TOUCH_IN2 = 0.5;
/** A section belongs to the cabinets that lie over more than this share of it. */
const SECTION_SHARE = 0.05;

/** From its back to its front: the way a cabinet comes out. */
export function towardFront(cabinet: CabinetSupport): Direction {
  const back = leftOf(directionAt((cabinet.angleDeg * Math.PI) / 180));
  return { x: -back.x, y: -back.y };
}

/** Corners of a cabinet's plan, counter-clockwise from its front left corner. */
export function cabinetPlan(cabinet: CabinetSupport): Point[] {
  return planFrom(cabinet, cabinet.corner, cabinet.depthIn);
}

/** The floor that a cabinet crosses in front of its place as it slips in: as deep as itself. */
export function cabinetPath(cabinet: CabinetSupport): Point[] {
  return planFrom(cabinet, moved(cabinet.corner, towardFront(cabinet), cabinet.depthIn), cabinet.depthIn);
}

function planFrom({ angleDeg, widthIn }: CabinetSupport, corner: Point, depthIn: number): Point[] {
  const along = directionAt((angleDeg * Math.PI) / 180);
  const right = moved(corner, along, widthIn);
  const back = leftOf(along);
  return [corner, right, moved(right, back, depthIn), moved(corner, back, depthIn)];
}

/** What of the floor a support takes up: a cabinet its whole plan, any other its bearing. */
export function supportPlans(support: Support, piece: Piece): (readonly Point[])[] {
  if (support.kind === 'cabinet') return [cabinetPlan(support)];
  return bearingPatches(support, piece.corners).map(({ corners }) => corners);
}

/** Whether a support stands in a polygon of floor, more than touching it. */
export function standsIn(support: Support, piece: Piece, floor: readonly Point[]): boolean {
  return supportPlans(support, piece).some((plan) => shareFloor(plan, floor));
}

/** Whether a section of falsework lies over a polygon of floor, more than along its rim. */
export function liesOver(section: FalseworkSection, floor: readonly Point[]): boolean {
  return overlapIn2(section.corners, floor) > SECTION_SHARE * polygonAreaIn2(section.corners);
}

/** Middle of a support's plan; null where it has none. */
export function centreOfPlan(support: Support, piece: Piece): Point | null {
  const corners = supportPlans(support, piece).flat();
  if (corners.length === 0) return null;
  const mean = (pick: (point: Point) => number) =>
    corners.reduce((sum, point) => sum + pick(point), 0) / corners.length;
  return { xIn: mean(({ xIn }) => xIn), yIn: mean(({ yIn }) => yIn) };
}

/** The floor that a polygon crosses on a way: its place at the end and what each of its sides sweeps. */
export function sweptFloor(corners: readonly Point[], way: Direction, byIn: number): (readonly Point[])[] {
  const end = corners.map((point) => moved(point, way, byIn));
  const sides = corners.map((from, i) => {
    const next = (i + 1) % corners.length;
    return [from, corners[next]!, end[next]!, end[i]!];
  });
  return [end, ...sides];
}

/** Whether two polygons of floor share more than a touch. */
export function shareFloor(first: readonly Point[], second: readonly Point[]): boolean {
  return overlapIn2(first, second) > TOUCH_IN2;
}

/** Area that two polygons share, in2. */
function overlapIn2(first: readonly Point[], second: readonly Point[]): number {
  if (polygonAreaIn2(first) < 1e-9 || polygonAreaIn2(second) < 1e-9) return 0;
  return intersectionAreaIn2({ outer: first, holes: [] }, { outer: second, holes: [] });
}
