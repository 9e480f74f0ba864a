/** How heat and cold shift the clock of fresh concrete. */
import { ACTIVATION_KELVIN, REFERENCE_TEMPERATURE_C, spellEquivalentAge } from '../concrete';
import { formula } from '../workings';
import type { Symbols } from './symbols';

/** How fast concrete at a temperature, deg C, sets beside the same at 20 deg C, a ratio. ASTM C1074, constants from memory. */
export function settingRate(concreteC: number): ReturnType<typeof spellEquivalentAge> {
  return spellEquivalentAge({ Q: ACTIVATION_KELVIN, Ta: concreteC, Ts: REFERENCE_TEMPERATURE_C, dt: 1 });
}

/** Working time that counts, minutes: the bag's, less in heat and never more in cold. tb: the bag's, min; k: setting rate. */
export const workingTime = formula<Symbols<'tb' | 'k'>>({
  symbol: 'tw',
  label: 'working time at the temperature of the concrete',
  formula: 'tb / max(1, k)',
  units: { tb: 'min', k: '' },
  unit: 'min',
  source: 'ASTM C1074 rate; common practice, no source',
  fromMemory: true,
  compute: ({ tb, k }) => tb / Math.max(1, k),
});

/** When a finishing step may begin, minutes after water met the concrete. tb: the bag's working time; r: how many of them; k: setting rate. */
export const finishTime = formula<Symbols<'tb' | 'r' | 'k'>>({
  symbol: 'tf',
  label: 'wait from the first water of the piece',
  formula: 'tb * r / k',
  units: { tb: 'min', r: '', k: '' },
  unit: 'min',
  source: 'ASTM C1074 rate; common practice, no source',
  fromMemory: true,
  compute: ({ tb, r, k }) => (tb * r) / k,
});
