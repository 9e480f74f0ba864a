/** A piece as a factored plate with its contact points, ready for many load cases. */
import type {
  ContactLinks,
  ContactSystem,
  ForwardLanes,
  MomentOperator,
  PlateFactor,
  PlateLayout,
  PlateMesh,
} from '../plate';
import {
  assemblePlate,
  createBanks,
  factorPlate,
  forwardMany,
  laneProducts,
  momentOperator,
  packLoads,
  prepareContact,
} from '../plate';
import type { Bound, Contact } from './types';

/** A vertical load as forces on nodes, lbf down positive, and its first moments for equilibrium. */
export interface NodalLoad {
  readonly node: Int32Array;
  readonly lbf: Float64Array;
}

export interface PlateState {
  readonly mesh: PlateMesh;
  readonly factor: PlateFactor;
  readonly operator: MomentOperator;
  readonly contacts: readonly Contact[];
  /** Forward-solved unit loads, one a distinct contact node. */
  readonly nodeLanes: ForwardLanes;
  /** Distinct contact nodes, and for each contact its place among them. */
  readonly contactNodes: Int32Array;
  readonly nodeOfContact: Int32Array;
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
  const matrix = assemblePlate(mesh, bending, layout);
  const fixed = new Uint8Array(3 * mesh.xIn.length);
  for (const node of frameNodes(mesh)) fixed[3 * node] = 1;
  const result = factorPlate(matrix, { fixed });
  if (!result.ok) throw new Error(`plate of ${mesh.xIn.length} nodes is loose at freedom ${result.row}`);
  const { factor } = result;

  const { contactNodes, nodeOfContact } = distinctNodes(contacts, layout);
  const nodeLanes = forwardLoads(
    factor,
    Array.from(contactNodes, (node) => ({ node: Int32Array.of(node), lbf: Float64Array.of(1) })),
  );
  const byNode = laneProducts(factor, nodeLanes, nodeLanes);
  const n = contacts.length;
  const m = contactNodes.length;
  const plateFlexibility = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      plateFlexibility[i * n + j] = byNode[nodeOfContact[i]! * m + nodeOfContact[j]!]!;

  const system = (bound: Bound): ContactSystem | null => {
    const flexibility = plateFlexibility.slice();
    addArms(bound, flexibility, n);
    return prepareContact(linksOf(contacts, bound), flexibility);
  };
  return {
    mesh,
    factor,
    operator: momentOperator(mesh, bending),
    contacts,
    nodeLanes,
    contactNodes,
    nodeOfContact,
    systems: { low: system('low'), high: system('high') },
  };
}

/** Forward-solves vertical nodal loads, as many lanes as loads. */
export function forwardLoads(factor: PlateFactor, loads: readonly NodalLoad[]): ForwardLanes {
  const n = factor.held.length;
  const dense = new Float64Array(n * loads.length);
  loads.forEach((load, lane) => {
    for (let i = 0; i < load.node.length; i++) {
      const at = lane * n + 3 * load.node[i]!;
      dense[at] = dense[at]! + load.lbf[i]!;
    }
  });
  const banks = createBanks(factor, loads.length);
  const startRows = packLoads(factor, dense, banks);
  forwardMany(factor, banks, loads.length, startRows);
  return { banks, count: loads.length, startRows };
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
