import type { BracketSupport } from '../job';
import { formula, type Line } from '../workings';
import type { Symbols } from './symbols';

/** One way in which a bracket may fail, with its number. */
export interface BracketCheck {
  readonly id: BracketCheckId;
  /** A builder's words. */
  readonly label: string;
  readonly demand: number;
  readonly capacity: number;
  readonly unit: 'lbf' | 'lbf in' | 'in' | '';
  /** Demand over capacity; finite. */
  readonly ratio: number;
  readonly lines: readonly Line[];
}

export type BracketCheckId =
  | 'arm-bending'
  | 'arm-deflection'
  | 'brace-strut'
  | 'brace-strut-slenderness'
  | 'brace-arm'
  | 'brace-arm-shear'
  | 'top-fastener'
  | 'fastener-penetration'
  | 'fastener-edge'
  | 'bolt-shear'
  | 'bolt-pull'
  | 'bolt-lateral'
  | 'washer-bearing'
  | 'rated-load'
  | 'rated-moment'
  | 'heel-bearing'
  | 'concrete-bearing'
  | 'reach';

/** Load of the slab on one bracket. */
export interface BracketLoad {
  readonly bracket: BracketSupport;
  readonly deadLbf: number;
  readonly liveLbf: number;
  /** Distance of the load's centroid from the wall face. */
  readonly atIn: number;
  /** Concrete strength of the slab. */
  readonly strengthPsi: number;
  /** Whether the timber stays above 19 % moisture. */
  readonly isWet: boolean;
  readonly reachLimitIn: number;
}

/** Load as the checks use it: the sum, and its line. */
export interface ServiceLoad extends BracketLoad {
  readonly totalLbf: number;
  readonly totalLine: Line;
}

/** Service load, lbf. D, L: dead and live load, lbf; L counts in full, CD 1.0. ASCE 7-22 2.4.1. */
export const serviceLoad = formula<Symbols<'D' | 'L'>>({
  symbol: 'P',
  label: 'load on the bracket',
  formula: 'D + L',
  units: { D: 'lbf', L: 'lbf' },
  unit: 'lbf',
  source: 'ASCE 7-22 2.4.1',
  compute: ({ D, L }) => D + L,
});

/** Largest ratio that is reported, so that a capacity of nothing still gives a number. */
const LARGEST_RATIO = 999;

/** A check from its demand and capacity in the same unit. */
export function bracketCheck(parts: Omit<BracketCheck, 'ratio'>): BracketCheck {
  const { demand, capacity } = parts;
  if (!Number.isFinite(demand) || !Number.isFinite(capacity) || capacity < 0) {
    throw new Error(`bracket check ${parts.id} got demand ${demand} and capacity ${capacity}`);
  }
  if (demand === 0) return { ...parts, ratio: 0 };
  return { ...parts, ratio: capacity === 0 ? LARGEST_RATIO : Math.min(LARGEST_RATIO, demand / capacity) };
}
