/** A piece in plan: its outline with corner radii and its openings, or what is wrong with them. */
import type { OutlineProblem, Point } from '../outline';
import { cutoutOutline, roundCorners, signedAreaIn2 } from '../outline';
import type { UnitSystem } from '../units';
import { printExactLength } from '../units';
import type { Piece } from './piece';
import type { CrossCheckCode, JobProblem } from './problem';
import { writePath } from './problem';

/** Chords leave an arc by at most this much. */
const CHORD_IN = 1 / 64;

/** How a piece is laid out: chords within a tolerance of its arcs, and the system in which a misfit is worded. */
interface Layout {
  readonly chordToleranceIn?: number;
  readonly system?: UnitSystem;
}

export type PieceRegion =
  | {
      readonly ok: true;
      /** Counter-clockwise, arcs as chords. */
      readonly outer: readonly Point[];
      /** One a cutout, in the file's order, counter-clockwise. */
      readonly holes: readonly (readonly Point[])[];
      /** Edge of the piece, by its number in the file, on which the segment from point k to k + 1 lies. */
      readonly edgeOfPoint: readonly number[];
    }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

export type PieceOutline =
  | { readonly ok: true; readonly outer: readonly Point[]; readonly edgeOfPoint: readonly number[] }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

export type CutoutInPlan =
  | { readonly ok: true; readonly points: readonly Point[] }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/**
 * The slab in plan, inches in the drawing's coordinates. Problems carry a path below the piece. It does not ask
 * whether the cutouts lie inside the outline; the cross-checks do.
 */
export function pieceRegion(piece: Piece, chordToleranceIn = CHORD_IN): PieceRegion {
  const outline = pieceOutline(piece, { chordToleranceIn });
  const cutouts = piece.cutouts.map((_, index) => cutoutInPlan(piece, index, { chordToleranceIn }));
  const problems = [outline, ...cutouts].flatMap((part) => (part.ok ? [] : part.problems));
  if (!outline.ok || problems.length > 0) return { ok: false, problems };
  const holes = cutouts.flatMap((cutout) => (cutout.ok ? [cutout.points] : []));
  return { ok: true, outer: outline.outer, holes, edgeOfPoint: outline.edgeOfPoint };
}

/** The outline alone, counter-clockwise whichever way round it is written. */
export function pieceOutline(
  piece: Piece,
  { chordToleranceIn = CHORD_IN, system = 'imperial' }: Layout = {},
): PieceOutline {
  const rounding = roundCorners(piece.corners, chordToleranceIn);
  if (!rounding.ok)
    return { ok: false, problems: worded(piece, [], 'The outline', rounding.problems, system) };
  const { points, sourceEdges } = rounding.outline;
  if (signedAreaIn2(points) > 0) return { ok: true, outer: points, edgeOfPoint: sourceEdges };
  const n = points.length;
  return {
    ok: true,
    outer: [...points].reverse(),
    edgeOfPoint: points.map((_, k) => sourceEdges[(2 * n - 2 - k) % n]!),
  };
}

/** One cutout's outline, counter-clockwise. */
export function cutoutInPlan(
  piece: Piece,
  index: number,
  { chordToleranceIn = CHORD_IN, system = 'imperial' }: Layout = {},
): CutoutInPlan {
  const outline = cutoutOutline(piece.cutouts[index]!.shape, chordToleranceIn);
  if (outline.ok) return { ok: true, points: outline.points };
  const subject = `Cutout ${piece.cutouts[index]!.id}`;
  const path = ['cutouts', index, 'shape'];
  return { ok: false, problems: worded(piece, path, subject, outline.problems, system) };
}

const CODES: { readonly [K in OutlineProblem['code']]: CrossCheckCode } = {
  'too-few-corners': 'outline-degenerate',
  'corners-coincide': 'outline-degenerate',
  'no-area': 'outline-degenerate',
  'edges-cross': 'outline-crossing',
  'radius-does-not-fit': 'radius-too-large',
  'rounding-crosses': 'radius-too-large',
};

function worded(
  piece: Piece,
  under: readonly (string | number)[],
  subject: string,
  problems: readonly OutlineProblem[],
  system: UnitSystem,
): JobProblem[] {
  return problems.map(({ code, path, sentence, radius }) => ({
    code: CODES[code],
    path: writePath([...under, ...path]),
    pieceId: piece.id,
    sentence: `${subject} of "${piece.name}" cannot be built: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}${fitWords(radius, system)}`,
  }));
}

function fitWords(radius: OutlineProblem['radius'], system: UnitSystem): string {
  if (radius === undefined) return '';
  const { askedIn, largestIn } = radius;
  return ` It is ${printExactLength(askedIn, { system })}; ${printExactLength(largestIn, { system })} would fit.`;
}
