/** From a piece to a meshed, loaded and factored plate on its contact points. */
import { armFlexibility } from '../bracket';
import type { Job, Mix, Piece } from '../job';
import { pieceRegion, rovingOf } from '../job';
import type { Point, Region } from '../outline';
import { polygonAreaIn2 } from '../outline';
import type { Locate, PlateLayout, PlateMesh } from '../plate';
import { bendingMatrix, buildLocator, layOutPlate, meshRegion } from '../plate';
import type { BearingPlan } from './bearing-grid';
import { planBearings } from './bearings';
import type { CaseLabel } from './bound-state';
import { concreteState } from './concrete-state';
import type { LiveCase } from './live-loads';
import { liveCases, workingLoadCases } from './live-loads';
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
import { carriedWeights, weigh } from './weight';

export interface AnalyseOptions {
  /** Day of the job, or null for the finished state at 28 days. */
  readonly day: number | null;
  /** Mesh size; null takes the piece's own (about 4,000 nodes at most, 1 in at the finest). */
  readonly meshSizeIn: number | null;
  /** About how many places of the roving patch are tried; left out, as many as a verdict needs. */
  readonly rovingPlaces?: number;
}
/** Chords of arcs in the analysed outline leave the arc by this much at the most. */
const CHORD_IN = 1 / 32;
const FINEST_MESH_IN = 1;
const COARSEST_MESH_IN = 3;
const MESH_SHARE = 0.9;
const COARSEST_BY_THICKNESS_IN = 2;
const MOST_NODES = 4_000;
/** Contact points along a line, at the closest. */
const CONTACT_STEP_IN = 3;
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
  const mix = job.mixes.find((candidate) => candidate.id === piece.mixId);
  if (mix === undefined) return cannot('shape', `No mix "${piece.mixId}" is in the job.`);
  const ageDays = options.day === null ? null : options.day - piece.pourDay;
  if (ageDays !== null && ageDays < 1) {
    return cannot(
      'not-cast',
      `On day ${options.day} the concrete is not hard: it is poured on day ${piece.pourDay}.`,
    );
  }
  const plan = pieceRegion(piece, CHORD_IN);
  if (!plan.ok) return cannot('shape', plan.problems[0]?.sentence ?? 'The outline cannot be used.');
  const region: Region = { outer: plan.outer, holes: plan.holes };

  const meshSizeIn = options.meshSizeIn ?? meshSizeFor(region, piece.thicknessIn);
  const bearingPlans = planBearings(piece, region, options.day, Math.max(CONTACT_STEP_IN, 2 * meshSizeIn));
  if (bearingPlans.length === 0) {
    return cannot(
      'no-support',
      'Nothing is drawn under this piece that stands on this day. Draw what holds it.',
    );
  }
  const meshed = meshRegion({
    outer: region.outer,
    holes: region.holes,
    fixedPoints: bearingPlans.flatMap(({ spots }) => spots.map(({ at }) => at)),
    segments: [],
    sizeIn: meshSizeIn,
  });
  if (!meshed.ok) return cannot('mesh', meshed.problem.sentence);
  const { mesh } = meshed;
  const { bearings, contacts, alongArmIn } = numberContacts(bearingPlans, meshed.fixedNodes);

  const concrete = concreteState(job, piece, mix, ageDays);
  const carried = carriedWeights(piece, region.holes);
  const weight = weigh(piece, mix, region, carried);
  const shape = shapeOf(piece, region, bearings);
  const onTheWay =
    options.day !== null && (ageDays! < 28 || bearings.some(({ support }) => support.lastDay !== null));
  const { roving, cases, remarks } = onTheWay
    ? { roving: null, cases: workingLoadCases(job.swap.workingLoadPsf), remarks: [] }
    : liveCases(
        piece,
        region,
        shape.axisRad,
        rovingSpacingIn(weight.areaIn2, options.rovingPlaces ?? ROVING_PLACES),
        besides(shape),
        printersOf(job),
      );

  const locate = locatorOf(mesh);
  const loads: LoadSet = {
    dead: deadLoad(mesh, locate, region, weight.slabLb / weight.areaIn2, carried),
    live: cases.map(({ live }) => liveLoad(mesh, locate, live, shape.axisRad)),
  };
  const layout = layOutPlate(mesh);
  const bending = bendingMatrix(concrete.modulusPsi, piece.thicknessIn, concrete.poisson);
  const addArms = armsOf(bearings, alongArmIn);
  const state = buildPlateState(mesh, layout, bending, contacts, addArms);
  if (state.systems.low === null || state.systems.high === null) {
    return cannot('no-support', 'Everything under this piece lies in one line, so nothing holds it level.');
  }
  const set = roving ?? rovingOf(piece);
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
      free: freeDeflections(state, loads),
      labels: [{ id: 'self', words: 'self weight and what it carries', live: { kind: 'none' } }, ...cases],
      stability: judgeStability(bearingPlans, weight, liveForces(cases)),
      roving: onTheWay
        ? {
            setting: 'working',
            forceLbf: 0,
            source: `${job.swap.workingLoadPsf} psf of people and kit, as set in the job`,
          }
        : {
            setting: set?.setting ?? 'none',
            forceLbf: set?.forceLbf ?? 0,
            source: set?.source ?? 'set to none',
          },
      remarks,
    },
  };
}
function cannot(
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

function rovingSpacingIn(areaIn2: number, places: number): number {
  return Math.max(3, Math.sqrt((2 * areaIn2) / places));
}

function numberContacts(
  plans: readonly BearingPlan[],
  fixedNodes: Int32Array,
): { bearings: Bearing[]; contacts: Contact[]; alongArmIn: (number | null)[] } {
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
        at: spot.at,
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

/** Adds the give of every bracket's arm and fixing between the contacts on it. */
function armsOf(bearings: readonly Bearing[], alongArmIn: readonly (number | null)[]): ArmFlexibility {
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
