/**
 * Many right-hand sides at a time through a plate's factor. Glossary at the head of band-factor; here moreover
 *
 *   quad     four lanes, worked on together: the registers hold three rows of four
 *   start    first row of a right-hand side that is not zero; all rows of L y = b before it stay zero
 */

import type { PlateFactor } from './band-factor';
import { eliminationRow } from './plate-stiffness';

/** Right-hand sides in one bank. A count. */
export const LANES_PER_BANK = 8;

const LANES_PER_QUAD = 4;
/**
 * Right-hand sides taken through the factor in one sweep. The factor is far larger than a processor's cache and each block of it
 * is read once a sweep, so a wide sweep reads it seldom.
 */
export const LANES_PER_STRIPE = 64;

/** Empty banks for `count` right-hand sides. */
export function createBanks(factor: PlateFactor, count: number): Float64Array {
  return new Float64Array(Math.ceil(count / LANES_PER_BANK) * LANES_PER_BANK * factor.held.length);
}

/** Place in the banks of right-hand side `lane` at elimination row `row`. */
export function bankIndex(factor: PlateFactor, lane: number, row: number): number {
  const inBank = lane % LANES_PER_BANK;
  return (lane - inBank) * factor.held.length + LANES_PER_BANK * row + inBank;
}

/** The bank that holds lane `first` (a multiple of eight), as a view. */
export function bankOf(factor: PlateFactor, banks: Float64Array, first: number): Float64Array {
  const n = factor.held.length;
  return banks.subarray(first * n, (first + LANES_PER_BANK) * n);
}

/**
 * Displacements under many loads. `loads` holds load after load in mesh order, lbf and lbf-in, and so does the result (in,
 * and slopes as pure ratios). Loads on held freedoms have no effect. `into` may be `loads` itself.
 */
export function solveMany(
  factor: PlateFactor,
  loads: Float64Array,
  into: Float64Array = new Float64Array(loads.length),
): Float64Array {
  const n = factor.held.length;
  const count = loads.length / n;
  if (!Number.isInteger(count)) throw new Error(`${loads.length} load entries for ${n} freedoms`);
  const banks = createBanks(factor, count);
  const startRows = packLoads(factor, loads, banks);
  forwardMany(factor, banks, count, startRows);
  backwardMany(factor, banks, count);
  unpackLanes(factor, banks, into);
  return into;
}

/**
 * Writes loads (load after load, mesh order) into zeroed banks, leaving out held freedoms. Gives each load's first row that
 * is not zero, the number of rows where there is none.
 */
export function packLoads(factor: PlateFactor, loads: Float64Array, banks: Float64Array): Int32Array {
  const n = factor.held.length;
  const startRows = new Int32Array(loads.length / n).fill(n);
  for (let freedom = 0; freedom < n; freedom++) {
    const row = eliminationRow(factor.layout, freedom);
    if (factor.held[row] === 1) continue;
    for (let lane = 0; lane < startRows.length; lane++) {
      const load = loads[lane * n + freedom]!;
      if (load === 0) continue;
      banks[bankIndex(factor, lane, row)] = load;
      if (row < startRows[lane]!) startRows[lane] = row;
    }
  }
  return startRows;
}

/** Reads as many right-hand sides as `into` has room for out of the banks, into mesh order. */
export function unpackLanes(factor: PlateFactor, banks: Float64Array, into: Float64Array): void {
  const n = factor.held.length;
  const count = into.length / n;
  for (let freedom = 0; freedom < n; freedom++) {
    const row = eliminationRow(factor.layout, freedom);
    for (let lane = 0; lane < count; lane++) {
      into[lane * n + freedom] = banks[bankIndex(factor, lane, row)]!;
    }
  }
}

/**
 * Solves L y = b in place for the first `count` right-hand sides. `startRows` tells the first elimination row of each that
 * is not zero; a stripe starts at the lowest of its lanes, so put loads of near start rows side by side. The products
 * of two y are the flexibility between their loads: y1 . y2 = b1' (1/K) b2.
 */
export function forwardMany(
  factor: PlateFactor,
  banks: Float64Array,
  count: number,
  startRows?: Int32Array,
): void {
  const n = factor.held.length;
  for (let from = 0; from < count; from += LANES_PER_STRIPE) {
    const until = Math.min(count, from + LANES_PER_STRIPE);
    let startRow = startRows === undefined ? 0 : n;
    for (const row of startRows?.subarray(from, until) ?? []) startRow = Math.min(startRow, row);
    const quads = quadsOf(factor, banks, from, until);
    const startBlock = Math.floor(startRow / 3);
    for (let block = startBlock; block < factor.layout.nodeCount; block++) {
      for (const { lanes, lane } of quads) forwardBlock(factor, block, startBlock, lanes, lane);
    }
  }
}

/** Solves L' x = y in place for the first `count` right-hand sides. */
export function backwardMany(factor: PlateFactor, banks: Float64Array, count: number): void {
  for (let from = 0; from < count; from += LANES_PER_STRIPE) {
    const quads = quadsOf(factor, banks, from, Math.min(count, from + LANES_PER_STRIPE));
    for (let block = factor.layout.nodeCount - 1; block >= 0; block--) {
      for (const { lanes, lane } of quads) backwardBlock(factor, block, lanes, lane);
    }
  }
}

/** The bank and first lane of every quad of a stripe. */
function quadsOf(
  factor: PlateFactor,
  banks: Float64Array,
  from: number,
  until: number,
): { readonly lanes: Float64Array; readonly lane: number }[] {
  const quads: { lanes: Float64Array; lane: number }[] = [];
  for (let lane = from; lane < until; lane += LANES_PER_QUAD) {
    const inBank = lane % LANES_PER_BANK;
    quads.push({ lanes: bankOf(factor, banks, lane - inBank), lane: inBank });
  }
  return quads;
}

/** Three rows of L y = b for the four lanes from `lane` on: subtract what earlier rows take, then the own 3 x 3. */
function forwardBlock(
  factor: PlateFactor,
  block: number,
  startBlock: number,
  y: Float64Array,
  lane: number,
): void {
  const { first, offset } = factor.layout;
  const v = factor.values;
  const from = Math.max(first[block]!, startBlock);
  const diagonal = offset[block + 1]! - 9;
  let q = 3 * LANES_PER_BANK * from + lane;
  let a0 = 0;
  let a1 = 0;
  let a2 = 0;
  let a3 = 0;
  let b0 = 0;
  let b1 = 0;
  let b2 = 0;
  let b3 = 0;
  let c0 = 0;
  let c1 = 0;
  let c2 = 0;
  let c3 = 0;
  for (let p = offset[block]! + 9 * (from - first[block]!); p < diagonal; p += 3, q += LANES_PER_BANK) {
    const l0 = v[p]!;
    const l1 = v[p + 1]!;
    const l2 = v[p + 2]!;
    const y0 = y[q]!;
    const y1 = y[q + 1]!;
    const y2 = y[q + 2]!;
    const y3 = y[q + 3]!;
    a0 += l0 * y0;
    a1 += l0 * y1;
    a2 += l0 * y2;
    a3 += l0 * y3;
    b0 += l1 * y0;
    b1 += l1 * y1;
    b2 += l1 * y2;
    b3 += l1 * y3;
    c0 += l2 * y0;
    c1 += l2 * y1;
    c2 += l2 * y2;
    c3 += l2 * y3;
  }
  const per0 = v[diagonal]!;
  const l10 = v[diagonal + 1]!;
  const l20 = v[diagonal + 2]!;
  const per1 = v[diagonal + 4]!;
  const l21 = v[diagonal + 5]!;
  const per2 = v[diagonal + 8]!;
  a0 = (y[q]! - a0) * per0;
  a1 = (y[q + 1]! - a1) * per0;
  a2 = (y[q + 2]! - a2) * per0;
  a3 = (y[q + 3]! - a3) * per0;
  y[q] = a0;
  y[q + 1] = a1;
  y[q + 2] = a2;
  y[q + 3] = a3;
  q += LANES_PER_BANK;
  b0 = (y[q]! - b0 - l10 * a0) * per1;
  b1 = (y[q + 1]! - b1 - l10 * a1) * per1;
  b2 = (y[q + 2]! - b2 - l10 * a2) * per1;
  b3 = (y[q + 3]! - b3 - l10 * a3) * per1;
  y[q] = b0;
  y[q + 1] = b1;
  y[q + 2] = b2;
  y[q + 3] = b3;
  q += LANES_PER_BANK;
  y[q] = (y[q]! - c0 - l20 * a0 - l21 * b0) * per2;
  y[q + 1] = (y[q + 1]! - c1 - l20 * a1 - l21 * b1) * per2;
  y[q + 2] = (y[q + 2]! - c2 - l20 * a2 - l21 * b2) * per2;
  y[q + 3] = (y[q + 3]! - c3 - l20 * a3 - l21 * b3) * per2;
}

/** Three rows of L' x = y for the four lanes from `lane` on: the own 3 x 3, then its share is taken off earlier rows. */
function backwardBlock(factor: PlateFactor, block: number, y: Float64Array, lane: number): void {
  const { first, offset } = factor.layout;
  const v = factor.values;
  const diagonal = offset[block + 1]! - 9;
  const per0 = v[diagonal]!;
  const l10 = v[diagonal + 1]!;
  const l20 = v[diagonal + 2]!;
  const per1 = v[diagonal + 4]!;
  const l21 = v[diagonal + 5]!;
  const per2 = v[diagonal + 8]!;
  const qa = 3 * LANES_PER_BANK * block + lane;
  const qb = qa + LANES_PER_BANK;
  const qc = qb + LANES_PER_BANK;
  const c0 = y[qc]! * per2;
  const c1 = y[qc + 1]! * per2;
  const c2 = y[qc + 2]! * per2;
  const c3 = y[qc + 3]! * per2;
  y[qc] = c0;
  y[qc + 1] = c1;
  y[qc + 2] = c2;
  y[qc + 3] = c3;
  const b0 = (y[qb]! - l21 * c0) * per1;
  const b1 = (y[qb + 1]! - l21 * c1) * per1;
  const b2 = (y[qb + 2]! - l21 * c2) * per1;
  const b3 = (y[qb + 3]! - l21 * c3) * per1;
  y[qb] = b0;
  y[qb + 1] = b1;
  y[qb + 2] = b2;
  y[qb + 3] = b3;
  const a0 = (y[qa]! - l10 * b0 - l20 * c0) * per0;
  const a1 = (y[qa + 1]! - l10 * b1 - l20 * c1) * per0;
  const a2 = (y[qa + 2]! - l10 * b2 - l20 * c2) * per0;
  const a3 = (y[qa + 3]! - l10 * b3 - l20 * c3) * per0;
  y[qa] = a0;
  y[qa + 1] = a1;
  y[qa + 2] = a2;
  y[qa + 3] = a3;
  let q = 3 * LANES_PER_BANK * first[block]! + lane;
  for (let p = offset[block]!; p < diagonal; p += 3, q += LANES_PER_BANK) {
    const l0 = v[p]!;
    const l1 = v[p + 1]!;
    const l2 = v[p + 2]!;
    y[q] = y[q]! - (l0 * a0 + l1 * b0 + l2 * c0);
    y[q + 1] = y[q + 1]! - (l0 * a1 + l1 * b1 + l2 * c1);
    y[q + 2] = y[q + 2]! - (l0 * a2 + l1 * b2 + l2 * c2);
    y[q + 3] = y[q + 3]! - (l0 * a3 + l1 * b3 + l2 * c3);
  }
}
