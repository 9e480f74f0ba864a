/** Edges and corners of an outline: lengths, inward normals, inside corners, and the piece's own direction. */
import { edgeOf } from './containment';
import type { Direction, Point } from './point';
import { directionBetween, distanceIn, leftOf, TOUCH_IN } from './point';
import { signedAreaIn2 } from './polygon-measure';

export interface OutlineEdge {
  /** Edge i runs from corner i to corner i + 1, in the order given. */
  readonly edge: number;
  readonly a: Point;
  readonly b: Point;
  readonly lengthIn: number;
  readonly direction: Direction;
  /** Toward the inside of the outline, whichever way round it is given. */
  readonly inward: Direction;
}

export interface InsideCorner {
  readonly corner: number;
  readonly at: Point;
  /** Angle on the concrete's side, more than half a turn. */
  readonly angleRad: number;
}

/** The edges of an outline given either way round; edges without length are left out. */
export function outlineEdges(points: readonly Point[]): OutlineEdge[] {
  const sign = signedAreaIn2(points) >= 0 ? 1 : -1;
  const edges: OutlineEdge[] = [];
  for (let edge = 0; edge < points.length; edge++) {
    const { a, b } = edgeOf(points, edge);
    const lengthIn = distanceIn(a, b);
    if (lengthIn <= TOUCH_IN) continue;
    const direction = directionBetween(a, b);
    const left = leftOf(direction);
    edges.push({ edge, a, b, lengthIn, direction, inward: { x: sign * left.x, y: sign * left.y } });
  }
  return edges;
}

/** Angle on the inside at each corner, rad, of an outline given either way round. Neighbouring corners must differ. */
export function cornerAnglesRad(points: readonly Point[]): number[] {
  const n = points.length;
  const sign = signedAreaIn2(points) >= 0 ? 1 : -1;
  return points.map((corner, i) => {
    const incoming = directionBetween(points[(i + n - 1) % n]!, corner);
    const outgoing = directionBetween(corner, points[(i + 1) % n]!);
    const turnRad = Math.atan2(
      incoming.x * outgoing.y - incoming.y * outgoing.x,
      incoming.x * outgoing.x + incoming.y * outgoing.y,
    );
    return Math.PI - sign * turnRad;
  });
}

/**
 * Inside (re-entrant) corners: those whose angle on the concrete's side passes half a turn by more than
 * `beyondStraightRad`, so that the flat corners between the chords of an arc can be passed over.
 */
export function insideCorners(points: readonly Point[], beyondStraightRad: number): InsideCorner[] {
  return cornerAnglesRad(points).flatMap((angleRad, corner) =>
    angleRad > Math.PI + beyondStraightRad ? [{ corner, at: points[corner]!, angleRad }] : [],
  );
}

/** Direction of the longest edge: the piece's own direction. Of edges equally long the first given counts. */
export function pieceDirection(points: readonly Point[]): Direction {
  let longest: OutlineEdge | null = null;
  for (const edge of outlineEdges(points)) {
    if (longest === null || edge.lengthIn > longest.lengthIn + TOUCH_IN) longest = edge;
  }
  if (longest === null) throw new Error('No direction of an outline without edges');
  return longest.direction;
}
