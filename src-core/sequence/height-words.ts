import type { UnitSystem } from '../units';
import { MM_PER_IN, printLength } from '../units';
import type { HeightLimit } from './height-limits';

const FINEST_IN = 1 / 64;
/** A limit of a whole tenth of a millimetre stays one in spite of rounding. */
const ROUNDING = 1e-9;

/** How far a foot may be wound up or fall short, down to the lower 64th or tenth of a millimetre; `beyond` where nothing limits it. */
export function heightWords(
  { limitIn, sixtyFourths }: HeightLimit,
  system: UnitSystem,
  beyond: string,
): string {
  if (limitIn === null || sixtyFourths === null) return beyond;
  if (system === 'metric') return `${(Math.floor(limitIn * MM_PER_IN * 10 + ROUNDING) / 10).toFixed(1)} mm`;
  if (sixtyFourths === 0) return 'less than 1/64 in';
  return printLength(sixtyFourths * FINEST_IN, { system, roundToIn: FINEST_IN });
}
