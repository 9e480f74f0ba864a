/** Which pour of a job is shown, and how the pours are told apart. */
import type { Pour, PourPlan } from '../../src-core/pour';

/** The pour that the selected piece is cast in, or the first; null where there is none. */
export function pourOfPiece({ pours }: PourPlan, pieceId: string): Pour | null {
  return pours.find(({ pieces }) => pieces.some((piece) => piece.pieceId === pieceId)) ?? pours[0] ?? null;
}

/** "Serving counter", "Gate-pier cap x 3". */
export function pieceNames({ pieces }: Pour): string {
  return pieces.map(({ name, copies }) => (copies > 1 ? `${name} x ${copies}` : name)).join(', ');
}

/** "Day 0: Serving counter". */
export function pourTitle(pour: Pour): string {
  return `Day ${pour.day}: ${pieceNames(pour)}`;
}

/** "Serving counter"; "Gate-pier cap 2" for one of several castings of a piece. */
export function castingName({ pieces }: Pour, pieceId: string, copy: number): string {
  const piece = pieces.find((one) => one.pieceId === pieceId);
  if (piece === undefined) throw new Error(`a pour without piece "${pieceId}"`);
  return piece.copies > 1 ? `${piece.name} ${copy}` : piece.name;
}
