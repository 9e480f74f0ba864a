/** A spread load that lies only past the support: the worst that a crowd along the edge can do to a loose slab. */
import type { PieceAnalysis } from '../analysis';
import type { Point } from '../outline';
import {
  areaMoments,
  clipPatchToRegion,
  convexHull,
  directionBetween,
  distanceIn,
  leftOf,
  moved,
  signedAreaIn2,
} from '../outline';

export interface TipSide {
  readonly from: Point;
  readonly to: Point;
  readonly weightArmIn: number;
  /** Plan area past the pivot, and how far out its middle lies. */
  readonly areaIn2: number;
  readonly areaArmIn: number;
}

/** Half of a plane, drawn this large: beyond any job. */
const FAR_IN = 10_000;

/** Every side of the hull of the bearings with the part of the slab that lies past it. Plane geometry. */
export function tipSides({ bearings, shape, weight }: PieceAnalysis): TipSide[] {
  const base = convexHull(bearings.flatMap(({ corners }) => corners));
  const region = { outer: shape.outer, holes: shape.holes };
  return base.flatMap((from, i) => {
    const to = base[(i + 1) % base.length]!;
    if (distanceIn(from, to) < 1e-6) return [];
    const along = directionBetween(from, to);
    const inward = leftOf(along);
    const inwardIn = (p: Point) => (p.xIn - from.xIn) * inward.x + (p.yIn - from.yIn) * inward.y;
    const right = moved(to, along, FAR_IN);
    const left = moved(from, along, -FAR_IN);
    const past = clipPatchToRegion(
      [left, moved(left, inward, -FAR_IN), moved(right, inward, -FAR_IN), right],
      region,
    );
    let areaIn2 = 0;
    let momentIn3 = 0;
    for (const loop of past) {
      const moments = areaMoments(loop);
      if (moments === null) continue;
      const own = signedAreaIn2(loop);
      areaIn2 += own;
      momentIn3 -= own * inwardIn(moments.centroid);
    }
    return [
      {
        from,
        to,
        weightArmIn: inwardIn(weight.centre),
        areaIn2,
        areaArmIn: areaIn2 > 1e-6 ? momentIn3 / areaIn2 : 0,
      },
    ];
  });
}
