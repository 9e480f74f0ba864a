import type { Piece } from '../job';
import { outlineEdges } from '../outline';
import type { Dimension } from './dimension';

/**
 * The length of every edge, outside it, corner to corner as drawn before any rounding. `rowOfEdge` names edges whose
 * nearest rows are taken; the nearest row where left out.
 */
export function edgeDimensions(
  piece: Piece,
  rowOfEdge: ReadonlyMap<number, number> = new Map(),
): Dimension[] {
  return outlineEdges(piece.corners).map(({ edge, a, b, lengthIn, inward }) => ({
    key: `edge-${edge}`,
    of: 'edge',
    words: `Edge ${edge + 1}`,
    from: a,
    to: b,
    lengthIn,
    place: { kind: 'beside', outward: { x: -inward.x, y: -inward.y }, row: rowOfEdge.get(edge) ?? 0 },
    sets: { kind: 'edge-length', index: edge },
  }));
}
