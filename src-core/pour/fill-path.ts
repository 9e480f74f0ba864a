/** The way concrete goes into a form: from one end along each leg, round the corners, to the other end. */
import type { Piece } from '../job';
import { pieceRegion } from '../job';
import type { Direction, Point, Segment } from '../outline';
import { between, distanceIn, intersectRegions, loopsAreaIn2, signedAreaIn2 } from '../outline';
import type { Extent } from './leg-frame';
import { extentOf, legFrame } from './leg-frame';
import type { Leg } from './legs';
import { legsOf } from './legs';

interface Sweep {
  readonly loops: readonly (readonly Point[])[];
  readonly areaIn2: number;
  /** Toward where it is filled. */
  readonly direction: Direction;
  readonly reach: Extent;
}

/** Where the way turns into another leg, and its concrete meets that of a leg filled before along their whole rail. */
export interface Turn {
  /** Share of the form that is full by then. */
  readonly atRatio: number;
  /** Share that was full when the oldest concrete along the rail was placed. */
  readonly againstRatio: number;
}

export interface FillPath {
  readonly sweeps: readonly Sweep[];
  readonly areaIn2: number;
  readonly turns: readonly Turn[];
}

/** Halvings that find the front of the concrete; 200 ft come down to less than a hundred-millionth of an inch. */
const HALVINGS = 40;

/** The way through a piece; null where it cannot be drawn. A slab of one leg is filled from its left, or its front. */
export function fillPath(piece: Piece): FillPath | null {
  const region = pieceRegion(piece);
  if (!region.ok) return null;
  const { legs, rails } = legsOf(piece);
  const stops = inOrder(legs);
  const sweeps = stops.map(({ leg, entry, exit }): Sweep => {
    const loops = intersectRegions({ outer: leg.corners, holes: [] }, region);
    const direction = wayThrough(leg, middleOf(rails, entry), middleOf(rails, exit));
    return { loops, areaIn2: loopsAreaIn2(loops), direction, reach: extentOf(leg.corners, direction) };
  });
  const areaIn2 = sweeps.reduce((sum, sweep) => sum + sweep.areaIn2, 0);
  return { sweeps, areaIn2, turns: turnsOf(stops, sweeps, rails, areaIn2) };
}

/** For each leg after the first, every rail that it shares with one filled before. */
function turnsOf(
  stops: readonly Stop[],
  sweeps: readonly Sweep[],
  rails: readonly Segment[],
  wholeIn2: number,
): readonly Turn[] {
  const beginsIn2 = sweeps.map((_, k) => sweeps.slice(0, k).reduce((sum, { areaIn2 }) => sum + areaIn2, 0));
  return stops.flatMap(({ leg }, k) =>
    railsOf(leg).flatMap((rail) =>
      stops.slice(0, k).flatMap((before, i): Turn[] => {
        if (!railsOf(before.leg).includes(rail)) return [];
        const { loops, direction } = sweeps[i]!;
        const { fromIn } = extentOf([rails[rail]!.a, rails[rail]!.b], direction);
        const fullIn2 = beginsIn2[i]! + areaBehindIn2(loops, direction, fromIn);
        return [{ atRatio: beginsIn2[k]! / wholeIn2, againstRatio: fullIn2 / wholeIn2 }];
      }),
    ),
  );
}

interface Stop {
  readonly leg: Leg;
  /** Rail over which it is entered, and over which the next leg is. */
  readonly entry: number | null;
  readonly exit: number | null;
}

function railsOf({ sides }: Leg): readonly number[] {
  return [...new Set(sides.flatMap((side) => (side.kind === 'rail' ? [side.index] : [])))];
}

/** Legs one after another, each beside one that is filled before it, from the first that has one neighbour at most. */
function inOrder(legs: readonly Leg[]): readonly Stop[] {
  const start = legs.find((leg) => railsOf(leg).length <= 1) ?? legs[0]!;
  const stops: Stop[] = [];
  const left = new Set(legs);
  const visit = (leg: Leg, entry: number | null): void => {
    left.delete(leg);
    const at = stops.push({ leg, entry, exit: null }) - 1;
    for (const rail of railsOf(leg)) {
      for (const next of [...left]) {
        if (!left.has(next) || !railsOf(next).includes(rail)) continue;
        if (stops[at]!.exit === null) stops[at] = { leg, entry, exit: rail };
        visit(next, rail);
      }
    }
  };
  visit(start, null);
  return stops;
}

function middleOf(rails: readonly Segment[], rail: number | null): Point | null {
  return rail === null ? null : between(rails[rail]!.a, rails[rail]!.b, 0.5);
}

/** Along the leg, away from where it is entered, else toward where it is left, else to the right, else to the back. */
function wayThrough(leg: Leg, entry: Point | null, exit: Point | null): Direction {
  const { along, alongIn } = legFrame(leg);
  const back = { x: -along.x, y: -along.y };
  const middleIn = (alongIn.fromIn + alongIn.toIn) / 2;
  const sideOf = ({ xIn, yIn }: Point) => xIn * along.x + yIn * along.y - middleIn;
  if (entry !== null) return sideOf(entry) < 0 ? along : back;
  if (exit !== null) return sideOf(exit) < 0 ? back : along;
  return along.x > 1e-9 || (Math.abs(along.x) <= 1e-9 && along.y > 0) ? along : back;
}

/** Where a bucket goes that fills a form from one share to another: the middle of its strip, on the slab. */
export function fillPlace(path: FillPath, fromRatio: number, toRatio: number): Point {
  let wantedIn2 = ((fromRatio + toRatio) / 2) * path.areaIn2;
  const sweep =
    path.sweeps.find(({ areaIn2 }) => {
      if (wantedIn2 <= areaIn2) return true;
      wantedIn2 -= areaIn2;
      return false;
    }) ?? path.sweeps.at(-1)!;
  return middleOfLine(sweep, frontIn(sweep, Math.min(wantedIn2, sweep.areaIn2)));
}

/** How far the front has come once so much of a leg's area is full, in. */
function frontIn({ loops, direction, reach }: Sweep, fullIn2: number): number {
  let { fromIn, toIn } = reach;
  for (let i = 0; i < HALVINGS; i++) {
    const middleIn = (fromIn + toIn) / 2;
    if (areaBehindIn2(loops, direction, middleIn) < fullIn2) fromIn = middleIn;
    else toIn = middleIn;
  }
  return (fromIn + toIn) / 2;
}

/** Area of loops behind a line across a direction, in2: each polygon is cut by the line, edge by edge. */
function areaBehindIn2(loops: Sweep['loops'], direction: Direction, atIn: number): number {
  return loops.reduce((sum, loop) => {
    const kept = loop.flatMap((a, k) => {
      const b = loop[(k + 1) % loop.length]!;
      const [beyondA, beyondB] = [aheadIn(a, direction) - atIn, aheadIn(b, direction) - atIn];
      const inside = beyondA <= 0 ? [a] : [];
      return beyondA <= 0 === beyondB <= 0
        ? inside
        : [...inside, between(a, b, beyondA / (beyondA - beyondB))];
    });
    return kept.length < 3 ? sum : sum + signedAreaIn2(kept);
  }, 0);
}

function aheadIn({ xIn, yIn }: Point, { x, y }: Direction): number {
  return xIn * x + yIn * y;
}

/** Middle of the longest stretch of slab on the line across the way at a distance, in. */
function middleOfLine({ loops, direction }: Sweep, atIn: number): Point {
  const across = { x: -direction.y, y: direction.x };
  const cuts = loops
    .flatMap((loop) =>
      loop.flatMap((a, k) => {
        const b = loop[(k + 1) % loop.length]!;
        const [beyondA, beyondB] = [aheadIn(a, direction) - atIn, aheadIn(b, direction) - atIn];
        return beyondA <= 0 === beyondB <= 0 ? [] : [between(a, b, beyondA / (beyondA - beyondB))];
      }),
    )
    .sort((p, q) => aheadIn(p, across) - aheadIn(q, across));
  let best: readonly [Point, Point] | null = null;
  for (let k = 0; k + 1 < cuts.length; k += 2) {
    const [a, b] = [cuts[k]!, cuts[k + 1]!];
    if (best === null || distanceIn(a, b) > distanceIn(best[0], best[1]) + 1e-9) best = [a, b];
  }
  if (best === null) throw new Error(`No slab on the line ${atIn} in along its way`);
  return between(best[0], best[1], 0.5);
}
