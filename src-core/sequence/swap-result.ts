/** Everything about the swap of one piece: the one entry that the command line, the window and the build book call. */
import type { SupportSets } from '../analysis';
import { layOutSupports } from '../analysis';
import type { Level } from '../checks';
import { stands, worse } from '../checks';
import type { Job, Piece } from '../job';
import type { CheckedMoment, SwapCheck, SwapOptions } from './check-swap';
import { checkMoments, isWorseMoment } from './check-swap';
import type { EarliestDay } from './earliest-days';
import { earliestDays } from './earliest-days';
import type { SwapFinding } from './finding';
import type { HeightLimits } from './height-limits';
import { heightLimits } from './height-limits';
import type { FoundSwap, SwapProposal } from './propose-swap';
import { findSwap, isWhole } from './propose-swap';
import { swapFindings, worstFinding } from './swap-findings';
import type { PieceStep } from './swap-steps';
import { momentsOf, swapSteps } from './swap-steps';

export interface SwapStepResult {
  readonly step: PieceStep;
  /** The moments of this step, in order. */
  readonly moments: readonly CheckedMoment[];
  /** The worst of them. */
  readonly worst: CheckedMoment;
  /** How far what comes in may be wound up or fall short once it stands. */
  readonly heights: readonly HeightLimits[];
}

/** A proposal without its moments. */
export type ProposedOrder = Omit<Extract<SwapProposal, { ok: true }>, 'check' | 'ok' | 'pieceId'>;

export interface SwapResult {
  readonly pieceId: string;
  readonly name: string;
  /** Whose order it is: the job's, or the tool's where the job has none or a better one was asked for. */
  readonly from: 'job' | 'proposal';
  /** How the order was found, where it is a proposal. */
  readonly proposal: ProposedOrder | null;
  /** Where the job's own steps crack the slab or fail: an order that does not, with the props that it needs. */
  readonly offer: ProposedOrder | null;
  readonly check: SwapCheck;
  readonly steps: readonly SwapStepResult[];
  readonly findings: readonly SwapFinding[];
  readonly earliest: readonly EarliestDay[];
  readonly level: Level;
  readonly needsAttention: boolean;
}

/** A piece without a swap, and why. */
export interface NoSwap {
  readonly pieceId: string;
  readonly name: string;
  readonly sentence: string;
  /** Whether there is one that could not be looked at. */
  readonly needsAttention: boolean;
}

export interface SwapResultOptions extends SwapOptions {
  /** Look for an order though the job has steps of its own. */
  readonly propose?: boolean;
}

/** The swap of one piece: the job's own steps checked, else a proposed order, with heights, findings and earliest days. */
export function swapResult(job: Job, piece: Piece, options: SwapResultOptions = {}): SwapResult | NoSwap {
  const own = swapSteps(job, piece);
  if (own.length === 0) return noSwap(piece, 'Nothing under it changes after its pour.', false);
  const laidOut = layOutSupports(job, piece, options.meshSizeIn ?? null);
  if (!laidOut.ok) return noSwap(piece, laidOut.cannot.sentence, true);
  const wantsOrder = options.propose === true || !own.some(({ isDrawn }) => isDrawn);
  const search = (): ReturnType<typeof findSwap> =>
    findSwap(job, piece.id, { ...options, sets: laidOut.sets });
  const proposed = wantsOrder ? search() : null;
  if (proposed !== null && 'sentence' in proposed && options.propose === true) {
    return noSwap(piece, proposed.sentence, true);
  }
  const found = proposed !== null && 'proposal' in proposed ? proposed : null;
  if (found !== null) return resultOf(found.job, found.sets, found.proposal.check, found, null);
  const check = checkMoments(laidOut.sets, own, momentsOf(job, piece, own), options);
  return resultOf(job, laidOut.sets, check, null, wantsOrder ? null : offerFor(check, search));
}

/** A whole order where the steps of `check` are not. */
function offerFor(check: SwapCheck, search: () => ReturnType<typeof findSwap>): ProposedOrder | null {
  const ratios = check.moments.flatMap(({ stepId, cracking }) =>
    stepId === null || cracking === null ? [] : [cracking.ratio],
  );
  if (isWhole({ worst: Math.max(0, ...ratios), check })) return null;
  const found = search();
  if (!('proposal' in found)) return null;
  const { proposal } = found;
  return isWhole({ worst: proposal.worstCrackingRatio, check: proposal.check }) ? orderOf(proposal) : null;
}

function resultOf(
  job: Job,
  sets: SupportSets,
  check: SwapCheck,
  found: FoundSwap | null,
  offer: ProposedOrder | null,
): SwapResult {
  const { piece } = sets.meshed;
  const props = new Set(found?.proposal.props.map(({ id }) => id));
  const steps = check.steps.flatMap((step): SwapStepResult[] => {
    const moments = check.moments.filter(({ stepId }) => stepId === step.id);
    const last = moments.at(-1);
    if (last === undefined) return [];
    const comes = step.supportsIn.filter((id) =>
      piece.supports.some((one) => one.id === id && (one.kind === 'cabinet' || props.has(id))),
    );
    return [{ step, moments, worst: worstOf(moments), heights: heightLimits(sets, last, comes) }];
  });
  const findings = swapFindings(job, check);
  const level = worse(check.level, worstFinding(findings));
  return {
    pieceId: piece.id,
    name: piece.name,
    from: found === null ? 'job' : 'proposal',
    proposal: found === null ? null : orderOf(found.proposal),
    offer,
    check,
    steps,
    findings,
    earliest: earliestDays(job, piece),
    level,
    needsAttention: !stands(level),
  };
}

function noSwap({ id, name }: Piece, sentence: string, needsAttention: boolean): NoSwap {
  return { pieceId: id, name, sentence, needsAttention };
}

function orderOf(found: FoundSwap['proposal']): ProposedOrder {
  const { order, steps, props, worstCrackingRatio, isExact, tried, isBlocked } = found;
  return { order, steps, props, worstCrackingRatio, isExact, tried, isBlocked };
}

function worstOf(moments: readonly CheckedMoment[]): CheckedMoment {
  return moments.reduce((a, b) => (isWorseMoment(b, a) ? b : a));
}
