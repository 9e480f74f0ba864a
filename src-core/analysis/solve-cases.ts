/** Many load cases on one plate state: contact first, then the plate's displacements and moments case by case. */
import type { ContactSolution, ContactSystem, MomentField } from '../plate';
import { bankOf, LANES_PER_BANK, LANES_PER_STRIPE, resultantOf, solveContact } from '../plate';
import type { FactoredPlate, NodalLoad, PlateState } from './plate-state';
import { addForces, addSharedForces } from './plate-state';
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
export function freeDeflections(state: FactoredPlate, loads: LoadSet): FreeDeflections {
  const { unitDeflections, contactNodes, nodeOfContact, contacts, softnessRatio } = state;
  const nodes = state.mesh.xIn.length;
  const under = (load: NodalLoad): Float64Array => {
    const atNodes = Float64Array.from(contactNodes, (_, c) => {
      let sum = 0;
      for (let i = 0; i < load.node.length; i++)
        sum += load.lbf[i]! * unitDeflections[c * nodes + load.node[i]!]!;
      return softnessRatio * sum;
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
  const { mesh, rowAt, softnessRatio } = state;
  const nodes = mesh.xIn.length;
  const settled = settleCases(state, bound, loads, free, combinations);
  const wIn = new Float64Array(nodes);
  sweepCases(state, loads, settled, (index, moments, bank, lane) => {
    const one = settled[index]!;
    const [q0, q1, q2] = one.contact.rigidIn as unknown as [number, number, number];
    const perX = q1 / system.scaleIn;
    const perY = q2 / system.scaleIn;
    const base = q0 - perX * system.centreXIn - perY * system.centreYIn;
    for (let node = 0; node < nodes; node++) {
      const bent = softnessRatio * bank[rowAt[node]! + lane]!;
      wIn[node] = bent + base + perX * mesh.xIn[node]! + perY * mesh.yIn[node]!;
    }
    visit({ ...one, index, wIn, moments });
  });
}

/** A case with its contact found: what pushes where. */
export type SettledCase = Pick<SolvedCase, 'combination' | 'contact' | 'asIfHeld' | 'totalLbf'> & {
  /** Node of each contact. */
  readonly contactNodes: Int32Array;
};

/** Finds the contact of every combination with one stiffness bound, in order; the bound must have a contact system. */
export function settleCases(
  state: PlateState,
  bound: Bound,
  loads: LoadSet,
  free: FreeDeflections,
  combinations: readonly Combination[],
): SettledCase[] {
  const system = state.systems[bound]!;
  const contactNodes = Int32Array.from(state.contacts, ({ node }) => node);
  const deadResultant = resultantOfLoad(state, system, loads.dead);
  const liveResultants = loads.live.map((load) => resultantOfLoad(state, system, load));
  let start: Uint8Array | undefined;
  return combinations.map((combination) => {
    const resultant = combine(deadResultant, liveResultants, combination);
    const freeIn = combine(free.dead, free.live, combination);
    let contact = solveContact(system, freeIn, resultant, start === undefined ? {} : { start });
    const asIfHeld = contact.turnsOver;
    if (asIfHeld) contact = solveContact(system, freeIn, resultant, { held: true });
    else start ??= contact.bears;
    return { combination, contact, asIfHeld, totalLbf: resultant[0]!, contactNodes };
  });
}

/**
 * Sweeps settled cases of one factor through it, a stripe at a time, and hands over the moments of each, and the bank and lane in
 * which its deflections lie. They may have been settled on different contact points and with concrete of different stiffness:
 * moments under given forces depend on neither.
 */
export function sweepCases(
  state: Pick<FactoredPlate, 'factor' | 'rowAt' | 'room'>,
  loads: LoadSet,
  settled: readonly SettledCase[],
  visit: (index: number, moments: MomentField, bank: Float64Array, lane: number) => void,
): void {
  const { factor, room } = state;
  const { banks, fields } = room;
  for (let from = 0; from < settled.length; from += LANES_PER_STRIPE) {
    const stripe = settled.slice(from, from + LANES_PER_STRIPE);
    banks.fill(0);
    const deadFactors = stripe.map(({ combination }) => combination.deadFactor);
    addSharedForces(state, loads.dead.node, loads.dead.lbf, deadFactors);
    stripe.forEach(({ combination, contact, contactNodes }, lane) => {
      const live = loads.live[combination.liveIndex];
      if (live !== undefined) addForces(state, lane, live.node, live.lbf, combination.liveFactor);
      addForces(state, lane, contactNodes, contact.reactionLbf, -1);
    });
    room.forward(stripe.length, 0);
    room.backward(stripe.length);
    for (let first = 0; first < stripe.length; first += LANES_PER_BANK) {
      const bank = bankOf(factor, banks, first);
      const count = Math.min(LANES_PER_BANK, stripe.length - first);
      room.readMoments(first);
      for (let lane = 0; lane < count; lane++) visit(from + first + lane, fields[lane]!, bank, lane);
    }
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
