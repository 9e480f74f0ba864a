import type { Piece } from '../job';
import { cutoutDimensions } from './cutout-dimensions';
import type { Dimension } from './dimension';
import { edgeDimensions } from './edge-dimensions';
import { overhangDimensions } from './overhang-dimensions';
import { supportChainsByEdge } from './support-chain';

/** All dimensions of a piece, what matters most first; an edge with a chain stands in the row beyond it. */
export function pieceDimensions(piece: Piece): Dimension[] {
  const chains = supportChainsByEdge(piece);
  const rowOfEdge = new Map([...chains.keys()].map((edge) => [edge, 1]));
  return [
    ...edgeDimensions(piece, rowOfEdge),
    ...overhangDimensions(piece),
    ...cutoutDimensions(piece),
    ...[...chains.values()].flat(),
  ];
}
