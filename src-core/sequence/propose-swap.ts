/** Proposes an order in which cabinets take the place of falsework, each step as mild to the slab as can be. */
import type { SupportSets } from '../analysis';
import { layOutSupports } from '../analysis';
import type { Job, SwapStep } from '../job';
import type { SwapCheck, SwapOptions } from './check-swap';
import { earliestSwapDay } from './earliest-days';
import { swapPlan } from './swap-plan';
import { weighOrders } from './weigh-orders';

export type SwapProposal =
  | {
      readonly ok: true;
      readonly pieceId: string;
      /** Ids of the cabinets in the order in which they come in. */
      readonly order: readonly string[];
      /** The same as steps of a job. */
      readonly steps: readonly SwapStep[];
      /** Worst cracking ratio of any moment of its steps. */
      readonly worstCrackingRatio: number;
      /** Whether every order was weighed by its cracking; false where there are too many cabinets and the likeliest were. */
      readonly isExact: boolean;
      /** Steps that were weighed. */
      readonly tried: number;
      /** Whether some cabinet has no free way in, whatever the order. */
      readonly isBlocked: boolean;
      /** Every moment of the proposed order, checked in full. */
      readonly check: SwapCheck;
    }
  | { readonly ok: false; readonly pieceId: string; readonly sentence: string };

/**
 * Looks for the order that keeps the worst cracking ratio lowest and leaves each cabinet a way in from its front. Each step opens a
 * bay (what stands where the cabinet goes, and what stands in its way, is out), then the cabinet is in and touches, and what stood in
 * the way is back. `sets` is the piece laid out already. Steps keep the days of the job's own; without any, all are on the first day on which a swap may start.
 */
export function proposeSwap(
  job: Job,
  pieceId: string,
  options: SwapOptions & { readonly sets?: SupportSets } = {},
): SwapProposal {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return no(pieceId, `There is no piece "${pieceId}" in the job.`);
  const plan = swapPlan(job, piece);
  if (plan.bays.length === 0) {
    return no(pieceId, `No cabinet comes under "${piece.name}" after its pour, so there is nothing to swap.`);
  }
  if (plan.temporary.length + plan.lasting.length === 0) {
    return no(
      pieceId,
      `Nothing holds "${piece.name}" up until its cabinets come. Draw legs or ledgers with a last day.`,
    );
  }
  const startDay = earliestSwapDay(job, piece);
  if (startDay === null && plan.days.length === 0) {
    return no(
      pieceId,
      `"${piece.name}" is not strong enough for a swap within a year at these temperatures.`,
    );
  }
  const dayOf = (step: number) => plan.days[Math.min(step, plan.days.length - 1)] ?? startDay!;
  const laidOut =
    options.sets === undefined
      ? layOutSupports(job, piece, options.meshSizeIn ?? null)
      : { ok: true as const, sets: options.sets };
  if (!laidOut.ok) return no(pieceId, laidOut.cannot.sentence);

  const { sets } = laidOut;
  const { found, check, isBlocked, worst } = weighOrders(sets, plan, dayOf, options);
  return {
    ok: true,
    pieceId,
    order: found.order.map((item) => plan.bays[item]!.cabinet.id),
    steps: check.steps.map(({ isDrawn, ...step }) => ({
      ...step,
      sectionsOut: [...step.sectionsOut],
      supportsOut: [...step.supportsOut],
      supportsIn: [...step.supportsIn],
    })),
    worstCrackingRatio: worst,
    isExact: found.isExact,
    tried: found.tried,
    isBlocked,
    check,
  };
}

function no(pieceId: string, sentence: string): SwapProposal {
  return { ok: false, pieceId, sentence };
}
