/** A piece as a factored plate with its contact points, ready for many load cases. */
import type { ContactLinks, ContactSystem, PlateFactor, PlateLayout, PlateMesh, SweepRoom } from '../plate';
import {
  assemblePlate,
  bankedOperator,
  bankOf,
  createSweepRoom,
  factorPlate,
  LANES_PER_BANK,
  LANES_PER_STRIPE,
  momentOperator,
  prepareContact,
} from '../plate';
import type { Bound, Contact } from './types';

/** A vertical load as forces on nodes, lbf down positive, and its first moments for equilibrium. */
export interface NodalLoad {
  readonly node: Int32Array;
  readonly lbf: Float64Array;
}

/** A factored plate with the unit loads of its contact points. */
export interface FactoredPlate {
  readonly mesh: PlateMesh;
  readonly factor: PlateFactor;
  /** Where right-hand sides of this plate are solved; one user at a time. */
  readonly room: SweepRoom;
  /** Where the deflection of each node lies in a bank, lane 0. */
  readonly rowAt: Int32Array;
  /** Deflections that the factor gives, times this, are the plate's: concrete of another stiffness, the same factor. */
  readonly softnessRatio: number;
  readonly contacts: readonly Contact[];
  /** Deflection of every node under a unit load at each distinct contact node, in the three-point frame: row after row. */
  readonly unitDeflections: Float64Array;
  /** Distinct contact nodes, and for each contact its place among them. */
  readonly contactNodes: Int32Array;
  readonly nodeOfContact: Int32Array;
}

export interface PlateState extends FactoredPlate {
  /** Flexibility between contacts in the three-point frame, with that of bracket arms by bound, contacts squared. */
  readonly systems: { readonly [B in Bound]: ContactSystem | null };
}

/** Extra flexibility of what the contacts stand on (bracket arms), added to the plate's own. */
export type ArmFlexibility = (bound: Bound, into: Float64Array, count: number) => void;

/**
 * Factors the plate held at three nodes far apart and reduces it to its contact points. `bending` is one matrix for all
 * triangles or one each. Throws if the plate is singular, which no meshed slab is.
 */
export function buildPlateState(
  mesh: PlateMesh,
  layout: PlateLayout,
  bending: Float64Array,
  contacts: readonly Contact[],
  addArms: ArmFlexibility,
): PlateState {
  return withSystems(factorOnContacts(mesh, layout, bending, contacts), addArms);
}

/** The same without its contact problems, for a plate that is only ever looked at on some of its contact points. */
export function factorOnContacts(
  mesh: PlateMesh,
  layout: PlateLayout,
  bending: Float64Array,
  contacts: readonly Contact[],
): FactoredPlate {
  const matrix = assemblePlate(mesh, bending, layout);
  const fixed = new Uint8Array(3 * mesh.xIn.length);
  for (const node of frameNodes(mesh)) fixed[3 * node] = 1;
  const result = factorPlate(matrix, { fixed });
  if (!result.ok) throw new Error(`plate of ${mesh.xIn.length} nodes is loose at freedom ${result.row}`);
  const { factor } = result;

  const { contactNodes, nodeOfContact } = distinctNodes(contacts, layout);
  const rowAt = layout.order.positionOf.map((position) => 3 * LANES_PER_BANK * position);
  const room = createSweepRoom(
    factor,
    bankedOperator(momentOperator(mesh, bending), layout),
    LANES_PER_STRIPE,
  );
  const unitDeflections = unitLoadDeflections(factor, room, rowAt, contactNodes);
  return {
    mesh,
    factor,
    room,
    rowAt,
    softnessRatio: 1,
    contacts,
    unitDeflections,
    contactNodes,
    nodeOfContact,
  };
}

/**
 * The same plate on some of its contact points alone, its concrete softer by `softnessRatio`: a small dense problem, with neither
 * factor nor unit loads made anew. `kept` numbers the contacts in `state`; what `contacts` say of gaps and springs holds.
 */
export function partOfState(
  state: FactoredPlate,
  part: {
    readonly kept: Int32Array;
    readonly contacts: readonly Contact[];
    readonly addArms: ArmFlexibility;
  },
  softnessRatio: number,
): PlateState {
  const nodeOfContact = part.kept.map((contact) => state.nodeOfContact[contact]!);
  return withSystems({ ...state, softnessRatio, contacts: part.contacts, nodeOfContact }, part.addArms);
}

/** Adds the contact problems of both bounds. */
function withSystems(plate: FactoredPlate, addArms: ArmFlexibility): PlateState {
  const { contacts, unitDeflections, nodeOfContact, softnessRatio } = plate;
  const n = contacts.length;
  const nodes = plate.mesh.xIn.length;
  const plateFlexibility = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      plateFlexibility[i * n + j] =
        softnessRatio * unitDeflections[nodeOfContact[i]! * nodes + contacts[j]!.node]!;
    }
  const system = (bound: Bound): ContactSystem | null => {
    const flexibility = plateFlexibility.slice();
    addArms(bound, flexibility, n);
    return prepareContact(linksOf(contacts, bound), flexibility);
  };
  return { ...plate, systems: { low: system('low'), high: system('high') } };
}

/** Solves a unit load at each of the nodes, a stripe of right-hand sides at a time, and keeps the deflections. */
function unitLoadDeflections(
  factor: PlateFactor,
  room: SweepRoom,
  rowAt: Int32Array,
  at: Int32Array,
): Float64Array {
  const { nodeCount } = factor.layout;
  const { banks } = room;
  const deflections = new Float64Array(at.length * nodeCount);
  for (let from = 0; from < at.length; from += LANES_PER_STRIPE) {
    const stripe = at.subarray(from, from + LANES_PER_STRIPE);
    banks.fill(0);
    stripe.forEach((node, lane) => {
      addForces({ factor, rowAt, room }, lane, Int32Array.of(node), Float64Array.of(1), 1);
    });
    room.forward(stripe.length, Math.min(...stripe.map((node) => rowAt[node]!)) / LANES_PER_BANK);
    room.backward(stripe.length);
    for (let first = 0; first < stripe.length; first += LANES_PER_BANK) {
      const bank = bankOf(factor, banks, first);
      const count = Math.min(LANES_PER_BANK, stripe.length - first);
      for (let node = 0; node < nodeCount; node++) {
        const row = rowAt[node]!;
        for (let lane = 0; lane < count; lane++) {
          deflections[(from + first + lane) * nodeCount + node] = bank[row + lane]!;
        }
      }
    }
  }
  return deflections;
}

/** Adds vertical forces to one lane of the banks, times `factor`. A node held in the frame takes none. */
export function addForces(
  { factor: { held }, rowAt, room: { banks } }: Pick<PlateState, 'factor' | 'rowAt' | 'room'>,
  lane: number,
  node: Int32Array,
  lbf: Float64Array,
  factor: number,
): void {
  const inBank = lane % LANES_PER_BANK;
  const base = (lane - inBank) * held.length + inBank;
  for (let i = 0; i < node.length; i++) {
    const at = rowAt[node[i]!]!;
    if (held[at / LANES_PER_BANK] === 0) banks[base + at] = banks[base + at]! + factor * lbf[i]!;
  }
}

/** Adds the same vertical forces to the first lanes of the banks, each lane with its own factor. */
export function addSharedForces(
  { factor: { held }, rowAt, room: { banks } }: Pick<PlateState, 'factor' | 'rowAt' | 'room'>,
  node: Int32Array,
  lbf: Float64Array,
  factors: readonly number[],
): void {
  for (let first = 0; first < factors.length; first += LANES_PER_BANK) {
    const base = first * held.length;
    const lanes = Math.min(LANES_PER_BANK, factors.length - first);
    for (let i = 0; i < node.length; i++) {
      const at = rowAt[node[i]!]!;
      if (held[at / LANES_PER_BANK] === 1) continue;
      for (let lane = 0; lane < lanes; lane++) {
        banks[base + at + lane] = banks[base + at + lane]! + factors[first + lane]! * lbf[i]!;
      }
    }
  }
}

function linksOf(contacts: readonly Contact[], bound: Bound): ContactLinks {
  return {
    xIn: Float64Array.from(contacts, (c) => c.at.xIn),
    yIn: Float64Array.from(contacts, (c) => c.at.yIn),
    stiffnessLbfPerIn: Float64Array.from(contacts, (c) => (bound === 'low' ? c.lowLbfPerIn : c.highLbfPerIn)),
    gapIn: Float64Array.from(contacts, (c) => c.gapIn),
    acts: Int8Array.from(contacts, (c) => (c.acts === 'push' ? 1 : -1)),
  };
}

/** Contact nodes once each, in elimination order so that near ones share a bank. */
function distinctNodes(
  contacts: readonly Contact[],
  layout: PlateLayout,
): { contactNodes: Int32Array; nodeOfContact: Int32Array } {
  const { positionOf } = layout.order;
  const contactNodes = Int32Array.from(new Set(contacts.map((c) => c.node))).sort(
    (a, b) => positionOf[a]! - positionOf[b]!,
  );
  const place = new Map(Array.from(contactNodes, (node, i) => [node, i]));
  return { contactNodes, nodeOfContact: Int32Array.from(contacts, (c) => place.get(c.node)!) };
}

/** Three nodes far apart and not in line: the farthest from the centre, the farthest from it, the farthest off their line. */
function frameNodes(mesh: PlateMesh): readonly [number, number, number] {
  const { xIn, yIn } = mesh;
  const n = xIn.length;
  let cx = 0;
  let cy = 0;
  for (let i = 0; i < n; i++) {
    cx += xIn[i]! / n;
    cy += yIn[i]! / n;
  }
  const farthest = (measure: (i: number) => number): number => {
    let best = 0;
    for (let i = 1; i < n; i++) if (measure(i) > measure(best)) best = i;
    return best;
  };
  const a = farthest((i) => Math.hypot(xIn[i]! - cx, yIn[i]! - cy));
  const b = farthest((i) => Math.hypot(xIn[i]! - xIn[a]!, yIn[i]! - yIn[a]!));
  const c = farthest((i) =>
    Math.abs((xIn[b]! - xIn[a]!) * (yIn[i]! - yIn[a]!) - (yIn[b]! - yIn[a]!) * (xIn[i]! - xIn[a]!)),
  );
  return [a, b, c];
}
