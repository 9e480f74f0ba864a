/** What a piece weighs and where its weight lies. */
import type { Cutout, Mix, Piece } from '../job';
import type { Point, Region } from '../outline';
import { areaMoments } from '../outline';
import type { PieceWeight } from './types';

const IN3_PER_FT3 = 1728;
/** Water, lb per in3: 62.4 pcf. Common practice. */
const WATER_LB_PER_IN3 = 62.4 / IN3_PER_FT3;

/** A weight that the slab carries always, at a point or spread on a patch or round an opening. */
export interface CarriedWeight {
  readonly words: string;
  readonly lb: number;
  readonly centre: Point;
  /** Patch size, or null for a weight that hangs on the rim of an opening. */
  readonly patch: { readonly widthIn: number; readonly depthIn: number; readonly angleRad: number } | null;
  /** Index of the opening whose rim carries it. */
  readonly opening: number | null;
}

/** Weight of a sink full to its brim with its bowl, or as stated, lb. */
export function sinkWeightLb(cutout: Cutout, openingAreaIn2: number): number {
  if (cutout.sink === null || !cutout.sink.carriedBySlab) return 0;
  const { emptyWeightLb, contentsLb, bowlDepthIn } = cutout.sink;
  return emptyWeightLb + (contentsLb ?? openingAreaIn2 * bowlDepthIn * WATER_LB_PER_IN3);
}

/** Everything that the slab carries always, besides itself. */
export function carriedWeights(piece: Piece, holes: readonly (readonly Point[])[]): CarriedWeight[] {
  const carried: CarriedWeight[] = [];
  piece.cutouts.forEach((cutout, opening) => {
    const moments = areaMoments(holes[opening] ?? []);
    if (moments === null) return;
    const lb = sinkWeightLb(cutout, Math.abs(moments.areaIn2)) + cutout.applianceLb;
    if (lb > 0) {
      carried.push({ words: cutout.name ?? cutout.id, lb, centre: moments.centroid, patch: null, opening });
    }
  });
  for (const load of piece.loads.fixed) {
    carried.push({
      words: load.name,
      lb: load.weightLb,
      centre: load.centre,
      patch: { widthIn: load.widthIn, depthIn: load.depthIn, angleRad: (load.angleDeg * Math.PI) / 180 },
      opening: null,
    });
  }
  return carried;
}

/** Area, volume, weight and centre of gravity of a piece with what it carries. Edge profiles are not taken off. */
export function weigh(
  piece: Piece,
  mix: Mix,
  region: Region,
  carried: readonly CarriedWeight[],
): PieceWeight {
  let areaIn2 = 0;
  let sx = 0;
  let sy = 0;
  const add = (loop: readonly Point[], sign: 1 | -1) => {
    const moments = areaMoments(loop);
    if (moments === null) return;
    const a = sign * Math.abs(moments.areaIn2);
    areaIn2 += a;
    sx += a * moments.centroid.xIn;
    sy += a * moments.centroid.yIn;
  };
  add(region.outer, 1);
  for (const hole of region.holes) add(hole, -1);
  const volumeIn3 = areaIn2 * piece.thicknessIn;
  const slabLb = (volumeIn3 * mix.densityPcf) / IN3_PER_FT3;
  const carriedLb = carried.reduce((sum, { lb }) => sum + lb, 0);
  const totalLb = slabLb + carriedLb;
  const centreOf = (slabMoment: number, coordinate: (p: Point) => number) =>
    ((slabMoment / areaIn2) * slabLb + carried.reduce((sum, c) => sum + c.lb * coordinate(c.centre), 0)) /
    totalLb;
  return {
    areaIn2,
    volumeIn3,
    slabLb,
    carriedLb,
    totalLb,
    centre: { xIn: centreOf(sx, (p) => p.xIn), yIn: centreOf(sy, (p) => p.yIn) },
  };
}
