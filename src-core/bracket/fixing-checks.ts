import type { BracketFixing } from '../job';
import { type Line, readingLine } from '../workings';
import { rootMoment } from './arm-checks';
import { armProperties } from './arm-properties';
import { studBearingPsi, WET_FACTOR } from './brace-timber';
import { type BracketCheck, bracketCheck, type ServiceLoad } from './bracket-check';
import {
  effectiveWasherIn,
  gravityOf,
  ratedMoment,
  rowAboveToeIn,
  STUD_FACE_IN,
  toeBearing,
  toeBearingIn,
} from './fixing-moment';
import { lateralValue } from './lateral';
import { boltArea, boltPull, boltShear, COMMON_BOLT, washerArea, washerPull } from './through-bolts';
import { fastenerShare, toeLever, wallCouple } from './wall-couple';
import {
  adjustedLateral,
  adjustedWithdrawal,
  combinedFastener,
  fastenerResultant,
  leastEdgeDistance,
  leastPenetration,
  type TimberScrew,
  withdrawalOf,
} from './withdrawal';

/** Depth of a 2x4 stud, in: length over which a through-bolt is taken to bear. */
const STUD_DEPTH_IN = 3.5;

type Bolts = Extract<BracketFixing, { kind: 'through-bolts' }>;
type Rated = Extract<BracketFixing, { kind: 'rated' }>;

/** What one fastener of the top row gets: pull, shear, and how they came about. */
interface Share {
  readonly pullLbf: number;
  readonly shearLbf: number;
  /** Push of the heel's toe. */
  readonly toeLbf: number;
  readonly toeLengthIn: number;
  readonly lines: readonly Line[];
}

/** Fasteners, heel bearing, or the entered rating. NDS 2018 12; AISC 360-22 J3. */
export function fixingChecks(load: ServiceLoad): BracketCheck[] {
  const { fixing } = load.bracket;
  if (fixing.kind === 'rated') return ratedChecks(load, fixing);
  const share = shareOf(load, fixing);
  const own =
    fixing.kind === 'through-bolts' ? boltChecks(load, fixing, share) : screwChecks(load, fixing, share);
  return [...own, ...edgeChecks(load, fixing.diameterIn), ...heelChecks(load, gravityOf(fixing), share)];
}

function shareOf(load: ServiceLoad, fixing: TimberScrew | Bolts): Share {
  const h = rowAboveToeIn(load.bracket, fixing.leverIn);
  const toeLengthIn = toeBearingIn(load.bracket, h);
  const lever = toeLever({ h, lt: toeLengthIn });
  const couple = wallCouple({ loadLbf: load.totalLbf, atIn: load.atIn, leverIn: lever.value });
  const pull = fastenerShare({ F: couple.pullLbf, n: fixing.topCount });
  // A total below the top row is a slip of the pen; the row itself is then all there is.
  const shear = fastenerShare({ F: couple.shearLbf, n: Math.max(fixing.topCount, fixing.totalCount) });
  return {
    pullLbf: pull.value,
    shearLbf: shear.value,
    toeLbf: couple.pushLbf,
    toeLengthIn,
    lines: [load.totalLine, lever.line, ...couple.lines, pull.line, shear.line],
  };
}

function screwChecks(load: ServiceLoad, fixing: TimberScrew, share: Share): BracketCheck[] {
  const perIn = withdrawalOf(fixing.kind)({ G: fixing.specificGravity, D: fixing.diameterIn });
  const CM = load.isWet ? WET_FACTOR.fastener : 1;
  const pull = adjustedWithdrawal({ W: perIn.value, p: fixing.threadIn, CD: 1, CM, Ceg: 1 });
  const lateral = lateralOf(load, fixing);
  const capacityLines = [perIn.line, pull.line, ...lateral.lines];
  const resultant = fastenerResultant({ T: share.pullLbf, V: share.shearLbf });
  const combined =
    resultant.value > 0
      ? combinedFastener({ Wp: pull.value, Z: lateral.valueLbf, T: share.pullLbf, V: share.shearLbf })
      : null;
  const least = leastPenetration({ k: fixing.kind === 'lags' ? 4 : 6, D: fixing.diameterIn });
  return [
    bracketCheck({
      id: 'top-fastener',
      label: 'Top fastener, pulled and sheared at once',
      demand: resultant.value,
      capacity: combined?.value ?? lateral.valueLbf,
      unit: 'lbf',
      lines: [...share.lines, resultant.line, ...capacityLines, ...(combined ? [combined.line] : [])],
    }),
    bracketCheck({
      id: 'fastener-penetration',
      label: 'Thread of the fasteners in the timber',
      demand: least.value,
      capacity: fixing.threadIn,
      unit: 'in',
      lines: [least.line],
    }),
  ];
}

function lateralOf(load: ServiceLoad, fixing: TimberScrew | Bolts): { valueLbf: number; lines: Line[] } {
  if (fixing.kind !== 'through-bolts' && fixing.lateralLbf !== null) {
    const line = readingLine({
      symbol: 'Z',
      label: 'shear that one fastener may take',
      value: fixing.lateralLbf,
      unit: 'lbf',
      from: 'entered in the job',
    });
    return { valueLbf: fixing.lateralLbf, lines: [line] };
  }
  const arm = load.bracket.arm;
  const reference = lateralValue({
    kind: fixing.kind,
    diameterIn: fixing.diameterIn,
    bearingIn: fixing.kind === 'through-bolts' ? STUD_DEPTH_IN : fixing.threadIn,
    specificGravity: gravityOf(fixing),
    sideIn: armProperties(arm).sidePlateIn,
    side: arm.kind === 'knee-brace' ? 'timber' : 'steel',
    grain: 'along',
  });
  const adjusted = adjustedLateral({
    Z: reference.referenceLbf,
    CD: 1,
    CM: load.isWet ? WET_FACTOR.fastener : 1,
    Ceg: 1,
  });
  return { valueLbf: adjusted.value, lines: [...reference.lines, adjusted.line] };
}

function boltChecks(load: ServiceLoad, fixing: Bolts, share: Share): BracketCheck[] {
  const area = boltArea({ D: fixing.diameterIn });
  const shear = boltShear({ Fnv: COMMON_BOLT.shearPsi, Ab: area.value });
  const pull = boltPull({
    Fnt: COMMON_BOLT.pullPsi,
    Fnv: COMMON_BOLT.shearPsi,
    V: share.shearLbf,
    Ab: area.value,
  });
  const under = washerArea({ dw: effectiveWasherIn(load.bracket, fixing.washerIn), D: fixing.diameterIn });
  const washer = washerPull({
    Fcp: studBearingPsi(gravityOf(fixing)),
    CM: load.isWet ? WET_FACTOR.bearing : 1,
    Aw: under.value,
  });
  const lateral = lateralOf(load, fixing);
  const lbf = 'lbf' as const;
  return [
    bracketCheck({
      id: 'bolt-pull',
      label: 'Top bolt in tension',
      demand: share.pullLbf,
      capacity: pull.value,
      unit: lbf,
      lines: [...share.lines, area.line, pull.line],
    }),
    bracketCheck({
      id: 'washer-bearing',
      label: 'Washer of the top bolt, pressed into the timber',
      demand: share.pullLbf,
      capacity: washer.value,
      unit: lbf,
      lines: [...share.lines, under.line, washer.line],
    }),
    bracketCheck({
      id: 'bolt-shear',
      label: 'Bolt in shear',
      demand: share.shearLbf,
      capacity: shear.value,
      unit: lbf,
      lines: [...share.lines, area.line, shear.line],
    }),
    bracketCheck({
      id: 'bolt-lateral',
      label: 'Timber under the bolt in shear',
      demand: share.shearLbf,
      capacity: lateral.valueLbf,
      unit: lbf,
      lines: [...share.lines, ...lateral.lines],
    }),
  ];
}

function edgeChecks(load: ServiceLoad, diameterIn: number): BracketCheck[] {
  if (load.bracket.backing !== 'timber-stud') return [];
  const least = leastEdgeDistance({ D: diameterIn });
  return [
    bracketCheck({
      id: 'fastener-edge',
      label: 'Fasteners from the edge of the stud',
      demand: least.value,
      capacity: STUD_FACE_IN / 2,
      unit: 'in',
      lines: [least.line],
    }),
  ];
}

function heelChecks(load: ServiceLoad, gravity: number, share: Share): BracketCheck[] {
  if (load.bracket.backing !== 'timber-stud') return [];
  const toe = toeBearing(load.bracket, {
    lengthIn: share.toeLengthIn,
    gravity,
    wetRatio: load.isWet ? WET_FACTOR.bearing : 1,
  });
  return [
    bracketCheck({
      id: 'heel-bearing',
      label: 'Toe of the heel, pressed into the stud',
      demand: share.toeLbf,
      capacity: toe.pushLbf,
      unit: 'lbf',
      lines: [...share.lines, ...toe.lines],
    }),
  ];
}

function ratedChecks(load: ServiceLoad, fixing: Rated): BracketCheck[] {
  const rated = ratedMoment({ Pr: fixing.ratedLoadLbf, er: fixing.ratedAtIn });
  const moment = rootMoment({ P: load.totalLbf, e: load.atIn });
  return [
    bracketCheck({
      id: 'rated-load',
      label: 'Load against the rating of the bracket',
      demand: load.totalLbf,
      capacity: fixing.ratedLoadLbf,
      unit: 'lbf',
      lines: [load.totalLine],
    }),
    bracketCheck({
      id: 'rated-moment',
      label: 'Moment against the rating of the bracket',
      demand: moment.value,
      capacity: rated.value,
      unit: 'lbf in',
      lines: [load.totalLine, moment.line, rated.line],
    }),
  ];
}
