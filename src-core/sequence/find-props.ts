/** Props that hold an open bay which no order leaves whole: one after the other, each at the place that helps most. */
import type { SupportSets } from '../analysis';
import { layOutSupports } from '../analysis';
import type { Job, Support } from '../job';
import type { Point } from '../outline';
import type { PropPlace } from './prop-places';
import { propPlaces } from './prop-places';
import type { SwapPlan } from './swap-plan';
import { swapPlan } from './swap-plan';
import type { WeighedOrder } from './weigh-orders';
import { crackingOfMoments, momentsOfOrder } from './weigh-orders';

/** More props than this are a falsework of their own. Common practice, no source. */
const MOST_PROPS = 4;
/** Moments from this cracking ratio on are looked at: another mesh may make a little less of one that passes 1. */
const BAD_RATIO = 0.95;

/** A piece with props added to it, laid out anew. */
export interface Propped {
  readonly job: Job;
  readonly sets: SupportSets;
  readonly plan: SwapPlan;
  readonly props: readonly Support[];
}

/** How the mildest order without props is found wanting. */
interface Unpropped {
  readonly sets: SupportSets;
  readonly plan: SwapPlan;
  readonly weighed: WeighedOrder;
  readonly dayOf: (step: number) => number;
}

/**
 * Props with which no moment of the mildest order passes the cracking limit, added one at a time, each at the place among those near
 * where the slab bends most that takes the most off its bad moments; null where too few places help. The order is for the caller to
 * weigh anew: only its bad moments are looked at.
 */
export function findProps(
  { sets, plan, weighed, dayOf }: Unpropped,
  meshSizeIn: number | null,
): Propped | null {
  const places = propPlaces(plan.piece, worstPlaces(weighed, plan));
  if (places.length === 0) return null;
  const { job } = sets.meshed;
  const ids = freeIds(job, places.length);
  const legs = places.map((place, i) => legAt(place, ids[i]!, plan.piece.pourDay, dayOf(plan.bays.length)));
  const tried = withLegs(job, plan.piece.id, legs, meshSizeIn);
  if (tried === null) return null;

  const open = momentsOfOrder(plan, weighed.found.order, dayOf);
  const without = crackingOfMoments(tried.sets, open);
  const bad = open.filter((_, i) => without[i]! > BAD_RATIO);
  if (bad.length === 0) return null;
  const chosen: Support[] = [];
  let ratios: readonly number[] = without.filter((ratio) => ratio > BAD_RATIO);
  while (chosen.length === 0 || (Math.max(...ratios) > 1 && chosen.length < MOST_PROPS)) {
    const [best] = legs
      .filter((leg) => !chosen.includes(leg))
      .map((leg) => ({ leg, ratios: ratiosWith(tried.sets, bad, [...chosen, leg]) }))
      .sort((a, b) => together(a.ratios) - together(b.ratios));
    if (best === undefined || together(best.ratios) >= together(ratios)) return null;
    chosen.push(best.leg);
    ratios = best.ratios;
  }
  if (Math.max(...ratios) > 1) return null;
  return withLegs(
    job,
    plan.piece.id,
    chosen.map((leg, i) => ({ ...leg, id: ids[i]!, name: propName(i, chosen.length) })),
    meshSizeIn,
  );
}

/** Of all bad moments, since a prop helps one bay while another stays the worst. */
function together(ratios: readonly number[]): number {
  return ratios.reduce((sum, ratio) => sum + ratio, 0);
}

function ratiosWith(
  sets: SupportSets,
  moments: ReturnType<typeof momentsOfOrder>,
  props: readonly Support[],
): readonly number[] {
  const held = moments.map(({ day, standing }) => ({
    day,
    standing: [...standing, ...props.map(({ id }) => id)],
  }));
  return crackingOfMoments(sets, held);
}

/** Where the slab bends most at each bad moment, and the front left corner of each bay whose moment could not be analysed. */
function worstPlaces({ check, found }: WeighedOrder, { bays }: SwapPlan): Point[] {
  return found.order.flatMap((item, step) =>
    check.moments
      .filter(({ stepId }) => stepId === check.steps[step]!.id)
      .flatMap(({ cracking }) => {
        if (cracking === null) return [bays[item]!.cabinet.corner];
        return cracking.ratio > BAD_RATIO ? [cracking.at] : [];
      }),
  );
}

function propName(index: number, count: number): string {
  return count === 1 ? 'prop' : `prop ${index + 1}`;
}

/** Ids that no support of the job has. */
function freeIds({ pieces }: Job, count: number): string[] {
  const taken = new Set(pieces.flatMap(({ supports }) => supports.map(({ id }) => id)));
  const ids: string[] = [];
  for (let n = 1; ids.length < count; n++) if (!taken.has(`prop-${n}`)) ids.push(`prop-${n}`);
  return ids;
}

function legAt(place: PropPlace, id: string, firstDay: number, lastDay: number): Support {
  return {
    kind: 'leg',
    id,
    name: id,
    ...place,
    firstDay,
    lastDay,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' },
  };
}

/** The job with legs added under a piece, laid out; null where that cannot be meshed. */
function withLegs(
  job: Job,
  pieceId: string,
  props: readonly Support[],
  meshSizeIn: number | null,
): Propped | null {
  const propped: Job = {
    ...job,
    pieces: job.pieces.map((piece) =>
      piece.id === pieceId ? { ...piece, supports: [...piece.supports, ...props] } : piece,
    ),
  };
  const piece = propped.pieces.find(({ id }) => id === pieceId)!;
  const laidOut = layOutSupports(propped, piece, meshSizeIn);
  return laidOut.ok ? { job: propped, sets: laidOut.sets, plan: swapPlan(propped, piece), props } : null;
}
