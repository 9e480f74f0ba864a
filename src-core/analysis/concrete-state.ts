/** Strength and stiffness of a piece's concrete on a day. */
import {
  crackingMoment,
  elasticModulus,
  modulusOfRupture,
  plainCrackingLimit,
  strengthAtAge,
} from '../concrete';
import type { Job, Mix, Piece } from '../job';
import { UNTESTED_STRENGTH_PSI } from '../job';
import type { ConcreteState } from './types';

const POISSON = 0.2;
/** Without a day a piece is looked at finished and this old. */
export const FINISHED_AGE_DAYS = 28;

/**
 * The concrete `ageDays` after the pour, or at its 28-day strength where `ageDays` is null. Strength grows by ACI 209R with
 * the site's mean temperature since the pour; it is capped at the 28-day figure, because no more is ever counted on.
 */
export function concreteState(job: Job, piece: Piece, mix: Mix, ageDays: number | null): ConcreteState {
  const strength28Psi = mix.strengthPsi ?? UNTESTED_STRENGTH_PSI;
  const age = ageDays ?? FINISHED_AGE_DAYS;
  const grown =
    ageDays === null
      ? null
      : strengthAtAge({
          f28Psi: strength28Psi,
          ageDays,
          cement: mix.cement,
          temperatureC: meanTemperatureC(job, piece.pourDay, ageDays),
          cylinderResults: mix.cylinders,
        });
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

/** Mean air temperature over the days since the pour; the site's general one where no daily figures are given. */
function meanTemperatureC(job: Job, pourDay: number, ageDays: number): number {
  const { dailyC, airC } = job.site.weather;
  if (dailyC.length === 0) return airC;
  const days = Math.max(1, Math.ceil(ageDays));
  let sum = 0;
  for (let i = 0; i < days; i++) sum += dailyC[Math.min(dailyC.length - 1, pourDay + i)] ?? airC;
  return sum / days;
}
