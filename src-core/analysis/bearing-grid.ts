/** Contact points of one bearing: a grid over what the slab covers of it, and its ties. */
import type { StiffnessBounds, Support } from '../job';
import type { Direction, Point, Region, Segment } from '../outline';
import {
  areaMoments,
  clipPatchToRegion,
  directionAt,
  directionBetween,
  distanceIn,
  isPointOnSlab,
  leftOf,
  moved,
  polygonAreaIn2,
  signedDistanceIn,
} from '../outline';
import type { Bearing } from './types';

/** A contact point before the mesh gives it a node. */
export interface Spot {
  readonly at: Point;
  readonly acts: 'push' | 'pull';
  readonly lowLbfPerIn: number;
  readonly highLbfPerIn: number;
  readonly gapIn: number;
  readonly tributaryIn2: number;
  /** Distance from the wall face along a bracket's arm; null elsewhere. */
  readonly alongArmIn: number | null;
}

export interface BearingPlan {
  readonly bearing: Omit<Bearing, 'contacts'>;
  readonly spots: readonly Spot[];
}
/** Ties keep this far from the end of their line. */
const TIE_END_IN = 3;

/** Rows across a strip of bearing, such as a wall, as a share of the step along it. */
const STRIP_ROW_SHARE = 2 / 3;
/**
 * Points of an area, as a share of the step along a line. On a stiff bed the pressure gathers within about (4 D / k)^(1/4) of its
 * edge, some 2-1/2 in under a 1-1/2 in slab (beam on elastic foundation); points half as far apart follow it.
 */
const AREA_STEP_SHARE = 5 / 12;

/** A point this near to the edge of its bearing is on it: clipping rounds a turned bearing's corners to a millionth of an inch. */
const ON_EDGE_IN = 1e-4;

/** What every bearing of a support shares. */
export interface Common {
  readonly support: Support;
  readonly part: Bearing['part'];
  readonly words: string;
  readonly region: Region;
  readonly spacingIn: number;
  readonly bounds: StiffnessBounds;
}

/** Grid of points over what the slab covers of a contact area, in the area's own axes. */
export function planGrid(
  common: Common,
  corners: readonly Point[],
  u: Direction,
  form: 'line' | 'area',
  rows: number | null,
  widthIn: number,
): BearingPlan[] {
  const v = leftOf(u);
  const origin = corners[0]!;
  const local = (point: Point) => {
    const dx = point.xIn - origin.xIn;
    const dy = point.yIn - origin.yIn;
    return { along: dx * u.x + dy * u.y, across: dx * v.x + dy * v.y };
  };
  return clipPatchToRegion(corners, common.region)
    .filter((loop) => polygonAreaIn2(loop) > 1e-4)
    .map((loop) => {
      const places = loop.map(local);
      const alongIn = places.map((p) => p.along);
      const acrossIn = places.map((p) => p.across);
      const areaStepIn = AREA_STEP_SHARE * common.spacingIn;
      const along = steps(
        alongIn,
        form === 'line' ? common.spacingIn : areaStepIn,
        form === 'line' ? null : 2,
      );
      const across =
        rows === 1
          ? { at: [mean(acrossIn)], weight: [1] }
          : steps(acrossIn, form === 'line' ? STRIP_ROW_SHARE * common.spacingIn : areaStepIn, 2);
      const points: { at: Point; weight: number }[] = [];
      along.at.forEach((a, i) => {
        across.at.forEach((b, j) => {
          const at = moved(moved(origin, u, a), v, b);
          if (signedDistanceIn(at, loop) < -ON_EDGE_IN) return;
          points.push({ at, weight: along.weight[i]! * across.weight[j]! });
        });
      });
      const areaIn2 = polygonAreaIn2(loop);
      const total = points.reduce((sum, point) => sum + point.weight, 0);
      const spots = points.map(({ at, weight }) => {
        const tributaryIn2 = (areaIn2 * weight) / total;
        return {
          at,
          acts: 'push' as const,
          lowLbfPerIn: common.bounds.low * tributaryIn2,
          highLbfPerIn: common.bounds.high * tributaryIn2,
          gapIn: gapOf(common.support),
          tributaryIn2,
          alongArmIn: null,
        };
      });
      return { bearing: describe(common, loop, areaIn2, form, widthIn), spots };
    });
}

/**
 * Points from the least to the most value, about `spacingIn` apart, with weights that keep both the length and its second
 * moment (so tilting is as stiff as on a continuous bed): interior weights c, end weights e with (n-1)c + 2e = L and
 * c * sum x^2 + e L^2 / 2 = L^3 / 12.
 */
function steps(
  values: readonly number[],
  spacingIn: number,
  atLeast: number | null,
): { at: number[]; weight: number[] } {
  const from = Math.min(...values);
  const lengthIn = Math.max(...values) - from;
  const n = Math.max(atLeast ?? 1, Math.ceil(lengthIn / spacingIn - 1e-9));
  const at = Array.from({ length: n + 1 }, (_, i) => from + (lengthIn * i) / n);
  if (n === 1) return { at, weight: [0.5, 0.5] };
  let inner = 0;
  for (let i = 1; i < n; i++) inner += ((i - n / 2) / n) ** 2;
  const c = 1 / 6 / ((n - 1) / 4 - inner);
  const e = (1 - (n - 1) * c) / 2;
  return { at, weight: at.map((_, i) => (i === 0 || i === n ? e : c)) };
}
/** Adds the ties of a tied support: points that pull, along its centre line. */
export function withTies(plans: BearingPlan[], common: Common, line: Segment): BearingPlan[] {
  const { hold } = common.support;
  if (hold.kind === 'resting') return plans;
  const lengthIn = distanceIn(line.a, line.b);
  const usable = Math.max(0, lengthIn - 2 * TIE_END_IN);
  const count = lengthIn === 0 ? 1 : Math.max(2, Math.ceil(usable / hold.spacingIn - 1e-9) + 1);
  const startIn = lengthIn === 0 ? 0 : Math.min(TIE_END_IN, lengthIn / 4);
  const u = lengthIn === 0 ? directionAt(0) : directionBetween(line.a, line.b);
  const stepIn = count > 1 ? (lengthIn - 2 * startIn) / (count - 1) : 0;
  const ties = Array.from({ length: count }, (_, i) => moved(line.a, u, startIn + i * stepIn));
  return plans.map((plan) => {
    const loop = { outer: plan.bearing.corners, holes: [] };
    const own = ties
      .filter((at) => isPointOnSlab(at, loop))
      .map((at) => ({
        at,
        acts: 'pull' as const,
        lowLbfPerIn: hold.stiffness.low,
        highLbfPerIn: hold.stiffness.high,
        gapIn: 0,
        tributaryIn2: 0,
        alongArmIn: null,
      }));
    return { bearing: plan.bearing, spots: [...plan.spots, ...own] };
  });
}
/** A bearing without its contacts. */
export function describe(
  common: Pick<Common, 'support' | 'part' | 'words'>,
  corners: readonly Point[],
  areaIn2: number,
  form: Bearing['form'],
  widthIn: number,
): Omit<Bearing, 'contacts'> {
  return {
    support: common.support,
    part: common.part,
    words: common.words,
    form,
    areaIn2,
    corners,
    centre: centreOf(corners),
    widthIn,
  };
}

/** Space before a support touches; negative where it is raised beyond touching. */
export function gapOf(support: Support): number {
  return support.gapIn - support.raisedIn;
}

/** Corners of a rectangle about its centre, its width along `u`. */
export function rectangle(centre: Point, u: Direction, widthIn: number, depthIn: number): Point[] {
  const v = leftOf(u);
  const place = (a: number, b: number) => moved(moved(centre, u, (a * widthIn) / 2), v, (b * depthIn) / 2);
  return [place(-1, -1), place(1, -1), place(1, 1), place(-1, 1)];
}

/** Centre of area, or the mean of the corners of a shape without area. */
export function centreOf(corners: readonly Point[]): Point {
  const moments = areaMoments(corners);
  if (moments !== null) return moments.centroid;
  return { xIn: mean(corners.map((p) => p.xIn)), yIn: mean(corners.map((p) => p.yIn)) };
}
function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
