/** How strong and stiff a piece's concrete is, day by day. */
import { airOnDayC, concreteState, strengthOf } from '../analysis';
import { COLD_CURING_TEMPERATURE_C } from '../concrete';
import type { Job, Piece } from '../job';

/** The concrete of a piece on one day after its pour. */
export interface StrengthDay {
  /** Day of the job. */
  readonly day: number;
  readonly ageDays: number;
  /** Days at 20 deg C that are worth the same (ASTM C1074). */
  readonly equivalentAgeDays: number;
  readonly strengthPsi: number;
  /** Of the 28-day strength. */
  readonly strengthRatio: number;
  readonly modulusPsi: number;
  /** Whether cylinder tests set the strength. */
  readonly isTested: boolean;
  /** Whether that day is colder than the strength curve holds for (50 F, 10 deg C). */
  readonly isCold: boolean;
}

/** The days after the pour, oldest last; the same concrete that the load check takes on each. `lastAgeDays` at the least 1. */
export function strengthByDay(job: Job, piece: Piece, lastAgeDays: number): StrengthDay[] {
  return Array.from({ length: Math.max(1, Math.floor(lastAgeDays)) }, (_, i) =>
    strengthOn(job, piece, i + 1),
  );
}

/** The concrete of a piece at an age in days. */
export type StrengthAt = (ageDays: number) => StrengthDay;

/** `strengthOn` for one piece that works out each age once: for questions that ask about the same ages again and again. */
export function strengthLookup(job: Job, piece: Piece): StrengthAt {
  const known = new Map<number, StrengthDay>();
  return (ageDays) => {
    const before = known.get(ageDays);
    if (before !== undefined) return before;
    const found = strengthOn(job, piece, ageDays);
    known.set(ageDays, found);
    return found;
  };
}

/** The concrete at one age in days. Throws where the job has no such mix, which its cross-checks refuse. */
export function strengthOn(job: Job, piece: Piece, ageDays: number): StrengthDay {
  const mix = job.mixes.find(({ id }) => id === piece.mixId);
  if (mix === undefined) throw new Error(`no mix "${piece.mixId}" for piece "${piece.id}"`);
  const grown = strengthOf(job, piece, mix, ageDays);
  const { strengthPsi, modulusPsi, strength28Psi } = concreteState(job, piece, mix, ageDays);
  const day = piece.pourDay + ageDays;
  return {
    day,
    ageDays,
    equivalentAgeDays: grown.equivalentAgeDays,
    strengthPsi,
    strengthRatio: strengthPsi / strength28Psi,
    modulusPsi,
    isTested: grown.isTested,
    isCold: airOnDayC(job, day - 1) < COLD_CURING_TEMPERATURE_C,
  };
}
