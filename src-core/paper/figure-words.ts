/** Lengths as they stand on a drawing: without their unit, which is said once below. */
import type { UnitSystem } from '../units';
import { printLength } from '../units';

/** "25-1/2", "648". */
export function bareLength(valueIn: number, system: UnitSystem): string {
  return printLength(valueIn, { system }).replace(/ (?:in|mm)$/, '');
}

/** Small sizes of details to a thirty-second of an inch or half a millimetre. */
export function bareFineLength(valueIn: number, system: UnitSystem): string {
  return printLength(valueIn, { system, roundToIn: 1 / 32, roundToMm: 0.5 })
    .replace(/ (?:in|mm)$/, '')
    .replace(/\.0$/, '');
}

/** "Dimensions in inches." */
export function dimensionNote(system: UnitSystem): string {
  return `Dimensions in ${system === 'imperial' ? 'inches' : 'millimetres'}.`;
}
