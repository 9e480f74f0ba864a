/** The overhang that asks for a remedy: its edge, the way inward, and the support that it reaches out from. */
import type { PieceAnalysis } from '../analysis';
import { stands } from '../analysis';
import type { Piece, Support } from '../job';
import type { Direction, Point } from '../outline';
import { directionBetween, distanceIn, leftOf, nearestOnSegment, signedAreaIn2 } from '../outline';

export interface Reach {
  readonly edge: number;
  readonly overhangIn: number;
  /** Point of the edge where it is longest. */
  readonly at: Point;
  readonly from: Point;
  readonly to: Point;
  readonly inward: Direction;
}

/** A straight bearing under an overhang, seen from it. */
export interface Root {
  readonly support: Extract<Support, { kind: 'wall' | 'ledger' }>;
  readonly along: Direction;
  /** From the centre line towards the free edge. */
  readonly outward: Direction;
  readonly lengthIn: number;
  /** From the face of the bearing to the free edge. */
  readonly overhangIn: number;
}

/** Every measured overhang, longest first. */
export function reachesOf(piece: Piece, analysis: PieceAnalysis): Reach[] {
  return analysis.shape.overhangs
    .filter(({ overhangIn }) => overhangIn > 0)
    .map(({ edge, overhangIn, at }): Reach => {
      const { from, to, inward } = edgeLine(piece, edge);
      return { edge, overhangIn, at, from, to, inward };
    })
    .sort((a, b) => b.overhangIn - a.overhangIn || a.edge - b.edge);
}

/** Edge of the drawn outline from corner `edge` to the next, and the way into the slab. */
export function edgeLine(piece: Piece, edge: number): { from: Point; to: Point; inward: Direction } {
  const { corners } = piece;
  const from = corners[edge]!;
  const to = corners[(edge + 1) % corners.length]!;
  const left = leftOf(directionBetween(from, to));
  const inward = signedAreaIn2(corners) > 0 ? left : { x: -left.x, y: -left.y };
  return { from, to, inward };
}

/** The wall or ledger whose long face an overhang leaves; null where it leaves something else, or a wall's end. */
export function rootOf(piece: Piece, reach: Reach): Root | null {
  const roots = piece.supports.flatMap((support) => {
    if ((support.kind !== 'wall' && support.kind !== 'ledger') || !stands(support, null)) return [];
    return rootAt(support, reach) ?? [];
  });
  return roots.reduce<Root | null>(
    (nearest, root) => (nearest === null || root.overhangIn < nearest.overhangIn ? root : nearest),
    null,
  );
}

function rootAt(support: Root['support'], reach: Reach): Root | null {
  const lengthIn = distanceIn(support.from, support.to);
  if (lengthIn < 1) return null;
  const along = directionBetween(support.from, support.to);
  const left = leftOf(along);
  const offset = dot(left, support.from, reach.at);
  const outward = offset >= 0 ? left : { x: -left.x, y: -left.y };
  const overhangIn = Math.abs(offset) - support.widthIn / 2;
  const nearest = nearestOnSegment(reach.at, { a: support.from, b: support.to });
  const isBeside = distanceIn(nearest, reach.at) <= Math.abs(offset) + 1;
  const facesOut = outward.x * reach.inward.x + outward.y * reach.inward.y < -0.7;
  return isBeside && facesOut && overhangIn > 0 ? { support, along, outward, lengthIn, overhangIn } : null;
}

function dot(direction: Direction, from: Point, to: Point): number {
  return direction.x * (to.xIn - from.xIn) + direction.y * (to.yIn - from.yIn);
}
