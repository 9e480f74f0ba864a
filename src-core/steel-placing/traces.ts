/** Traces from items of the list to the parts of the drawing. */
import type { Piece } from '../job';
import type { Trace } from '../trace';

export function steelTrace(piece: Piece, id: string): Trace {
  return { pieceId: piece.id, part: { kind: 'steel', id } };
}

export function pieceTrace(piece: Piece): Trace {
  return { pieceId: piece.id, part: { kind: 'piece' } };
}

export function cornerTrace(piece: Piece, index: number): Trace {
  return { pieceId: piece.id, part: { kind: 'corner', index } };
}

export function edgeTrace(piece: Piece, index: number): Trace {
  return { pieceId: piece.id, part: { kind: 'edge', index } };
}

export function cutoutTrace(piece: Piece, id: string): Trace {
  return { pieceId: piece.id, part: { kind: 'cutout', id } };
}

export function jointTrace(piece: Piece, id: string): Trace {
  return { pieceId: piece.id, part: { kind: 'joint', id } };
}
