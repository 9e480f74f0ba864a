/** The outline by its corners and edges. The list of edges stays matched to the corners; none (null) stays none. */
import type { Piece, PieceEdge } from '../job';
import type { Point } from '../outline';
import type { PieceAt } from './at-piece';
import { atPiece, refuseAt, replaced, settlePiece } from './at-piece';
import type { Command, Edited } from './command';
import { edgeLengthened, edgeMoved, isInsideOut, pointOnEdge } from './outline-moves';
import { cleanPoint } from './placement';

interface EdgeArgs {
  readonly pieceId: string;
  /** Corner i, or edge i from corner i to corner i + 1. */
  readonly index: number;
}

/** Puts a corner on a point of the plan; its rounding stays. */
export const moveCorner: Command<EdgeArgs & { to: Point }> = {
  id: 'move-corner',
  perform: (job, { pieceId, index, to }) =>
    atCorner(job, pieceId, index, (at, corner) => {
      const moved = cleanPoint({ ...corner, xIn: to.xIn, yIn: to.yIn });
      const piece = { ...at.piece, corners: replaced(at.piece.corners, index, moved) };
      return settlePiece(at, piece, 'Move corner', `move-corner:${pieceId}:${index}`);
    }),
};

/** Moves an edge parallel to itself by `toIn` along its outward normal from where it is; its ends slide along its neighbours. */
export const moveEdge: Command<EdgeArgs & { toIn: number }> = {
  id: 'move-edge',
  perform: (job, { pieceId, index, toIn }) =>
    atCorner(job, pieceId, index, (at) =>
      settleCorners(
        at,
        edgeMoved(at.piece.corners, index, toIn),
        'Move edge',
        `move-edge:${pieceId}:${index}`,
      ),
    ),
};

/** Gives an edge a length: it grows at its far end, where the next edge moves along with it. */
export const setEdgeLength: Command<EdgeArgs & { lengthIn: number }> = {
  id: 'set-edge-length',
  perform: (job, { pieceId, index, lengthIn }) =>
    atCorner(job, pieceId, index, (at) => {
      if (!(lengthIn > 0)) {
        return refuseAt(at, 'out-of-range', 'corners', `Edge ${index + 1} must be longer than nothing.`);
      }
      return settleCorners(at, edgeLengthened(at.piece.corners, index, lengthIn), 'Set edge length', null);
    }),
};

/** Puts a new corner on an edge, at its point nearest to `at`; both halves keep the edge's profile. */
export const splitEdge: Command<EdgeArgs & { at: Point }> = {
  id: 'split-edge',
  perform: (job, { pieceId, index, at: near }) =>
    atCorner(job, pieceId, index, (at) => {
      const { corners, edges } = at.piece;
      const added = { ...pointOnEdge(corners, index, near), radiusIn: 0 };
      const piece = {
        ...at.piece,
        corners: corners.toSpliced(index + 1, 0, added),
        edges: edges === null ? null : edges.toSpliced(index + 1, 0, edges[index]!),
      };
      return settlePiece(at, piece, 'Add corner');
    }),
};

/** Takes a corner out; the edge before it runs on to the next corner. */
export const removeCorner: Command<EdgeArgs> = {
  id: 'remove-corner',
  perform: (job, { pieceId, index }) =>
    atCorner(job, pieceId, index, (at) => {
      const { corners, edges, name } = at.piece;
      if (corners.length <= 3) {
        return refuseAt(at, 'wrong-length', 'corners', `"${name}" needs at least three corners.`);
      }
      const piece = {
        ...at.piece,
        corners: corners.toSpliced(index, 1),
        edges: edges === null ? null : edges.toSpliced(index, 1),
      };
      return settlePiece(at, piece, 'Remove corner');
    }),
};

/** Rounds a corner; 0 leaves it sharp. */
export const setCornerRadius: Command<EdgeArgs & { radiusIn: number }> = {
  id: 'set-corner-radius',
  perform: (job, { pieceId, index, radiusIn }) =>
    atCorner(job, pieceId, index, (at, corner) => {
      const piece = { ...at.piece, corners: replaced(at.piece.corners, index, { ...corner, radiusIn }) };
      return settlePiece(at, piece, 'Round corner', `corner-radius:${pieceId}:${index}`);
    }),
};

/** Makes an edge free with a profile, set against a wall, or butted; a piece without edges of its own gets free ones all round. */
export const setEdge: Command<EdgeArgs & { edge: unknown }> = {
  id: 'set-edge',
  perform: (job, { pieceId, index, edge }) =>
    atCorner(job, pieceId, index, (at) => {
      const { edges, corners } = at.piece;
      const list: readonly unknown[] = edges ?? corners.map((): Partial<PieceEdge> => ({ kind: 'free' }));
      return settlePiece(at, { ...at.piece, edges: replaced(list, index, edge) }, 'Change edge');
    }),
};

function atCorner(
  job: Parameters<typeof atPiece>[0],
  pieceId: string,
  index: number,
  change: (at: PieceAt, corner: Piece['corners'][number]) => Edited,
): Edited {
  return atPiece(job, pieceId, (at) => {
    const corner = at.piece.corners[index];
    if (corner !== undefined) return change(at, corner);
    const sentence = `"${at.piece.name}" has no corner ${index + 1}; it has ${at.piece.corners.length}.`;
    return refuseAt(at, 'reference-unknown', 'corners', sentence);
  });
}

/** A move past the other side would turn the outline inside out, and its edges with it. */
function settleCorners(
  at: PieceAt,
  corners: readonly Piece['corners'][number][],
  title: string,
  mergeKey: string | null,
): Edited {
  if (isInsideOut(at.piece.corners, corners)) {
    const sentence = `An edge of "${at.piece.name}" cannot be moved past the other side of the piece.`;
    return refuseAt(at, 'outline-degenerate', 'corners', sentence);
  }
  return settlePiece(at, { ...at.piece, corners }, title, mergeKey);
}
