/** Where on a piece there is room for something new. */
import type { Piece } from '../../../src-core/job';
import { pieceOutline, pieceRegion } from '../../../src-core/job';
import type { Direction, Point, Region } from '../../../src-core/outline';
import {
  boundingBox,
  directionBetween,
  distanceIn,
  leftOf,
  moved,
  signedDistanceIn,
  slabDistanceIn,
} from '../../../src-core/outline';

/** Places tried each way over the piece's bounding box. */
const TRIES = 24;
/** Places whose room differs by less than this are equally good. */
const SAME_ROOM_IN = 0.5;

/** The slab in plan; without openings where one of them cannot be drawn, and the bare corners where the outline cannot. */
export function slabOf(piece: Piece): Region {
  const region = pieceRegion(piece);
  if (region.ok) return { outer: region.outer, holes: region.holes };
  const outline = pieceOutline(piece);
  return { outer: outline.ok ? outline.outer : piece.corners, holes: [] };
}

export interface Room {
  readonly at: Point;
  /** Free all round, in; below zero where the slab has no concrete to spare. */
  readonly clearIn: number;
}

/** The place farthest from all edges, openings and `others`, on a grid over the slab; of equals the one nearest its middle. */
export function roomiest(slab: Region, others: readonly Point[] = []): Room {
  const box = boundingBox(slab.outer);
  const middle = { xIn: (box.minXIn + box.maxXIn) / 2, yIn: (box.minYIn + box.maxYIn) / 2 };
  let best: Room | null = null;
  for (let i = 1; i < TRIES; i++) {
    for (let j = 1; j < TRIES; j++) {
      const at = {
        xIn: quarters(box.minXIn + ((box.maxXIn - box.minXIn) * i) / TRIES),
        yIn: quarters(box.minYIn + ((box.maxYIn - box.minYIn) * j) / TRIES),
      };
      const clearIn = Math.min(slabDistanceIn(at, slab), ...others.map((other) => distanceIn(at, other)));
      const gainIn = best === null ? Number.POSITIVE_INFINITY : clearIn - best.clearIn;
      const isNearer = best !== null && distanceIn(at, middle) < distanceIn(best.at, middle);
      if (gainIn > SAME_ROOM_IN || (Math.abs(gainIn) <= SAME_ROOM_IN && isNearer)) best = { at, clearIn };
    }
  }
  return best!;
}

/** To the quarter inch, so that what is added has figures to be read from a tape. */
function quarters(valueIn: number): number {
  return Math.round(valueIn * 4) / 4;
}

export interface Side {
  readonly a: Point;
  readonly b: Point;
  readonly lengthIn: number;
  readonly along: Direction;
  /** Square to the side, into the slab. */
  readonly inward: Direction;
}

/** The side that a wall or ledger would carry: the longest against a wall, else the longest along the back. */
export function backSide(piece: Piece): Side {
  const sides = piece.corners.map((_, index) => sideOf(piece, index));
  const longest = (some: readonly Side[]) => some.reduce((a, b) => (b.lengthIn > a.lengthIn ? b : a));
  const atWall = sides.filter((_, index) => piece.edges?.[index]?.kind === 'wall');
  if (atWall.length > 0) return longest(atWall);
  const alongBack = sides.filter(({ inward }) => inward.y < -Math.SQRT1_2);
  return longest(alongBack.length > 0 ? alongBack : sides);
}

/** Edge `index` of a piece with the direction into the slab. */
function sideOf(piece: Piece, index: number): Side {
  const a = piece.corners[index]!;
  const b = piece.corners[(index + 1) % piece.corners.length]!;
  const along = directionBetween(a, b);
  const left = leftOf(along);
  const lengthIn = distanceIn(a, b);
  const beside = moved(moved(a, along, lengthIn / 2), left, Math.min(lengthIn / 8, 0.25));
  const isLeftInside = signedDistanceIn(beside, piece.corners) > 0;
  return { a, b, lengthIn, along, inward: isLeftInside ? left : { x: -left.x, y: -left.y } };
}
