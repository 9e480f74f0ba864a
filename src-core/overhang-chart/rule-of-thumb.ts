/** The trade's rule beside the computed chart. A hint, never a limit. */
import type { ChartBasis } from './basis';

/**
 * Overhang (in) at which the trade's rule stops a ledge on this wall: a third of the whole depth, so half of what lies on the
 * wall, and 10 in at the most. Common practice, no source.
 */
export function ruleOfThumbIn({ root, limits }: ChartBasis): number {
  const { ruleOverhangShare, ruleOverhangIn } = limits;
  return Math.min(ruleOverhangIn, (ruleOverhangShare * root.widthIn) / (1 - ruleOverhangShare));
}
