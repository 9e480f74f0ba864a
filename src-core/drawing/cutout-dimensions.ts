/** Where a cutout lies and how large it is. */
import { cutoutCentre } from '../edit';
import type { Cutout, Piece } from '../job';
import type { Direction, OutlineEdge, Point } from '../outline';
import { directionAt, distanceIn, leftOf, moved, nearestOnSegment, outlineEdges, TOUCH_IN } from '../outline';
import type { Dimension } from './dimension';

/** Two edges whose directions differ by less than this (sine) measure the same way. */
const SAME_WAY = 0.2;

/** From the two nearest edges that run different ways, square to each, to the centre of every cutout. */
export function cutoutDimensions(piece: Piece): Dimension[] {
  const edges = outlineEdges(piece.corners);
  return piece.cutouts.flatMap((cutout) => {
    const centre = cutoutCentre(cutout.shape);
    const near = edges
      .flatMap((edge) => facing(edge, centre))
      .sort((one, other) => one.awayIn - other.awayIn);
    const first = near[0];
    const second = near.find(({ edge }) => first !== undefined && !isSameWay(edge, first.edge));
    return [first, second].flatMap((side): Dimension[] =>
      side === undefined ? [] : [placeDimension(cutout, centre, side)],
    );
  });
}

/** Width and depth, or diameter, of one cutout; a free shape has none. */
export function cutoutSizeDimensions(cutout: Cutout): Dimension[] {
  const { shape } = cutout;
  const name = cutout.name ?? cutout.purpose;
  if (shape.kind === 'polygon') return [];
  if (shape.kind === 'circle') {
    const { diameterIn } = shape;
    const size = { widthIn: diameterIn, depthIn: diameterIn };
    return [sizeDimension(cutout.id, `Diameter of ${name}`, shape.centre, directionAt(0), 'diameter', size)];
  }
  const along = directionAt((shape.angleDeg * Math.PI) / 180);
  return [
    sizeDimension(cutout.id, `Width of ${name}`, shape.centre, along, 'width', shape),
    sizeDimension(cutout.id, `Depth of ${name}`, shape.centre, leftOf(along), 'depth', shape),
  ];
}

interface Side {
  readonly edge: OutlineEdge;
  readonly foot: Point;
  readonly awayIn: number;
}

/** The foot of the centre on an edge that it lies square to, on the inside. */
function facing(edge: OutlineEdge, centre: Point): Side[] {
  const foot = nearestOnSegment(centre, edge);
  const dx = centre.xIn - foot.xIn;
  const dy = centre.yIn - foot.yIn;
  const offSquareIn = Math.abs(dx * edge.direction.x + dy * edge.direction.y);
  const awayIn = dx * edge.inward.x + dy * edge.inward.y;
  return offSquareIn > TOUCH_IN || awayIn <= TOUCH_IN ? [] : [{ edge, foot, awayIn }];
}

function isSameWay(one: OutlineEdge, other: OutlineEdge): boolean {
  const turn = one.direction.x * other.direction.y - one.direction.y * other.direction.x;
  return Math.abs(turn) < SAME_WAY;
}

function placeDimension(cutout: Cutout, centre: Point, { edge, foot, awayIn }: Side): Dimension {
  return {
    key: `cutout-${cutout.id}-from-${edge.edge}`,
    of: 'cutout',
    words: `${cutout.name ?? cutout.purpose} from edge ${edge.edge + 1} to its centre`,
    from: foot,
    to: centre,
    lengthIn: awayIn,
    place: { kind: 'on' },
    sets: { kind: 'cutout-place', id: cutout.id, along: edge.inward, centre },
  };
}

function sizeDimension(
  id: string,
  words: string,
  centre: Point,
  along: Direction,
  side: 'width' | 'depth' | 'diameter',
  size: { readonly widthIn: number; readonly depthIn: number },
): Dimension {
  const { widthIn, depthIn } = size;
  const lengthIn = side === 'depth' ? depthIn : widthIn;
  const half = (side === 'depth' ? widthIn : depthIn) / 2;
  // to the right of the way it is measured: the width along the front of the opening, the depth along its right side
  const out = { x: along.y, y: -along.x };
  const middle = moved(centre, out, half);
  const from = moved(middle, along, -lengthIn / 2);
  const to = moved(middle, along, lengthIn / 2);
  return {
    key: `cutout-${id}-${side}`,
    of: 'cutout',
    words,
    from,
    to,
    lengthIn: distanceIn(from, to),
    place: { kind: 'beside', outward: out, row: 0 },
    sets: { kind: 'cutout-size', id, side, widthIn, depthIn },
  };
}
