/** Proposes an order in which cabinets take the place of falsework, each step as mild to the slab as can be, with props where it must. */
import type { SupportSets } from '../analysis';
import { layOutSupports } from '../analysis';
import { stands } from '../checks';
import type { Job, SwapStep } from '../job';
import type { SwapCheck, SwapOptions } from './check-swap';
import { checkMoments, gatherCheck } from './check-swap';
import { earliestSwapDay } from './earliest-days';
import type { Propped } from './find-props';
import { findProps } from './find-props';
import type { ProposedProp } from './proposed-prop';
import { proposedProps } from './proposed-prop';
import type { SwapPlan } from './swap-plan';
import { swapPlan } from './swap-plan';
import type { PieceStep } from './swap-steps';
import { momentsOf } from './swap-steps';
import type { WeighedOrder } from './weigh-orders';
import { searchOrders } from './weigh-orders';

export type SwapProposal =
  | {
      readonly ok: true;
      readonly pieceId: string;
      /** Ids of the cabinets in the order in which they come in. */
      readonly order: readonly string[];
      /** The same as steps of a job; with props, a first step sets them. */
      readonly steps: readonly SwapStep[];
      /** Props that the order needs; none where it holds without. They come with the steps into the job. */
      readonly props: readonly ProposedProp[];
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

/** A proposal with the job that has its props, laid out. */
export interface FoundSwap {
  readonly proposal: Extract<SwapProposal, { ok: true }>;
  readonly job: Job;
  readonly sets: SupportSets;
}

export interface ProposeOptions extends SwapOptions {
  /** The piece laid out already. */
  readonly sets?: SupportSets;
}

/**
 * Looks for the order that keeps the worst cracking ratio lowest and leaves each cabinet a way in from its front. Each step opens a
 * bay (what stands where the cabinet goes, and what stands in its way, is out), then the cabinet is in and touches, and what stood in
 * the way is back. Where the slab cracks in every order, props clear of the cabinets are tried, and proposed where they keep it whole.
 * Steps keep the days of the job's own; without any, all are on the first day on which a swap may start.
 */
export function proposeSwap(job: Job, pieceId: string, options: ProposeOptions = {}): SwapProposal {
  const found = findSwap(job, pieceId, options);
  return 'proposal' in found ? found.proposal : found;
}

/** The same with what it was found on, for questions about its moments. */
export function findSwap(
  job: Job,
  pieceId: string,
  options: ProposeOptions,
): FoundSwap | Extract<SwapProposal, { ok: false }> {
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
  const meshSizeIn = options.meshSizeIn ?? null;
  const laidOut =
    options.sets === undefined
      ? layOutSupports(job, piece, meshSizeIn)
      : { ok: true as const, sets: options.sets };
  if (!laidOut.ok) return no(pieceId, laidOut.cannot.sentence);

  const { sets } = laidOut;
  const search = searchOrders(sets, plan, dayOf, options);
  const bare = search.mildest.worst <= 1 ? search.mildestStanding() : search.mildest;
  if (!isWhole(bare)) {
    const propped = findProps({ sets, plan, weighed: bare, dayOf }, meshSizeIn);
    const found = propped === null ? null : proppedSwap(propped, bare.worst, dayOf, options);
    if (found !== null) return found;
  }
  const weighed = search.mildestStanding();
  return { proposal: proposalOf(plan, weighed, weighed.check, []), job, sets };
}

/** The swap of a piece with its props; null where it is not whole with them either. */
function proppedSwap(
  propped: Propped,
  without: number,
  dayOf: (step: number) => number,
  options: SwapOptions,
): FoundSwap | null {
  const { job, sets, plan } = propped;
  const weighed = searchOrders(sets, plan, dayOf, options).mildestStanding();
  const check = checkWithProps(propped, weighed.check, options);
  if (!isWhole({ ...weighed, check })) return null;
  const props = proposedProps(propped, { without, with: weighed.worst }, check);
  return { proposal: proposalOf(plan, weighed, check, props), job, sets };
}

/** Whether every moment stands and none of the steps passes the cracking limit, which steel alone would then hold. */
export function isWhole({ worst, check }: Pick<WeighedOrder, 'worst' | 'check'>): boolean {
  return worst <= 1 && stands(check.level);
}

/** The check of an order with the step that sets its props before it: the moments after that are those that stand with them already. */
function checkWithProps({ sets, props }: Propped, weighed: SwapCheck, options: SwapOptions): SwapCheck {
  const { job, piece } = sets.meshed;
  const { steps } = weighed;
  const set: PieceStep = {
    id: `${piece.id.slice(0, 48)}-swap-props`,
    isDrawn: false,
    day: steps[0]!.day,
    sectionsOut: [],
    supportsOut: [],
    supportsIn: props.map(({ id }) => id),
    note: 'Before anything goes out: on a plate, plumb, wedged hard under the slab and no more.',
  };
  const all = [set, ...steps];
  const moments = momentsOf(job, piece, all);
  const first = moments.slice(0, moments.length - weighed.moments.length + 1);
  const checked = checkMoments(sets, all, first, options);
  return gatherCheck(piece.id, all, [...checked.moments, ...weighed.moments.slice(1)]);
}

function proposalOf(
  plan: SwapPlan,
  { found, worst, isBlocked }: WeighedOrder,
  check: SwapCheck,
  props: readonly ProposedProp[],
): FoundSwap['proposal'] {
  return {
    ok: true,
    pieceId: plan.piece.id,
    order: found.order.map((item) => plan.bays[item]!.cabinet.id),
    steps: check.steps.map(({ isDrawn, ...step }) => ({
      ...step,
      sectionsOut: [...step.sectionsOut],
      supportsOut: [...step.supportsOut],
      supportsIn: [...step.supportsIn],
    })),
    props,
    worstCrackingRatio: worst,
    isExact: found.isExact,
    tried: found.tried,
    isBlocked,
    check,
  };
}

function no(pieceId: string, sentence: string): Extract<SwapProposal, { ok: false }> {
  return { ok: false, pieceId, sentence };
}
