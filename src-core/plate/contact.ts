/**
 * One-sided supports of a free plate, eliminated to the contact points.
 *
 * The plate is factored once, held at three nodes (a statically determinate frame). Supports, gaps, ties and raised feet are
 * then a small problem on the contact points: the frame's own reactions vanish because the contact forces are made
 * to balance the load, so the frame leaves no trace.
 *
 * r   reaction of a link on the slab, up positive (a tie pulls: r <= 0)
 * C   deflection at link i for a unit force at link j, in the frame
 * k   spring of a link;  g  its gap;  s  +1 where it pushes, -1 where it pulls
 * u   deflection at a link from the load alone, in the frame, down positive
 * R   rigid motion: a row (1, (x-xc)/scale, (y-yc)/scale) a link;  q  its three amounts
 * d   opening of a link that has come off: s*d >= 0
 *
 *     (C + 1/k) r - R q = u - g      links that bear
 *     Rᵀ r + eps q = load            equilibrium
 *
 * eps is a ground spring so weak that it carries nothing; it keeps the problem solvable for a slab that turns over,
 * which then shows as an enormous rigid motion instead of a singular matrix.
 */
import { choleskyInPlace, choleskyInverse, choleskySolve } from './dense';

export interface ContactLinks {
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
  readonly stiffnessLbfPerIn: Float64Array;
  readonly gapIn: Float64Array;
  /** +1 pushes, -1 pulls. */
  readonly acts: Int8Array;
}

export interface ContactSystem {
  readonly links: ContactLinks;
  readonly count: number;
  readonly centreXIn: number;
  readonly centreYIn: number;
  readonly scaleIn: number;
  /** C + 1/k, n by n. */
  readonly flexibility: Float64Array;
  readonly rigid: Float64Array;
  readonly groundLbfPerIn: number;
  /** Reactions for unit openings with every link bearing, and for unit resultants. */
  readonly response: Float64Array;
  readonly resultantResponse: Float64Array;
  /** Factors of sets of bearing links met before; a memory of work done, not of results. */
  readonly factors: Map<string, BearingFactor>;
}

/** Cholesky factor of the flexibility of the bearing links, and the rigid motion's share of it. */
interface BearingFactor {
  readonly factor: Float64Array;
  /** A^-1 R, three columns. */
  readonly columns: Float64Array;
  readonly rigidInverse: Float64Array;
}

export interface ContactSolution {
  readonly reactionLbf: Float64Array;
  /** Rigid motion in the frame: w = q0 + q1 (x-xc)/scale + q2 (y-yc)/scale. */
  readonly rigidIn: Float64Array;
  readonly bears: Uint8Array;
  readonly turnsOver: boolean;
  readonly passes: number;
}

const GROUND_LBF_PER_IN = 1e-7;
/** A rigid motion beyond this is no bearing at all but a slab on its way over. */
const OVERTURNED_IN = 1e3;
const MOST_PASSES = 400;
const MOST_FACTORS = 24;
const PATIENCE = 12;
const TOLERANCE = 1e-10;

/**
 * Prepares the contact problem for one set of spring stiffnesses.
 * `complianceInPerLbf` is C for the links, n by n, in the frame. Returns null where the links lie in one line or there
 * are fewer than three, so that nothing holds the slab level.
 */
export function prepareContact(links: ContactLinks, complianceInPerLbf: Float64Array): ContactSystem | null {
  const n = links.xIn.length;
  if (n < 3) return null;
  const { centreXIn, centreYIn, scaleIn } = frameOf(links);
  if (isOneLine(links, centreXIn, centreYIn, scaleIn)) return null;

  const flexibility = complianceInPerLbf.slice();
  const rigid = new Float64Array(n * 3);
  for (let i = 0; i < n; i++) {
    flexibility[i * n + i] = flexibility[i * n + i]! + 1 / links.stiffnessLbfPerIn[i]!;
    rigid[i * 3] = 1;
    rigid[i * 3 + 1] = (links.xIn[i]! - centreXIn) / scaleIn;
    rigid[i * 3 + 2] = (links.yIn[i]! - centreYIn) / scaleIn;
  }

  const factor = flexibility.slice();
  if (!choleskyInPlace(factor, n))
    throw new Error(`contact flexibility of ${n} links is not positive definite`);
  const inverse = choleskyInverse(factor, n);

  // a = inv(C + 1/k) R and the 3 by 3 stiffness of the rigid motion
  const a = new Float64Array(n * 3);
  const s = new Float64Array(9);
  for (let i = 0; i < n; i++) {
    for (let c = 0; c < 3; c++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += inverse[i * n + j]! * rigid[j * 3 + c]!;
      a[i * 3 + c] = sum;
    }
  }
  for (let i = 0; i < n; i++)
    for (let c = 0; c < 3; c++)
      for (let d = 0; d < 3; d++) s[c * 3 + d] = s[c * 3 + d]! + rigid[i * 3 + c]! * a[i * 3 + d]!;
  for (let c = 0; c < 3; c++) s[c * 4] = s[c * 4]! + GROUND_LBF_PER_IN;
  const sInverse = inverse3(s);

  // resultantResponse = a inv(s);  response = inverse - a inv(s) aᵀ
  const resultantResponse = new Float64Array(n * 3);
  for (let i = 0; i < n; i++)
    for (let c = 0; c < 3; c++) {
      let sum = 0;
      for (let d = 0; d < 3; d++) sum += a[i * 3 + d]! * sInverse[d * 3 + c]!;
      resultantResponse[i * 3 + c] = sum;
    }
  const response = inverse;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let c = 0; c < 3; c++) sum += resultantResponse[i * 3 + c]! * a[j * 3 + c]!;
      response[i * n + j] = response[i * n + j]! - sum;
    }

  return {
    links,
    count: n,
    centreXIn,
    centreYIn,
    scaleIn,
    flexibility,
    rigid,
    groundLbfPerIn: GROUND_LBF_PER_IN,
    response,
    resultantResponse,
    factors: new Map(),
  };
}

/**
 * Finds which links bear and their reactions for one load.
 * `freeIn` is u at every link; `resultant` is (total, moment of the load about xc and yc over the scale), as
 * `resultantOf` gives. `start` may name the links that bore in a similar case. `held` lets every link push and pull.
 */
export function solveContact(
  system: ContactSystem,
  freeIn: Float64Array,
  resultant: Float64Array,
  options: { readonly start?: Uint8Array; readonly held?: boolean } = {},
): ContactSolution {
  const { count: n, links } = system;
  const bears = options.start?.slice() ?? new Uint8Array(n).fill(1);
  const b = new Float64Array(n);
  for (let i = 0; i < n; i++) b[i] = freeIn[i]! - links.gapIn[i]!;
  const all = allBearing(system, b, resultant);

  if (options.held === true) {
    bears.fill(1);
    return finish(system, b, resultant, all, new Float64Array(n), bears, 1);
  }

  const forceTolerance = TOLERANCE * Math.max(1, Math.abs(resultant[0]!));
  const gapTolerance = TOLERANCE * Math.max(1e-3, largest(b));
  const reaction = new Float64Array(n);
  const opening = new Float64Array(n);
  let fewest = n + 1;
  let patience = PATIENCE;

  for (let pass = 1; pass <= MOST_PASSES; pass++) {
    solveFor(system, b, resultant, all, bears, reaction, opening);
    let wrong = 0;
    let last = -1;
    for (let i = 0; i < n; i++) {
      if (isWrong(i, bears, reaction, opening, links.acts, forceTolerance, gapTolerance)) {
        wrong++;
        last = i;
      }
    }
    if (wrong === 0) return finish(system, b, resultant, reaction, opening, bears, pass);

    // change all that are wrong at once while that makes progress, else one at a time, which always ends
    if (wrong < fewest) {
      fewest = wrong;
      patience = PATIENCE;
    } else patience--;
    if (patience > 0) {
      for (let i = 0; i < n; i++)
        if (isWrong(i, bears, reaction, opening, links.acts, forceTolerance, gapTolerance))
          bears[i] = bears[i] === 1 ? 0 : 1;
    } else bears[last] = bears[last] === 1 ? 0 : 1;
  }
  return finish(system, b, resultant, reaction, opening, bears, MOST_PASSES);
}

/** Total of vertical forces and their moments about the system's centre, in its scale: Rᵀ of the load. */
export function resultantOf(
  system: ContactSystem,
  forces: Iterable<{ readonly xIn: number; readonly yIn: number; readonly lbf: number }>,
): Float64Array {
  const sum = new Float64Array(3);
  for (const force of forces) {
    sum[0] = sum[0]! + force.lbf;
    sum[1] = sum[1]! + (force.lbf * (force.xIn - system.centreXIn)) / system.scaleIn;
    sum[2] = sum[2]! + (force.lbf * (force.yIn - system.centreYIn)) / system.scaleIn;
  }
  return sum;
}

function isWrong(
  i: number,
  bears: Uint8Array,
  reaction: Float64Array,
  opening: Float64Array,
  acts: Int8Array,
  forceTolerance: number,
  gapTolerance: number,
): boolean {
  return bears[i] === 1 ? acts[i]! * reaction[i]! < -forceTolerance : acts[i]! * opening[i]! < -gapTolerance;
}

/** Reactions with every link bearing. */
function allBearing(system: ContactSystem, b: Float64Array, resultant: Float64Array): Float64Array {
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
function solveFor(
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

/** Reads the rigid motion back from the equations of the bearing links (least squares) and judges it. */
function finish(
  system: ContactSystem,
  b: Float64Array,
  resultant: Float64Array,
  reaction: Float64Array,
  opening: Float64Array,
  bears: Uint8Array,
  passes: number,
): ContactSolution {
  const { count: n, flexibility, rigid } = system;
  const normal = new Float64Array(9);
  const right = new Float64Array(3);
  const sum = new Float64Array(3);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let value = -b[i]! - opening[i]!;
    for (let j = 0; j < n; j++) value += flexibility[row + j]! * reaction[j]!;
    for (let c = 0; c < 3; c++) {
      for (let d = 0; d < 3; d++)
        normal[c * 3 + d] = normal[c * 3 + d]! + rigid[i * 3 + c]! * rigid[i * 3 + d]!;
      right[c] = right[c]! + rigid[i * 3 + c]! * value;
      sum[c] = sum[c]! + rigid[i * 3 + c]! * reaction[i]!;
    }
  }
  const q = multiply3(inverse3(normal), right);
  const total = Math.max(1, Math.abs(resultant[0]!));
  const unbalanced = Math.max(...[0, 1, 2].map((c) => Math.abs(sum[c]! - resultant[c]!))) / total;
  const turnsOver = largest(q) > OVERTURNED_IN || unbalanced > 1e-6;
  return { reactionLbf: reaction.slice(), rigidIn: q, bears, turnsOver, passes };
}

function frameOf(links: ContactLinks): { centreXIn: number; centreYIn: number; scaleIn: number } {
  let leastX = Infinity;
  let mostX = -Infinity;
  let leastY = Infinity;
  let mostY = -Infinity;
  for (let i = 0; i < links.xIn.length; i++) {
    leastX = Math.min(leastX, links.xIn[i]!);
    mostX = Math.max(mostX, links.xIn[i]!);
    leastY = Math.min(leastY, links.yIn[i]!);
    mostY = Math.max(mostY, links.yIn[i]!);
  }
  return {
    centreXIn: (leastX + mostX) / 2,
    centreYIn: (leastY + mostY) / 2,
    scaleIn: Math.max(1, (mostX - leastX) / 2, (mostY - leastY) / 2),
  };
}

/** Whether all links lie within a thousandth of their extent of one line. */
function isOneLine(links: ContactLinks, xc: number, yc: number, scale: number): boolean {
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let mx = 0;
  let my = 0;
  const n = links.xIn.length;
  for (let i = 0; i < n; i++) {
    mx += (links.xIn[i]! - xc) / scale / n;
    my += (links.yIn[i]! - yc) / scale / n;
  }
  for (let i = 0; i < n; i++) {
    const x = (links.xIn[i]! - xc) / scale - mx;
    const y = (links.yIn[i]! - yc) / scale - my;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const least = (xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy);
  return least < n * 1e-8;
}

function largest(values: Float64Array): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}

function inverse3(m: Float64Array): Float64Array {
  const [a, b, c, d, e, f, g, h, i] = m as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const A = e * i - f * h;
  const B = c * h - b * i;
  const C = b * f - c * e;
  const det = a * A + d * B + g * C;
  return Float64Array.of(
    A / det,
    B / det,
    C / det,
    (f * g - d * i) / det,
    (a * i - c * g) / det,
    (c * d - a * f) / det,
    (d * h - e * g) / det,
    (b * g - a * h) / det,
    (a * e - b * d) / det,
  );
}

function multiply3(m: Float64Array, v: Float64Array): Float64Array {
  return Float64Array.of(
    m[0]! * v[0]! + m[1]! * v[1]! + m[2]! * v[2]!,
    m[3]! * v[0]! + m[4]! * v[1]! + m[5]! * v[2]!,
    m[6]! * v[0]! + m[7]! * v[1]! + m[8]! * v[2]!,
  );
}
