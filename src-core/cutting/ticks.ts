/** Lengths as whole ticks. A piece is rounded down and its stock up, so rounding never refuses what fits. */
import { TICKS_PER_IN } from './practice';

/** A thousandth of a tick: what floating point may add to a measure that is whole in ticks. */
const FLOAT_TICKS = 1e-3;

/** A piece with the kerf beside it, in ticks, rounded down. */
export function pieceTicks(lengthIn: number, kerfIn: number): number {
  return Math.floor((lengthIn + kerfIn) * TICKS_PER_IN + FLOAT_TICKS);
}

/**
 * Stock with one kerf more, in ticks, rounded up. Pieces l with kerfs k between them fit a stick L when the sum of l + k fits
 * L + k: the last piece needs no cut after it.
 */
export function stockTicks(lengthIn: number, kerfIn: number): number {
  return Math.ceil((lengthIn + kerfIn) * TICKS_PER_IN - FLOAT_TICKS);
}
