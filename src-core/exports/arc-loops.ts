/** Closed outlines with true arcs, as drawing programs keep them. */
import type { Cutout, Piece } from '../job';
import { pieceOutline } from '../job';
import type { Direction, Point } from '../outline';
import { directionBetween, distanceIn, moved, patchOutline, signedAreaIn2, TOUCH_IN } from '../outline';

/**
 * A corner of an outline and the way to the next: straight where the bulge is 0, else an arc whose bulge is the tangent of a
 * quarter of its sweep, positive to the left. Source: DXF Reference, LWPOLYLINE, group code 42.
 */
export interface ArcVertex extends Point {
  readonly bulge: number;
}

type Corner = Point & { readonly radiusIn: number };

/** Below this turn (rad) a corner is straight, and a radius has nothing to round. */
const STRAIGHT_RAD = 1e-9;

/** The outline of a piece, counter-clockwise with true arcs; as its bare corners where it cannot be built. */
export function pieceLoop(piece: Piece): readonly ArcVertex[] {
  return pieceOutline(piece).ok ? roundedLoop(piece.corners) : straightLoop(piece.corners);
}

/** The outline of an opening that is no circle, counter-clockwise with true arcs. Its radii must fit. */
export function openingLoop(shape: Exclude<Cutout['shape'], { kind: 'circle' }>): readonly ArcVertex[] {
  if (shape.kind === 'polygon') return roundedLoop(shape.corners);
  const corners = patchOutline(shape.centre, shape.widthIn, shape.depthIn, (shape.angleDeg * Math.PI) / 180);
  return roundedLoop(corners.map((corner) => ({ ...corner, radiusIn: shape.radiusIn })));
}

/** A closed outline without arcs. */
export function straightLoop(corners: readonly Point[]): readonly ArcVertex[] {
  return corners.map(({ xIn, yIn }) => ({ xIn, yIn, bulge: 0 }));
}

function roundedLoop(given: readonly Corner[]): ArcVertex[] {
  const corners = signedAreaIn2(given) < 0 ? [...given].reverse() : given;
  const n = corners.length;
  const arcs = corners.map((corner, i) =>
    arcAt(
      corner,
      directionBetween(corners[(i + n - 1) % n]!, corner),
      directionBetween(corner, corners[(i + 1) % n]!),
    ),
  );
  // Where two arcs meet without a straight between them, the end of one is the start of the other.
  return arcs.flatMap((arc, i) => {
    const next = arcs[(i + 1) % n]![0]!;
    return arc.length > 1 && distanceIn(arc[1]!, next) <= TOUCH_IN ? [arc[0]!] : arc;
  });
}

/** Start and end of the arc at a corner, or the corner alone where nothing is rounded. Plane geometry. */
function arcAt(corner: Corner, incoming: Direction, outgoing: Direction): ArcVertex[] {
  const turnRad = Math.atan2(
    incoming.x * outgoing.y - incoming.y * outgoing.x,
    incoming.x * outgoing.x + incoming.y * outgoing.y,
  );
  if (corner.radiusIn <= 0 || Math.abs(turnRad) <= STRAIGHT_RAD) {
    return [{ xIn: corner.xIn, yIn: corner.yIn, bulge: 0 }];
  }
  const tangentIn = corner.radiusIn * Math.tan(Math.abs(turnRad) / 2);
  return [
    { ...moved(corner, incoming, -tangentIn), bulge: Math.tan(turnRad / 4) },
    { ...moved(corner, outgoing, tangentIn), bulge: 0 },
  ];
}
