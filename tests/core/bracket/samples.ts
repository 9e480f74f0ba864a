/** Brackets of the trade for tests: a fresh one a call. */
import type { ArmSection, BracketFixing, BracketSupport } from '../../../src-core/job';

export const TUBE: ArmSection = { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 36_000 };
export const FLAT: ArmSection = { kind: 'flat-bar', widthIn: 2, depthIn: 0.5, yieldPsi: 36_000 };
export const ANGLE: ArmSection = {
  kind: 'angle',
  legWidthIn: 2,
  legDepthIn: 2,
  wallIn: 0.25,
  yieldPsi: 36_000,
};
export const TEE: ArmSection = {
  kind: 'tee',
  flangeWidthIn: 2,
  depthIn: 2,
  wallIn: 0.25,
  yieldPsi: 36_000,
};
export const BRACE: Extract<ArmSection, { kind: 'knee-brace' }> = {
  kind: 'knee-brace',
  species: 'spf',
  widthIn: 1.5,
  depthIn: 3.5,
  dropIn: 12,
};

export const LAGS: Extract<BracketFixing, { kind: 'screws' | 'lags' }> = {
  kind: 'lags',
  diameterIn: 0.375,
  threadIn: 2.5,
  topCount: 2,
  totalCount: 4,
  leverIn: 9,
  specificGravity: 0.42,
  lateralLbf: null,
};

export const BOLTS: Extract<BracketFixing, { kind: 'through-bolts' }> = {
  kind: 'through-bolts',
  diameterIn: 0.375,
  topCount: 1,
  totalCount: 2,
  leverIn: 9,
  washerIn: 1.25,
};

export function bracketOf(changes: Partial<BracketSupport> = {}): BracketSupport {
  return {
    id: 'k1',
    kind: 'bracket',
    firstDay: 0,
    lastDay: null,
    gapIn: 0,
    raisedIn: 0,
    stiffness: null,
    hold: { kind: 'resting' },
    roots: [{ xIn: 0, yIn: 0 }],
    directionDeg: 90,
    reachIn: 10,
    seatWidthIn: 1.5,
    heelIn: 10,
    arm: TUBE,
    backing: 'timber-stud',
    fixing: LAGS,
    make: 'rolled',
    ...changes,
  };
}

/** Relative difference of a result from what is expected. */
export function apart(actual: number, expected: number): number {
  return Math.abs(actual - expected) / Math.abs(expected);
}
