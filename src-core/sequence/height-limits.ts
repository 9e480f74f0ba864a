/** How far a foot or a panel may be wound up beyond touching, and how far it may fall short, before the slab cracks. */
import type { Lift, LiftedPart, OpenMoment, SupportMoment, SupportSets } from '../analysis';
import { openMoment, serviceMoments } from '../analysis';
import type { Support } from '../job';

/** A height at which the cracking ratio of the slab reaches 1.00. */
export interface HeightLimit {
  /** null where it is not reached within what is tried: whatever the height, the slab stays uncracked on paper. */
  readonly limitIn: number | null;
  /** The same rounded down to 64ths of an inch; null with it. */
  readonly sixtyFourths: number | null;
}

export interface HeightLimits {
  readonly supportId: string;
  readonly part: LiftedPart;
  readonly words: string;
  /** Cracking ratio as drawn. */
  readonly crackingRatio: number;
  /** Raised beyond touching. */
  readonly raise: HeightLimit;
  /** Left short of touching. */
  readonly gap: HeightLimit;
}

/** Farthest that a foot is tried, in: what a job file lets it be raised. */
export const MOST_RAISE_IN = 1;
/** Widest gap that is tried, in: what a job file lets it be. */
export const MOST_GAP_IN = 2;
const PER_IN = 64;
const FIRST_TRY_IN = 1 / PER_IN;
/** The ratio at the height found is this near to 1. */
const RATIO_TOLERANCE = 5e-4;
const HEIGHT_TOLERANCE_IN = 1e-6;
const MOST_PASSES = 40;
const NONE: HeightLimit = { limitIn: null, sixtyFourths: null };
const AT_ONCE: HeightLimit = { limitIn: 0, sixtyFourths: 0 };

/**
 * Limits of the given supports at one moment, by the contact compliance of the slab: self weight alone and with the working load, the
 * worse of both stiffness bounds. A cabinet has three: all its feet, and either side alone. None where the slab would fall then.
 */
export function heightLimits(
  sets: SupportSets,
  at: SupportMoment,
  supportIds: readonly string[],
): HeightLimits[] {
  const moment = openMoment(sets, at);
  if (moment === null) return [];
  const units = supportIds.flatMap((id) => {
    const support = sets.meshed.piece.supports.find((one) => one.id === id);
    return support === undefined || !at.standing.includes(id) ? [] : unitsOf(support);
  });
  if (units.length === 0) return [];
  const { crackingRatio, turnsOver } = serviceMoments(sets, [{ moment, lift: null }])[0]!;
  if (turnsOver) return [];
  const searches = units.flatMap((unit) => [
    { unit, sign: 1 as const, mostIn: MOST_RAISE_IN },
    { unit, sign: -1 as const, mostIn: MOST_GAP_IN },
  ]);
  const found =
    crackingRatio >= 1 ? searches.map(() => AT_ONCE) : crossings(sets, moment, searches, crackingRatio);
  return units.map((unit, i) => ({
    ...unit,
    crackingRatio,
    raise: found[2 * i]!,
    gap: found[2 * i + 1]!,
  }));
}

type Unit = Pick<HeightLimits, 'supportId' | 'part' | 'words'>;

function unitsOf(support: Support): Unit[] {
  const name = support.name ?? support.id;
  const whole: Unit = { supportId: support.id, part: 'whole', words: name };
  if (support.kind !== 'cabinet') return [whole];
  return [
    { ...whole, words: `all feet of ${name}` },
    { ...whole, part: 'left-side', words: `left side of ${name} alone` },
    { ...whole, part: 'right-side', words: `right side of ${name} alone` },
  ];
}

interface Search {
  readonly unit: Unit;
  readonly sign: 1 | -1;
  readonly mostIn: number;
}

/** A bracket round the first crossing: below 1 at `low`, at or above it at `high` once that is known. */
interface Bracket {
  lowIn: number;
  lowRatio: number;
  highIn: number;
  highRatio: number | null;
  /** Which end the last try replaced, for the halved weight of the Illinois rule. */
  last: 'low' | 'high' | null;
  weightLow: number;
  weightHigh: number;
  result: HeightLimit | null;
}

/**
 * First height at which each search reaches 1: doubled from 1/64 in until it is passed, then by false position (Illinois rule, Dowell
 * & Jarratt 1971). All searches take a try at a time, so that one sweep of the plate serves them all.
 */
function crossings(
  sets: SupportSets,
  moment: OpenMoment,
  searches: readonly Search[],
  drawnRatio: number,
): HeightLimit[] {
  const brackets = searches.map(
    (): Bracket => ({
      lowIn: 0,
      lowRatio: drawnRatio,
      highIn: FIRST_TRY_IN,
      highRatio: null,
      last: null,
      weightLow: 1,
      weightHigh: 1,
      result: null,
    }),
  );
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const open = brackets.flatMap((bracket, i) => (bracket.result === null ? [i] : []));
    if (open.length === 0) break;
    const triesIn = open.map((i) => nextTryIn(brackets[i]!));
    const answers = serviceMoments(
      sets,
      open.map((i, k) => ({ moment, lift: liftOf(searches[i]!, triesIn[k]!) })),
    );
    open.forEach((i, k) => {
      narrow(brackets[i]!, triesIn[k]!, answers[k]!.crackingRatio, searches[i]!.mostIn);
    });
  }
  return brackets.map((bracket) => bracket.result ?? limitAt(bracket.lowIn));
}

function liftOf({ unit, sign }: Search, heightIn: number): Lift {
  return { supportId: unit.supportId, part: unit.part, raiseIn: sign * heightIn };
}

function nextTryIn({ lowIn, lowRatio, highIn, highRatio, weightLow, weightHigh }: Bracket): number {
  if (highRatio === null) return highIn;
  if (!Number.isFinite(highRatio)) return (lowIn + highIn) / 2;
  const below = weightLow * (1 - lowRatio);
  const above = weightHigh * (highRatio - 1);
  return (lowIn * above + highIn * below) / (above + below);
}

function narrow(bracket: Bracket, triedIn: number, ratio: number, mostIn: number): void {
  if (Math.abs(ratio - 1) <= RATIO_TOLERANCE) {
    bracket.result = limitAt(triedIn);
    return;
  }
  if (bracket.highRatio === null) {
    if (ratio >= 1) bracket.highRatio = ratio;
    else if (triedIn >= mostIn) bracket.result = NONE;
    else Object.assign(bracket, { lowIn: triedIn, lowRatio: ratio, highIn: Math.min(mostIn, 2 * triedIn) });
    return;
  }
  const side = ratio < 1 ? 'low' : 'high';
  const isAgain = bracket.last === side;
  if (side === 'low') {
    Object.assign(bracket, { lowIn: triedIn, lowRatio: ratio, weightLow: 1 });
    if (isAgain) bracket.weightHigh /= 2;
  } else {
    Object.assign(bracket, { highIn: triedIn, highRatio: ratio, weightHigh: 1 });
    if (isAgain) bracket.weightLow /= 2;
  }
  bracket.last = side;
  if (bracket.highIn - bracket.lowIn <= HEIGHT_TOLERANCE_IN) bracket.result = limitAt(bracket.lowIn);
}

function limitAt(heightIn: number): HeightLimit {
  return { limitIn: heightIn, sixtyFourths: Math.floor(heightIn * PER_IN + 1e-9) };
}
