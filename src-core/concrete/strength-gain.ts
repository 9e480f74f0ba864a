import type { Line, Worked } from '../workings';
import { formula } from '../workings';
import { COLD_CURING_TEMPERATURE_C, equivalentAgeOf } from './maturity';
import type { Symbols } from './symbols';

export type Cement = 'ordinary' | 'rapid';

/**
 * Constants of the strength curve t / (a + b t), moist cured: ordinary is type I, rapid is type III; a in days, b a
 * ratio. ACI 209R-92 Table 2.2.1, from memory.
 */
export const GAIN_CONSTANTS = {
  ordinary: { aDays: 4.0, bRatio: 0.85 },
  rapid: { aDays: 2.3, bRatio: 0.92 },
} as const satisfies Record<Cement, { readonly aDays: number; readonly bRatio: number }>;

/**
 * Strength at an age over that at 28 days (a ratio). t: age, d; a, b: see `GAIN_CONSTANTS`. Valid while kept moist and
 * above 10 deg C. ACI 209R-92 eq. 2-1.
 */
export const gainRatio = formula<Symbols<'t' | 'a' | 'b'>>({
  symbol: 'r',
  label: 'strength at this age over strength at 28 days',
  formula: 't / (a + b * t)',
  units: { t: 'd', a: 'd', b: '' },
  unit: '',
  source: 'ACI 209R-92 eq. 2-1, Table 2.2.1',
  fromMemory: true,
  compute: ({ t, a, b }) => t / (a + b * t),
});

/** Age at which a share r of the 28-day strength is there, d; `gainRatio` turned round, for r < 1/b. ACI 209R-92. */
export const ageOfRatio = formula<Symbols<'r' | 'a' | 'b'>>({
  symbol: 't',
  label: 'age at which this share of the 28-day strength is there',
  formula: 'a * r / (1 - b * r)',
  units: { r: '', a: 'd', b: '' },
  unit: 'd',
  source: 'ACI 209R-92 eq. 2-1, Table 2.2.1',
  fromMemory: true,
  compute: ({ r, a, b }) => (a * r) / (1 - b * r),
});

/**
 * Strength at an age, psi, growth after 28 days not counted. f28: psi; t: age, d; a, b: see `GAIN_CONSTANTS`.
 * ACI 209R-92 eq. 2-1; the cap is common practice, no source.
 */
export const gainedStrength = formula<Symbols<'f28' | 't' | 'a' | 'b'>>({
  symbol: 'fct',
  label: 'strength on this day',
  formula: 'f28 * min(1, t / (a + b * t))',
  units: { f28: 'psi', t: 'd', a: 'd', b: '' },
  unit: 'psi',
  source: 'ACI 209R-92 eq. 2-1, Table 2.2.1; no growth counted after 28 d',
  fromMemory: true,
  compute: ({ f28, t, a, b }) => f28 * Math.min(1, t / (a + b * t)),
});

/** Stiffness at an age, psi. Ec: at 28 days, psi; fct, f28: strength now and at 28 days, psi. ACI 209R-92 2.2.2. */
export const elasticModulusAtAge = formula<Symbols<'Ec' | 'fct' | 'f28'>>({
  symbol: 'Ect',
  label: 'stiffness of the concrete on this day',
  formula: 'Ec * sqrt(fct / f28)',
  units: { Ec: 'psi', fct: 'psi', f28: 'psi' },
  unit: 'psi',
  source: 'ACI 209R-92 2.2.2',
  fromMemory: true,
  compute: ({ Ec, fct, f28 }) => Ec * Math.sqrt(fct / f28),
});

/**
 * Strength outside the first and last cylinder test, psi: the curve, lowered where the nearest test fell short of it,
 * never raised. fct: curve now, ft: tested, fp: curve on the day of the test, psi. Common practice, no source.
 */
export const strengthScaledToTest = formula<Symbols<'fct' | 'ft' | 'fp'>>({
  symbol: 'fct',
  label: 'strength on this day, scaled to the nearest test',
  formula: 'fct * min(1, ft / fp)',
  units: { fct: 'psi', ft: 'psi', fp: 'psi' },
  unit: 'psi',
  source: 'common practice, no source',
  compute: ({ fct, ft, fp }) => fct * Math.min(1, ft / fp),
});

/** Strength between two cylinder tests, psi. f1, f2: tested, psi; t1, t2: their ages and t: this one, d. Interpolation. */
export const strengthBetweenTests = formula<Symbols<'f1' | 'f2' | 't1' | 't2' | 't'>>({
  symbol: 'fct',
  label: 'strength on this day, between two tests',
  formula: 'f1 + (f2 - f1) * (t - t1) / (t2 - t1)',
  units: { f1: 'psi', f2: 'psi', t1: 'd', t2: 'd', t: 'd' },
  unit: 'psi',
  source: 'straight line between cylinder tests',
  compute: ({ f1, f2, t1, t2, t }) => f1 + ((f2 - f1) * (t - t1)) / (t2 - t1),
});

/** Strength after the last cylinder test, psi: no less than it was then. fct: scaled curve, ft: last test, psi. */
export const strengthAfterTest = formula<Symbols<'fct' | 'ft'>>({
  symbol: 'fct',
  label: 'strength on this day, after the last test',
  formula: 'max(fct, ft)',
  units: { fct: 'psi', ft: 'psi' },
  unit: 'psi',
  source: 'common practice, no source',
  compute: ({ fct, ft }) => Math.max(fct, ft),
});

/** Mean strength of cylinders cured beside the piece, tested at one age. */
export interface CylinderResult {
  readonly ageDays: number;
  readonly strengthPsi: number;
}

export interface StrengthAtAgeInput {
  readonly f28Psi: number;
  readonly ageDays: number;
  readonly cement: Cement;
  /** Mean temperature of the concrete since the pour; the reference temperature where not given. */
  readonly temperatureC?: number;
  readonly cylinderResults?: readonly CylinderResult[];
}

export interface StrengthAtAge {
  readonly strengthPsi: number;
  /** Age put into the strength curve: days at the reference temperature. */
  readonly equivalentAgeDays: number;
  /** True where cylinder tests set the number, not the curve alone. */
  readonly isTested: boolean;
  /** True below 10 deg C, where the curve does not hold and only tests can tell. */
  readonly isColdCured: boolean;
  readonly lines: readonly Line[];
}

/**
 * Strength of the concrete at an age, psi: the ACI 209R-92 curve at the equivalent age (ASTM C1074), overridden by
 * cylinder tests where given. Of two tests at one age the lower counts. Zero before and at the pour.
 */
export function strengthAtAge(input: StrengthAtAgeInput): StrengthAtAge {
  const isColdCured = input.temperatureC !== undefined && input.temperatureC < COLD_CURING_TEMPERATURE_C;
  const curve = curveStrength(input, input.ageDays);
  const tested = input.ageDays > 0 ? overrideByTests(input, curve.strength) : [];
  const strength = tested.at(-1) ?? curve.strength;
  return {
    strengthPsi: strength.value,
    equivalentAgeDays: curve.equivalentAgeDays,
    isTested: tested.length > 0,
    isColdCured,
    lines: [...curve.lines, ...tested.map((step) => step.line)],
  };
}

function curveStrength(input: StrengthAtAgeInput, ageDays: number) {
  const { aDays: a, bRatio: b } = GAIN_CONSTANTS[input.cement];
  const t = Math.max(0, ageDays);
  const age =
    input.temperatureC === undefined
      ? { equivalentAgeDays: t, lines: [] }
      : equivalentAgeOf([{ temperatureC: input.temperatureC, durationDays: t }]);
  const strength = gainedStrength({ f28: input.f28Psi, t: age.equivalentAgeDays, a, b });
  return { strength, equivalentAgeDays: age.equivalentAgeDays, lines: [...age.lines, strength.line] };
}

/** The steps by which tests change the strength of the curve, last one governing; none where there is no test. */
function overrideByTests(input: StrengthAtAgeInput, curve: Worked): readonly Worked[] {
  const results = sortedResults(input.cylinderResults ?? []);
  const before = results.findLast((result) => result.ageDays <= input.ageDays);
  const after = results.find((result) => result.ageDays > input.ageDays);
  if (before && after) {
    const ages = { t1: before.ageDays, t2: after.ageDays, t: input.ageDays };
    return [strengthBetweenTests({ f1: before.strengthPsi, f2: after.strengthPsi, ...ages })];
  }
  const nearest = before ?? after;
  if (!nearest) return [];
  const predicted = curveStrength(input, nearest.ageDays).strength.value;
  if (!(predicted > 0)) {
    // Frozen all along by the temperature given: a test taken earlier stands, a later one says nothing about today.
    return before ? [strengthAfterTest({ fct: curve.value, ft: before.strengthPsi })] : [];
  }
  const scaled = strengthScaledToTest({ fct: curve.value, ft: nearest.strengthPsi, fp: predicted });
  if (!before) return [scaled];
  return [scaled, strengthAfterTest({ fct: scaled.value, ft: before.strengthPsi })];
}

function sortedResults(results: readonly CylinderResult[]): readonly CylinderResult[] {
  const lowest = new Map<number, number>();
  for (const { ageDays, strengthPsi } of results) {
    if (!(ageDays > 0) || !(strengthPsi > 0)) {
      throw new Error(`cylinder result of ${strengthPsi} psi at ${ageDays} d: both must be above zero`);
    }
    lowest.set(ageDays, Math.min(strengthPsi, lowest.get(ageDays) ?? strengthPsi));
  }
  return [...lowest]
    .map(([ageDays, strengthPsi]) => ({ ageDays, strengthPsi }))
    .sort((one, other) => one.ageDays - other.ageDays);
}
