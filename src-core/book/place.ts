/** Where things of a piece lie, as the tables tell it: from the left and from the front. */
import { printersOf, printPlace } from '../analysis';
import type { Job, Piece } from '../job';
import { pieceRegion } from '../job';
import type { Point } from '../outline';
import { pieceDirection } from '../outline';

/** The two measures of a place. */
export interface PrintedPlace {
  readonly fromLeft: string;
  readonly fromFront: string;
}

/** Measures places of a piece as its checks word them. Places of a piece that cannot be drawn are measured in the drawing. */
export function placesOf(job: Job, piece: Piece): (at: Point) => PrintedPlace {
  const drawn = pieceRegion(piece);
  const region = drawn.ok ? drawn : { outer: piece.corners, holes: [] };
  const along = pieceDirection(region.outer);
  const axisRad = Math.atan2(along.y, along.x);
  const print = printersOf(job);
  return (at) => {
    const [fromLeft, rest] = printPlace(at, region, axisRad, print).split(' from the left, ') as [
      string,
      string,
    ];
    return { fromLeft, fromFront: rest.replace(' from the front', '') };
  };
}

/** "3 in to 93 in"; one measure where both are alike. */
export function fromTo(one: string, other: string): string {
  return one === other ? one : `${one} to ${other}`;
}
