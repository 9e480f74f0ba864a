/** From a piece to a meshed, loaded and factored plate on its contact points. */
import type { Job, Mix, Piece } from '../job';
import { rovingOf } from '../job';
import type { Point, Region } from '../outline';
import type { Locate, PlateLayout, PlateMesh } from '../plate';
import { bendingMatrix } from '../plate';
import { stands } from './bearings';
import type { CaseLabel } from './bound-state';
import { concreteState } from './concrete-state';
import type { LiveCase } from './live-loads';
import { liveCases, workingLoadCases } from './live-loads';
import type { BearingSet, MeshedPiece } from './meshed-piece';
import { armsOf, cannot, meshPiece, nothingStands, standingSet } from './meshed-piece';
import { deadLoad, liveLoad } from './nodal-loads';
import { shapeOf } from './piece-shape';
import type { ArmFlexibility, PlateState } from './plate-state';
import { buildPlateState } from './plate-state';
import { printersOf } from './print';
import type { FreeDeflections, LoadSet } from './solve-cases';
import { freeDeflections } from './solve-cases';
import { judgeStability } from './stability';
import type {
  Bearing,
  CannotAnalyse,
  ConcreteState,
  Contact,
  PieceAnalysis,
  PieceShape,
  PieceWeight,
  Stability,
} from './types';

/** What a look while something is dragged may spare, at the cost of some accuracy; who asks for it measures how much. */
export interface QuickLook {
  /** About how many places of the roving patch are tried. */
  readonly rovingPlaces: number;
  /** Factorisations at the most, the uncracked one included. */
  readonly mostFactorisations: number;
  /** Contact points nearer than this to one another share a node, such as those of two panels side by side. */
  readonly mergeContactsIn: number;
}

export interface AnalyseOptions {
  /** Day of the job, or null for the finished state at 28 days. */
  readonly day: number | null;
  /** Mesh size; null takes the piece's own (about 4,000 nodes at most, 1 in at the finest). */
  readonly meshSizeIn: number | null;
  /** What is spared for a quick look; left out, nothing. */
  readonly quick?: QuickLook | undefined;
  /**
   * A moment of the swap: ids of the supports that stand, whatever their days say, under self weight and the working load. The
   * contact points of every support of the piece are then nodes, so that all moments of a piece share one mesh.
   */
  readonly standing?: readonly string[];
}

/** Contact points of all supports of a piece together, at the most, where each moment bears on some of them only. */
export const MOST_CONTACTS_OF_ALL = 240;
/** About how many places of the roving patch are tried. */
const ROVING_PLACES = 125;
/** A piece meshed, loaded and factored, before any load case is solved. */
export interface PreparedPiece {
  readonly piece: Piece;
  readonly mix: Mix;
  readonly region: Region;
  readonly concrete: ConcreteState;
  readonly weight: PieceWeight;
  readonly shape: PieceShape;
  readonly bearings: readonly Bearing[];
  readonly contacts: readonly Contact[];
  readonly mesh: PlateMesh;
  readonly layout: PlateLayout;
  readonly locate: Locate;
  readonly state: PlateState;
  readonly addArms: ArmFlexibility;
  readonly loads: LoadSet;
  readonly free: FreeDeflections;
  /** The first label is self weight; label i + 1 belongs to live load i. */
  readonly labels: readonly CaseLabel[];
  readonly stability: Stability;
  readonly roving: PieceAnalysis['roving'];
  readonly remarks: readonly string[];
}

export type PrepareResult =
  | { readonly ok: true; readonly prepared: PreparedPiece }
  | { readonly ok: false; readonly cannot: CannotAnalyse };
/** Meshes, loads and factors a piece on a day. Values, not exceptions, for what cannot be prepared. */
export function preparePiece(job: Job, piece: Piece, options: AnalyseOptions): PrepareResult {
  const { day, standing } = options;
  const early = notCast(piece, day);
  if (early !== null) return early;
  const supports =
    standing === undefined ? piece.supports.filter((support) => stands(support, day)) : piece.supports;
  const result = meshPiece(job, piece, supports, {
    meshSizeIn: options.meshSizeIn,
    mostContacts: standing === undefined ? undefined : MOST_CONTACTS_OF_ALL,
    mergeContactsIn: options.quick?.mergeContactsIn,
  });
  if (!result.ok) return result;
  const { meshed } = result;
  const set = standing === undefined ? meshed : standingSet(meshed, (id) => standing.includes(id));
  if (set.bearings.length === 0) return nothingStands();
  const { mesh, layout } = meshed;
  return completePiece(meshed, set, options, (concrete, addArms) => {
    const bending = bendingMatrix(concrete.modulusPsi, piece.thicknessIn, concrete.poisson);
    return buildPlateState(mesh, layout, bending, set.contacts, addArms);
  });
}

/** That the concrete of a piece is not hard on a day; null where it is. */
export function notCast(
  piece: Piece,
  day: number | null,
): { readonly ok: false; readonly cannot: CannotAnalyse } | null {
  if (day === null || day - piece.pourDay >= 1) return null;
  return cannot('not-cast', `On day ${day} the concrete is not hard: it is poured on day ${piece.pourDay}.`);
}

/**
 * Weighs and loads a meshed piece on the bearings that stand, on the plate that `plateOf` gives for its concrete. `ready` has the
 * loads of a moment of the swap where they are known already.
 */
export function completePiece(
  meshed: MeshedPiece,
  set: BearingSet,
  { day, standing, quick }: Pick<AnalyseOptions, 'day' | 'standing' | 'quick'>,
  plateOf: (concrete: ConcreteState, addArms: ArmFlexibility) => PlateState,
  ready?: { readonly loads: LoadSet; readonly freeOf: (state: PlateState) => FreeDeflections },
): PrepareResult {
  const { job, piece, mix, region, mesh, layout, locate, weight, carried } = meshed;
  const { plans, bearings, contacts } = set;
  const ageDays = day === null ? null : day - piece.pourDay;
  const concrete = concreteState(job, piece, mix, ageDays);
  const shape = shapeOf(piece, region, bearings);
  const onTheWay =
    standing !== undefined ||
    (ageDays !== null && (ageDays < 28 || bearings.some(({ support }) => support.lastDay !== null)));
  const { roving, cases, remarks } = onTheWay
    ? { roving: null, cases: workingLoadCases(job.swap.workingLoadPsf), remarks: [] }
    : liveCases(
        piece,
        region,
        shape.axisRad,
        rovingSpacingIn(weight.areaIn2, quick?.rovingPlaces ?? ROVING_PLACES),
        besides(shape),
        printersOf(job),
      );

  const loads: LoadSet = ready?.loads ?? {
    dead: deadLoad(mesh, locate, region, weight.slabLb / weight.areaIn2, carried),
    live: cases.map(({ live }) => liveLoad(mesh, locate, live, shape.axisRad)),
  };
  const addArms = armsOf(set);
  const state = plateOf(concrete, addArms);
  if (state.systems.low === null || state.systems.high === null) {
    return cannot('no-support', 'Everything under this piece lies in one line, so nothing holds it level.');
  }
  const used = roving ?? rovingOf(piece);
  return {
    ok: true,
    prepared: {
      piece,
      mix,
      region,
      concrete,
      weight,
      shape,
      bearings,
      contacts,
      mesh,
      layout,
      locate,
      state,
      addArms,
      loads,
      free: ready?.freeOf(state) ?? freeDeflections(state, loads),
      labels: [{ id: 'self', words: 'self weight and what it carries', live: { kind: 'none' } }, ...cases],
      stability: judgeStability(plans, weight, liveForces(cases)),
      roving: onTheWay
        ? {
            setting: 'working',
            forceLbf: 0,
            source: `${job.swap.workingLoadPsf} psf of people and kit, as set in the job`,
          }
        : {
            setting: used?.setting ?? 'none',
            forceLbf: used?.forceLbf ?? 0,
            source: used?.source ?? 'set to none',
          },
      remarks,
    },
  };
}

function rovingSpacingIn(areaIn2: number, places: number): number {
  return Math.max(3, Math.sqrt((2 * areaIn2) / places));
}

/** Places of the roving patch besides the grid: the middle of the span and the end of the overhang. */
function besides(shape: PieceShape): Point[] {
  const points: Point[] = [];
  if (shape.freeSpan !== null) points.push(shape.freeSpan.at);
  for (const { at } of shape.overhangs) points.push(at);
  return points;
}
function liveForces(cases: readonly LiveCase[]): { forceLbf: number; at: Point }[] {
  return cases.flatMap(({ live }) =>
    live.kind === 'roving' ? [{ forceLbf: live.forceLbf, at: live.centre }] : [],
  );
}
