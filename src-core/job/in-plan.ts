/** The pieces of a job in plan, computed once for all cross-checks, and the questions that they ask of it. */
import type { Point, Region } from '../outline';
import { clipPatchToRegion, loopsAreaIn2, outlineProblems, polygonAreaIn2 } from '../outline';
import type { UnitSystem } from '../units';
import type { Job } from './job';
import type { Piece } from './piece';
import type { CutoutInPlan, PieceOutline } from './piece-region';
import { cutoutInPlan, pieceOutline } from './piece-region';

export {
  cutoutClearance,
  cutoutGaps,
  distanceIn,
  patchOutline,
  polygonPerimeterIn,
  signedDistanceIn,
} from '../outline';
export { polygonAreaIn2 };

export interface PieceInPlan {
  readonly piece: Piece;
  readonly index: number;
  readonly outline: PieceOutline;
  /** One a cutout, in the file's order. */
  readonly cutouts: readonly CutoutInPlan[];
  /** The slab without the openings that cannot be drawn; null where the outline itself is at fault. */
  readonly region: Region | null;
  /** System in which sentences print its lengths. */
  readonly system: UnitSystem;
}

export interface JobInPlan {
  readonly job: Job;
  readonly pieces: readonly PieceInPlan[];
}

/** Every piece's outline and openings, sound or not. */
export function jobInPlan(job: Job): JobInPlan {
  return { job, pieces: job.pieces.map((piece, index) => pieceInPlan(piece, index, job.shownIn)) };
}

function pieceInPlan(piece: Piece, index: number, system: UnitSystem): PieceInPlan {
  const outline = pieceOutline(piece, { system });
  const cutouts = piece.cutouts.map((_, cutout) => cutoutInPlan(piece, cutout, { system }));
  const holes = cutouts.flatMap((cutout) => (cutout.ok ? [cutout.points] : []));
  const region = outline.ok ? { outer: outline.outer, holes } : null;
  return { piece, index, outline, cutouts, region, system };
}

/** Why a list of corners is no polygon, or null. */
export function polygonFault(corners: readonly Point[]): string | null {
  return outlineProblems(corners)[0]?.sentence ?? null;
}

/** Area of a polygon that lies on the slab, in2. */
export function areaOnSlabIn2(polygon: readonly Point[], region: Region): number {
  return loopsAreaIn2(clipPatchToRegion(polygon, region));
}

/** Area of a polygon that lies beyond the outline, in2; openings count as within. */
export function areaBeyondIn2(polygon: readonly Point[], region: Region): number {
  return polygonAreaIn2(polygon) - areaOnSlabIn2(polygon, { outer: region.outer, holes: [] });
}
