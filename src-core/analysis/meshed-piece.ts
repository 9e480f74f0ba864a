/** A piece meshed with the contact points of given supports, and the part of it that stands at one moment. */
import { armFlexibility } from '../bracket';
import type { Job, Mix, Piece, Support } from '../job';
import { pieceRegion } from '../job';
import type { Region } from '../outline';
import { polygonAreaIn2 } from '../outline';
import type { Locate, PlateLayout, PlateMesh } from '../plate';
import { buildLocator, layOutPlate, meshRegion } from '../plate';
import type { BearingPlan } from './bearing-grid';
import { planBearings } from './bearings';
import type { ArmFlexibility } from './plate-state';
import type { Bearing, CannotAnalyse, Contact, PieceWeight } from './types';
import type { CarriedWeight } from './weight';
import { carriedWeights, weigh } from './weight';

/** Chords of arcs in the analysed outline leave the arc by this much at the most. */
const CHORD_IN = 1 / 32;
const FINEST_MESH_IN = 1;
const COARSEST_MESH_IN = 3;
const MESH_SHARE = 0.9;
const COARSEST_BY_THICKNESS_IN = 2;
const MOST_NODES = 4_000;
/** Contact points along a line, at the closest. */
const CONTACT_STEP_IN = 3;

/** Bearings and contact points that go together: `contacts` are numbered as the bearings name them. */
export interface BearingSet {
  readonly plans: readonly BearingPlan[];
  readonly bearings: readonly Bearing[];
  readonly contacts: readonly Contact[];
  /** Place of each contact along its bracket's arm; null elsewhere. */
  readonly alongArmIn: readonly (number | null)[];
}

export interface MeshedPiece extends BearingSet {
  readonly job: Job;
  readonly piece: Piece;
  readonly mix: Mix;
  readonly region: Region;
  readonly mesh: PlateMesh;
  readonly layout: PlateLayout;
  readonly locate: Locate;
  readonly weight: PieceWeight;
  readonly carried: readonly CarriedWeight[];
}

export type MeshResult =
  | { readonly ok: true; readonly meshed: MeshedPiece }
  | { readonly ok: false; readonly cannot: CannotAnalyse };

export interface MeshOptions {
  /** null takes the piece's own size. */
  readonly meshSizeIn: number | null;
  readonly mostContacts?: number | undefined;
  /** Contact points nearer than this to one another share a node; left out, only those that are one point. */
  readonly mergeContactsIn?: number | undefined;
}

/** Meshes a piece so that every contact point of `supports` is a node. */
export function meshPiece(
  job: Job,
  piece: Piece,
  supports: readonly Support[],
  { meshSizeIn, mostContacts, mergeContactsIn }: MeshOptions,
): MeshResult {
  const mix = job.mixes.find((candidate) => candidate.id === piece.mixId);
  if (mix === undefined) return cannot('shape', `No mix "${piece.mixId}" is in the job.`);
  const plan = pieceRegion(piece, CHORD_IN);
  if (!plan.ok) return cannot('shape', plan.problems[0]?.sentence ?? 'The outline cannot be used.');
  const region: Region = { outer: plan.outer, holes: plan.holes };

  const sizeIn = meshSizeIn ?? meshSizeFor(region, piece.thicknessIn);
  const plans = planBearings(piece, region, supports, Math.max(CONTACT_STEP_IN, 2 * sizeIn), mostContacts);
  if (plans.length === 0) return nothingStands();
  const meshed = meshRegion({
    outer: region.outer,
    holes: region.holes,
    fixedPoints: plans.flatMap(({ spots }) => spots.map(({ at }) => at)),
    segments: [],
    sizeIn,
    mergeIn: mergeContactsIn,
  });
  if (!meshed.ok) return cannot('mesh', meshed.problem.sentence);
  const { mesh } = meshed;
  const carried = carriedWeights(piece, region.holes);
  return {
    ok: true,
    meshed: {
      job,
      piece,
      mix,
      region,
      mesh,
      layout: layOutPlate(mesh),
      locate: locatorOf(mesh),
      weight: weigh(piece, mix, region, carried),
      carried,
      plans,
      ...numberContacts(plans, mesh, meshed.fixedNodes),
    },
  };
}

/** The bearings of those supports alone that `isStanding` lets stand, and for each of their contacts its number in `whole`. */
export function standingSet(
  whole: BearingSet,
  isStanding: (supportId: string) => boolean,
): BearingSet & { readonly kept: Int32Array } {
  const plans: BearingPlan[] = [];
  const bearings: Bearing[] = [];
  const contacts: Contact[] = [];
  const alongArmIn: (number | null)[] = [];
  const kept: number[] = [];
  whole.bearings.forEach((bearing, index) => {
    if (!isStanding(bearing.support.id)) return;
    const own = bearing.contacts.map((contact) => {
      kept.push(contact);
      alongArmIn.push(whole.alongArmIn[contact]!);
      contacts.push({ ...whole.contacts[contact]!, bearing: bearings.length });
      return contacts.length - 1;
    });
    plans.push(whole.plans[index]!);
    bearings.push({ ...bearing, contacts: own });
  });
  return { plans, bearings, contacts, alongArmIn, kept: Int32Array.from(kept) };
}

/** That nothing is drawn, or nothing stands, under a piece. */
export function nothingStands(): { readonly ok: false; readonly cannot: CannotAnalyse } {
  return cannot(
    'no-support',
    'Nothing is drawn under this piece that stands on this day. Draw what holds it.',
  );
}

/** That a piece cannot be analysed, and why. */
export function cannot(
  reason: CannotAnalyse['reason'],
  sentence: string,
): { readonly ok: false; readonly cannot: CannotAnalyse } {
  return { ok: false, cannot: { reason, sentence } };
}

/**
 * Mesh size of a piece: nine tenths of its thickness, because below one thickness plate theory means little, but no finer than 1 in
 * and never so fine that it has more than MOST_NODES nodes. A hexagonal lattice has 1 / (0.866 s^2) nodes an in2.
 */
export function meshSizeFor(region: Region, thicknessIn: number): number {
  const fromNodes = Math.sqrt(polygonAreaIn2(region.outer) / (0.866 * MOST_NODES));
  const fromThickness = Math.min(MESH_SHARE * thicknessIn, COARSEST_BY_THICKNESS_IN);
  return Math.min(COARSEST_MESH_IN, Math.max(FINEST_MESH_IN, fromThickness, fromNodes));
}

/** Adds the give of every bracket's arm and fixing between the contacts on it. */
export function armsOf({ bearings, alongArmIn }: BearingSet): ArmFlexibility {
  return (bound, into, count) => {
    for (const { support, contacts } of bearings) {
      if (support.kind !== 'bracket') continue;
      const own = contacts.filter((i) => alongArmIn[i] !== null);
      if (own.length === 0) continue;
      const give = armFlexibility({
        bracket: support,
        bound,
        positionsIn: own.map((i) => alongArmIn[i]!),
      });
      own.forEach((i, p) => {
        own.forEach((j, q) => {
          into[i * count + j] = into[i * count + j]! + give[p * own.length + q]!;
        });
      });
    }
  };
}

function numberContacts(
  plans: readonly BearingPlan[],
  mesh: PlateMesh,
  fixedNodes: Int32Array,
): Pick<BearingSet, 'bearings' | 'contacts' | 'alongArmIn'> {
  const contacts: Contact[] = [];
  const alongArmIn: (number | null)[] = [];
  let fixed = 0;
  const bearings = plans.map(({ bearing, spots }, index): Bearing => {
    const own: number[] = [];
    for (const spot of spots) {
      const node = fixedNodes[fixed++]!;
      if (node < 0) continue;
      own.push(contacts.length);
      alongArmIn.push(spot.alongArmIn);
      contacts.push({
        node,
        at: { xIn: mesh.xIn[node]!, yIn: mesh.yIn[node]! },
        bearing: index,
        acts: spot.acts,
        lowLbfPerIn: spot.lowLbfPerIn,
        highLbfPerIn: spot.highLbfPerIn,
        gapIn: spot.gapIn,
        tributaryIn2: spot.tributaryIn2,
      });
    }
    return { ...bearing, contacts: own };
  });
  return { bearings, contacts, alongArmIn };
}

function locatorOf(mesh: PlateMesh): Locate {
  const find = buildLocator(mesh);
  return (xIn, yIn, into) => {
    const place = find(xIn, yIn);
    if (place === null) return -1;
    into[0] = place.l1;
    into[1] = place.l2;
    into[2] = place.l3;
    return place.triangle;
  };
}
