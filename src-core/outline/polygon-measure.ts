/** Area, centroid, second moments and bounds of a closed polygon, by the shoelace sums of plane geometry. */
import type { Point, Region } from './point';
import { distanceIn } from './point';

export interface BoundingBox {
  readonly minXIn: number;
  readonly minYIn: number;
  readonly maxXIn: number;
  readonly maxYIn: number;
}

export interface AreaMoments {
  readonly areaIn2: number;
  readonly centroid: Point;
  /** Second moments about axes through the centroid: `ixxIn4` is the integral of y^2, `iyyIn4` of x^2. */
  readonly ixxIn4: number;
  readonly iyyIn4: number;
  readonly ixyIn4: number;
}

/** Signed area, in2: positive where the corners run counter-clockwise. Plane geometry (shoelace). */
export function signedAreaIn2(points: readonly Point[]): number {
  const origin = points[0];
  if (origin === undefined) return 0;
  let twiceIn2 = 0;
  for (let i = 0; i < points.length; i++) {
    const p = points[i]!;
    const q = points[(i + 1) % points.length]!;
    twiceIn2 += (p.xIn - origin.xIn) * (q.yIn - origin.yIn) - (q.xIn - origin.xIn) * (p.yIn - origin.yIn);
  }
  return twiceIn2 / 2;
}

/** Area, in2, whichever way round the corners run. Plane geometry (shoelace). */
export function polygonAreaIn2(points: readonly Point[]): number {
  return Math.abs(signedAreaIn2(points));
}

/** Area of a slab less its openings, in2. The openings must lie inside and apart. */
export function regionAreaIn2(region: Region): number {
  return region.holes.reduce((areaIn2, hole) => areaIn2 - polygonAreaIn2(hole), polygonAreaIn2(region.outer));
}

/** Length of the closed boundary, in. */
export function polygonPerimeterIn(points: readonly Point[]): number {
  return points.reduce((sumIn, p, i) => sumIn + distanceIn(p, points[(i + 1) % points.length]!), 0);
}

/** The same corners counter-clockwise. The first corner stays first, so corner i becomes corner n - i where it turns. */
export function counterClockwise(points: readonly Point[]): readonly Point[] {
  if (signedAreaIn2(points) >= 0) return points;
  return points.map((_, i) => points[(points.length - i) % points.length]!);
}

/** Area, centroid and second moments about the centroid (in2, in, in4); null where there is no area. Plane geometry. */
export function areaMoments(points: readonly Point[]): AreaMoments | null {
  const origin = points[0];
  const areaIn2 = signedAreaIn2(points);
  if (origin === undefined || areaIn2 === 0) return null;
  let sx = 0;
  let sy = 0;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let i = 0; i < points.length; i++) {
    const px = points[i]!.xIn - origin.xIn;
    const py = points[i]!.yIn - origin.yIn;
    const qx = points[(i + 1) % points.length]!.xIn - origin.xIn;
    const qy = points[(i + 1) % points.length]!.yIn - origin.yIn;
    const w = px * qy - qx * py;
    sx += w * (px + qx);
    sy += w * (py + qy);
    xx += w * (px * px + px * qx + qx * qx);
    yy += w * (py * py + py * qy + qy * qy);
    xy += w * (px * qy + 2 * px * py + 2 * qx * qy + qx * py);
  }
  const cx = sx / (6 * areaIn2);
  const cy = sy / (6 * areaIn2);
  const sign = Math.sign(areaIn2);
  return {
    areaIn2: Math.abs(areaIn2),
    centroid: { xIn: origin.xIn + cx, yIn: origin.yIn + cy },
    ixxIn4: sign * (yy / 12 - areaIn2 * cy * cy),
    iyyIn4: sign * (xx / 12 - areaIn2 * cx * cx),
    ixyIn4: sign * (xy / 24 - areaIn2 * cx * cy),
  };
}

/** Smallest upright rectangle round the points, in. There must be at least one. */
export function boundingBox(points: readonly Point[]): BoundingBox {
  if (points.length === 0) throw new Error('No bounding box of no points');
  const box = {
    minXIn: Number.POSITIVE_INFINITY,
    minYIn: Number.POSITIVE_INFINITY,
    maxXIn: Number.NEGATIVE_INFINITY,
    maxYIn: Number.NEGATIVE_INFINITY,
  };
  for (const p of points) {
    box.minXIn = Math.min(box.minXIn, p.xIn);
    box.minYIn = Math.min(box.minYIn, p.yIn);
    box.maxXIn = Math.max(box.maxXIn, p.xIn);
    box.maxYIn = Math.max(box.maxYIn, p.yIn);
  }
  return box;
}
