/** Where a layer may lie: the slab less its edge cover, clear of openings and of joints that part the slab. */
import type { Piece } from '../job';
import { pieceOutline } from '../job';
import type { Point, Region } from '../outline';
import {
  directionBetween,
  distanceIn,
  insideCorners,
  intersectRegions,
  leftOf,
  moved,
  offsetPolygon,
  TOUCH_IN,
} from '../outline';
import { boxOf, regionsOf, withinBox } from './frame';
import { INSIDE_TURN_RAD, SHARP_RADIUS_IN } from './practice';

/**
 * The slab less the cover along its edges, round its openings and beside its isolation joints, which part it for its
 * whole thickness. Several parts where a neck is too narrow or a joint cuts it; none where the cover takes it all.
 */
export function coveredRegions(piece: Piece, { outer, holes }: Region, coverIn: number): Region[] {
  const openings = [
    ...holes.flatMap((hole) => offsetPolygon(hole, coverIn, 'round')),
    ...piece.joints.flatMap((joint) => {
      if (joint.kind !== 'isolation' || distanceIn(joint.from, joint.to) <= TOUCH_IN) return [];
      return [band(joint.from, joint.to, joint.widthIn / 2 + coverIn)];
    }),
  ];
  return offsetPolygon(outer, -coverIn, 'mitre').flatMap((part) =>
    withinBox({ outer: part, holes: openings }, boxOf(part)),
  );
}

/**
 * The slab with its inside corners square where they are but little rounded: no mesh is cut to a fillet of some square
 * inches. The rounding adds concrete there, so what is left is all slab. As it is where squaring it cannot be built.
 */
export function withSquareCorners(piece: Piece, region: Region): Region {
  const inside = new Set(insideCorners(piece.corners, INSIDE_TURN_RAD).map(({ corner }) => corner));
  const corners = piece.corners.map((corner, k) =>
    inside.has(k) && corner.radiusIn <= SHARP_RADIUS_IN ? { ...corner, radiusIn: 0 } : corner,
  );
  const squared = pieceOutline({ ...piece, corners });
  return squared.ok ? { outer: squared.outer, holes: region.holes } : region;
}

/** The part of a slab within a field; the whole where there is none. */
export function withinField(region: Region, field: readonly Point[] | null): Region[] {
  if (field === null) return [region];
  return regionsOf(intersectRegions(region, { outer: field, holes: [] }));
}

function band(from: Point, to: Point, halfIn: number): Point[] {
  const across = leftOf(directionBetween(from, to));
  return [
    moved(from, across, -halfIn),
    moved(to, across, -halfIn),
    moved(to, across, halfIn),
    moved(from, across, halfIn),
  ];
}
