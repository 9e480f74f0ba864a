/** Strength and stiffness of a piece's concrete on a day. */
import type { StrengthAtAge } from '../concrete';
import {
  crackingMoment,
  elasticModulus,
  equivalentAgeOf,
  modulusOfRupture,
  plainCrackingLimit,
  REFERENCE_TEMPERATURE_C,
  strengthAtAge,
} from '../concrete';
import type { Job, Mix, Piece } from '../job';
import { UNTESTED_STRENGTH_PSI } from '../job';
import { readingLine } from '../workings';
import type { ConcreteState } from './types';

const POISSON = 0.2;
/** Without a day a piece is looked at finished and this old. */
export const FINISHED_AGE_DAYS = 28;

/**
 * Strength of a piece's concrete `ageDays` after the pour: ACI 209R at the equivalent age (ASTM C1074) that the temperature of each
 * day since the pour makes, overridden by cylinder tests. Frost adds nothing, and no day takes anything away.
 */
export function strengthOf(job: Job, piece: Piece, mix: Mix, ageDays: number): StrengthAtAge {
  const input = { f28Psi: mix.strengthPsi ?? UNTESTED_STRENGTH_PSI, cement: mix.cement };
  const lastAgeDays = Math.max(ageDays, ...mix.cylinders.map((test) => test.ageDays));
  const temperaturesC = Array.from({ length: Math.max(1, Math.ceil(lastAgeDays)) }, (_, i) =>
    airOnDayC(job, piece.pourDay + i),
  );
  const [firstC] = temperaturesC as [number];
  if (temperaturesC.every((temperatureC) => temperatureC === firstC)) {
    return strengthAtAge({ ...input, ageDays, temperatureC: firstC, cylinderResults: mix.cylinders });
  }
  // the age and the tests' ages alike as days at the reference temperature
  const equivalent = (age: number) => Math.max(LEAST_SHARE * age, equivalentAgeDays(temperaturesC, age));
  const grown = strengthAtAge({
    ...input,
    ageDays: equivalent(ageDays),
    cylinderResults: mix.cylinders.map((test) => ({ ...test, ageDays: equivalent(test.ageDays) })),
  });
  const line = readingLine({
    symbol: 'te',
    label: `Age of ${ageDays} d as days at ${REFERENCE_TEMPERATURE_C} deg C, each day at its own temperature`,
    value: grown.equivalentAgeDays,
    unit: 'd',
    from: 'ASTM C1074 (equivalent age), constants from memory',
  });
  return { ...grown, lines: [line, ...grown.lines] };
}

/** A day of frost counts for this much, so that ages in it keep their order and a test taken in it stands. */
const LEAST_SHARE = 1e-6;

function equivalentAgeDays(temperaturesC: readonly number[], ageDays: number): number {
  const spells = temperaturesC.flatMap((temperatureC, i) => {
    const durationDays = Math.min(1, ageDays - i);
    return durationDays > 0 ? [{ temperatureC, durationDays }] : [];
  });
  return equivalentAgeOf(spells).equivalentAgeDays;
}

/**
 * The concrete `ageDays` after the pour, or at its 28-day strength where `ageDays` is null. Strength is that of `strengthOf`,
 * capped at the 28-day figure, because no more is ever counted on.
 */
export function concreteState(job: Job, piece: Piece, mix: Mix, ageDays: number | null): ConcreteState {
  const strength28Psi = mix.strengthPsi ?? UNTESTED_STRENGTH_PSI;
  const age = ageDays ?? FINISHED_AGE_DAYS;
  const grown = ageDays === null ? null : strengthOf(job, piece, mix, ageDays);
  const strengthPsi = Math.min(strength28Psi, Math.max(1, grown?.strengthPsi ?? strength28Psi));
  const fr = modulusOfRupture({ fc: strengthPsi, lambda: mix.lambda });
  const Mcr = crackingMoment({ fr: fr.value, h: piece.thicknessIn });
  const limit = plainCrackingLimit({ Mcr: Mcr.value });
  const Ec = elasticModulus({ fc: strengthPsi });
  return {
    ageDays: age,
    strength28Psi,
    strengthAssumed: mix.strengthPsi === null,
    strengthPsi,
    modulusPsi: Ec.value,
    poisson: POISSON,
    lambda: mix.lambda,
    densityPcf: mix.densityPcf,
    crackingLimitLbfInPerIn: limit.value,
    crackingMomentLbfInPerIn: Mcr.value,
    workings: [...(grown?.lines ?? []), fr.line, Mcr.line, limit.line],
  };
}

/** Mean air temperature of a day of the job; after the last daily figure that one goes on. */
export function airOnDayC({ site }: Job, day: number): number {
  const { dailyC, airC } = site.weather;
  return dailyC[Math.min(dailyC.length - 1, day)] ?? airC;
}
