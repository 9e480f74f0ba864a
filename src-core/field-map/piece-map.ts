/** What the views paint on a slab: bending demand at every node of the mesh that the checks used. */
import type { PieceAnalysis } from '../analysis';

export interface PieceMap {
  readonly pieceId: string;
  readonly xIn: Float32Array;
  readonly yIn: Float32Array;
  /** Counter-clockwise node triples. */
  readonly triangles: Uint32Array;
  /**
   * Worst principal moment over every load and both stiffness bounds, as a share of (2/3)Mcr, top or soffit in tension whichever
   * is more. At the nodes, before the checks average it, so a peak may pass 1 where the check holds.
   */
  readonly bendingShare: Float32Array;
  /** The same of the top and of the soffit in tension alone. */
  readonly topShare: Float32Array;
  readonly soffitShare: Float32Array;
  /** (2/3)Mcr, lbf-in/in: a share of 1. */
  readonly limitLbfInPerIn: number;
}

/** The map of an analysed piece, uncracked: where demand passes 1 the slab cracks. */
export function pieceMap({ piece, mesh, elastic, concrete }: PieceAnalysis): PieceMap {
  const limit = concrete.crackingLimitLbfInPerIn;
  const soffitShare = shareOf(elastic.low.saggingEnvelope, elastic.high.saggingEnvelope, limit);
  const topShare = shareOf(elastic.low.hoggingEnvelope, elastic.high.hoggingEnvelope, limit);
  return {
    pieceId: piece.id,
    xIn: Float32Array.from(mesh.xIn),
    yIn: Float32Array.from(mesh.yIn),
    triangles: mesh.triangles.slice(),
    bendingShare: soffitShare.map((share, node) => Math.max(share, topShare[node]!)),
    topShare,
    soffitShare,
    limitLbfInPerIn: limit,
  };
}

function shareOf(low: Float64Array, high: Float64Array, limit: number): Float32Array {
  return Float32Array.from(low, (value, node) => Math.max(value, high[node]!) / limit);
}
