/** What the screws and lags of falsework may take, and how many a joint needs. */
import {
  adjustedLateral,
  adjustedWithdrawal,
  combinedFastener,
  lagWithdrawal,
  lateralValue,
} from '../bracket';
import type { Job } from '../job';
import { SPECIES } from '../timber';
import type { Line } from '../workings';
import { formula } from '../workings';
import { LAG, SCREW, wetFastenerFactor } from './practice';

/** Thickness of the stick under a fastener's head, in. */
const SIDE_IN = 1.5;
/** End grain factor of a screw in shear. NDS 2018 12.5.2, from memory. */
const END_GRAIN_SHEAR = 0.67;
/** Most screws that a joint of 2x lumber has room for. Common practice, no source. */
export const MOST_SCREWS = 8;

/** What several screws of a joint may take together, lbf. n: a count; Za: lbf. */
export const screwGroup = formula<Readonly<Record<'n' | 'Za', number>>>({
  symbol: 'Zn',
  label: 'shear that the screws of the joint may take together',
  formula: 'n * Za',
  units: { n: '', Za: 'lbf' },
  unit: 'lbf',
  source: 'arithmetic',
  compute: ({ n, Za }) => n * Za,
});

export interface Screws {
  readonly count: number;
  readonly capacityLbf: number;
  readonly lines: readonly Line[];
}

/** The least number of screws that takes a shear, up to what a joint has room for. In end grain they take two thirds. */
export function joinScrews(job: Job, shearLbf: number, isEndGrain = true): Screws {
  const { falsework } = job;
  const reference = lateralValue({
    kind: SCREW.kind,
    diameterIn: SCREW.diameterIn,
    bearingIn: SCREW.lengthIn - SIDE_IN - SCREW.tipIn,
    specificGravity: SPECIES[falsework.species].gravity,
    sideIn: SIDE_IN,
    side: 'timber',
    grain: 'across',
  });
  const one = adjustedLateral({
    Z: reference.referenceLbf,
    CD: falsework.durationFactor,
    CM: wetFastenerFactor(falsework.wetService),
    Ceg: isEndGrain ? END_GRAIN_SHEAR : 1,
  });
  const count = Math.min(MOST_SCREWS, Math.max(2, Math.ceil(shearLbf / one.value - 1e-9)));
  const group = screwGroup({ n: count, Za: one.value });
  return { count, capacityLbf: group.value, lines: [...reference.lines, one.line, group.line] };
}

export interface LagValues {
  readonly lateralLbf: number;
  readonly withdrawalLbf: number;
  readonly lines: readonly Line[];
}

/** Shear and pull of one lag through a ledger into a stud, lbf. */
export function lagValues(job: Job): LagValues {
  const { falsework } = job;
  const G = SPECIES[falsework.species].gravity;
  const threadIn = LAG.lengthIn - SIDE_IN - LAG.tipIn;
  const CM = wetFastenerFactor(falsework.wetService);
  const CD = falsework.durationFactor;
  const reference = lateralValue({
    kind: LAG.kind,
    diameterIn: LAG.diameterIn,
    bearingIn: threadIn,
    specificGravity: G,
    sideIn: SIDE_IN,
    side: 'timber',
    grain: 'across',
  });
  const lateral = adjustedLateral({ Z: reference.referenceLbf, CD, CM, Ceg: 1 });
  const perInch = lagWithdrawal({ G, D: LAG.diameterIn });
  const pull = adjustedWithdrawal({ W: perInch.value, p: threadIn, CD, CM, Ceg: 1 });
  return {
    lateralLbf: lateral.value,
    withdrawalLbf: pull.value,
    lines: [...reference.lines, lateral.line, perInch.line, pull.line],
  };
}

/** Pull and shear on one lag, lbf, against what it takes in their direction. */
export function lagTogether(values: LagValues, pullLbf: number, shearLbf: number) {
  const capacity = combinedFastener({
    Wp: values.withdrawalLbf,
    Z: values.lateralLbf,
    T: pullLbf,
    V: shearLbf,
  });
  return { demandLbf: Math.hypot(pullLbf, shearLbf), capacityLbf: capacity.value, line: capacity.line };
}
