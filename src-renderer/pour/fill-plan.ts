/** A slab in plan with the way its concrete goes: a dot a bucket, numbered where another batch begins. */
import type { Piece } from '../../src-core/job';
import { pieceRegion } from '../../src-core/job';
import type { Point, Segment } from '../../src-core/outline';
import { boundingBox } from '../../src-core/outline';
import type { Bucket } from '../../src-core/pour';
import type { PlacePx } from '../falsework/place-numbers';

export interface FillDot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Number of the batch that begins here; empty elsewhere. */
  readonly label: string;
}

export interface FillPlan {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Outline and openings. */
  readonly slab: string;
  /** The way from bucket to bucket. */
  readonly way: string;
  readonly dots: readonly FillDot[];
  readonly rails: readonly { readonly from: PlacePx; readonly to: PlacePx }[];
}

/** Highest drawing, and what is left free around it, px. */
const MOST_HEIGHT_PX = 170;
const MARGIN_PX = 12;
/** A slab is drawn no larger than this, so that small ones do not fill the panel, px an inch. */
const MOST_PX_AN_INCH = 4;

/** The drawing in a width, front at the bottom; null where the slab cannot be drawn, or there is no width to draw in. */
export function fillPlan(
  piece: Piece,
  buckets: readonly Bucket[],
  rails: readonly Segment[],
  widthPx: number,
): FillPlan | null {
  const region = pieceRegion(piece);
  if (!region.ok || widthPx <= 2 * MARGIN_PX) return null;
  const box = boundingBox(region.outer);
  const [acrossIn, deepIn] = [box.maxXIn - box.minXIn, box.maxYIn - box.minYIn];
  const scale = Math.min(
    (widthPx - 2 * MARGIN_PX) / acrossIn,
    (MOST_HEIGHT_PX - 2 * MARGIN_PX) / deepIn,
    MOST_PX_AN_INCH,
  );
  const toPx = ({ xIn, yIn }: Point): PlacePx => ({
    x: rounded(MARGIN_PX + (xIn - box.minXIn) * scale),
    y: rounded(MARGIN_PX + (box.maxYIn - yIn) * scale),
  });
  const path = (points: readonly Point[]) =>
    points
      .map(toPx)
      .map(({ x, y }, k) => `${k === 0 ? 'M' : 'L'}${x} ${y}`)
      .join('');
  return {
    widthPx: rounded(acrossIn * scale + 2 * MARGIN_PX),
    heightPx: rounded(deepIn * scale + 2 * MARGIN_PX),
    slab: [region.outer, ...region.holes].map((loop) => `${path(loop)}Z`).join(''),
    way: path(buckets.map(({ at }) => at)),
    dots: buckets.map(({ id, at, batch }, k) => ({
      id,
      ...toPx(at),
      label: buckets[k - 1]?.batch === batch ? '' : String(batch),
    })),
    rails: rails.map(({ a, b }) => ({ from: toPx(a), to: toPx(b) })),
  };
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}
