/** Lines on which the bars of a layer lie, from cover to cover, in the layer's frame. */
import type { Piece } from '../job';
import type { Region } from '../outline';
import { clipSegmentToRegion } from '../outline';
import { coveredRegions, withinField } from './covered';
import type { Frame, Stretch } from './frame';
import { boxOf, mapRegion, sizeIn } from './frame';
import type { BarLayer } from './lap-lengths';

/** One straight bar line without a break: at a height across, over a stretch along. */
export interface BarRun {
  readonly acrossIn: number;
  readonly along: Stretch;
}

/**
 * Bar lines evenly about the middle of what the cover leaves, or of the field that the layer is drawn in: the first
 * lies half the odd remainder in from there. Each is cut off at the cover beside an opening.
 */
export function barRuns(piece: Piece, region: Region, layer: BarLayer, frame: Frame): BarRun[] {
  const field = layer.corners === null ? null : layer.corners.map(frame.into);
  const covered = coveredRegions(piece, region, layer.edgeCoverIn).map((part) => mapRegion(part, frame.into));
  const within = covered.flatMap((part) => withinField(part, field));
  if (within.length === 0) return [];
  const { u, v } = boxOf(within.flatMap(({ outer }) => outer));
  const count = Math.floor(sizeIn(v) / layer.spacingIn + 1e-9) + 1;
  const firstIn = (v.fromIn + v.toIn - (count - 1) * layer.spacingIn) / 2;
  return Array.from({ length: count }, (_, k) => firstIn + k * layer.spacingIn).flatMap((acrossIn) => {
    const line = { a: { xIn: u.fromIn, yIn: acrossIn }, b: { xIn: u.toIn, yIn: acrossIn } };
    return within
      .flatMap((part) => clipSegmentToRegion(line, part))
      .map(({ a, b }) => ({ acrossIn, along: { fromIn: a.xIn, toIn: b.xIn } }));
  });
}
