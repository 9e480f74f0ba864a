/** What is sold by weight. */
import type { UnitSystem } from '../units';
import { KG_PER_LB } from '../units';

/** Whole pounds, or whole kilograms, of a mass in lb. */
export function wholeMass(massLb: number, system: UnitSystem): number {
  return Math.ceil(massLb * (system === 'imperial' ? 1 : KG_PER_LB) - 1e-9);
}

/** "3 lb", "2 kg". */
export function massWords(whole: number, system: UnitSystem): string {
  return `${whole} ${system === 'imperial' ? 'lb' : 'kg'}`;
}
