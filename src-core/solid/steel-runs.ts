/** Mesh wires and bars as they lie in a slab. */
import type { Piece } from '../job';
import { pieceRegion, steelSets } from '../job';
import { turned } from '../outline';
import { SHORTEST_BAR_IN, steelRows } from './steel-rows';
import type { SteelRun } from './types';

/** Most wires one way across one layer that are given; of a denser layer every second, third ... is left out. */
export const MOST_RUNS_ONE_WAY = 400;

/**
 * The wires and bars of every layer, each line in one run from cover to cover: laps and hooks are not drawn, and bars
 * too short to hold are left out, as they are from the cut list. Fabric and fibre give none.
 */
export function steelRuns(piece: Piece): readonly SteelRun[] {
  const plan = pieceRegion(piece);
  if (!plan.ok) return [];
  return piece.reinforcement.flatMap((layer): SteelRun[] => {
    if (layer.kind !== 'mesh' && layer.kind !== 'bars') return [];
    const leastIn = layer.kind === 'bars' ? SHORTEST_BAR_IN : 0;
    return steelSets(layer).flatMap((set) => {
      const { rows } = steelRows(piece, plan, layer, set);
      const step = Math.ceil(rows.length / MOST_RUNS_ONE_WAY);
      const zIn = piece.topElevationIn - set.centreDepthIn;
      const turnRad = (set.angleDeg * Math.PI) / 180;
      return rows
        .filter((_, k) => k % step === 0)
        .flatMap(({ acrossIn, stretches }) =>
          stretches
            .filter(({ fromIn, toIn }) => toIn - fromIn >= leastIn)
            .map(({ fromIn, toIn }): SteelRun => {
              const from = turned({ xIn: fromIn, yIn: acrossIn }, turnRad);
              const to = turned({ xIn: toIn, yIn: acrossIn }, turnRad);
              return {
                layerId: layer.id,
                from: [from.xIn, from.yIn, zIn],
                to: [to.xIn, to.yIn, zIn],
                diameterIn: set.diameterIn,
              };
            }),
        );
    });
  });
}
