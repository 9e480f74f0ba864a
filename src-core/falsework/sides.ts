/** The sides of a section: the one by which it comes out, and those along a wall. */
import type { CabinetSupport, Piece, Support } from '../job';
import type { Direction, Point } from '../outline';
import { directionBetween, distanceIn, leftOf, outlineEdges } from '../outline';
import { placeInPlan, type SectionFrame } from './frame';
import { alongRun, inPlan, type Run, sharedIn } from './runs';
import type { Section, SectionSide } from './section';
import { cabinetBack, supportPlan } from './standing';

/** A side lies along an edge within this distance, over at least this share of its length. Common practice, no source. */
const ALONG_EDGE_IN = 1;
const ALONG_SHARE = 0.5;

type Way = 'v0' | 'u0' | 'u1' | 'v1';

const WAYS: readonly Way[] = ['v0', 'u0', 'u1', 'v1'];

/** The side of a run by which its section comes out: its cabinet's front, else a free edge, low sides and long ones first; null where walls stand all round. */
export function wayOutOf(piece: Piece, run: Run, u: Direction, cabinet: CabinetSupport | null): Way | null {
  if (cabinet !== null) {
    const back = cabinetBack(cabinet);
    const v = leftOf(u);
    const [alongU, alongV] = [back.x * u.x + back.y * u.y, back.x * v.x + back.y * v.y];
    if (Math.abs(alongU) > Math.abs(alongV)) return alongU > 0 ? 'u0' : 'u1';
    return alongV > 0 ? 'v0' : 'v1';
  }
  const ranked = WAYS.map((way) => {
    const [a, b] = sideOf(run, way, u);
    return {
      way,
      wall: shareAlong(piece, a, b, ['wall', 'butted']),
      free: shareAlong(piece, a, b, ['free']),
      lengthIn: distanceIn(a, b),
    };
  }).filter(({ wall }) => wall < ALONG_SHARE);
  const isFree = ({ free }: { readonly free: number }) => (free >= ALONG_SHARE ? 1 : 0);
  ranked.sort((a, b) => isFree(b) - isFree(a) || Math.round(b.lengthIn - a.lengthIn));
  return ranked[0]?.way ?? null;
}

/** A run seen from the side by which it comes out. */
export function frameOf({ u0, u1, v0, v1 }: Run, u: Direction, out: Way): SectionFrame {
  const v = leftOf(u);
  const [w, d] = [u1 - u0, v1 - v0];
  switch (out) {
    case 'v0':
      return { origin: inPlan(u0, v0, u), along: u, widthIn: w, depthIn: d };
    case 'v1':
      return { origin: inPlan(u1, v1, u), along: { x: -u.x, y: -u.y }, widthIn: w, depthIn: d };
    case 'u0':
      return { origin: inPlan(u0, v1, u), along: { x: -v.x, y: -v.y }, widthIn: d, depthIn: w };
    case 'u1':
      return { origin: inPlan(u1, v0, u), along: v, widthIn: d, depthIn: w };
  }
}

/** Sides of a section that lie along a wall edge of the piece or a stud wall that it stands beside. */
export function wallSidesOf(
  piece: Piece,
  frame: SectionFrame,
  lasting: readonly Support[],
): Section['wallSides'] {
  const sides = ['back', 'left', 'right'] as const;
  return sides.filter((side) => {
    const [a, b] = sidePlan(frame, side);
    return shareAlong(piece, a, b, ['wall']) >= ALONG_SHARE || lasting.some((wall) => isStudWall(wall, a, b));
  });
}

/** Both ends of a side in plan. */
export function sidePlan(frame: SectionFrame, side: SectionSide): [Point, Point] {
  const { widthIn: w, depthIn: d } = frame;
  const at = (p: number, q: number) => placeInPlan(frame, p, q);
  switch (side) {
    case 'front':
      return [at(0, 0), at(w, 0)];
    case 'back':
      return [at(0, d), at(w, d)];
    case 'left':
      return [at(0, 0), at(0, d)];
    case 'right':
      return [at(w, 0), at(w, d)];
  }
}

function isStudWall(support: Support, a: Point, b: Point): boolean {
  if (support.kind !== 'wall' || support.build !== 'stud') return false;
  const plan = supportPlan(support, []);
  return plan.some((from, i) => shareOf(a, b, from, plan[(i + 1) % plan.length]!) >= ALONG_SHARE);
}

function sideOf({ u0, u1, v0, v1 }: Run, way: Way, u: Direction): [Point, Point] {
  switch (way) {
    case 'v0':
      return [inPlan(u0, v0, u), inPlan(u1, v0, u)];
    case 'v1':
      return [inPlan(u0, v1, u), inPlan(u1, v1, u)];
    case 'u0':
      return [inPlan(u0, v0, u), inPlan(u0, v1, u)];
    case 'u1':
      return [inPlan(u1, v0, u), inPlan(u1, v1, u)];
  }
}

/** Share of a side that lies along edges of the given kinds (a ratio). A piece without edges of its own has free ones. */
function shareAlong(piece: Piece, a: Point, b: Point, kinds: readonly string[]): number {
  return outlineEdges(piece.corners).reduce((sum, { edge, a: from, b: to }) => {
    const kind = piece.edges?.[edge]?.kind ?? 'free';
    return kinds.includes(kind) ? sum + shareOf(a, b, from, to) : sum;
  }, 0);
}

/** Share of the line ab along which the line from-to runs beside it (a ratio). */
function shareOf(a: Point, b: Point, from: Point, to: Point): number {
  const lengthIn = distanceIn(a, b);
  const along = directionBetween(a, b);
  const [s, e] = [from, to].map((point) =>
    alongRun({ xIn: point.xIn - a.xIn, yIn: point.yIn - a.yIn }, along),
  ) as [{ u: number; v: number }, { u: number; v: number }];
  if (Math.max(Math.abs(s.v), Math.abs(e.v)) > ALONG_EDGE_IN) return 0;
  return Math.max(0, sharedIn(0, lengthIn, Math.min(s.u, e.u), Math.max(s.u, e.u))) / lengthIn;
}
