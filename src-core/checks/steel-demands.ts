/** Which moments of the cracked piece its steel must carry, face by face and direction by direction. */
import type { Bound, BoundState, CrackedState, Face, PieceAnalysis, SteelDemand } from '../analysis';
import { steelLayers } from '../analysis';
import { factoredMoment } from './bending-plain';

export interface CarriedDemand extends SteelDemand {
  /** Worst service moment on this face, whole or cracked, over the cracking limit: how far plain concrete falls short. */
  readonly shortOfPlainRatio: number;
}

/**
 * The state that shear and deflection are read in: cracked where steel holds the cracks, else whole. A cracked slab without
 * steel has no state to stand in; bending refuses it, and the figures of the whole slab are the ones that mean something.
 */
export function standingState(analysis: PieceAnalysis): { readonly [B in Bound]: BoundState } {
  const { cracked, elastic, piece } = analysis;
  return cracked !== null && steelLayers(piece).length > 0 ? cracked : elastic;
}

/**
 * The steel demands that count. On a face that cracks, the direction with the larger moment always does; the other only
 * where its own service moment passes the cracking limit, because below it whole concrete carries that direction.
 * None where the piece stays uncracked. Engineering judgement on ACI 318-19 Table 24.2.3.5.
 */
export function carriedDemands(analysis: PieceAnalysis): readonly CarriedDemand[] {
  const { cracked } = analysis;
  if (cracked === null) return [];
  return (['bottom', 'top'] as const).flatMap((face) => demandsOfFace(analysis, cracked, face));
}

function demandsOfFace(analysis: PieceAnalysis, cracked: CrackedState, face: Face): CarriedDemand[] {
  const { elastic, concrete } = analysis;
  const limit = concrete.crackingLimitLbfInPerIn;
  const states = [elastic.low, elastic.high, cracked.low, cracked.high];
  const worst = states.reduce((a, b) => (momentOf(b, face) > momentOf(a, face) ? b : a));
  const faceRatio = momentOf(worst, face) / limit;
  if (faceRatio <= 1) return [];
  const found = cracked.demands.filter((demand) => demand.face === face);
  const all = found.length > 0 ? found : [uncrackedDemand(worst, face)];
  const main = all.reduce((a, b) => (b.factoredLbfInPerIn > a.factoredLbfInPerIn ? b : a));
  return all
    .filter((demand) => demand === main || demand.serviceLbfInPerIn > limit)
    .map((demand) => ({
      ...demand,
      shortOfPlainRatio: demand === main ? faceRatio : demand.serviceLbfInPerIn / limit,
    }));
}

/** Where the crack is too short for any triangle to crack as a whole, the uncracked moment itself is the demand. */
function uncrackedDemand(state: BoundState, face: Face): SteelDemand {
  const moment = face === 'bottom' ? state.sagging : state.hogging;
  return {
    face,
    barRad: moment.bendingRad,
    factoredLbfInPerIn: factoredMoment.compute({
      D: moment.deadLbfInPerIn,
      S: moment.momentLbfInPerIn,
    }),
    serviceLbfInPerIn: moment.momentLbfInPerIn,
    averagedOverIn: moment.averagedOverIn,
    at: moment.at,
    caseId: moment.caseId,
  };
}

function momentOf(state: BoundState, face: Face): number {
  return face === 'bottom' ? state.sagging.momentLbfInPerIn : state.hogging.momentLbfInPerIn;
}
