import type { ArmSection, BracketFixing, BracketSupport } from '../job';
import { armProperties } from './arm-properties';

/** A bracket as any steel yard or lumber yard has it, with a fixing that suits a timber stud. */
export interface StockArm {
  readonly id: string;
  /** A builder's words. */
  readonly words: string;
  readonly arm: ArmSection;
  readonly make: BracketSupport['make'];
  /** Height of the leg on the wall. */
  readonly heelIn: number;
  readonly seatWidthIn: number;
  readonly fixing: BracketFixing;
  /** One member. */
  readonly weightLbPerFt: number;
}

const STOCK_YIELD_PSI = 36_000; // ASTM A36, and the least usual for welded tube
const STUD_GRAVITY = 0.42; // spruce-pine-fir, NDS 2018 Table 12.3.3A

/** One 3/8 lag in the top row, one above another down the middle of a single stud. */
const LAGS_IN_A_STUD: BracketFixing = {
  kind: 'lags',
  diameterIn: 0.375,
  threadIn: 2.5,
  topCount: 1,
  totalCount: 3,
  leverIn: 11,
  specificGravity: STUD_GRAVITY,
  lateralLbf: null,
};

function stockArm(id: string, words: string, arm: ArmSection): StockArm {
  const section = armProperties(arm);
  const isTimber = arm.kind === 'knee-brace';
  return {
    id,
    words,
    arm,
    make: isTimber ? 'timber' : 'bought',
    heelIn: 12,
    seatWidthIn: section.topWidthIn,
    fixing: LAGS_IN_A_STUD,
    weightLbPerFt: section.weightLbPerFt,
  };
}

function flatBar(widthIn: number, depthIn: number): ArmSection {
  return { kind: 'flat-bar', widthIn, depthIn, yieldPsi: STOCK_YIELD_PSI };
}

function tube(widthIn: number, depthIn: number, wallIn: number): ArmSection {
  return { kind: 'tube', widthIn, depthIn, wallIn, yieldPsi: STOCK_YIELD_PSI };
}

/** Generic arms, lightest first within a shape. Sizes common in any yard; no source. */
export const STOCK_ARMS: readonly StockArm[] = [
  stockArm('flat-2x0.5', 'flat bar 2 x 1/2 in, laid flat', flatBar(2, 0.5)),
  stockArm('flat-2x0.75', 'flat bar 2 x 3/4 in, laid flat', flatBar(2, 0.75)),
  stockArm('flat-3x0.75', 'flat bar 3 x 3/4 in, laid flat', flatBar(3, 0.75)),
  stockArm('tube-2x1x0.12', 'tube 2 x 1 in, wall .120, laid flat', tube(2, 1, 0.12)),
  stockArm('tube-1.5x1.5x0.12', 'square tube 1-1/2 in, wall .120', tube(1.5, 1.5, 0.12)),
  stockArm('tube-2x2x0.12', 'square tube 2 in, wall .120', tube(2, 2, 0.12)),
  stockArm('angle-2x2x0.25', 'angle 2 x 2 x 1/4 in', {
    kind: 'angle',
    legWidthIn: 2,
    legDepthIn: 2,
    wallIn: 0.25,
    yieldPsi: STOCK_YIELD_PSI,
  }),
  stockArm('tee-2x2x0.25', 'tee 2 x 2 x 1/4 in', {
    kind: 'tee',
    flangeWidthIn: 2,
    depthIn: 2,
    wallIn: 0.25,
    yieldPsi: STOCK_YIELD_PSI,
  }),
  stockArm('knee-brace-2x4', 'timber knee brace of 2x4, drop 12 in', {
    kind: 'knee-brace',
    species: 'spf',
    widthIn: 1.5,
    depthIn: 3.5,
    dropIn: 12,
  }),
];
