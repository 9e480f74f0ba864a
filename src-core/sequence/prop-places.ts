/** Where a prop has room: under the edge of a slab, clear of every cabinet, of its way in, and of what stands there. */
import type { Piece, Support } from '../job';
import { pieceRegion } from '../job';
import type { Point } from '../outline';
import { directionBetween, distanceIn, intersectionAreaIn2, leftOf, moved, patchOutline } from '../outline';
import { cabinetPath, cabinetPlan, shareFloor, supportPlans } from './bays';

type Leg = Extract<Support, { kind: 'leg' }>;
export type PropPlace = Pick<Leg, 'centre' | 'widthIn' | 'depthIn' | 'angleDeg'>;

/** A prop is a 2x4, its wide side along the edge, in. */
const PROP_WIDTH_IN = 3.5;
const PROP_DEPTH_IN = 1.5;
/** Places along an edge are tried so far apart, in. */
const STEP_IN = 6;
/** So many places are tried, the nearest to where the slab bends most. */
const MOST_PLACES = 16;
/** So little of a prop's head may lie beside the slab, in2: rounding. */
const BESIDE_IN2 = 0.01;

/** Places for a prop, those nearest to any of `near` first; none that overlap. */
export function propPlaces(piece: Piece, near: readonly Point[]): PropPlace[] {
  const region = pieceRegion(piece);
  if (!region.ok) return [];
  const taken = piece.supports.flatMap((support) =>
    support.kind === 'cabinet' ? [cabinetPlan(support), cabinetPath(support)] : supportPlans(support, piece),
  );
  const hasRoom = (plan: readonly Point[]) =>
    intersectionAreaIn2({ outer: plan, holes: [] }, region) > PROP_WIDTH_IN * PROP_DEPTH_IN - BESIDE_IN2 &&
    taken.every((floor) => !shareFloor(plan, floor));
  const found: PropPlace[] = [];
  const offered = [...near.flatMap(placesAt), ...placesAlong(region.outer)]
    .map((place) => ({ place, awayIn: Math.min(...near.map((point) => distanceIn(place.centre, point))) }))
    .sort((a, b) => a.awayIn - b.awayIn);
  for (const { place } of offered) {
    if (found.length === MOST_PLACES) break;
    const plan = planOf(place);
    if (hasRoom(plan) && found.every((other) => !shareFloor(planOf(other), plan))) found.push(place);
  }
  return found;
}

/** Right at a point, either way round. */
function placesAt(centre: Point): PropPlace[] {
  return [0, 90].map((angleDeg) => placeOf(centre, angleDeg));
}

/** Along every straight edge, from corner to corner, the outer face flush with it. */
function placesAlong(outer: readonly Point[]): PropPlace[] {
  return outer.flatMap((from, i) => {
    const to = outer[(i + 1) % outer.length]!;
    const roomIn = distanceIn(from, to) - PROP_WIDTH_IN;
    if (roomIn < 0) return [];
    const along = directionBetween(from, to);
    const angleDeg = (Math.atan2(along.y, along.x) * 180) / Math.PI;
    const first = moved(moved(from, along, PROP_WIDTH_IN / 2), leftOf(along), PROP_DEPTH_IN / 2);
    const steps = Math.max(1, Math.ceil(roomIn / STEP_IN));
    return Array.from({ length: steps + 1 }, (_, k) =>
      placeOf(moved(first, along, (roomIn * k) / steps), angleDeg),
    );
  });
}

function placeOf(centre: Point, angleDeg: number): PropPlace {
  return { centre, widthIn: PROP_WIDTH_IN, depthIn: PROP_DEPTH_IN, angleDeg };
}

function planOf({ centre, widthIn, depthIn, angleDeg }: PropPlace): Point[] {
  return patchOutline(centre, widthIn, depthIn, (angleDeg * Math.PI) / 180);
}
