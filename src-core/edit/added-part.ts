/** Adds a part to a piece from a draft: the schema fills in what it leaves out, and a missing id is made up. */
import type { Job, Piece } from '../job';
import { newId } from '../starters';
import { atPiece, refuseAt, settlePiece } from './at-piece';
import type { Edited } from './command';

/** The list of a piece that a kind of part stands in. */
export type PartList = 'cutouts' | 'supports' | 'reinforcement' | 'joints' | 'fixed';

/** The piece with one of its lists replaced, by finished parts or drafts. */
export function withList(piece: Piece, list: PartList, parts: readonly unknown[]): unknown {
  if (list === 'fixed') return { ...piece, loads: { ...piece.loads, fixed: parts } };
  return { ...piece, [list]: parts };
}

/** The parts of a piece that stand in one list. */
export function listOf(piece: Piece, list: PartList): readonly { readonly id: string }[] {
  return list === 'fixed' ? piece.loads.fixed : piece[list];
}

/** Adds a draft at the end of a list; `stem` begins the id of one that has none. */
export function addPart(
  job: Job,
  pieceId: string,
  list: PartList,
  draft: unknown,
  stem: string,
  title: string,
): Edited {
  return atPiece(job, pieceId, (at) => {
    if (typeof draft !== 'object' || draft === null) {
      return refuseAt(at, 'wrong-type', list, 'What is added must be an object in braces.');
    }
    const given = (draft as { readonly id?: unknown }).id;
    const id = typeof given === 'string' ? given : newId(job, stem);
    const piece = withList(at.piece, list, [...listOf(at.piece, list), { ...draft, id }]);
    return settlePiece(at, piece, title, null, id);
  });
}

/** A word that a draft has under a key, or another where it has none. */
export function wordOf(draft: unknown, key: string, otherwise: string): string {
  if (typeof draft !== 'object' || draft === null) return otherwise;
  const word = (draft as Readonly<Record<string, unknown>>)[key];
  return typeof word === 'string' ? word : otherwise;
}
