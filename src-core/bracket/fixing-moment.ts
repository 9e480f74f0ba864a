import type { BracketFixing, BracketSupport } from '../job';
import { formula, type Line } from '../workings';
import { armProperties } from './arm-properties';
import { BRACE_TIMBER, studBearingPsi } from './brace-timber';
import type { Symbols } from './symbols';
import { boltArea, boltPull, COMMON_BOLT, washerArea, washerPull } from './through-bolts';
import { bearingAreaFactor, heelBearing, toeLever } from './wall-couple';
import { adjustedWithdrawal, withdrawalOf } from './withdrawal';

/** Length over which the toe of a heel leg is taken to press on the wall, in. Common practice, no source. */
const TOE_BEARING_IN = 1;
/** Width of the narrow face of a stud, in. */
export const STUD_FACE_IN = 1.5;
/** Keeps the flexibility of a bracket finite where its fixing is worth nothing (a washer smaller than its hole). */
const LEAST_MOMENT_LBF_IN = 1;

/** Moment that the top row may take, lbf-in. T1: pull of one fastener, lbf; n: fasteners in the row; z: lever, in. Statics. */
export const rowMoment = formula<Symbols<'T1' | 'n' | 'z'>>({
  symbol: 'Mf',
  label: 'moment that the top row of fasteners may take',
  formula: 'T1 * n * z',
  units: { T1: 'lbf', n: '', z: 'in' },
  unit: 'lbf in',
  source: 'statics',
  compute: ({ T1, n, z }) => T1 * n * z,
});

/** Moment that the bearing of the toe may take, lbf-in. Ca: push that it may press into the stud, lbf; z: lever, in. Statics. */
export const toeMoment = formula<Symbols<'Ca' | 'z'>>({
  symbol: 'Mt',
  label: 'moment that the bearing of the toe may take',
  formula: 'Ca * z',
  units: { Ca: 'lbf', z: 'in' },
  unit: 'lbf in',
  source: 'statics',
  compute: ({ Ca, z }) => Ca * z,
});

/** Moment of a rated bracket at the wall face, lbf-in. Pr: rated load, lbf; er: distance at which it holds, in. Statics. */
export const ratedMoment = formula<Symbols<'Pr' | 'er'>>({
  symbol: 'Mr',
  label: 'moment of the rated load',
  formula: 'Pr * er',
  units: { Pr: 'lbf', er: 'in' },
  unit: 'lbf in',
  source: 'statics; rating as entered',
  compute: ({ Pr, er }) => Pr * er,
});

/** Length of the toe's bearing, in: an inch, less on a short heel. Common practice, no source. */
export function toeBearingIn(bracket: BracketSupport, rowAboveToeIn: number): number {
  return Math.min(TOE_BEARING_IN, bracket.heelIn / 4, rowAboveToeIn / 2);
}

/** Height of the top row above the toe, in, never above the leg that it fixes. */
export function rowAboveToeIn(bracket: BracketSupport, leverIn: number): number {
  const legIn =
    bracket.arm.kind === 'knee-brace' ? Math.max(bracket.heelIn, bracket.arm.dropIn) : bracket.heelIn;
  return Math.min(leverIn, legIn);
}

/** Washer diameter that bears on the timber: no wider than the stud. */
export function effectiveWasherIn(bracket: BracketSupport, washerIn: number): number {
  return bracket.backing === 'timber-stud' ? Math.min(washerIn, STUD_FACE_IN) : washerIn;
}

export interface FixingMoment {
  /** Moment at the wall face that the fixing may take. */
  readonly ratedLbfIn: number;
  readonly lines: readonly Line[];
}

/**
 * Rated moment of a bracket's fixing at the wall face, lbf-in, dry timber, CD 1.0: the pull of its top row or the push of its
 * toe on a stud, whichever is less, times the lever; or the rating as entered. The arm's own moment does not cap it: a
 * slender arm on strong lags bends, which its own flexibility counts already, and a cap would charge it once more as a
 * fixing that turns further. NDS 2018 12.2, 3.10, AISC 360-22 J3.
 */
export function fixingMoment(bracket: BracketSupport): FixingMoment {
  const fixing = couple(bracket, bracket.fixing);
  return { ratedLbfIn: Math.max(LEAST_MOMENT_LBF_IN, fixing.ratedLbfIn), lines: fixing.lines };
}

/** Push that the toe of a heel may press into a stud, lbf, and its lines. NDS 2018 3.10. */
export function toeBearing(
  bracket: BracketSupport,
  toe: { readonly lengthIn: number; readonly gravity: number; readonly wetRatio: number },
): { pushLbf: number; lines: Line[] } {
  const factor = bearingAreaFactor({ lb: toe.lengthIn });
  const push = heelBearing({
    Fcp: studBearingPsi(toe.gravity),
    CM: toe.wetRatio,
    Cb: factor.value,
    w: Math.min(STUD_FACE_IN, armProperties(bracket.arm).topWidthIn),
    lt: toe.lengthIn,
  });
  return { pushLbf: push.value, lines: [factor.line, push.line] };
}

/** Specific gravity of the timber behind: bolts carry none in the job; spruce-pine-fir is the softer of the usual studs. */
export function gravityOf(fixing: Exclude<BracketFixing, { kind: 'rated' }>): number {
  return fixing.kind === 'through-bolts' ? BRACE_TIMBER.spf.gravity : fixing.specificGravity;
}

function couple(bracket: BracketSupport, fixing: BracketFixing): FixingMoment {
  if (fixing.kind === 'rated') {
    const rated = ratedMoment({ Pr: fixing.ratedLoadLbf, er: fixing.ratedAtIn });
    return { ratedLbfIn: rated.value, lines: [rated.line] };
  }
  const h = rowAboveToeIn(bracket, fixing.leverIn);
  const lengthIn = toeBearingIn(bracket, h);
  const lever = toeLever({ h, lt: lengthIn });
  const pull = fixing.kind === 'through-bolts' ? boltRow(bracket, fixing) : screwRow(fixing);
  const moment = rowMoment({ T1: pull.pullLbf, n: fixing.topCount, z: lever.value });
  const row = { ratedLbfIn: moment.value, lines: [...pull.lines, lever.line, moment.line] };
  if (bracket.backing !== 'timber-stud') return row;
  const toe = toeBearing(bracket, { lengthIn, gravity: gravityOf(fixing), wetRatio: 1 });
  const push = toeMoment({ Ca: toe.pushLbf, z: lever.value });
  return push.value < moment.value
    ? { ratedLbfIn: push.value, lines: [...toe.lines, lever.line, push.line] }
    : row;
}

function screwRow(fixing: Extract<BracketFixing, { kind: 'screws' | 'lags' }>): {
  pullLbf: number;
  lines: Line[];
} {
  const perIn = withdrawalOf(fixing.kind)({ G: fixing.specificGravity, D: fixing.diameterIn });
  const pull = adjustedWithdrawal({ W: perIn.value, p: fixing.threadIn, CD: 1, CM: 1, Ceg: 1 });
  return { pullLbf: pull.value, lines: [perIn.line, pull.line] };
}

function boltRow(
  bracket: BracketSupport,
  fixing: Extract<BracketFixing, { kind: 'through-bolts' }>,
): { pullLbf: number; lines: Line[] } {
  const area = boltArea({ D: fixing.diameterIn });
  const bolt = boltPull({ Fnt: COMMON_BOLT.pullPsi, Fnv: COMMON_BOLT.shearPsi, V: 0, Ab: area.value });
  const under = washerArea({ dw: effectiveWasherIn(bracket, fixing.washerIn), D: fixing.diameterIn });
  const washer = washerPull({ Fcp: studBearingPsi(BRACE_TIMBER.spf.gravity), CM: 1, Aw: under.value });
  return washer.value < bolt.value
    ? { pullLbf: washer.value, lines: [under.line, washer.line] }
    : { pullLbf: bolt.value, lines: [area.line, bolt.line] };
}
