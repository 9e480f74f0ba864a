/** A member against the beam it has to be: bending, shear and sag, each as a share of what it may take. */
import { formula, type Line, readingLine } from '../workings';
import type { SolvedBeam } from './beam';
import { beamExtremes, type PartDeflection } from './beam-state';
import { designShearLbf } from './design-shear';
import { type SagLimits, spanSagLimit, tipSagLimit } from './sag-limit';
import type { Symbols } from './symbols';
import type { TimberMember } from './timber-member';

export type BeamCheckId = 'bending' | 'shear' | 'deflection';

export interface BeamCheck {
  readonly id: BeamCheckId;
  /** lbf-in for bending, lbf for shear, in for deflection. */
  readonly demand: number;
  readonly capacity: number;
  readonly unit: 'lbf in' | 'lbf' | 'in';
  /** Demand over capacity; over 1 it does not hold. */
  readonly ratio: number;
  /** Where the demand is largest, in from the left tip; null for shear, which is looked for near every support. */
  readonly atIn: number | null;
  readonly lines: readonly Line[];
}

export interface BeamVerdict {
  /** Bending, shear, deflection. */
  readonly checks: readonly [BeamCheck, BeamCheck, BeamCheck];
  /** The check with the largest ratio. */
  readonly worst: BeamCheck;
  /** Supports from which the beam lifts, by their number from the left. */
  readonly liftsAt: readonly number[];
}

/** Share of its moment that a member uses (a ratio). M, Ma: lbf-in. NDS 2018 3.3.1. */
export const bendingShare = formula<Symbols<'M' | 'Ma'>>({
  symbol: 'ub',
  label: 'share of its bending strength that is used',
  formula: 'M / Ma',
  units: { M: 'lbf in', Ma: 'lbf in' },
  unit: '',
  source: 'NDS 2018 3.3.1',
  compute: ({ M, Ma }) => M / Ma,
});

/** Share of its shear that a member uses (a ratio). V, Va: lbf. NDS 2018 3.4.1. */
export const shearShare = formula<Symbols<'V' | 'Va'>>({
  symbol: 'uv',
  label: 'share of its shear strength that is used',
  formula: 'V / Va',
  units: { V: 'lbf', Va: 'lbf' },
  unit: '',
  source: 'NDS 2018 3.4.1',
  compute: ({ V, Va }) => V / Va,
});

/** Share of its sag that a member uses (a ratio). delta, dlim: in. */
export const sagShare = formula<Symbols<'delta' | 'dlim'>>({
  symbol: 'ud',
  label: 'share of the sag allowed that is used',
  formula: 'delta / dlim',
  units: { delta: 'in', dlim: 'in' },
  unit: '',
  source: 'ACI 347R-14 and common practice',
  compute: ({ delta, dlim }) => delta / dlim,
});

/** A reaction that lifts by no more than this part of the largest reaction is rounding. */
const LIFT_RATIO = 1e-9;

const SOLVED = 'three-moment equation, any structures text';

/**
 * Checks a member as the solved beam: bending (NDS 2018 3.3), shear a depth from the supports (3.4), and the sag of each span and
 * tip against L/n and the plain limit. `beam` must have been solved with the member's own stiffness.
 */
export function checkBeam(beam: SolvedBeam, member: TimberMember, limits: SagLimits): BeamVerdict {
  const { sagging, hogging, deflections } = beamExtremes(beam);
  const checks = [
    checkBending(-hogging.momentLbfIn > sagging.momentLbfIn ? hogging : sagging, member),
    checkShear(designShearLbf(beam, member.section.depthIn), member),
    worstOf(deflections.map((each) => checkSag(each, member, limits))),
  ] as const;
  const largest = Math.max(...beam.supports.map(({ reactionLbf }) => Math.abs(reactionLbf)));
  const liftsAt = beam.supports.flatMap(({ reactionLbf }, i) =>
    reactionLbf < -LIFT_RATIO * largest ? [i] : [],
  );
  return { checks, worst: worstOf(checks), liftsAt };
}

function worstOf(checks: readonly BeamCheck[]): BeamCheck {
  return checks.reduce((worst, check) => (check.ratio > worst.ratio ? check : worst));
}

function checkBending(
  at: { readonly atIn: number; readonly momentLbfIn: number },
  { momentLbfIn, lines }: TimberMember,
): BeamCheck {
  const demand = Math.abs(at.momentLbfIn);
  const label = at.momentLbfIn < 0 ? 'largest moment, over a support' : 'largest moment, between supports';
  const share = bendingShare({ M: demand, Ma: momentLbfIn });
  const reading = readingLine({ symbol: 'M', label, value: demand, unit: 'lbf in', from: SOLVED });
  return {
    id: 'bending',
    demand,
    capacity: momentLbfIn,
    unit: 'lbf in',
    ratio: share.value,
    atIn: at.atIn,
    lines: [reading, ...lines.bending, share.line],
  };
}

function checkShear(demand: number, { shearLbf, lines }: TimberMember): BeamCheck {
  const share = shearShare({ V: demand, Va: shearLbf });
  const reading = readingLine({
    symbol: 'V',
    label: 'largest shear, the load within a depth of the supports left out',
    value: demand,
    unit: 'lbf',
    from: `${SOLVED}; NDS 2018 3.4.3.1(a)`,
  });
  return {
    id: 'shear',
    demand,
    capacity: shearLbf,
    unit: 'lbf',
    ratio: share.value,
    atIn: null,
    lines: [reading, ...lines.shear, share.line],
  };
}

function checkSag(part: PartDeflection, { lines }: TimberMember, limits: SagLimits): BeamCheck {
  const { spanLimit: n, deflectionLimitIn: dmax } = limits;
  const isSpan = part.kind === 'span';
  const limit = isSpan
    ? spanSagLimit({ L: part.lengthIn, n, dmax })
    : tipSagLimit({ a: part.lengthIn, n, dmax });
  const demand = Math.abs(part.deflectionIn);
  const share = sagShare({ delta: demand, dlim: limit.value });
  const reading = readingLine({
    symbol: 'delta',
    label: `largest ${part.deflectionIn < 0 ? 'rise' : 'sag'} of the ${isSpan ? 'span' : 'overhanging end'}`,
    value: demand,
    unit: 'in',
    from: SOLVED,
  });
  return {
    id: 'deflection',
    demand,
    capacity: limit.value,
    unit: 'in',
    ratio: share.value,
    atIn: part.atIn,
    lines: [...lines.stiffness, reading, limit.line, share.line],
  };
}
