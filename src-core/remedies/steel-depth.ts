/** How deep in the slab steel lies, and whether two layers would lie in each other's way. */
import type { Reinforcement } from '../job';

export interface DepthRange {
  readonly fromIn: number;
  readonly toIn: number;
}

/** Depths below the top that a mesh or a layer of bars fills, in; nothing for fabric and fibre. */
export function depthRange(steel: Reinforcement): DepthRange {
  switch (steel.kind) {
    case 'bars':
      return { fromIn: steel.depthIn - steel.barIn / 2, toIn: steel.depthIn + steel.barIn / 2 };
    case 'mesh':
      return { fromIn: steel.depthIn - steel.wireIn, toIn: steel.depthIn + steel.crossWireIn };
    case 'fabric':
    case 'fibre':
      return { fromIn: 0, toIn: 0 };
  }
}

/** Whether two depths share more than a touch. */
export function overlaps(a: DepthRange, b: DepthRange): boolean {
  return Math.min(a.toIn, b.toIn) - Math.max(a.fromIn, b.fromIn) > 1e-6;
}
