/**
 * Many moments of one piece: any set of its supports standing, on any day. The piece is meshed and factored once with the contact
 * points of all its supports. Each moment is then a small dense problem on the points that stand, with the plate's flexibility
 * scaled to the stiffness of that day's concrete.
 */
import type { Job, Piece } from '../job';
import { bendingMatrix } from '../plate';
import type { AnalyseResult } from './analyse-piece';
import { analysePrepared } from './analyse-piece';
import { concreteState } from './concrete-state';
import { workingLoadCases } from './live-loads';
import type { BearingSet, MeshedPiece } from './meshed-piece';
import { armsOf, meshPiece, nothingStands, standingSet } from './meshed-piece';
import { deadLoad, liveLoad } from './nodal-loads';
import type { FactoredPlate, PlateState } from './plate-state';
import { factorOnContacts, partOfState } from './plate-state';
import { completePiece, MOST_CONTACTS_OF_ALL, notCast } from './prepare-piece';
import type { FreeDeflections, LoadSet } from './solve-cases';
import { freeDeflections } from './solve-cases';
import type { CannotAnalyse } from './types';

/** A piece with all its supports, factored with its concrete at 28 days. Keep it for one job: what it holds does not follow edits. */
export interface SupportSets {
  readonly meshed: MeshedPiece;
  readonly plate: FactoredPlate;
  readonly modulusPsi: number;
  /** Self weight, and the working load as the only live one. */
  readonly loads: LoadSet;
  readonly free: FreeDeflections;
}

/** Which supports stand, by id, on a day. */
export interface SupportMoment {
  readonly day: number;
  readonly standing: readonly string[];
}

export type SupportSetsResult =
  | { readonly ok: true; readonly sets: SupportSets }
  | { readonly ok: false; readonly cannot: CannotAnalyse };

/** Meshes and factors a piece for all moments of it. `meshSizeIn` null takes the piece's own size. */
export function layOutSupports(job: Job, piece: Piece, meshSizeIn: number | null): SupportSetsResult {
  const result = meshPiece(job, piece, piece.supports, {
    meshSizeIn,
    mostContacts: MOST_CONTACTS_OF_ALL,
  });
  if (!result.ok) return result;
  const { meshed } = result;
  const { mix, mesh, layout, locate, region, weight, carried } = meshed;
  const { modulusPsi, poisson } = concreteState(job, piece, mix, null);
  const bending = bendingMatrix(modulusPsi, piece.thicknessIn, poisson);
  const plate = factorOnContacts(mesh, layout, bending, meshed.contacts);
  const loads: LoadSet = {
    dead: deadLoad(mesh, locate, region, weight.slabLb / weight.areaIn2, carried),
    live: workingLoadCases(job.swap.workingLoadPsf).map(({ live }) => liveLoad(mesh, locate, live, 0)),
  };
  return { ok: true, sets: { meshed, plate, modulusPsi, loads, free: freeDeflections(plate, loads) } };
}

/** Analyses one moment: what `analysePiece` finds with `standing` given, without meshing and factoring anew. */
export function analyseMoment(sets: SupportSets, { day, standing }: SupportMoment): AnalyseResult {
  const early = notCast(sets.meshed.piece, day);
  if (early !== null) return early;
  const set = setOf(sets, standing);
  if (set.bearings.length === 0) return nothingStands();
  const result = completePiece(
    sets.meshed,
    set,
    { day, standing },
    ({ modulusPsi }) => plateOn(sets, set, sets.modulusPsi / modulusPsi),
    { loads: sets.loads, freeOf: ({ softnessRatio }) => freeOn(sets, set, softnessRatio) },
  );
  return result.ok ? { ok: true, analysis: analysePrepared(result.prepared) } : result;
}

/** A moment on its contact points alone, for questions that need no full analysis. */
export interface OpenMoment {
  readonly set: BearingSet;
  readonly state: PlateState;
  readonly free: FreeDeflections;
  /** Moment up to which the slab counts as uncracked that day, lbf-in/in. */
  readonly crackingLimitLbfInPerIn: number;
}

/** Opens a moment; null where the slab is not hard, or nothing, or one line alone, would hold it. */
export function openMoment(sets: SupportSets, { day, standing }: SupportMoment): OpenMoment | null {
  const { job, piece, mix } = sets.meshed;
  if (notCast(piece, day) !== null) return null;
  const set = setOf(sets, standing);
  if (set.bearings.length === 0) return null;
  const concrete = concreteState(job, piece, mix, day - piece.pourDay);
  const softnessRatio = sets.modulusPsi / concrete.modulusPsi;
  const state = plateOn(sets, set, softnessRatio);
  if (state.systems.low === null || state.systems.high === null) return null;
  const { crackingLimitLbfInPerIn } = concrete;
  return { set, state, free: freeOn(sets, set, softnessRatio), crackingLimitLbfInPerIn };
}

type StandingSet = ReturnType<typeof standingSet>;

function plateOn(sets: SupportSets, set: StandingSet, softnessRatio: number): PlateState {
  const { kept, contacts } = set;
  return partOfState(sets.plate, { kept, contacts, addArms: armsOf(set) }, softnessRatio);
}

/** What the loads alone would deflect at the contacts that stand. */
function freeOn({ free }: SupportSets, { kept }: StandingSet, softnessRatio: number): FreeDeflections {
  const part = (values: Float64Array) =>
    Float64Array.from(kept, (contact) => softnessRatio * values[contact]!);
  return { dead: part(free.dead), live: free.live.map(part) };
}

function setOf({ meshed }: SupportSets, standing: readonly string[]): StandingSet {
  const ids = new Set(standing);
  return standingSet(meshed, (id) => ids.has(id));
}
