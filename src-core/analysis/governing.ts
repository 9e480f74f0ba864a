/**
 * Keeps the worst of many load cases: envelopes at every node, and on each face the moment that governs once it is
 * averaged over a stated width along the crack it would open.
 */
import type { Locate, MomentField, MomentTensor, PlateMesh } from '../plate';
import { applyAveragingWeights, averagingWeights, turnMoments } from '../plate';
import type { Face } from './types';

/** Worst principal moments of the slab: magnitudes, direction of bending and case of each node. */
export interface Envelope {
  readonly lbfInPerIn: Float64Array;
  readonly bendingRad: Float64Array;
  readonly caseIndex: Int32Array;
}

export interface Peak {
  momentLbfInPerIn: number;
  peakLbfInPerIn: number;
  averagedOverIn: number;
  node: number;
  bendingRad: number;
  caseIndex: number;
}

export interface Governing {
  readonly mesh: PlateMesh;
  readonly locate: Locate;
  readonly widthIn: number;
  readonly faces: { readonly [F in Face]: { readonly envelope: Envelope; readonly peak: Peak } };
}

/** An empty record. `widthIn` is the averaging width of Decision 2: one slab thickness for the cracking check. */
export function startGoverning(mesh: PlateMesh, locate: Locate, widthIn: number): Governing {
  const face = () => ({
    envelope: {
      lbfInPerIn: new Float64Array(mesh.xIn.length),
      bendingRad: new Float64Array(mesh.xIn.length),
      caseIndex: new Int32Array(mesh.xIn.length).fill(-1),
    },
    peak: {
      momentLbfInPerIn: 0,
      peakLbfInPerIn: 0,
      averagedOverIn: widthIn,
      node: 0,
      bendingRad: 0,
      caseIndex: 0,
    },
  });
  return { mesh, locate, widthIn, faces: { bottom: face(), top: face() } };
}

/** Takes one case into the record. */
export function addCase(governing: Governing, field: MomentField, caseIndex: number): void {
  const { faces } = governing;
  const { mx, my, mxy } = field;
  const sag = faces.bottom.envelope;
  const hog = faces.top.envelope;
  const sagBest = faces.bottom.peak.momentLbfInPerIn;
  const hogBest = faces.top.peak.momentLbfInPerIn;
  const sagNodes: number[] = [];
  const hogNodes: number[] = [];
  for (let i = 0; i < mx.length; i++) {
    const centre = (mx[i]! + my[i]!) / 2;
    const half = (mx[i]! - my[i]!) / 2;
    const radius = Math.sqrt(half * half + mxy[i]! * mxy[i]!);
    const most = centre + radius;
    const least = radius - centre;
    if (most > sag.lbfInPerIn[i]!) {
      sag.lbfInPerIn[i] = most;
      sag.caseIndex[i] = caseIndex;
      sag.bendingRad[i] = 0.5 * Math.atan2(mxy[i]!, half);
      if (most > sagBest) sagNodes.push(i);
    }
    if (least > hog.lbfInPerIn[i]!) {
      hog.lbfInPerIn[i] = least;
      hog.caseIndex[i] = caseIndex;
      hog.bendingRad[i] = 0.5 * Math.atan2(mxy[i]!, half) + Math.PI / 2;
      if (least > hogBest) hogNodes.push(i);
    }
  }
  raise(governing, 'bottom', field, sagNodes, caseIndex);
  raise(governing, 'top', field, hogNodes, caseIndex);
}

/** Averages at the nodes whose peak could beat the record, the highest first, until none can. */
function raise(
  governing: Governing,
  face: Face,
  field: MomentField,
  nodes: number[],
  caseIndex: number,
): void {
  if (nodes.length === 0) return;
  const { envelope, peak } = governing.faces[face];
  const values = envelope.lbfInPerIn;
  nodes.sort((a, b) => values[b]! - values[a]!);
  for (const node of nodes) {
    if (values[node]! <= peak.momentLbfInPerIn) return;
    const average = averageAt(governing, field, node, envelope.bendingRad[node]!, governing.widthIn);
    if (average === null) continue;
    const moment = face === 'bottom' ? average.momentLbfInPerIn : -average.momentLbfInPerIn;
    if (moment > peak.momentLbfInPerIn) {
      peak.momentLbfInPerIn = moment;
      peak.peakLbfInPerIn = values[node]!;
      peak.averagedOverIn = average.widthIn;
      peak.node = node;
      peak.bendingRad = envelope.bendingRad[node]!;
      peak.caseIndex = caseIndex;
    }
  }
}

/** Moment about a direction at a node, averaged over a width square to it and clipped at edges; sagging positive. */
export function averageAt(
  governing: Pick<Governing, 'mesh' | 'locate'>,
  field: MomentField,
  node: number,
  bendingRad: number,
  widthIn: number,
): { readonly momentLbfInPerIn: number; readonly widthIn: number; readonly tensor: MomentTensor } | null {
  const { mesh, locate } = governing;
  const weights = averagingWeights(mesh, locate, {
    xIn: mesh.xIn[node]!,
    yIn: mesh.yIn[node]!,
    acrossRad: bendingRad,
    widthIn,
  });
  if (weights === null) return null;
  const tensor = applyAveragingWeights(weights, field);
  return { momentLbfInPerIn: turnMoments(tensor, bendingRad).mx, widthIn: weights.widthIn, tensor };
}
