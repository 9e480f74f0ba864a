/** Solves all load cases with one stiffness bound and keeps what the checks need. */
import type { Locate, MomentField } from '../plate';
import { addCase, averageAt, type Envelope, type Governing, startGoverning } from './governing';
import type { PlateState } from './plate-state';
import type { ShearReader } from './shear-field';
import { worstShear } from './shear-field';
import type { Combination, FreeDeflections, LoadSet, SolvedCase } from './solve-cases';
import { solveCases } from './solve-cases';
import type {
  Bearing,
  BearingReaction,
  Bound,
  BoundState,
  Face,
  GoverningMoment,
  GoverningShear,
  LiveLoad,
  LoadCase,
} from './types';

export interface CaseLabel {
  readonly id: string;
  readonly words: string;
  readonly live: LiveLoad;
}

export interface BoundRun {
  readonly state: PlateState;
  readonly bound: Bound;
  readonly bearings: readonly Bearing[];
  readonly loads: LoadSet;
  readonly free: FreeDeflections;
  readonly locate: Locate;
  readonly averageOverIn: number;
  readonly shear: ShearReader;
  readonly labels: readonly CaseLabel[];
  /** Which of the labelled cases to solve; the first (self weight) always is. */
  readonly cases: readonly number[];
  /** Besides, for the caller to look at each case while its buffers hold. */
  readonly visit?: (solved: SolvedCase) => void;
}

export interface BoundOutcome {
  readonly state: BoundState;
  readonly envelopes: { readonly [F in Face]: Envelope };
}

/** Service combinations: self weight, then self weight with each live load. */
export function runBound(run: BoundRun): BoundOutcome {
  const { state, bound, labels } = run;
  const combinations: Combination[] = run.cases.map((index) => ({
    deadFactor: 1,
    liveFactor: 1,
    liveIndex: index - 1,
  }));
  const governing = startGoverning(state.mesh, run.locate, run.averageOverIn);
  const cases: LoadCase[] = [];
  const nodes = state.mesh.xIn.length;
  let dead: { wIn: Float64Array; moments: MomentField; settlementIn: number } | null = null;
  let worstDown = { downIn: -Infinity, node: 0, caseIndex: 0 };
  let worstUp = { upIn: -Infinity, node: 0, caseIndex: 0 };
  let shear: (GoverningShear & { readonly node: number }) | null = null;

  solveCases(state, bound, run.loads, run.free, combinations, (solved) => {
    const label = labels[run.cases[solved.index]!]!;
    const settlementIn = meanSettlement(state, solved);
    const extremes = deflectionExtremes(solved.wIn, settlementIn);
    if (dead === null) {
      dead = {
        wIn: solved.wIn.slice(),
        moments: {
          mx: solved.moments.mx.slice(),
          my: solved.moments.my.slice(),
          mxy: solved.moments.mxy.slice(),
        },
        settlementIn,
      };
    }
    if (extremes.downIn > worstDown.downIn) {
      worstDown = { downIn: extremes.downIn, node: extremes.downNode, caseIndex: solved.index };
    }
    if (extremes.upIn > worstUp.upIn) {
      worstUp = { upIn: extremes.upIn, node: extremes.upNode, caseIndex: solved.index };
    }
    addCase(governing, solved.moments, run.cases[solved.index]!);
    const v = worstShear(run.shear, solved.moments, label.live, shear?.shearLbfPerIn ?? 0);
    if (v !== null) {
      const deadV = dead === null ? 0 : run.shear.at(dead.moments, v.node);
      shear = {
        shearLbfPerIn: v.shearLbfPerIn,
        deadLbfPerIn: Math.min(deadV, v.shearLbfPerIn),
        averagedOverIn: run.shear.widthIn,
        at: pointOf(state, v.node),
        caseId: label.id,
        node: v.node,
      };
    }
    cases.push({
      id: label.id,
      words: label.words,
      live: label.live,
      totalLbf: solved.totalLbf,
      asIfHeld: solved.asIfHeld,
      reactions: bearingReactions(state, run.bearings, solved),
      contactLbf: solved.contact.reactionLbf,
      imbalance: imbalanceOf(solved),
      deflection: {
        downIn: extremes.downIn,
        downAt: pointOf(state, extremes.downNode),
        upIn: extremes.upIn,
        upAt: pointOf(state, extremes.upNode),
      },
    });
    run.visit?.(solved);
  });
  if (dead === null) throw new Error('no load case was solved');
  const base: { wIn: Float64Array; moments: MomentField; settlementIn: number } = dead;

  return {
    state: {
      bound,
      cases,
      sagging: readGoverning(governing, 'bottom', base.moments, labels),
      hogging: readGoverning(governing, 'top', base.moments, labels),
      shear,
      saggingEnvelope: governing.faces.bottom.envelope.lbfInPerIn,
      hoggingEnvelope: governing.faces.top.envelope.lbfInPerIn,
      worstDown: {
        downIn: worstDown.downIn,
        deadIn: base.wIn[Math.min(nodes - 1, worstDown.node)]! - base.settlementIn,
        at: pointOf(state, worstDown.node),
        caseId: cases[worstDown.caseIndex]!.id,
      },
      worstUp: {
        upIn: worstUp.upIn,
        at: pointOf(state, worstUp.node),
        caseId: cases[worstUp.caseIndex]!.id,
      },
    },
    envelopes: { bottom: governing.faces.bottom.envelope, top: governing.faces.top.envelope },
  };
}

function readGoverning(
  governing: Governing,
  face: Face,
  dead: MomentField,
  labels: readonly CaseLabel[],
): GoverningMoment {
  const { peak } = governing.faces[face];
  const sign = face === 'bottom' ? 1 : -1;
  const deadAverage = averageAt(governing, dead, peak.node, peak.bendingRad, governing.widthIn);
  return {
    momentLbfInPerIn: peak.momentLbfInPerIn,
    peakLbfInPerIn: peak.peakLbfInPerIn,
    averagedOverIn: peak.averagedOverIn,
    deadLbfInPerIn: deadAverage === null ? 0 : sign * deadAverage.momentLbfInPerIn,
    at: { xIn: governing.mesh.xIn[peak.node]!, yIn: governing.mesh.yIn[peak.node]! },
    node: peak.node,
    bendingRad: peak.bendingRad,
    caseId: labels[peak.caseIndex]!.id,
  };
}

/** Settlement of what the slab rests on: deflection at the bearing contacts, weighted by their reactions. */
function meanSettlement(state: PlateState, solved: SolvedCase): number {
  let sum = 0;
  let total = 0;
  state.contacts.forEach((contact, i) => {
    const r = solved.contact.reactionLbf[i]!;
    if (contact.acts !== 'push' || r <= 0) return;
    sum += r * solved.wIn[contact.node]!;
    total += r;
  });
  return total > 0 ? sum / total : 0;
}

function deflectionExtremes(
  wIn: Float64Array,
  settlementIn: number,
): { downIn: number; downNode: number; upIn: number; upNode: number } {
  let downNode = 0;
  let upNode = 0;
  for (let i = 1; i < wIn.length; i++) {
    if (wIn[i]! > wIn[downNode]!) downNode = i;
    if (wIn[i]! < wIn[upNode]!) upNode = i;
  }
  return { downIn: wIn[downNode]! - settlementIn, downNode, upIn: settlementIn - wIn[upNode]!, upNode };
}

function bearingReactions(
  state: PlateState,
  bearings: readonly Bearing[],
  solved: SolvedCase,
): BearingReaction[] {
  return bearings.map((bearing, index) => {
    let pushLbf = 0;
    let tieLbf = 0;
    let worstTieLbf = 0;
    let peakPressurePsi = 0;
    let pushers = 0;
    let lifted = 0;
    for (const i of bearing.contacts) {
      const contact = state.contacts[i]!;
      const r = solved.contact.reactionLbf[i]!;
      if (contact.acts === 'pull') {
        tieLbf -= r;
        worstTieLbf = Math.max(worstTieLbf, -r);
        continue;
      }
      pushLbf += r;
      pushers++;
      if (solved.contact.bears[i] === 0) lifted++;
      if (bearing.form !== 'patch' && contact.tributaryIn2 > 0) {
        peakPressurePsi = Math.max(peakPressurePsi, r / contact.tributaryIn2);
      }
    }
    return {
      bearing: index,
      pushLbf,
      tieLbf,
      worstTieLbf,
      peakPressurePsi,
      liftedShare: pushers === 0 ? 0 : lifted / pushers,
    };
  });
}

function imbalanceOf(solved: SolvedCase): number {
  const sum = solved.contact.reactionLbf.reduce((total, r) => total + r, 0);
  return Math.abs(sum - solved.totalLbf) / Math.max(1, Math.abs(solved.totalLbf));
}

function pointOf(state: PlateState, node: number): { xIn: number; yIn: number } {
  return { xIn: state.mesh.xIn[node]!, yIn: state.mesh.yIn[node]! };
}
