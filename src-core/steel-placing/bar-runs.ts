/** Lines on which the bars of a layer lie, from cover to cover, in the layer's frame. */
import type { Piece } from '../job';
import { steelSets } from '../job';
import type { Region } from '../outline';
import { steelRows } from '../solid';
import type { Stretch } from './frame';
import type { BarLayer } from './lap-lengths';

/** One straight bar line without a break: at a height across, over a stretch along. */
export interface BarRun {
  readonly acrossIn: number;
  readonly along: Stretch;
}

export interface BarRuns {
  /** How far apart they lie: the layer's spacing, or a little closer. */
  readonly pitchIn: number;
  readonly runs: readonly BarRun[];
}

/** The bar lines of the model, one run for each stretch without a break. */
export function barRuns(piece: Piece, region: Region, layer: BarLayer): BarRuns {
  const [set] = steelSets(layer);
  const { pitchIn, rows } = steelRows(piece, region, layer, set!);
  return {
    pitchIn,
    runs: rows.flatMap(({ acrossIn, stretches }) => stretches.map((along) => ({ acrossIn, along }))),
  };
}
