import type { PreparedPiece } from '../../src-core/analysis';
import { caseField, preparePiece } from '../../src-core/analysis';
import { addCase, startGoverning } from '../../src-core/analysis/governing';
import type { MomentField } from '../../src-core/plate';
import { averageMomentAcross } from '../../src-core/plate';
import { nodeMoments } from './calculix/moments';
import { calculixPlate } from './calculix/plate';
import type { NodeLoad, PlateInput, Triangle } from './calculix/plate-input';
import type { MomentMeasure, WorktopCase } from './worktop-cases';

/** A worktop meshed and loaded, and the load case looked at: 0 is its weight with what it carries. */
export interface LoadedWorktop {
  readonly worktop: WorktopCase;
  readonly prepared: PreparedPiece;
  readonly labelIndex: number;
}

/** What is compared of one solution, in the order of the case's places and of the piece's bearings. */
export type WorktopNumbers = {
  /** Mean settlement of the supports, then each place's deflection below it. */
  readonly deflectionsIn: number[];
  readonly reactionsLbf: number[];
  readonly momentsLbfInPerIn: number[];
};

/** One solution on the piece's own mesh and contact points, ours or the other program's. */
interface Solution {
  readonly wIn: Float64Array;
  readonly contactLbf: Float64Array;
  readonly moments: MomentField;
}

/** The roving patch must stand this near to where the case says. */
const SAME_PLACE_IN = 0.05;
/** Reactions of the other program sum to the load within this share. */
const BALANCE_RATIO = 1e-5;

/** Prepares a case; throws where the piece cannot be analysed or no roving patch stands where the case says. */
export function loadWorktop(worktop: WorktopCase): LoadedWorktop {
  const { job, meshSizeIn, rovingAt } = worktop;
  const result = preparePiece(job, job.pieces[0]!, { day: null, meshSizeIn });
  if (!result.ok) throw new Error(`${worktop.name}: ${result.cannot.sentence}`);
  const { prepared } = result;
  if (rovingAt === null) return { worktop, prepared, labelIndex: 0 };
  const labelIndex = prepared.labels.findIndex(
    ({ live }) =>
      live.kind === 'roving' &&
      Math.hypot(live.centre.xIn - rovingAt.xIn, live.centre.yIn - rovingAt.yIn) < SAME_PLACE_IN,
  );
  if (labelIndex < 0) {
    throw new Error(`${worktop.name}: no roving patch is tried at (${rovingAt.xIn}, ${rovingAt.yIn})`);
  }
  return { worktop, prepared, labelIndex };
}

/** Names of the bearings, in the order of `reactionsLbf`. */
export function bearingWords({ prepared }: LoadedWorktop): string[] {
  return prepared.bearings.map(({ words }) => words);
}

/** Weight and live load of the case, lbf. */
export function totalLoadLbf(loaded: LoadedWorktop): number {
  return nodeLoads(loaded).reduce((sum, { forceLbf }) => sum + forceLbf, 0);
}

/** Our numbers, and the share of each bearing's contact points that have come off. */
export function ourNumbers(loaded: LoadedWorktop): { numbers: WorktopNumbers; liftedRatios: number[] } {
  const { prepared, labelIndex, worktop } = loaded;
  const field = caseField(prepared, worktop.bound, labelIndex);
  if (field.asIfHeld) throw new Error(`${worktop.name} turns over under its load`);
  const liftedRatios = prepared.bearings.map(({ contacts }) => {
    const off = contacts.filter((contact) => field.contactLbf[contact] === 0);
    return off.length / contacts.length;
  });
  return { numbers: measure(loaded, field), liftedRatios };
}

/** The same numbers of a CalculiX run on the same mesh, springs and nodal loads. */
export function calculixNumbers(loaded: LoadedWorktop, thinningRatio: number): WorktopNumbers {
  const input = plateInputOf(loaded, thinningRatio);
  const result = calculixPlate(input);
  const pushedLbf = result.supportLbf.reduce((sum, force) => sum + force, 0);
  const loadLbf = totalLoadLbf(loaded);
  if (!(Math.abs(pushedLbf / loadLbf - 1) < BALANCE_RATIO)) {
    throw new Error(`${loaded.worktop.name}: reactions ${pushedLbf} against a load of ${loadLbf} lbf`);
  }
  const moments = nodeMoments(input, result.points);
  return measure(loaded, {
    wIn: Float64Array.from(result.downIn),
    contactLbf: Float64Array.from(result.supportLbf),
    moments: {
      mx: Float64Array.from(moments, ({ mxLbfInPerIn }) => mxLbfInPerIn),
      my: Float64Array.from(moments, ({ myLbfInPerIn }) => myLbfInPerIn),
      mxy: Float64Array.from(moments, ({ mxyLbfInPerIn }) => mxyLbfInPerIn),
    },
  });
}

/** The slab, loads and contact points of a case with the given bound, each contact a spring to the ground. */
export function plateInputOf(loaded: LoadedWorktop, thinningRatio: number): PlateInput {
  const { worktop, prepared } = loaded;
  const { mesh, concrete, contacts, piece } = prepared;
  return {
    nodes: Array.from(mesh.xIn, (xIn, node) => ({ xIn, yIn: mesh.yIn[node]! })),
    triangles: Array.from({ length: mesh.triangles.length / 3 }, (_, triangle): Triangle => {
      const [a, b, c] = mesh.triangles.subarray(3 * triangle, 3 * triangle + 3);
      return [a!, b!, c!];
    }),
    thicknessIn: piece.thicknessIn,
    modulusPsi: concrete.modulusPsi,
    poissonRatio: concrete.poisson,
    loads: nodeLoads(loaded),
    supports: contacts.map(({ node, acts, gapIn, lowLbfPerIn, highLbfPerIn }) => ({
      node,
      stiffnessLbfPerIn: worktop.bound === 'low' ? lowLbfPerIn : highLbfPerIn,
      gapIn,
      kind: acts,
    })),
    holds: [],
    thinningRatio,
  };
}

function nodeLoads({ prepared, labelIndex }: LoadedWorktop): NodeLoad[] {
  const { dead, live } = prepared.loads;
  return (labelIndex === 0 ? [dead] : [dead, live[labelIndex - 1]!]).flatMap(({ node, lbf }) =>
    Array.from(node, (number, i) => ({ node: number, forceLbf: lbf[i]! })),
  );
}

function measure({ worktop, prepared }: LoadedWorktop, solution: Solution): WorktopNumbers {
  const { contacts, bearings } = prepared;
  const { wIn, contactLbf } = solution;
  let pushedLbf = 0;
  let settledLbfIn = 0;
  contacts.forEach(({ node, acts }, i) => {
    const push = contactLbf[i]!;
    if (acts !== 'push' || push <= 0) return;
    pushedLbf += push;
    settledLbfIn += push * wIn[node]!;
  });
  const settlementIn = settledLbfIn / pushedLbf;
  return {
    deflectionsIn: [
      settlementIn,
      ...worktop.deflections.map(({ at }) => valueAt(prepared, wIn, at) - settlementIn),
    ],
    reactionsLbf: bearings.map((bearing) =>
      bearing.contacts.reduce((sum, contact) => sum + contactLbf[contact]!, 0),
    ),
    momentsLbfInPerIn: worktop.moments.map((place) => momentOf(prepared, solution.moments, place)),
  };
}

/** Interpolates nodal values, so that a place keeps its value when the nodes round it move. */
function valueAt({ mesh, locate }: PreparedPiece, values: Float64Array, at: { xIn: number; yIn: number }) {
  const share = new Float64Array(3);
  const triangle = locate(at.xIn, at.yIn, share);
  if (triangle < 0) throw new Error(`(${at.xIn}, ${at.yIn}) is off the slab`);
  return share.reduce((sum, part, corner) => sum + part * values[mesh.triangles[3 * triangle + corner]!]!, 0);
}

/** Moment averaged over one thickness along the crack, sagging positive. */
function momentOf(prepared: PreparedPiece, field: MomentField, place: MomentMeasure): number {
  const { mesh, locate, piece } = prepared;
  if (place.kind === 'worst') {
    const governing = startGoverning(mesh, locate, piece.thicknessIn);
    addCase(governing, field, 0);
    const { momentLbfInPerIn } = governing.faces[place.face].peak;
    return place.face === 'bottom' ? momentLbfInPerIn : -momentLbfInPerIn;
  }
  const line = {
    ...place.at,
    acrossRad: (place.bendingDeg * Math.PI) / 180,
    widthIn: piece.thicknessIn,
  };
  const average = averageMomentAcross(mesh, locate, line, field);
  if (average === null) throw new Error(`(${place.at.xIn}, ${place.at.yIn}) is off the slab`);
  return average.acrossLbfInPerIn;
}
