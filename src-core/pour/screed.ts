/** What the straightedge rides on in each part of a slab, and how long it is. */
import type { Cutout, Piece } from '../job';
import { cutoutInPlan } from '../job';
import type { Point, Segment } from '../outline';
import { boundingBox, isPointInPolygon, moved } from '../outline';
import type { Trace } from '../trace';
import type { UnitSystem } from '../units';
import { printLength } from '../units';
import type { LegFrame } from './leg-frame';
import { extentOf, legFrame } from './leg-frame';
import type { Leg, LegSide } from './legs';
import { legsOf } from './legs';
import { LEAST_RIM_IN, LEAST_STRIP_IN, MOST_STRAIGHTEDGE_IN, PAST_FORM_IN } from './practice';

export type Ride = 'form' | 'wall' | 'butted' | 'rail' | 'rim';

/** A part of a slab that is struck off with one straightedge. */
export interface ScreedRun {
  readonly id: string;
  readonly trace: Trace;
  readonly rides: readonly [Ride, Ride];
  /** Clear between what it rides on, in. */
  readonly spanIn: number;
  /** Span, and 6 in past each end that it may pass; a wall stops it. */
  readonly straightedgeIn: number;
  readonly words: string;
}

/** A strip of wood set to the datum for the straightedge to ride on; it comes out while the concrete can still be filled. */
export interface ScreedRail {
  readonly id: string;
  readonly trace: Trace;
  readonly line: Segment;
  readonly words: string;
}

/** A plug in the way of the straightedge. */
export interface ScreedPlug {
  readonly id: string;
  readonly trace: Trace;
  readonly words: string;
}

export interface PieceScreed {
  readonly pieceId: string;
  readonly trace: Trace;
  /** Height of all rims; with a fall, of the highest. */
  readonly datumIn: number;
  readonly datumWords: string;
  readonly runs: readonly ScreedRun[];
  readonly rails: readonly ScreedRail[];
  readonly plugs: readonly ScreedPlug[];
}

/** Widest slab that one straightedge strikes off, in. */
const MOST_SPAN_IN = MOST_STRAIGHTEDGE_IN - 2 * PAST_FORM_IN;

const RIDE_WORDS: { readonly [K in Ride]: string } = {
  form: 'the rim of the edge form',
  wall: 'a batten on the wall',
  butted: 'the rim beside the next piece',
  rail: 'a temporary rail',
  rim: 'the rim of the opening',
};

/** How a piece is struck off: runs across the narrow way of each leg, strips beside openings, rails, plugs. Common practice. */
export function pieceScreed(piece: Piece, system: UnitSystem): PieceScreed {
  const trace: Trace = { pieceId: piece.id, part: { kind: 'piece' } };
  const { legs, rails } = legsOf(piece);
  const openings = piece.cutouts.flatMap((cutout, index) => {
    const plan = cutoutInPlan(piece, index);
    return plan.ok ? [{ cutout, points: plan.points }] : [];
  });
  const rims = openings.filter(({ points }) => isRim(points));
  const ofLegs = legs.map((leg, index) => legRuns({ piece, system, leg, index, rims }));
  return {
    pieceId: piece.id,
    trace,
    datumIn: piece.topElevationIn,
    datumWords: datumWords(piece, system),
    runs: ofLegs.flatMap(({ runs }) => runs),
    rails: [
      ...rails.map(
        (line, k): ScreedRail => ({
          id: `${piece.id}/rail/corner-${k + 1}`,
          trace,
          line,
          words:
            'Set a rail to the datum across from the inside corner, strike off both sides of it, lift it and fill its bed.',
        }),
      ),
      ...ofLegs.flatMap((leg) => leg.rails),
    ],
    plugs: openings.filter(({ points }) => !isRim(points)).map(({ cutout }) => plugOf(piece, cutout)),
  };
}

interface Opening {
  readonly cutout: Cutout;
  readonly points: readonly Point[];
}

function isRim(points: readonly Point[]): boolean {
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(points);
  return maxXIn - minXIn >= LEAST_RIM_IN && maxYIn - minYIn >= LEAST_RIM_IN;
}

function plugOf(piece: Piece, cutout: Cutout): ScreedPlug {
  const trace: Trace = { pieceId: piece.id, part: { kind: 'cutout', id: cutout.id } };
  return {
    id: `${piece.id}/plug/${cutout.id}`,
    trace,
    words: `The plug of ${cutout.name ?? `the ${cutout.purpose === 'other' ? 'opening' : cutout.purpose}`} stops the straightedge if it stands proud: set it flush with the rims, or strike off up to it from both sides and finish round it with the float.`,
  };
}

function datumWords({ fall }: Piece, system: UnitSystem): string {
  if (fall === null || fall.inPerFt === 0) return 'All rims, rails and battens to one level datum.';
  return `All rims, rails and battens in one plane that falls ${printLength(fall.inPerFt, { system, roundToIn: 1 / 16 })} in ${printLength(12, { system })}; the form is tilted, the thickness stays the same.`;
}

interface LegTask {
  readonly piece: Piece;
  readonly system: UnitSystem;
  readonly leg: Leg;
  readonly index: number;
  readonly rims: readonly Opening[];
}

function legRuns(task: LegTask): {
  readonly runs: readonly ScreedRun[];
  readonly rails: readonly ScreedRail[];
} {
  const { piece, leg, index } = task;
  const frame = legFrame(leg);
  const { fromIn, toIn } = frame.acrossIn;
  const spans = Math.max(1, Math.ceil((toIn - fromIn) / MOST_SPAN_IN - 1e-9));
  const spanIn = (toIn - fromIn) / spans;
  const [near, far] = [rideOf(piece, frame.near), rideOf(piece, frame.far)];
  const name = `${piece.id}/run/${index + 1}`;
  const runs = Array.from({ length: spans }, (_, k) => {
    const rides: readonly [Ride, Ride] = [k === 0 ? near : 'rail', k === spans - 1 ? far : 'rail'];
    return runOf(task, spans === 1 ? name : `${name}-${k + 1}`, rides, spanIn);
  });
  const rails = Array.from({ length: spans - 1 }, (_, k): ScreedRail => {
    const atIn = fromIn + (k + 1) * spanIn;
    return {
      id: `${piece.id}/rail/${index + 1}-${k + 1}`,
      trace: { pieceId: piece.id, part: { kind: 'piece' } },
      line: railAlong(frame, atIn),
      words: `Set a rail along the slab, as ${printLength(toIn - fromIn, { system: task.system })} is too wide for one straightedge; lift it and fill its bed.`,
    };
  });
  const strips = task.rims
    .filter(({ points }) => points.some((point) => isPointInPolygon(point, leg.corners)))
    .flatMap(({ cutout, points }) => {
      const opening = extentOf(points, frame.across);
      const strip = (side: 'near' | 'far', ride: Ride, widthIn: number) =>
        widthIn <= 0 ? [] : [runOf(task, `${name}/${cutout.id}/${side}`, [ride, 'rim'], widthIn, cutout)];
      return [...strip('near', near, opening.fromIn - fromIn), ...strip('far', far, toIn - opening.toIn)];
    });
  return { runs: [...runs, ...strips], rails };
}

function runOf(
  { piece, system }: LegTask,
  id: string,
  rides: readonly [Ride, Ride],
  spanIn: number,
  cutout: Cutout | null = null,
): ScreedRun {
  const pastIn = rides.reduce((sum, ride) => sum + (ride === 'wall' ? 0 : PAST_FORM_IN), 0);
  const straightedgeIn = spanIn + pastIn;
  const [one, other] = rides.map((ride) => RIDE_WORDS[ride]);
  const from = one === other ? `${one} on both sides` : `${one} and ${other}`;
  const where = cutout === null ? '' : `Beside ${cutout.name ?? cutout.id}: `;
  const span = printLength(spanIn, { system });
  const wall = rides.includes('wall')
    ? ' Notch the end at the wall over its batten, which is screwed on at the datum.'
    : '';
  const words =
    cutout !== null && spanIn < LEAST_STRIP_IN
      ? `${where}a strip of ${span}; strike it off with the trowel, riding on ${from}.`
      : `${where}${cutout === null ? 'A' : 'a'} straightedge of ${printLength(straightedgeIn, { system })} rides on ${from}, ${span} apart.${wall}`;
  const part: Trace['part'] = cutout === null ? { kind: 'piece' } : { kind: 'cutout', id: cutout.id };
  return { id, trace: { pieceId: piece.id, part }, rides, spanIn, straightedgeIn, words };
}

function rideOf(piece: Piece, side: LegSide): Ride {
  if (side.kind === 'rail') return 'rail';
  const kind = piece.edges?.[side.index]?.kind ?? 'free';
  return kind === 'free' ? 'form' : kind;
}

function railAlong({ along, across, alongIn }: LegFrame, acrossIn: number): Segment {
  const on = moved({ xIn: 0, yIn: 0 }, across, acrossIn);
  return { a: moved(on, along, alongIn.fromIn), b: moved(on, along, alongIn.toIn) };
}
