/** Many load cases on one plate state: contact first, then the plate's displacements and moments case by case. */
import type { ContactSolution, ContactSystem, MomentField } from '../plate';
import {
  applyMomentOperator,
  createMomentField,
  LANES_PER_BANK,
  resultantOf,
  solveContact,
  solveMany,
} from '../plate';
import type { NodalLoad, PlateState } from './plate-state';
import type { Bound } from './types';

/** The loads of a piece on its nodes: what is always there, and each live load. */
export interface LoadSet {
  readonly dead: NodalLoad;
  readonly live: readonly NodalLoad[];
}

/** dead * deadFactor + live[liveIndex] * liveFactor; liveIndex -1 means no live load. */
export interface Combination {
  readonly deadFactor: number;
  readonly liveFactor: number;
  readonly liveIndex: number;
}

export interface SolvedCase {
  readonly index: number;
  readonly combination: Combination;
  readonly contact: ContactSolution;
  readonly asIfHeld: boolean;
  readonly totalLbf: number;
  /** Deflection of every node, down positive, with the slab's rigid motion. A buffer that the next case overwrites. */
  readonly wIn: Float64Array;
  /** Nodal moments. A buffer that the next case overwrites. */
  readonly moments: MomentField;
}

/** Deflections at the contacts from the loads alone, in the frame; made once a state and shared by both bounds. */
export interface FreeDeflections {
  readonly dead: Float64Array;
  readonly live: readonly Float64Array[];
}

/** What the loads alone would deflect at each contact, in the frame, by reciprocity from the unit loads there. */
export function freeDeflections(state: PlateState, loads: LoadSet): FreeDeflections {
  const { unitDeflections, contactNodes, nodeOfContact, contacts } = state;
  const nodes = state.mesh.xIn.length;
  const under = (load: NodalLoad): Float64Array => {
    const atNodes = Float64Array.from(contactNodes, (_, c) => {
      let sum = 0;
      for (let i = 0; i < load.node.length; i++)
        sum += load.lbf[i]! * unitDeflections[c * nodes + load.node[i]!]!;
      return sum;
    });
    return Float64Array.from(contacts, (_, i) => atNodes[nodeOfContact[i]!]!);
  };
  return { dead: under(loads.dead), live: loads.live.map(under) };
}

/**
 * Solves every combination with one stiffness bound and hands each to `visit`, in order. A case under which the
 * slab would turn over is solved as if it were held down, and says so. The bound must have a contact system.
 */
export function solveCases(
  state: PlateState,
  bound: Bound,
  loads: LoadSet,
  free: FreeDeflections,
  combinations: readonly Combination[],
  visit: (solved: SolvedCase) => void,
): void {
  const system = state.systems[bound];
  if (system === null)
    throw new Error(`contacts lie in one line: ${state.contacts.length} points, bound ${bound}`);
  const { mesh } = state;
  const nodes = mesh.xIn.length;
  const n = 3 * nodes;
  const resultants = { dead: resultantOfLoad(state, system, loads.dead), live: [] as Float64Array[] };
  resultants.live = loads.live.map((load) => resultantOfLoad(state, system, load));

  const batch = new Float64Array(n * LANES_PER_BANK);
  const wIn = new Float64Array(nodes);
  const field = createMomentField(state.operator);
  let start: Uint8Array | undefined;

  for (let from = 0; from < combinations.length; from += LANES_PER_BANK) {
    const group = combinations.slice(from, from + LANES_PER_BANK);
    batch.fill(0);
    const contacts = group.map((combination, lane) => {
      const resultant = combine(resultants.dead, resultants.live, combination);
      const freeIn = combine(free.dead, free.live, combination);
      let contact = solveContact(system, freeIn, resultant, start === undefined ? {} : { start });
      const asIfHeld = contact.turnsOver;
      if (asIfHeld) contact = solveContact(system, freeIn, resultant, { held: true });
      else start ??= contact.bears;
      const into = batch.subarray(lane * n, (lane + 1) * n);
      addLoad(into, loads.dead, combination.deadFactor);
      const live = loads.live[combination.liveIndex];
      if (live !== undefined) addLoad(into, live, combination.liveFactor);
      for (let i = 0; i < state.contacts.length; i++) {
        const at = 3 * state.contacts[i]!.node;
        into[at] = into[at]! - contact.reactionLbf[i]!;
      }
      return { combination, contact, asIfHeld, totalLbf: resultant[0]! };
    });
    const displaced = batch.subarray(0, n * group.length);
    solveMany(state.factor, displaced, displaced);
    contacts.forEach((solved, lane) => {
      const u = batch.subarray(lane * n, (lane + 1) * n);
      const [q0, q1, q2] = solved.contact.rigidIn as unknown as [number, number, number];
      for (let node = 0; node < nodes; node++) {
        wIn[node] =
          u[3 * node]! +
          q0 +
          (q1 * (mesh.xIn[node]! - system.centreXIn)) / system.scaleIn +
          (q2 * (mesh.yIn[node]! - system.centreYIn)) / system.scaleIn;
      }
      applyMomentOperator(state.operator, u, field);
      visit({ ...solved, index: from + lane, wIn, moments: field });
    });
  }
}

function resultantOfLoad(state: PlateState, system: ContactSystem, load: NodalLoad): Float64Array {
  const { xIn, yIn } = state.mesh;
  return resultantOf(
    system,
    Array.from(load.node, (node, i) => ({ xIn: xIn[node]!, yIn: yIn[node]!, lbf: load.lbf[i]! })),
  );
}

function combine(dead: Float64Array, live: readonly Float64Array[], by: Combination): Float64Array {
  const add = live[by.liveIndex];
  return dead.map((value, i) => by.deadFactor * value + (add === undefined ? 0 : by.liveFactor * add[i]!));
}

function addLoad(into: Float64Array, load: NodalLoad, factor: number): void {
  for (let i = 0; i < load.node.length; i++) {
    const at = 3 * load.node[i]!;
    into[at] = into[at]! + factor * load.lbf[i]!;
  }
}
