import { readingLine } from '../workings';
import { armDeflectionCheck, armStrengthChecks } from './arm-checks';
import { armProperties } from './arm-properties';
import {
  type BracketCheck,
  type BracketLoad,
  bracketCheck,
  type ServiceLoad,
  serviceLoad,
} from './bracket-check';
import { fixingChecks } from './fixing-checks';
import { concreteBearing, factoredLoad } from './wall-couple';

/** Length of arm on which a sagging slab is taken to press, in. Common practice, no source. */
const ARM_BEARING_IN = 1;

/**
 * Every way in which one bracket may fail under its load: arm or brace, sinking, fasteners, heel on the stud, concrete on
 * the arm, reach; lbf, lbf-in, in. Ask `bracketIsDecidable` first: the numbers of a bracket that it refuses are information.
 * AISC 360-22, NDS 2018, ACI 318-19; the clauses stand in the lines.
 */
export function checkBracketCouple(load: BracketLoad): readonly BracketCheck[] {
  if (
    !(
      load.deadLbf >= 0 &&
      load.liveLbf >= 0 &&
      load.atIn >= 0 &&
      load.atIn <= load.bracket.reachIn * (1 + 1e-9)
    )
  ) {
    throw new Error(
      `a bracket of ${load.bracket.reachIn} in got ${load.deadLbf} and ${load.liveLbf} lbf at ${load.atIn} in`,
    );
  }
  const total = serviceLoad({ D: load.deadLbf, L: load.liveLbf });
  const service: ServiceLoad = { ...load, totalLbf: total.value, totalLine: total.line };
  return [
    ...armStrengthChecks(service),
    armDeflectionCheck(service),
    ...fixingChecks(service),
    concreteCheck(load),
    reachCheck(load),
  ];
}

/** The check nearest to its limit, or past it the most. */
export function worstBracketCheck(checks: readonly BracketCheck[]): BracketCheck {
  const first = checks[0];
  if (!first) throw new Error('no bracket checks to choose from');
  return checks.reduce((worst, each) => (each.ratio > worst.ratio ? each : worst), first);
}

function concreteCheck(load: BracketLoad): BracketCheck {
  const factored = factoredLoad({ D: load.deadLbf, L: load.liveLbf });
  const widthIn = Math.min(load.bracket.seatWidthIn, armProperties(load.bracket.arm).topWidthIn);
  const capacity = concreteBearing({ fc: load.strengthPsi, A1: widthIn * ARM_BEARING_IN });
  return bracketCheck({
    id: 'concrete-bearing',
    label: 'Concrete pressed on the arm',
    demand: factored.value,
    capacity: capacity.value,
    unit: 'lbf',
    lines: [factored.line, capacity.line],
  });
}

function reachCheck(load: BracketLoad): BracketCheck {
  const line = readingLine({
    symbol: 'a',
    label: 'reach of the bracket',
    value: load.bracket.reachIn,
    unit: 'in',
    from: 'drawn; limit: common practice, no source',
  });
  return bracketCheck({
    id: 'reach',
    label: 'Reach of the bracket',
    demand: load.bracket.reachIn,
    capacity: load.reachLimitIn,
    unit: 'in',
    lines: [line],
  });
}
