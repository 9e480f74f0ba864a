/** Where a layer of steel may lie: the slab less its edge cover, clear of openings and of joints that part the slab. */
import type { Piece } from '../job';
import type { Point, Region } from '../outline';
import {
  boundingBox,
  directionBetween,
  distanceIn,
  intersectRegions,
  leftOf,
  moved,
  offsetPolygon,
  regionsOf,
  TOUCH_IN,
} from '../outline';

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
    regionsOf(intersectRegions({ outer: part, holes: openings }, { outer: boxAround(part), holes: [] })),
  );
}

/** The part of a slab within a field; the whole where there is none. */
export function withinField(region: Region, field: readonly Point[] | null): Region[] {
  if (field === null) return [region];
  return regionsOf(intersectRegions(region, { outer: field, holes: [] }));
}

function boxAround(points: readonly Point[]): Point[] {
  const { minXIn, minYIn, maxXIn, maxYIn } = boundingBox(points);
  return [
    { xIn: minXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: maxYIn },
    { xIn: minXIn, yIn: maxYIn },
  ];
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
