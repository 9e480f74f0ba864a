/** The steel of a piece placed: strips, bars, trimmers, standoffs, sag, cover and joints, from the drawing as it is. */
import type { Job, JobProblem, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Point } from '../outline';
import { coverLeft } from './cover';
import { heldBars } from './drawn-trimmers';
import { placeJoints } from './joints';
import { holdOf } from './lap-lengths';
import { otherSteel } from './other-steel';
import { placeBars } from './place-bars';
import { placeMesh } from './place-mesh';
import { placeStandoffs } from './place-standoffs';
import type { PlacementDrawing } from './placement-drawing';
import { placementDrawing } from './placement-drawing';
import { meshSag } from './sag';
import { clashes, isSteelLayer, stackedLayers } from './stacking';
import { steelTotals } from './totals';
import { placeTrimmers } from './trimmers';
import type {
  BarPlacing,
  CoverLeft,
  MeshPlacing,
  MeshSag,
  OtherSteel,
  PlacedJoint,
  PlacedStandoff,
  StandoffSet,
  SteelTotal,
  Trimmer,
} from './types';

export interface PlaceSteelOptions {
  /**
   * Points where bending peaks, as the load check found them. Laps keep away from them as well as from supports,
   * midspans and inside corners.
   */
  readonly peaksAt?: readonly Point[];
}

/** Everything is for one copy of the piece. */
export interface SteelPlacing {
  readonly pieceId: string;
  /** How many copies the job needs. */
  readonly copies: number;
  readonly meshes: readonly MeshPlacing[];
  readonly bars: readonly BarPlacing[];
  readonly trimmers: readonly Trimmer[];
  readonly standoffs: readonly PlacedStandoff[];
  readonly standoffSets: readonly StandoffSet[];
  readonly others: readonly OtherSteel[];
  readonly sags: readonly MeshSag[];
  readonly covers: readonly CoverLeft[];
  readonly joints: readonly PlacedJoint[];
  readonly totals: readonly SteelTotal[];
  readonly drawing: PlacementDrawing;
  /** What a person must know before placing, in sentences. */
  readonly cautions: readonly string[];
}

export type SteelPlacingResult =
  | { readonly ok: true; readonly placing: SteelPlacing }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/** Said wherever bars stand up or ends stick out. OSHA 1926.701(b) asks guards on bars that can impale. */
export const STEEL_CAUTION =
  'Cut ends of mesh and bars are sharp: gloves and eye protection, caps on ends that stick out, nobody on the mesh.';

/** Places the steel of a piece. Problems where its outline or a cutout cannot be built. */
export function placeSteel(job: Job, piece: Piece, options: PlaceSteelOptions = {}): SteelPlacingResult {
  const plan = pieceRegion(piece);
  if (!plan.ok) return { ok: false, problems: plan.problems };
  const { peaksAt = [] } = options;
  const region = { outer: plan.outer, holes: plan.holes };
  const layers = stackedLayers(piece);
  const meshes: MeshPlacing[] = [];
  const bars: BarPlacing[] = [];
  for (const layer of piece.reinforcement.filter(isSteelLayer)) {
    if (layer.kind === 'mesh') {
      const firstNumber = 1 + meshes.reduce((sum, { strips }) => sum + strips.length, 0);
      meshes.push(placeMesh(job, piece, region, layer, { peaksAt, firstNumber }));
    } else bars.push(placeBars(job, piece, region, layer, { peaksAt, letter: letterOf(bars.length) }));
  }
  const { standoffs, sets: standoffSets } = placeStandoffs(
    piece,
    region,
    layers,
    job.forms.standoffSpacingIn,
  );
  const hold = holdOf(job, piece);
  const held = layers.flatMap(({ layer }) => {
    const own = bars.find(({ id }) => id === layer.id);
    return layer.kind === 'bars' && own !== undefined ? heldBars(piece, layer, own.bars, hold) : [];
  });
  const trimmers = placeTrimmers(job, piece, region, layers, held);
  const joints = placeJoints(job, piece, { ...region, edgeOfPoint: plan.edgeOfPoint }, layers);
  const others = otherSteel(piece, region);
  const sags = layers.flatMap((stacked) =>
    stacked.layer.kind === 'mesh' ? [meshSag(job, piece, stacked, stacked.layer)] : [],
  );
  const lapped = new Set(meshes.filter(({ laps }) => laps.length > 0).map(({ id }) => id));
  const covers = layers.flatMap((stacked) =>
    coverLeft(job, piece, region, stacked, lapped.has(stacked.layer.id)),
  );
  return {
    ok: true,
    placing: {
      pieceId: piece.id,
      copies: piece.copies,
      meshes,
      bars,
      trimmers,
      standoffs,
      standoffSets,
      others,
      sags,
      covers,
      joints,
      totals: steelTotals(piece, { meshes, bars, trimmers, standoffSets, others, joints }),
      drawing: placementDrawing(job, { region, meshes, bars, trimmers, standoffs, joints }),
      cautions: [
        ...(layers.length > 0 ? [STEEL_CAUTION] : []),
        ...clashes(layers),
        ...covers.filter(({ level }) => level !== 'enough').map(({ words }) => words),
        ...sags.filter(({ level }) => level === 'caution').map(({ words }) => words),
        ...joints.flatMap(({ caution }) => (caution === null ? [] : [caution])),
      ],
    },
  };
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSUVWXYZ';

/** A, B ... without T, which marks trimmers; then AA, BB ... */
function letterOf(index: number): string {
  return LETTERS[index % LETTERS.length]!.repeat(1 + Math.floor(index / LETTERS.length));
}
