/** Reactions and openings of a contact problem once it is said which links bear. */
import type { BearingFactor, ContactSystem } from './contact-system';
import { choleskyInPlace, choleskySolve } from './dense';
import { inverse3, multiply3 } from './matrix3';

const MOST_FACTORS = 24;

/** Reactions with every link bearing. */
export function allBearing(system: ContactSystem, b: Float64Array, resultant: Float64Array): Float64Array {
  const { count: n, response, resultantResponse } = system;
  const r = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let sum =
      resultantResponse[i * 3]! * resultant[0]! +
      resultantResponse[i * 3 + 1]! * resultant[1]! +
      resultantResponse[i * 3 + 2]! * resultant[2]!;
    for (let j = 0; j < n; j++) sum += response[row + j]! * b[j]!;
    r[i] = sum;
  }
  return r;
}

/** Reactions and openings for a given set of bearing links, by the smaller of two equal problems. */
export function solveFor(
  system: ContactSystem,
  b: Float64Array,
  resultant: Float64Array,
  all: Float64Array,
  bears: Uint8Array,
  reaction: Float64Array,
  opening: Float64Array,
): void {
  const n = system.count;
  const off: number[] = [];
  const on: number[] = [];
  for (let i = 0; i < n; i++) (bears[i] === 1 ? on : off).push(i);
  opening.fill(0);
  if (off.length === 0) {
    reaction.set(all);
    return;
  }
  if (off.length > on.length || !releaseLinks(system, all, off, reaction, opening))
    bearOnly(system, b, resultant, on, reaction, opening);
}

/** Takes links off the all-bearing answer: openings d with response_off,off d = -all_off. */
function releaseLinks(
  system: ContactSystem,
  all: Float64Array,
  off: readonly number[],
  reaction: Float64Array,
  opening: Float64Array,
): boolean {
  const { count: n, response } = system;
  const m = off.length;
  const h = new Float64Array(m * m);
  const d = new Float64Array(m);
  for (let p = 0; p < m; p++) {
    const row = off[p]! * n;
    for (let q = 0; q <= p; q++) h[p * m + q] = response[row + off[q]!]!;
    d[p] = -all[off[p]!]!;
  }
  if (!choleskyInPlace(h, m)) return false;
  choleskySolve(h, m, d, 1);
  reaction.set(all);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let sum = 0;
    for (let p = 0; p < m; p++) sum += response[row + off[p]!]! * d[p]!;
    reaction[i] = reaction[i]! + sum;
  }
  for (let p = 0; p < m; p++) {
    reaction[off[p]!] = 0;
    opening[off[p]!] = d[p]!;
  }
  return true;
}

/** Solves on the bearing links alone, then reads the openings of the others. */
function bearOnly(
  system: ContactSystem,
  b: Float64Array,
  resultant: Float64Array,
  on: readonly number[],
  reaction: Float64Array,
  opening: Float64Array,
): void {
  const { count: n, flexibility, rigid } = system;
  const m = on.length;
  const { factor, columns, rigidInverse } = bearingFactor(system, on);
  const x = Float64Array.from(on, (i) => b[i]!);
  choleskySolve(factor, m, x, 1);

  // (Rᵀ A⁻¹ R + eps) q = load - Rᵀ A⁻¹ b
  const t = new Float64Array(3);
  for (let c = 0; c < 3; c++) {
    let sum = resultant[c]!;
    for (let p = 0; p < m; p++) sum -= rigid[on[p]! * 3 + c]! * x[p]!;
    t[c] = sum;
  }
  const q = multiply3(rigidInverse, t);
  reaction.fill(0);
  const isOn = new Uint8Array(n);
  for (let p = 0; p < m; p++) {
    isOn[on[p]!] = 1;
    reaction[on[p]!] = x[p]! + columns[p]! * q[0]! + columns[m + p]! * q[1]! + columns[2 * m + p]! * q[2]!;
  }
  for (let i = 0; i < n; i++) {
    if (isOn[i] === 1) continue;
    let w = b[i]! + rigid[i * 3]! * q[0]! + rigid[i * 3 + 1]! * q[1]! + rigid[i * 3 + 2]! * q[2]!;
    for (let p = 0; p < m; p++) w -= flexibility[i * n + on[p]!]! * reaction[on[p]!]!;
    opening[i] = -w;
  }
}

/** Factor for a set of bearing links, kept for the next load that bears on the same set. */
function bearingFactor(system: ContactSystem, on: readonly number[]): BearingFactor {
  const key = on.join(' ');
  const known = system.factors.get(key);
  if (known !== undefined) return known;
  const { count: n, flexibility, rigid, groundLbfPerIn } = system;
  const m = on.length;
  const factor = new Float64Array(m * m);
  const columns = new Float64Array(m * 3);
  for (let p = 0; p < m; p++) {
    for (let q = 0; q <= p; q++) factor[p * m + q] = flexibility[on[p]! * n + on[q]!]!;
    for (let c = 0; c < 3; c++) columns[m * c + p] = rigid[on[p]! * 3 + c]!;
  }
  if (!choleskyInPlace(factor, m))
    throw new Error(`contact flexibility of ${m} links is not positive definite`);
  choleskySolve(factor, m, columns, 3);
  const s = new Float64Array(9);
  for (let c = 0; c < 3; c++) {
    for (let d = 0; d < 3; d++)
      for (let p = 0; p < m; p++) s[c * 3 + d] = s[c * 3 + d]! + rigid[on[p]! * 3 + c]! * columns[m * d + p]!;
    s[c * 4] = s[c * 4]! + groundLbfPerIn;
  }
  const found = { factor, columns, rigidInverse: inverse3(s) };
  if (system.factors.size >= MOST_FACTORS) system.factors.clear();
  system.factors.set(key, found);
  return found;
}
