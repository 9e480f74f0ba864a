/** Every moment of a swap checked by the engine, with what stands then and the concrete of that day. */
import type { ConcreteState, Face, PieceAnalysis, SupportSets } from '../analysis';
import { analyseMoment, layOutSupports, printersOf, printPlace } from '../analysis';
import type { Check, Level, Limits } from '../checks';
import {
  cannotCheck,
  checkAnalysis,
  DEFAULT_LIMITS,
  governingCheck,
  rank,
  stands,
  worstLevel,
} from '../checks';
import type { Job } from '../job';
import type { Point } from '../outline';
import type { PieceStep, SwapMoment } from './swap-steps';
import { momentsOf, swapSteps } from './swap-steps';

/** How near the slab is to cracking: service moment over (2/3)Mcr of that day, the worse of both bounds and faces. */
export interface CrackingRatio {
  readonly ratio: number;
  readonly face: Face;
  readonly at: Point;
  /** "underneath, 46 in from the left, 4 in from the front". */
  readonly words: string;
}

export interface CheckedMoment extends SwapMoment {
  /** Worst rung of the checks but those of `SIZE_CHECKS`. */
  readonly level: Level;
  /** Ratio of the check that governs, of the same checks. */
  readonly ratio: number;
  readonly checkId: string;
  readonly words: string;
  /** null where the slab could not be analysed. */
  readonly cracking: CrackingRatio | null;
  readonly concrete: Pick<ConcreteState, 'ageDays' | 'strengthPsi' | 'modulusPsi'> | null;
  /** Largest sag below the plane of its supports under the working load, in. */
  readonly sagIn: number | null;
  /** Every check, worst first. */
  readonly checks: readonly Check[];
  /** What was measured beyond the size that a finished piece may have. */
  readonly cautions: readonly string[];
}

/**
 * Checks that hold a finished piece to a size: the reach beyond which an engineer is asked, and the sag that an eye sees after years.
 * An empty bay that spans both ways is no overhang that stays, and its sag goes back with the cabinet; so at a moment of the swap the
 * first two caution, and the sag of an open bay does too. What the slab does under its load decides.
 */
const SIZE_CHECKS: { readonly [P in SwapMoment['phase']]: readonly string[] } = {
  before: ['overhang', 'span'],
  out: ['overhang', 'span', 'deflection'],
  in: ['overhang', 'span'],
};

/** Said beside the cautions of moments: what they do not decide. */
export const SIZE_CAUTION =
  'The longest reach and span, and with a bay open the sag, are limits for a finished piece. Passed for a while during the swap they are a caution and decide nothing: what the slab does under its weight and the working load decides.';

export interface SwapCheck {
  readonly pieceId: string;
  readonly steps: readonly PieceStep[];
  readonly moments: readonly CheckedMoment[];
  /** The worst moment's place in `moments`; null where there is none. */
  readonly worst: number | null;
  readonly level: Level;
}

export interface SwapOptions {
  /** Mesh size; null or left out takes the piece's own. */
  readonly meshSizeIn?: number | null;
  readonly limits?: Limits;
  readonly onProgress?: (done: number, total: number) => void;
}

/**
 * Checks the swap of a piece: the job's steps, or `steps` in their stead. The piece is meshed and factored once, and each moment
 * gives what `checkPiece` gives for that day with `standing`. An unknown piece has no moments; callers refuse it before.
 */
export function checkSwap(
  job: Job,
  pieceId: string,
  options: SwapOptions & { readonly steps?: readonly PieceStep[] } = {},
): SwapCheck {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) return { pieceId, steps: [], moments: [], worst: null, level: 'holds' };
  const steps = options.steps ?? swapSteps(job, piece);
  const moments = momentsOf(job, piece, steps);
  if (moments.length === 0) return gatherCheck(pieceId, steps, []);
  const laidOut = layOutSupports(job, piece, options.meshSizeIn ?? null);
  if (laidOut.ok) return checkMoments(laidOut.sets, steps, moments, options);
  const { reason, sentence } = laidOut.cannot;
  return gatherCheck(
    pieceId,
    steps,
    moments.map((moment) => uncheckedMoment(moment, cannotCheck(pieceId, reason, sentence))),
  );
}

/** The same on a piece that is laid out already. */
export function checkMoments(
  sets: SupportSets,
  steps: readonly PieceStep[],
  moments: readonly SwapMoment[],
  { limits = DEFAULT_LIMITS, onProgress }: Pick<SwapOptions, 'limits' | 'onProgress'>,
): SwapCheck {
  const checked = moments.map((moment, index) => {
    onProgress?.(index, moments.length);
    return checkMoment(sets, moment, limits);
  });
  return gatherCheck(sets.meshed.piece.id, steps, checked);
}

function checkMoment(sets: SupportSets, moment: SwapMoment, limits: Limits): CheckedMoment {
  const { job, piece } = sets.meshed;
  const result = analyseMoment(sets, moment);
  if (!result.ok) {
    const { reason, sentence } = result.cannot;
    return uncheckedMoment(moment, cannotCheck(piece.id, reason, sentence));
  }
  const { analysis } = result;
  const checks = checkAnalysis(job, analysis, limits);
  const deciding = checks.filter(({ id }) => !SIZE_CHECKS[moment.phase].includes(id));
  const governing = governingCheck(deciding)!;
  const { ageDays, strengthPsi, modulusPsi } = analysis.concrete;
  const { low, high } = analysis.elastic;
  return {
    ...moment,
    level: worstLevel(deciding),
    ratio: governing.ratio,
    checkId: governing.id,
    words: governing.words,
    cracking: crackingOf(job, analysis),
    concrete: { ageDays, strengthPsi, modulusPsi },
    sagIn: Math.max(0, low.worstDown.downIn, high.worstDown.downIn),
    checks,
    cautions: checks.flatMap((check) =>
      deciding.includes(check) || stands(check.level) ? [] : [check.words],
    ),
  };
}

function uncheckedMoment(moment: SwapMoment, check: Check): CheckedMoment {
  const { level, ratio, id: checkId, words } = check;
  return {
    ...moment,
    level,
    ratio,
    checkId,
    words,
    cracking: null,
    concrete: null,
    sagIn: null,
    checks: [check],
    cautions: [],
  };
}

function crackingOf(job: Job, { elastic, concrete, shape }: PieceAnalysis): CrackingRatio {
  const offers = [elastic.low, elastic.high].flatMap(({ sagging, hogging }) => [
    { moment: sagging.momentLbfInPerIn, face: 'bottom' as const, at: sagging.at },
    { moment: hogging.momentLbfInPerIn, face: 'top' as const, at: hogging.at },
  ]);
  const { moment, face, at } = offers.reduce((a, b) => (b.moment > a.moment ? b : a));
  const place = printPlace(at, shape, shape.axisRad, printersOf(job));
  return {
    ratio: moment / concrete.crackingLimitLbfInPerIn,
    face,
    at,
    words: `${face === 'bottom' ? 'underneath' : 'on top'}, ${place}`,
  };
}

/** A check of moments in order, with its worst. */
export function gatherCheck(
  pieceId: string,
  steps: readonly PieceStep[],
  moments: readonly CheckedMoment[],
): SwapCheck {
  let worst: number | null = null;
  moments.forEach((moment, index) => {
    if (worst === null || isWorseMoment(moment, moments[worst]!)) worst = index;
  });
  return { pieceId, steps, moments, worst, level: worstLevel(moments) };
}

/** Whether one moment is worse than another, by rung and then by ratio. */
export function isWorseMoment(one: CheckedMoment, other: CheckedMoment): boolean {
  const byRung = rank(one.level) - rank(other.level);
  return byRung > 0 || (byRung === 0 && one.ratio > other.ratio);
}
