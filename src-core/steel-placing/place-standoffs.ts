/** Standoffs under the steel: where they stand, how high, how far apart. */
import type { Piece } from '../job';
import { pieceRegion } from '../job';
import type { Region } from '../outline';
import { standoffPlaces, withinField } from '../solid';
import { standoffsApartIn } from './sag';
import type { Stacked } from './stacking';
import { stackedLayers } from './stacking';
import { steelTrace } from './traces';
import type { PlacedStandoff, StandoffSet } from './types';

/**
 * Standoffs of every layer that stands on its own: under the whole slab, or under the field of its bars. `setIn` is the
 * spacing that the job sets, or null.
 */
export function placeStandoffs(
  piece: Piece,
  region: Region,
  layers: readonly Stacked[],
  setIn: number | null,
): { readonly standoffs: readonly PlacedStandoff[]; readonly sets: readonly StandoffSet[] } {
  const standing = layers.filter(({ restsOn }) => restsOn === null);
  const standoffs = standing.flatMap(({ layer, undersideIn }): PlacedStandoff[] => {
    const parts = withinField(region, layer.kind === 'bars' ? layer.corners : null);
    return parts
      .flatMap((part) => standoffPlaces(part, standoffsApartIn(layer, setIn)))
      .map((at, k) => ({
        id: `${layer.id}-standoff-${k + 1}`,
        trace: steelTrace(piece, layer.id),
        layerId: layer.id,
        at,
        heightIn: Math.max(0, undersideIn),
      }));
  });
  const sets = standing.map(
    ({ layer, undersideIn }): StandoffSet => ({
      id: `${layer.id}-standoffs`,
      trace: steelTrace(piece, layer.id),
      layerId: layer.id,
      heightIn: Math.max(0, undersideIn),
      spacingIn: standoffsApartIn(layer, setIn),
      count: standoffs.filter(({ layerId }) => layerId === layer.id).length,
    }),
  );
  return { standoffs, sets };
}

/** The standoffs of a piece alone, for the model; none where its outline cannot be built. */
export function standoffsUnder(piece: Piece, setIn: number | null): readonly PlacedStandoff[] {
  const plan = pieceRegion(piece);
  if (!plan.ok) return [];
  return placeStandoffs(piece, plan, stackedLayers(piece), setIn).standoffs;
}
