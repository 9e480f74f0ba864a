/** What comes next in a list of places. */
import type { Point } from '../../../src-core/outline';
import { between, signedDistanceIn } from '../../../src-core/outline';
import type { Surroundings } from './field';

/** Studs, and so the arms on them. */
const STUD_SPACING_IN = 16;
/** A wall face may stand this far from the slab. */
const ROOT_SLACK_IN = 1;

/** The next corner of an area: halfway back to the first, so that the area stays as it is until it is moved. */
export function nextCorner(corners: readonly unknown[]): unknown {
  const last = corners.at(-1) as Point;
  return { ...last, ...between(last, corners[0] as Point, 0.5) };
}

/** The next arm of a row: as far on as the last is from the one before, else before the first, else between two. */
export function nextRoot(roots: readonly unknown[], { piece }: Surroundings): Point {
  const row = roots as readonly Point[];
  const last = row.at(-1)!;
  const before = row.at(-2) ?? { xIn: last.xIn - STUD_SPACING_IN, yIn: last.yIn };
  const places = [
    between(before, last, 2),
    between(last, row[0]!, spacings(row)),
    between(before, last, 0.5),
  ];
  const isAtSlab = (place: Point) =>
    piece !== null && signedDistanceIn(place, piece.corners) > -ROOT_SLACK_IN;
  return places.find(isAtSlab) ?? places[0]!;
}

/** Share of the row from its last arm to one spacing before its first. */
function spacings(row: readonly Point[]): number {
  return row.length < 2 ? 1 : row.length / (row.length - 1);
}
