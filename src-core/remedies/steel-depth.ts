/** How deep in the slab steel lies, and whether two layers would lie in each other's way. */
import type { DepthRange, Reinforcement } from '../job';
import { steelRange } from '../job';

/** Depths below the top that a mesh or a layer of bars fills, in; nothing for fabric and fibre. */
export function depthRange(steel: Reinforcement): DepthRange {
  return steelRange(steel) ?? { fromIn: 0, toIn: 0 };
}

/** Whether two depths share more than a touch. */
export function overlaps(a: DepthRange, b: DepthRange): boolean {
  return Math.min(a.toIn, b.toIn) - Math.max(a.fromIn, b.fromIn) > 1e-6;
}
