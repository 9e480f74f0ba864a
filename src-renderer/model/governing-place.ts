/** The check that governs, where it has a place in the drawing. */
import type { Check } from '../../src-core/checks';
import type { Point } from '../../src-core/outline';
import type { PieceResult } from '../../src-core/verdict';

export interface GoverningPlace {
  readonly at: Point;
  readonly check: Check;
}

/** The worst check that has a place; null where none has, or nothing was checked. */
export function governingPlace(result: PieceResult): GoverningPlace | null {
  for (const check of result.checks) {
    if (check.where.kind !== 'piece' && check.ratio > 0) return { at: check.where.at, check };
  }
  return null;
}
