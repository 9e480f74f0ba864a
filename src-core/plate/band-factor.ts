/**
 * Cholesky factor K = L L' of a plate in profile form, and its solution for many loads at a time.
 *
 * Glossary
 *   n        rows, three a node, in elimination order
 *   L        lower triangle; stored like the matrix (see plate-stiffness), but its diagonal holds 1 / L[i][i]
 *   lane     one right-hand side; eight lanes side by side make a bank
 *   bank     8 n numbers: `lanes[8 * n * bank + 8 * row + lane]`. A row of a bank is one cache line
 *   p, q     running places in `values` of the block's own and the earlier block's columns
 *
 * The inner loops are 3 x 3 and 3 x 4 tiles: each number that is read serves three or four products, and nine or twelve
 * independent sums keep the adders busy.
 *
 * Source: profile Cholesky as in George & Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981.
 */

import { eliminationRow, type PlateLayout, type PlateMatrix } from './plate-stiffness';
import { findLooseFreedom } from './rigid-hold';

export interface PlateFactor {
  readonly layout: PlateLayout;
  readonly values: Float64Array;
  /** 1 for each row (elimination order) that is held at zero. */
  readonly held: Uint8Array;
}

export type FactorResult =
  | { readonly ok: true; readonly factor: PlateFactor }
  /**
   * The plate is loose: nothing resists freedom `row` (3 * node + 0, 1 or 2, mesh order). Or its springs are so soft beside the
   * slab that rounding ate them.
   */
  | { readonly ok: false; readonly row: number };

export interface FactorChoices {
  /** 1 for each freedom (mesh order) held at zero. */
  readonly fixed?: Uint8Array;
  /** Stiffness added on the diagonal, a number a freedom (mesh order): springs, lbf/in or lbf-in. */
  readonly springs?: Float64Array;
  /** Array of the matrix's length to hold the factor, for instance that of a factor no longer used. */
  readonly into?: Float64Array;
}

/** Factors the plate's stiffness with its held freedoms and springs. Leaves `matrix` as it is. */
export function factorPlate(matrix: PlateMatrix, choices: FactorChoices = {}): FactorResult {
  const { layout } = matrix;
  const loose = findLooseFreedom(layout.parts, choices.fixed, choices.springs);
  if (loose >= 0) return { ok: false, row: loose };
  const n = 3 * layout.nodeCount;
  const held = new Uint8Array(n);
  const springs = new Float64Array(n);
  for (let freedom = 0; freedom < n; freedom++) {
    const row = eliminationRow(layout, freedom);
    held[row] = choices.fixed?.[freedom] ?? 0;
    springs[row] = choices.springs?.[freedom] ?? 0;
  }
  const values = choices.into ?? new Float64Array(matrix.values.length);
  if (values.length !== matrix.values.length) {
    throw new Error(`factor array of ${values.length} entries for ${matrix.values.length}`);
  }
  for (let block = 0; block < layout.nodeCount; block++) {
    copyBlock(matrix, block, held, springs, values);
    reduceBlock(layout, block, values);
    const bad = factorDiagonal(layout, block, values);
    if (bad >= 0) return { ok: false, row: 3 * layout.order.nodeAt[block]! + bad };
  }
  return { ok: true, factor: { layout, values, held } };
}

/** Copies a block of K with its springs; a held row or column becomes that of the unit matrix. */
function copyBlock(
  matrix: PlateMatrix,
  block: number,
  held: Uint8Array,
  springs: Float64Array,
  values: Float64Array,
): void {
  const { offset, first } = matrix.layout;
  const end = offset[block + 1]!;
  const row = 3 * block;
  const free0 = 1 - held[row]!;
  const free1 = 1 - held[row + 1]!;
  const free2 = 1 - held[row + 2]!;
  let column = 3 * first[block]!;
  for (let p = offset[block]!; p < end; p += 3) {
    const free = 1 - held[column++]!;
    values[p] = matrix.values[p]! * free * free0;
    values[p + 1] = matrix.values[p + 1]! * free * free1;
    values[p + 2] = matrix.values[p + 2]! * free * free2;
  }
  for (let f = 0; f < 3; f++) {
    const at = end - 9 + 4 * f;
    values[at] = held[row + f] === 1 ? 1 : values[at]! + springs[row + f]!;
  }
}

/** Turns a block of K into that of L, all but its own diagonal: X = (K - L L') / L'. */
function reduceBlock(layout: PlateLayout, block: number, values: Float64Array): void {
  const { first, offset } = layout;
  const start = first[block]!;
  const base = offset[block]!;
  for (let other = start; other < block; other++) {
    const shared = Math.max(start, first[other]!);
    const diagonal = offset[other + 1]! - 9;
    const target = base + 9 * (other - start);
    let p = base + 9 * (shared - start);
    let q = offset[other]! + 9 * (shared - first[other]!);
    let s00 = 0;
    let s01 = 0;
    let s02 = 0;
    let s10 = 0;
    let s11 = 0;
    let s12 = 0;
    let s20 = 0;
    let s21 = 0;
    let s22 = 0;
    for (; p < target; p += 3, q += 3) {
      const a0 = values[p]!;
      const a1 = values[p + 1]!;
      const a2 = values[p + 2]!;
      const b0 = values[q]!;
      const b1 = values[q + 1]!;
      const b2 = values[q + 2]!;
      s00 += a0 * b0;
      s10 += a1 * b0;
      s20 += a2 * b0;
      s01 += a0 * b1;
      s11 += a1 * b1;
      s21 += a2 * b1;
      s02 += a0 * b2;
      s12 += a1 * b2;
      s22 += a2 * b2;
    }
    const per0 = values[diagonal]!;
    const l10 = values[diagonal + 1]!;
    const l20 = values[diagonal + 2]!;
    const per1 = values[diagonal + 4]!;
    const l21 = values[diagonal + 5]!;
    const per2 = values[diagonal + 8]!;
    const x00 = (values[target]! - s00) * per0;
    const x10 = (values[target + 1]! - s10) * per0;
    const x20 = (values[target + 2]! - s20) * per0;
    const x01 = (values[target + 3]! - s01 - x00 * l10) * per1;
    const x11 = (values[target + 4]! - s11 - x10 * l10) * per1;
    const x21 = (values[target + 5]! - s21 - x20 * l10) * per1;
    values[target] = x00;
    values[target + 1] = x10;
    values[target + 2] = x20;
    values[target + 3] = x01;
    values[target + 4] = x11;
    values[target + 5] = x21;
    values[target + 6] = (values[target + 6]! - s02 - x00 * l20 - x01 * l21) * per2;
    values[target + 7] = (values[target + 7]! - s12 - x10 * l20 - x11 * l21) * per2;
    values[target + 8] = (values[target + 8]! - s22 - x20 * l20 - x21 * l21) * per2;
  }
}

/** Factors the 3 x 3 on a block's diagonal. Gives -1, or the freedom whose pivot is not positive. */
function factorDiagonal(layout: PlateLayout, block: number, values: Float64Array): number {
  const at = layout.offset[block + 1]! - 9;
  let d00 = values[at]!;
  let d10 = values[at + 1]!;
  let d20 = values[at + 2]!;
  let d11 = values[at + 4]!;
  let d21 = values[at + 5]!;
  let d22 = values[at + 8]!;
  for (let p = layout.offset[block]!; p < at; p += 3) {
    const a0 = values[p]!;
    const a1 = values[p + 1]!;
    const a2 = values[p + 2]!;
    d00 -= a0 * a0;
    d10 -= a1 * a0;
    d20 -= a2 * a0;
    d11 -= a1 * a1;
    d21 -= a2 * a1;
    d22 -= a2 * a2;
  }
  if (!(d00 > 0)) return 0;
  const per0 = 1 / Math.sqrt(d00);
  const l10 = d10 * per0;
  const l20 = d20 * per0;
  d11 -= l10 * l10;
  if (!(d11 > 0)) return 1;
  const per1 = 1 / Math.sqrt(d11);
  const l21 = (d21 - l20 * l10) * per1;
  d22 -= l20 * l20 + l21 * l21;
  if (!(d22 > 0)) return 2;
  values[at] = per0;
  values[at + 1] = l10;
  values[at + 2] = l20;
  values[at + 3] = 0;
  values[at + 4] = per1;
  values[at + 5] = l21;
  values[at + 6] = 0;
  values[at + 7] = 0;
  values[at + 8] = 1 / Math.sqrt(d22);
  return -1;
}
