/** Strength and stiffness of a piece's concrete on a day. */
import type { StrengthAtAge } from '../concrete';
import {
  ACTIVATION_KELVIN,
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
import type { ConcreteState } from './types';

const POISSON = 0.2;
const KELVIN_AT_FREEZING = 273.15;
/** Without a day a piece is looked at finished and this old. */
export const FINISHED_AGE_DAYS = 28;

/**
 * Strength of a piece's concrete `ageDays` after the pour: ACI 209R at the equivalent age (ASTM C1074) that the site's daily
 * temperatures since the pour make, overridden by cylinder tests.
 */
export function strengthOf(job: Job, piece: Piece, mix: Mix, ageDays: number): StrengthAtAge {
  return strengthAtAge({
    f28Psi: mix.strengthPsi ?? UNTESTED_STRENGTH_PSI,
    ageDays,
    cement: mix.cement,
    temperatureC: steadyTemperatureC(job, piece.pourDay, ageDays),
    cylinderResults: mix.cylinders,
  });
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

/**
 * The one temperature that would make the concrete as old as the days since the pour have, each at its own: ASTM C1074, so a
 * cold spell slows it and never turns it back.
 */
function steadyTemperatureC(job: Job, pourDay: number, ageDays: number): number {
  const count = Math.max(1, Math.ceil(ageDays));
  const temperaturesC = Array.from({ length: count }, (_, i) => airOnDayC(job, pourDay + i));
  const [firstC] = temperaturesC as [number];
  if (temperaturesC.every((temperatureC) => temperatureC === firstC)) return firstC;
  const { equivalentAgeDays } = equivalentAgeOf(
    temperaturesC.map((temperatureC) => ({ temperatureC, durationDays: 1 })),
  );
  if (equivalentAgeDays === 0) return Math.min(0, ...temperaturesC);
  const inverseKelvin =
    1 / (REFERENCE_TEMPERATURE_C + KELVIN_AT_FREEZING) -
    Math.log(equivalentAgeDays / count) / ACTIVATION_KELVIN;
  return 1 / inverseKelvin - KELVIN_AT_FREEZING;
}

/** Mean air temperature of a day of the job; after the last daily figure that one goes on. */
export function airOnDayC({ site }: Job, day: number): number {
  const { dailyC, airC } = site.weather;
  return dailyC[Math.min(dailyC.length - 1, day)] ?? airC;
}
