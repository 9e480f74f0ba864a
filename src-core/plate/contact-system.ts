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
import { choleskyInPlace, choleskyInverse } from './dense';
import { inverse3 } from './matrix3';

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
export interface BearingFactor {
  readonly factor: Float64Array;
  /** A^-1 R, three columns. */
  readonly columns: Float64Array;
  readonly rigidInverse: Float64Array;
}

const GROUND_LBF_PER_IN = 1e-7;

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
