/** What chapters and tables call the pieces of one drawing, and the ids under which they stand in the book. */
import type { Piece } from '../job';
import type { BookFacts, PieceFacts } from './facts';
import { counted } from './print';

/** Id of the chapter of the k-th drawing; every id within it begins with it. A number, as ids of the job may hold any words. */
export function pieceChapterId(k: number): string {
  return `piece-${k + 1}`;
}

/** The drawing of a piece by its number in the book, from 1. */
export function drawingNumber({ pieces }: Pick<BookFacts, 'pieces'>, pieceId: string): number {
  return 1 + pieces.findIndex(({ alike }) => alike.some(({ id }) => id === pieceId));
}

/** Castings by one drawing: its pieces with their copies. */
export function castingCount(alike: readonly Piece[]): number {
  return alike.reduce((sum, { copies }) => sum + copies, 0);
}

/** "Gate-pier cap", "Gate-pier cap and 2 like it". */
export function drawingName({ piece, alike }: Pick<PieceFacts, 'piece' | 'alike'>): string {
  return alike.length === 1 ? piece.name : `${piece.name} and ${alike.length - 1} like it`;
}

/** How many are cast by a drawing, and what they are called; null where it is one. */
export function castingWords(alike: readonly Piece[]): string | null {
  const count = castingCount(alike);
  if (count === 1) return null;
  const names = alike.map(({ name, copies }) => (copies > 1 ? `${name} (${copies})` : name));
  return alike.length === 1
    ? `${counted(count, 'piece')} by this drawing; weights and lists are for one.`
    : `${counted(count, 'piece')} by this drawing: ${names.join(', ')}. Weights and lists are for one.`;
}

/** Names that a cell or a row tells one by one. */
const MOST_NAMES = 12;

/** Names in a row, the first dozen of a long one. */
export function namesWords(names: readonly string[]): string {
  const rest = names.length - MOST_NAMES;
  return rest > 0 ? `${names.slice(0, MOST_NAMES).join(', ')} and ${rest} more` : names.join(', ');
}
