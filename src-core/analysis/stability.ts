/** Whether a loose slab stays on its bearings: moments about the outer face of what it rests on. */
import type { Point } from '../outline';
import { convexHull, distanceIn } from '../outline';
import type { BearingPlan } from './bearing-grid';
import type { PieceWeight, Stability } from './types';

export interface LiveForce {
  readonly forceLbf: number;
  readonly at: Point;
}

/**
 * Looks at every side of the hull of the bearings and keeps the worst: the one about which the weight has least to spare
 * against the live load. Plain statics. Ties are left out here; where a piece is tied the engine decides.
 */
export function judgeStability(
  plans: readonly BearingPlan[],
  weight: PieceWeight,
  live: readonly LiveForce[],
): Stability {
  const tied = plans.some((plan) => plan.spots.some((spot) => spot.acts === 'pull'));
  const base = convexHull(plans.flatMap((plan) => plan.bearing.corners));
  const nothing: Stability = {
    kind: 'no-support',
    pivot: null,
    rightingLbfIn: 0,
    overturningLbfIn: 0,
    weightArmIn: 0,
    loadLbf: 0,
    loadArmIn: 0,
    tied,
  };
  if (plans.length === 0) return nothing;

  let worst: Stability | null = null;
  for (let i = 0; i < base.length; i++) {
    const from = base[i]!;
    const to = base[(i + 1) % base.length]!;
    const lengthIn = distanceIn(from, to);
    if (lengthIn < 1e-6) continue;
    const inwardIn = (p: Point) =>
      ((to.xIn - from.xIn) * (p.yIn - from.yIn) - (to.yIn - from.yIn) * (p.xIn - from.xIn)) / lengthIn;
    const weightArmIn = inwardIn(weight.centre);
    const load = live.reduce<{ force: LiveForce | null; moment: number }>(
      (most, force) => {
        const moment = -force.forceLbf * inwardIn(force.at);
        return moment > most.moment ? { force, moment } : most;
      },
      { force: null, moment: 0 },
    );
    const found: Stability = {
      kind:
        weightArmIn <= 0
          ? 'tips-alone'
          : load.moment > weight.totalLb * weightArmIn
            ? 'tips-under-load'
            : 'stands',
      pivot: { from, to },
      rightingLbfIn: weight.totalLb * weightArmIn,
      overturningLbfIn: load.moment,
      weightArmIn,
      loadLbf: load.force?.forceLbf ?? 0,
      loadArmIn: load.force === null ? 0 : -inwardIn(load.force.at),
      tied,
    };
    if (worst === null || spareOf(found) < spareOf(worst)) worst = found;
  }
  return worst ?? nothing;
}

/** Righting over overturning moment; a slab that tips alone has less than nothing to spare. */
function spareOf(stability: Stability): number {
  if (stability.rightingLbfIn <= 0) return stability.rightingLbfIn - 1;
  return stability.rightingLbfIn / Math.max(1e-9, stability.overturningLbfIn);
}
