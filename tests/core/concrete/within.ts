import { expect } from 'vitest';

/** Expects `actual` within `relative` of `expected`, as a share of `expected`. */
export function expectWithin(actual: number, expected: number, relative: number): void {
  const difference = Math.abs(actual - expected) / Math.abs(expected);
  expect(difference, `${actual} against ${expected}`).toBeLessThanOrEqual(relative);
}
