/** Products of forward-solved loads: the flexibility between two sets of loads without a backward solve. */
import type { PlateFactor } from './band-factor';
import { LANES_PER_BANK } from './band-solve';

/** Right-hand sides after `forwardMany`, with the first row of each that is not zero. */
export interface ForwardLanes {
  readonly banks: Float64Array;
  readonly count: number;
  readonly startRows: Int32Array;
}

const TILE = 4;

/**
 * Flexibility, in per lbf, between every load of `a` and every load of `b`: a.count rows of b.count numbers.
 * Each is the deflection under one unit load in the direction of the other: y_a . y_b.
 */
export function laneProducts(factor: PlateFactor, a: ForwardLanes, b: ForwardLanes): Float64Array {
  const n = factor.held.length;
  const products = new Float64Array(a.count * b.count);
  const same = a === b;
  for (let i = 0; i < a.count; i += TILE) {
    const bankA = Math.floor(i / LANES_PER_BANK) * LANES_PER_BANK * n + (i % LANES_PER_BANK);
    const startA = firstRow(a.startRows, i, n);
    for (let j = 0; j < (same ? i + TILE : b.count); j += TILE) {
      if (j >= b.count) break;
      const bankB = Math.floor(j / LANES_PER_BANK) * LANES_PER_BANK * n + (j % LANES_PER_BANK);
      const start = Math.max(startA, firstRow(b.startRows, j, n));
      const tile = tileProduct(a.banks, bankA, b.banks, bankB, start, n);
      for (let p = 0; p < TILE && i + p < a.count; p++)
        for (let q = 0; q < TILE && j + q < b.count; q++) {
          products[(i + p) * b.count + j + q] = tile[p * TILE + q]!;
          if (same) products[(j + q) * b.count + i + p] = tile[p * TILE + q]!;
        }
    }
  }
  return products;
}

function firstRow(startRows: Int32Array, from: number, n: number): number {
  let least = n;
  for (let i = from; i < Math.min(startRows.length, from + TILE); i++) least = Math.min(least, startRows[i]!);
  return least;
}

function tileProduct(
  a: Float64Array,
  fromA: number,
  b: Float64Array,
  fromB: number,
  start: number,
  n: number,
): Float64Array {
  let s00 = 0,
    s01 = 0,
    s02 = 0,
    s03 = 0;
  let s10 = 0,
    s11 = 0,
    s12 = 0,
    s13 = 0;
  let s20 = 0,
    s21 = 0,
    s22 = 0,
    s23 = 0;
  let s30 = 0,
    s31 = 0,
    s32 = 0,
    s33 = 0;
  let p = fromA + start * LANES_PER_BANK;
  let q = fromB + start * LANES_PER_BANK;
  for (let row = start; row < n; row++, p += LANES_PER_BANK, q += LANES_PER_BANK) {
    const a0 = a[p]!;
    const a1 = a[p + 1]!;
    const a2 = a[p + 2]!;
    const a3 = a[p + 3]!;
    const b0 = b[q]!;
    const b1 = b[q + 1]!;
    const b2 = b[q + 2]!;
    const b3 = b[q + 3]!;
    s00 += a0 * b0;
    s01 += a0 * b1;
    s02 += a0 * b2;
    s03 += a0 * b3;
    s10 += a1 * b0;
    s11 += a1 * b1;
    s12 += a1 * b2;
    s13 += a1 * b3;
    s20 += a2 * b0;
    s21 += a2 * b1;
    s22 += a2 * b2;
    s23 += a2 * b3;
    s30 += a3 * b0;
    s31 += a3 * b1;
    s32 += a3 * b2;
    s33 += a3 * b3;
  }
  const tile = new Float64Array(TILE * TILE);
  tile.set([s00, s01, s02, s03, s10, s11, s12, s13, s20, s21, s22, s23, s30, s31, s32, s33]);
  return tile;
}
