/** The slab bent under the load that governs its sag, for a view that draws it much enlarged. */
import type { AnalyseOptions, PieceAnalysis } from '../analysis';
import { caseField, preparePiece } from '../analysis';
import type { Job, Piece } from '../job';

export interface ContactArrow {
  readonly xIn: number;
  readonly yIn: number;
  readonly supportId: string;
  /** Up positive; a tie that holds down is negative, a point that has come off 0. */
  readonly reactionLbf: number;
}

export interface DeflectedShape {
  readonly pieceId: string;
  /** "250 lbf sitting at 12 in from the left, 4 in from the front". */
  readonly words: string;
  readonly bound: 'low' | 'high';
  /** Deflection at the nodes of the analysis' mesh, in, down positive, settlement of the supports included. */
  readonly wIn: Float32Array;
  readonly mostIn: number;
  readonly contacts: readonly ContactArrow[];
  /** True where the slab would turn over under this load and is drawn as if it were held down. */
  readonly asIfHeld: boolean;
}

/**
 * The uncracked shape under the case with the largest sag. `options` must be those of the analysis, so that both meshes are the
 * same. null where the piece cannot be prepared.
 */
export function deflectedShape(
  job: Job,
  piece: Piece,
  options: AnalyseOptions,
  analysis: PieceAnalysis,
): DeflectedShape | null {
  const result = preparePiece(job, piece, options);
  if (!result.ok) return null;
  const { low, high } = analysis.elastic;
  const worst = low.worstDown.downIn >= high.worstDown.downIn ? low : high;
  const at = worst.cases.findIndex(({ id }) => id === worst.worstDown.caseId);
  const field = caseField(result.prepared, worst.bound, Math.max(0, at));
  let mostIn = 0;
  for (const w of field.wIn) mostIn = Math.max(mostIn, Math.abs(w));
  return {
    pieceId: piece.id,
    words: worst.cases[Math.max(0, at)]!.words,
    bound: worst.bound,
    wIn: Float32Array.from(field.wIn),
    mostIn,
    asIfHeld: field.asIfHeld,
    contacts: analysis.contacts.map(({ at: place, bearing }, index) => ({
      xIn: place.xIn,
      yIn: place.yIn,
      supportId: analysis.bearings[bearing]!.support.id,
      reactionLbf: field.contactLbf[index]!,
    })),
  };
}
