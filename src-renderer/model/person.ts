/** A standing person as a flat outline, to read sizes by. */
import type { Point } from '../../src-core/outline';
import type { Bounds } from './scene-bounds';

export const PERSON_HEIGHT_IN = 68;

/** Right half from the feet up: from the middle, and above the floor. */
const RIGHT_HALF: readonly (readonly [number, number])[] = [
  [0.6, 0],
  [5.2, 0],
  [5.4, 2.2],
  [4.6, 4],
  [5.6, 18],
  [6.4, 33],
  [7, 36],
  [7.4, 28],
  [9, 28],
  [9.2, 36],
  [8.8, 44],
  [8.9, 52],
  [7.6, 55.4],
  [2.6, 57.4],
  [2.2, 59],
  [3.5, 61],
  [3.7, 64.2],
  [2.8, 66.9],
  [1.1, 67.9],
];

const HALF_WIDTH_IN = Math.max(...RIGHT_HALF.map(([across]) => across));
/** Clearance of the person from any piece, in. */
const CLEAR_IN = 16;

/** The outline, counter-clockwise: across from the middle, and up, in. */
export function personOutline(): (readonly [number, number])[] {
  const left = RIGHT_HALF.map(([across, up]) => [-across, up] as const).reverse();
  return [...RIGHT_HALF, [0, PERSON_HEIGHT_IN], ...left, [0, 31]];
}

/** Room that the person takes at a place. */
export function personBounds({ xIn, yIn }: Point): Bounds {
  return {
    least: [xIn - HALF_WIDTH_IN, yIn, 0],
    most: [xIn + HALF_WIDTH_IN, yIn, PERSON_HEIGHT_IN],
  };
}

/** Where the person stands: beside a piece, at the first of its sides that no other piece takes. */
export function placeForPerson(piece: Bounds, others: readonly Bounds[]): Point {
  const { least, most } = piece;
  const front = least[1] + 4;
  const places: readonly Point[] = [
    { xIn: least[0] - CLEAR_IN, yIn: front },
    { xIn: most[0] + CLEAR_IN, yIn: front },
    { xIn: least[0] - CLEAR_IN, yIn: most[1] },
    { xIn: most[0] + CLEAR_IN, yIn: most[1] },
    { xIn: least[0] + CLEAR_IN, yIn: least[1] - CLEAR_IN },
  ];
  const isFree = ({ xIn, yIn }: Point) =>
    others.every(
      (other) =>
        xIn < other.least[0] - CLEAR_IN / 2 ||
        xIn > other.most[0] + CLEAR_IN / 2 ||
        yIn < other.least[1] - CLEAR_IN / 2 ||
        yIn > other.most[1] + CLEAR_IN / 2,
    );
  return places.find(isFree) ?? places[0]!;
}
