/**
 * A slab in plan as legs that a straightedge can strike off across: an L is two, a U is three. Each inside corner is cut
 * across from the corner along one of its own edges, the shorter way; the cut is where a temporary rail lies.
 */
import type { Piece } from '../job';
import type { Point, Segment } from '../outline';
import { cornerAnglesRad, directionBetween, distanceIn, firstHitIn, moved, signedAreaIn2 } from '../outline';
import { INSIDE_CORNER_RAD, MOST_INSIDE_CORNERS } from './practice';

/** What a side of a leg lies on: an edge of the piece by its number in the file, or a rail by its place in the list. */
export type LegSide =
  | { readonly kind: 'edge'; readonly index: number }
  | { readonly kind: 'rail'; readonly index: number };

export interface Leg {
  /** Counter-clockwise. */
  readonly corners: readonly Point[];
  /** Side i runs from corner i to corner i + 1. */
  readonly sides: readonly LegSide[];
}

export interface Legs {
  readonly legs: readonly Leg[];
  readonly rails: readonly Segment[];
}

/** A side shorter than this is none, in. */
const SHORTEST_IN = 1e-6;

/** The legs of a piece by its drawn corners, in inches of the drawing. One leg where it has too many inside corners. */
export function legsOf({ corners }: Pick<Piece, 'corners'>): Legs {
  const whole = wholeOf(corners.map(({ xIn, yIn }) => ({ xIn, yIn })));
  const inside = insideOf(whole).length;
  if (inside === 0 || inside > MOST_INSIDE_CORNERS) return { legs: [whole], rails: [] };
  const rails: Segment[] = [];
  const legs: Leg[] = [];
  const open = [whole];
  for (let leg = open.pop(); leg !== undefined; leg = open.pop()) {
    const cut = shortestCut(leg);
    if (cut === null) {
      legs.push(leg);
      continue;
    }
    open.push(...divided(leg, cut, rails.length));
    rails.push({ a: leg.corners[cut.corner]!, b: cut.to });
  }
  return { legs, rails };
}

function wholeOf(corners: readonly Point[]): Leg {
  const n = corners.length;
  const edges = corners.map((_, index): LegSide => ({ kind: 'edge', index }));
  if (signedAreaIn2(corners) > 0) return { corners, sides: edges };
  return {
    corners: [...corners].reverse(),
    sides: corners.map((_, k) => edges[(2 * n - 2 - k) % n]!),
  };
}

function insideOf({ corners }: Leg): number[] {
  return cornerAnglesRad(corners).flatMap((angleRad, k) =>
    angleRad > Math.PI + INSIDE_CORNER_RAD ? [k] : [],
  );
}

interface Cut {
  readonly corner: number;
  /** Where it ends, on which side of the leg. */
  readonly to: Point;
  readonly side: number;
  readonly lengthIn: number;
}

/** The shorter of the two cuts at the first inside corner; null where there is none. */
function shortestCut(leg: Leg): Cut | null {
  const [corner] = insideOf(leg);
  if (corner === undefined) return null;
  const n = leg.corners.length;
  const at = leg.corners[corner]!;
  const ways = [leg.corners[(corner + n - 1) % n]!, leg.corners[(corner + 1) % n]!];
  const cuts = ways.flatMap((from) => {
    const direction = directionBetween(from, at);
    const hits = leg.corners.flatMap((a, side): Cut[] => {
      if (side === corner || (side + 1) % n === corner) return [];
      const lengthIn = firstHitIn(at, direction, [{ a, b: leg.corners[(side + 1) % n]! }]);
      if (lengthIn === null || lengthIn <= SHORTEST_IN) return [];
      return [{ corner, side, lengthIn, to: moved(at, direction, lengthIn) }];
    });
    return shortestOf(hits);
  });
  return shortestOf(cuts)[0] ?? null;
}

function shortestOf(cuts: readonly Cut[]): Cut[] {
  const [first, ...more] = cuts;
  if (first === undefined) return [];
  return [more.reduce((best, cut) => (cut.lengthIn < best.lengthIn - SHORTEST_IN ? cut : best), first)];
}

function divided(leg: Leg, { corner, to, side }: Cut, rail: number): Leg[] {
  const n = leg.corners.length;
  const cut: LegSide = { kind: 'rail', index: rail };
  const way = (from: number, until: number): number[] => {
    const steps = (until + n - from) % n;
    return Array.from({ length: steps + 1 }, (_, k) => (from + k) % n);
  };
  const before = way(corner, side);
  const after = way((side + 1) % n, corner);
  return [
    cleaned([...before.map((k) => leg.corners[k]!), to], [...before.map((k) => leg.sides[k]!), cut]),
    cleaned(
      [to, ...after.map((k) => leg.corners[k]!)],
      [leg.sides[side]!, ...after.slice(0, -1).map((k) => leg.sides[k]!), cut],
    ),
  ];
}

/** Without sides that have no length, which a cut into a corner leaves. */
function cleaned(corners: readonly Point[], sides: readonly LegSide[]): Leg {
  const keep = corners.map(
    (corner, k) => distanceIn(corner, corners[(k + 1) % corners.length]!) > SHORTEST_IN,
  );
  return { corners: corners.filter((_, k) => keep[k]), sides: sides.filter((_, k) => keep[k]) };
}
