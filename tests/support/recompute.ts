import { all, create } from 'mathjs';
import type { Line } from '../../src-core/workings';

const math = create(all ?? {});

/** Evaluates the printed numbers in the printed formula, as a reader with a pocket calculator would. */
export function recompute(line: Line): number {
  return Number(math.evaluate(line.substituted));
}

/** One unit in the last printed digit of a result such as `1234`, `0.0567` or `12000`. */
export function lastDigit(printed: string): number {
  const point = printed.indexOf('.');
  if (point >= 0) return 10 ** -(printed.length - point - 1);
  return 1;
}

/** Largest difference a reader may meet: one in the last printed digit, or half of the fourth significant one. */
export function recomputeTolerance(line: Line): number {
  return Math.max(lastDigit(line.result), Math.abs(line.value) * 6e-4);
}
