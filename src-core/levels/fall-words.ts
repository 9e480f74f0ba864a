/** A slope as a builder says it. */
import { IN_PER_FT, MM_PER_IN, printLength, type UnitSystem } from '../units';
import type { FloorSlope } from './floor-surface';

/** Steepest fall of a slope (a ratio, not negative). */
export function fallRatio({ x, y }: FloorSlope): number {
  return Math.hypot(x, y);
}

/** Less than this is level to a builder: 1/64 in in a foot. Common practice, no source. */
const LEVEL_RATIO = 1 / 64 / IN_PER_FT;

const MM_IN_A_METRE = 1000;

/** Eight ways in plan, from right round to the left by the back: x runs right, y runs back. */
const WAYS = [
  'the right',
  'the back right',
  'the back',
  'the back left',
  'the left',
  'the front left',
  'the front',
  'the front right',
];

/** "falls 1/4 in in a foot to the front left", "falls 10 mm in a metre to the back", or "is level". */
export function fallWords(slope: FloorSlope, system: UnitSystem): string {
  const ratio = fallRatio(slope);
  if (ratio < LEVEL_RATIO) return 'is level';
  const eighth = Math.round(Math.atan2(-slope.y, -slope.x) / (Math.PI / 4));
  const way = WAYS[(eighth + 8) % 8]!;
  const fall =
    system === 'imperial'
      ? `${printLength(ratio * IN_PER_FT, { system, roundToIn: 1 / 32 })} in a foot`
      : `${printLength((ratio * MM_IN_A_METRE) / MM_PER_IN, { system })} in a metre`;
  return `falls ${fall} to ${way}`;
}
