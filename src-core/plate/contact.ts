/** Finds which links of a contact problem bear under a load. The problem itself is set out in `contact-system`. */
import { allBearing, solveFor } from './contact-sets';
import type { ContactSystem } from './contact-system';
import { inverse3, multiply3 } from './matrix3';

export interface ContactSolution {
  readonly reactionLbf: Float64Array;
  /** Rigid motion in the frame: w = q0 + q1 (x-xc)/scale + q2 (y-yc)/scale. */
  readonly rigidIn: Float64Array;
  readonly bears: Uint8Array;
  readonly turnsOver: boolean;
  readonly passes: number;
}

/** A rigid motion beyond this is no bearing at all but a slab on its way over. */
const OVERTURNED_IN = 1e3;
const MOST_PASSES = 400;
const PATIENCE = 12;
const TOLERANCE = 1e-10;

/**
 * Finds which links bear and their reactions for one load.
 * `freeIn` is u at every link; `resultant` is (total, moment of the load about xc and yc over the scale), as
 * `resultantOf` gives. `start` may name the links that bore in a similar case. `held` lets every link push and pull. A load
 * for which no set of links is found that fits turns the slab over: where one carries it, it is found (convex problem, one link
 * exchanged at a time).
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
  // a slab on its way over is thrown to and fro between sets, and any of them may come last
  const last = finish(system, b, resultant, reaction, opening, bears, MOST_PASSES);
  return { ...last, turnsOver: true };
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

function largest(values: Float64Array): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}
