import type { Line } from '../workings';
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** Reference temperature of the strength curves, deg C; 23 is also in use. ASTM C1074, from memory. */
export const REFERENCE_TEMPERATURE_C = 20;

/** Activation energy over the gas constant, K. ASTM C1074, from memory. */
export const ACTIVATION_KELVIN = 5000;

/** Datum temperature, deg C; -10 in older printings. ASTM C1074, from memory. */
export const DATUM_TEMPERATURE_C = 0;

/** Below this the strength curves do not hold, deg C (50 F). ACI 209R-92 and ACI 306R, from memory. */
export const COLD_CURING_TEMPERATURE_C = 10;

/** Nurse-Saul maturity of one spell, deg C hours. T, T0: deg C; dt: days. ASTM C1074 eq. 1, constants from memory. */
export const spellMaturity = formula<Symbols<'T' | 'T0' | 'dt'>>({
  symbol: 'M',
  label: 'maturity gained in this spell',
  formula: 'max(0, T - T0) * 24 * dt',
  units: { T: 'deg C', T0: 'deg C', dt: 'd' },
  unit: 'deg C h',
  source: 'ASTM C1074 (Nurse-Saul)',
  fromMemory: true,
  compute: ({ T, T0, dt }) => Math.max(0, T - T0) * 24 * dt,
});

/**
 * Days at the reference temperature that are worth dt days at Ta, d. Q: K; Ta, Ts: deg C; dt: days.
 * Not for frozen concrete. ASTM C1074 eq. 2, constants from memory.
 */
export const spellEquivalentAge = formula<Symbols<'Q' | 'Ta' | 'Ts' | 'dt'>>({
  symbol: 'te',
  label: 'age gained in this spell, as days at the reference temperature',
  formula: 'exp(-Q * (1 / (Ta + 273.15) - 1 / (Ts + 273.15))) * dt',
  units: { Q: 'K', Ta: 'deg C', Ts: 'deg C', dt: 'd' },
  unit: 'd',
  source: 'ASTM C1074 (equivalent age)',
  fromMemory: true,
  compute: ({ Q, Ta, Ts, dt }) => Math.exp(-Q * (1 / (Ta + 273.15) - 1 / (Ts + 273.15))) * dt,
});

export interface CuringSpell {
  readonly temperatureC: number;
  readonly durationDays: number;
}

/** Nurse-Saul maturity of a run of spells, deg C hours, with a line a spell. ASTM C1074. */
export function maturityOf(
  spells: readonly CuringSpell[],
  datumC: number = DATUM_TEMPERATURE_C,
): { readonly maturityDegCHours: number; readonly lines: readonly Line[] } {
  const worked = spells.map((spell) =>
    spellMaturity({ T: spell.temperatureC, T0: datumC, dt: spell.durationDays }),
  );
  return {
    maturityDegCHours: worked.reduce((sum, spell) => sum + spell.value, 0),
    lines: worked.map((spell) => spell.line),
  };
}

/**
 * Age of concrete as days at the reference temperature, with a line for each spell that counts. A spell at or below
 * 0 deg C adds nothing (common practice, no source: the formula itself never reaches zero). ASTM C1074.
 */
export function equivalentAgeOf(
  spells: readonly CuringSpell[],
  referenceC: number = REFERENCE_TEMPERATURE_C,
): { readonly equivalentAgeDays: number; readonly lines: readonly Line[] } {
  const worked = spells
    .filter((spell) => spell.temperatureC > 0)
    .map((spell) =>
      spellEquivalentAge({
        Q: ACTIVATION_KELVIN,
        Ta: spell.temperatureC,
        Ts: referenceC,
        dt: spell.durationDays,
      }),
    );
  return {
    equivalentAgeDays: worked.reduce((sum, spell) => sum + spell.value, 0),
    lines: worked.map((spell) => spell.line),
  };
}
