/** How the layers lie over each other: which stand on standoffs of their own, and how high. */
import type { Piece, Reinforcement } from '../job';
import { steelRange } from '../job';
import type { BarLayer, MeshLayer } from './lap-lengths';
import { RESTS_WITHIN_IN, SAME_WAY_DEG } from './practice';

export type SteelLayer = MeshLayer | BarLayer;

/** A layer by its heights over the soffit, in. */
export interface Stacked {
  readonly layer: SteelLayer;
  readonly undersideIn: number;
  readonly topIn: number;
  /** The layer below that carries it; null where it stands on standoffs. */
  readonly restsOn: SteelLayer | null;
}

/** True of steel that is placed by strips or bars. */
export function isSteelLayer(layer: Reinforcement): layer is SteelLayer {
  return layer.kind === 'mesh' || layer.kind === 'bars';
}

/**
 * Layers from the lowest up. A layer rests on one below it that reaches under all of it and whose top is within an
 * eighth of an inch; bars do not rest on bars that run the same way.
 */
export function stackedLayers(piece: Piece): Stacked[] {
  const heights = piece.reinforcement
    .filter(isSteelLayer)
    .map((layer) => ({ layer, ...heightsOf(layer, piece.thicknessIn) }))
    .sort((a, b) => a.undersideIn - b.undersideIn);
  return heights.map((own, k) => {
    const below = heights.slice(0, k).reverse();
    const carrier = below.find(
      (other) => carries(other.layer, own.layer) && own.undersideIn - other.topIn <= RESTS_WITHIN_IN,
    );
    return { ...own, restsOn: carrier?.layer ?? null };
  });
}

function heightsOf(layer: SteelLayer, thicknessIn: number): { undersideIn: number; topIn: number } {
  const range = steelRange(layer);
  if (range === null) throw new Error(`Layer ${layer.id} of ${layer.kind} has no height`);
  return { undersideIn: thicknessIn - range.toIn, topIn: thicknessIn - range.fromIn };
}

function carries(below: SteelLayer, above: SteelLayer): boolean {
  if (below.kind === 'mesh') return true;
  if (below.corners !== null) return false;
  return above.kind === 'mesh' || !runTheSameWay(below.angleDeg, above.angleDeg);
}

/** True where two directions, either way along, are within a few degrees. */
export function runTheSameWay(firstDeg: number, secondDeg: number): boolean {
  const turnDeg = (((firstDeg - secondDeg) % 180) + 180) % 180;
  return Math.min(turnDeg, 180 - turnDeg) < SAME_WAY_DEG;
}

/** One sentence for each pair of layers that cannot lie as drawn because one runs through the other. */
export function clashes(layers: readonly Stacked[]): string[] {
  return layers.flatMap((lower, k) =>
    layers.slice(k + 1).flatMap((upper): string[] => {
      const sharedIn = Math.min(lower.topIn, upper.topIn) - upper.undersideIn;
      const canLieBeside =
        lower.layer.kind === 'bars' &&
        upper.layer.kind === 'bars' &&
        runTheSameWay(lower.layer.angleDeg, upper.layer.angleDeg);
      if (sharedIn <= 1e-3 || canLieBeside) return [];
      const name = ({ layer }: Stacked) => layer.label ?? layer.id;
      return [
        `"${name(lower)}" and "${name(upper)}" lie at the same height where they cross: one must go over the other.`,
      ];
    }),
  );
}
