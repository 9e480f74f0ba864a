/** Corner radii: an outline with rounded corners as chords, and its exact area and perimeter with true arcs. */
import { formula } from '../workings';
import type { OutlineProblem } from './outline-problems';
import { crossingEdges, outlineProblems } from './outline-problems';
import type { Direction, Point } from './point';
import { directionBetween, distanceIn, leftOf, moved, TOUCH_IN } from './point';
import { polygonPerimeterIn, signedAreaIn2 } from './polygon-measure';

export interface Corner extends Point {
  readonly radiusIn: number;
}

/** A polygon of chords; entry k of each list belongs to point k and the edge from point k to point k + 1. */
export interface RoundedOutline {
  readonly points: readonly Point[];
  /** Edge of the drawn outline that the resulting edge belongs to; an arc is shared out at its middle. */
  readonly sourceEdges: readonly number[];
  /** Corner whose arc the resulting edge is a chord of; null on a straight edge. */
  readonly arcCorners: readonly (number | null)[];
}

export type Rounding =
  | { readonly ok: true; readonly outline: RoundedOutline }
  | { readonly ok: false; readonly problems: readonly OutlineProblem[] };

/** Area between a corner and the arc that rounds it, in2. */
export const cornerArea = formula<{ r: number; t: number }>({
  symbol: 'Ac',
  label: 'area cut off by rounding a corner',
  formula: 'r^2 * (sin(t / 2) / cos(t / 2) - t / 2)',
  units: { r: 'in', t: 'rad' },
  unit: 'in2',
  source: 'plane geometry: kite less circle sector; t is the turn at the corner',
  compute: ({ r, t }) => r ** 2 * (Math.tan(t / 2) - t / 2),
});

/** Below this turn (rad) a corner is straight, and a radius has nothing to round. */
const STRAIGHT_RAD = 1e-9;

interface Fillet {
  readonly corner: Corner;
  readonly incoming: Direction;
  readonly outgoing: Direction;
  /** Turn of the boundary at the corner, positive to the left. */
  readonly turnRad: number;
  /** From the corner to where the arc begins and ends. */
  readonly tangentIn: number;
}

/**
 * Rounds each corner with its radius (in), convex and inside corners alike, into chords that leave the arc by at most
 * `chordToleranceIn`. Every arc takes an even number of chords, so that the result mirrors exactly. A radius that
 * does not fit its edges, or a drawn outline that is not sound, comes back as problems naming the corner.
 */
export function roundCorners(corners: readonly Corner[], chordToleranceIn: number): Rounding {
  if (!(chordToleranceIn > 0)) throw new Error(`Chord tolerance ${chordToleranceIn} in is not positive`);
  const drawn = outlineProblems(corners);
  if (drawn.length > 0) return { ok: false, problems: drawn };
  const fillets = filletsOf(corners);
  const misfits = fillets.flatMap((_, i) => misfit(fillets, i));
  if (misfits.length > 0) return { ok: false, problems: misfits };
  const outline = chordsOf(fillets, chordToleranceIn);
  const crossings = crossedArcs(outline);
  return crossings.length > 0 ? { ok: false, problems: crossings } : { ok: true, outline };
}

/** Exact area with true arcs, in2, of an outline whose radii fit. Plane geometry. */
export function roundedAreaIn2(corners: readonly Corner[]): number {
  const cutIn2 = filletsOf(corners).reduce(
    (sum, { corner, turnRad }) =>
      sum + Math.sign(turnRad) * cornerArea.compute({ r: corner.radiusIn, t: Math.abs(turnRad) }),
    0,
  );
  return Math.abs(signedAreaIn2(corners) - cutIn2);
}

/** Exact perimeter with true arcs, in, of an outline whose radii fit. Plane geometry. */
export function roundedPerimeterIn(corners: readonly Corner[]): number {
  return filletsOf(corners).reduce(
    (sumIn, { corner, turnRad, tangentIn }) => sumIn - 2 * tangentIn + corner.radiusIn * Math.abs(turnRad),
    polygonPerimeterIn(corners),
  );
}

function filletsOf(corners: readonly Corner[]): Fillet[] {
  const n = corners.length;
  return corners.map((corner, i) => {
    const incoming = directionBetween(corners[(i + n - 1) % n]!, corner);
    const outgoing = directionBetween(corner, corners[(i + 1) % n]!);
    const turnRad = Math.atan2(
      incoming.x * outgoing.y - incoming.y * outgoing.x,
      incoming.x * outgoing.x + incoming.y * outgoing.y,
    );
    const isRound = corner.radiusIn > 0 && Math.abs(turnRad) > STRAIGHT_RAD;
    const tangentIn = isRound ? corner.radiusIn * Math.tan(Math.abs(turnRad) / 2) : 0;
    return { corner, incoming, outgoing, turnRad, tangentIn };
  });
}

/** On an overfull edge the fault lies with each arc that takes more than half of it. */
function misfit(fillets: readonly Fillet[], i: number): OutlineProblem[] {
  const n = fillets.length;
  const own = fillets[i]!;
  let roomIn = Number.POSITIVE_INFINITY;
  for (const neighbour of [fillets[(i + n - 1) % n]!, fillets[(i + 1) % n]!]) {
    const edgeIn = distanceIn(own.corner, neighbour.corner);
    const overfull = own.tangentIn + neighbour.tangentIn > edgeIn + TOUCH_IN;
    if (overfull && own.tangentIn > edgeIn / 2) {
      roomIn = Math.min(roomIn, Math.max(edgeIn / 2, edgeIn - neighbour.tangentIn));
    }
  }
  if (roomIn === Number.POSITIVE_INFINITY) return [];
  const largestIn = Math.floor((roomIn / Math.tan(Math.abs(own.turnRad) / 2)) * 1000 + 1e-6) / 1000;
  return [
    {
      code: 'radius-does-not-fit',
      path: ['corners', i, 'radiusIn'],
      sentence: `The radius at corner ${i + 1} does not fit its edges.`,
      radius: { askedIn: own.corner.radiusIn, largestIn },
    },
  ];
}

function chordsOf(fillets: readonly Fillet[], chordToleranceIn: number): RoundedOutline {
  const n = fillets.length;
  const points: Point[] = [];
  const sourceEdges: number[] = [];
  const arcCorners: (number | null)[] = [];
  for (let i = 0; i < n; i++) {
    const fillet = fillets[i]!;
    const next = fillets[(i + 1) % n]!;
    const arc = arcPoints(fillet, chordToleranceIn);
    const chords = arc.length - 1;
    for (let k = 0; k < chords; k++) {
      points.push(arc[k]!);
      sourceEdges.push(k < chords / 2 ? (i + n - 1) % n : i);
      arcCorners.push(i);
    }
    const straightIn = distanceIn(fillet.corner, next.corner) - fillet.tangentIn - next.tangentIn;
    if (straightIn <= TOUCH_IN) continue;
    points.push(arc[chords]!);
    sourceEdges.push(i);
    arcCorners.push(null);
  }
  return { points, sourceEdges, arcCorners };
}

/** Points of the arc from tangent point to tangent point; the corner alone where nothing is rounded. */
function arcPoints(fillet: Fillet, chordToleranceIn: number): Point[] {
  const { corner, incoming, outgoing, turnRad, tangentIn } = fillet;
  if (tangentIn <= TOUCH_IN) return [{ xIn: corner.xIn, yIn: corner.yIn }];
  const chords = arcChords(corner.radiusIn, Math.abs(turnRad), chordToleranceIn);
  const start = moved(corner, incoming, -tangentIn);
  const centre = moved(start, leftOf(incoming), Math.sign(turnRad) * corner.radiusIn);
  const points: Point[] = [start];
  for (let k = 1; k < chords; k++) {
    const c = Math.cos((turnRad * k) / chords);
    const s = Math.sin((turnRad * k) / chords);
    const x = start.xIn - centre.xIn;
    const y = start.yIn - centre.yIn;
    points.push({ xIn: centre.xIn + c * x - s * y, yIn: centre.yIn + s * x + c * y });
  }
  points.push(moved(corner, outgoing, tangentIn));
  return points;
}

/**
 * Even count of chords that follow an arc of `sweepRad` within `chordToleranceIn`: a chord of sweep s leaves the
 * arc by r (1 - cos(s / 2)). Plane geometry.
 */
export function arcChords(radiusIn: number, sweepRad: number, chordToleranceIn: number): number {
  const stepRad = 2 * Math.acos(Math.max(0, 1 - chordToleranceIn / radiusIn));
  return 2 * Math.max(1, Math.ceil(sweepRad / stepRad / 2 - 1e-9));
}

/** Arcs that fit their edges may still cut through a narrow neck elsewhere. */
function crossedArcs(outline: RoundedOutline): OutlineProblem[] {
  const corners = new Set<number>();
  for (const { first, second } of crossingEdges(outline.points)) {
    for (const edge of [first, second]) {
      const corner = outline.arcCorners[edge];
      if (corner !== null && corner !== undefined) corners.add(corner);
    }
  }
  return [...corners].map((corner) => ({
    code: 'rounding-crosses',
    path: ['corners', corner, 'radiusIn'],
    sentence: `The radius at corner ${corner + 1} cuts into another part of the outline.`,
  }));
}
