/** Solves all load cases with one stiffness bound and keeps what the checks need. */
import type { Locate, MomentField } from '../plate';
import { addCase, averageAt, type Envelope, type Governing, startGoverning } from './governing';
import type { PlateState } from './plate-state';
import type { ShearReader } from './shear-field';
import { shearAlong, worstShear } from './shear-field';
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
  let dead: { wIn: Float64Array; moments: MomentField; plane: Plane } | null = null;
  let worstDown = { downIn: -Infinity, node: 0, caseIndex: 0 };
  let worstUp = { upIn: -Infinity, node: 0, caseIndex: 0 };
  let shear: (GoverningShear & { readonly node: number }) | null = null;

  solveCases(state, bound, run.loads, run.free, combinations, (solved) => {
    const label = labels[run.cases[solved.index]!]!;
    const plane = restingPlane(state, run.bearings, solved);
    const extremes = deflectionExtremes(state, solved.wIn, plane);
    if (dead === null) {
      dead = {
        wIn: solved.wIn.slice(),
        moments: {
          mx: solved.moments.mx.slice(),
          my: solved.moments.my.slice(),
          mxy: solved.moments.mxy.slice(),
        },
        plane,
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
      const deadV = dead === null ? 0 : shearAlong(run.shear, dead.moments, v);
      shear = {
        shearLbfPerIn: v.shearLbfPerIn,
        deadLbfPerIn: Math.max(0, Math.min(deadV, v.shearLbfPerIn)),
        averagedOverIn: v.widthIn,
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
        giveIn: plane.giveIn,
        downIn: extremes.downIn,
        downAt: pointOf(state, extremes.downNode),
        upIn: extremes.upIn,
        upAt: pointOf(state, extremes.upNode),
      },
    });
    run.visit?.(solved);
  });
  if (dead === null) throw new Error('no load case was solved');
  const base: { wIn: Float64Array; moments: MomentField; plane: Plane } = dead;

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
        deadIn: base.wIn[worstDown.node]! - planeAt(state, base.plane, worstDown.node),
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

/** w = a + b x + c y: where the slab would lie if it were rigid on what gives under it. */
interface Plane {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly giveIn: number;
}

/** Share of the supports' spread below which they lie too near one line to show a tilt. */
const FLAT_SHARE = 1e-6;

/**
 * Plane of the slab over its supports, brackets left out, by least squares weighted with the stiffness of each contact. Supports in
 * one line show a settlement and no tilt; brackets alone show neither.
 */
function restingPlane(state: PlateState, bearings: readonly Bearing[], solved: SolvedCase): Plane {
  const { xIn, yIn } = state.mesh;
  const resting = state.contacts.flatMap((contact, i) =>
    contact.acts === 'push' && bearings[contact.bearing]!.support.kind !== 'bracket' ? [{ contact, i }] : [],
  );
  let total = 0;
  let x = 0;
  let y = 0;
  let w = 0;
  let giveIn = 0;
  for (const { contact, i } of resting) {
    const k = contact.lowLbfPerIn;
    total += k;
    x += k * xIn[contact.node]!;
    y += k * yIn[contact.node]!;
    w += k * solved.wIn[contact.node]!;
    if (solved.contact.reactionLbf[i]! > 0)
      giveIn = Math.max(giveIn, solved.wIn[contact.node]! - contact.gapIn);
  }
  if (total === 0) return { a: 0, b: 0, c: 0, giveIn };
  x /= total;
  y /= total;
  w /= total;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xw = 0;
  let yw = 0;
  for (const { contact } of resting) {
    const k = contact.lowLbfPerIn / total;
    const dx = xIn[contact.node]! - x;
    const dy = yIn[contact.node]! - y;
    const dw = solved.wIn[contact.node]! - w;
    xx += k * dx * dx;
    xy += k * dx * dy;
    yy += k * dy * dy;
    xw += k * dx * dw;
    yw += k * dy * dw;
  }
  const det = xx * yy - xy * xy;
  if (det <= FLAT_SHARE * (xx + yy) ** 2) return { a: w, b: 0, c: 0, giveIn };
  const b = (yy * xw - xy * yw) / det;
  const c = (xx * yw - xy * xw) / det;
  return { a: w - b * x - c * y, b, c, giveIn };
}

function planeAt(state: PlateState, plane: Plane, node: number): number {
  return plane.a + plane.b * state.mesh.xIn[node]! + plane.c * state.mesh.yIn[node]!;
}

function deflectionExtremes(
  state: PlateState,
  wIn: Float64Array,
  plane: Plane,
): { downIn: number; downNode: number; upIn: number; upNode: number } {
  const { xIn, yIn } = state.mesh;
  const { a, b, c } = plane;
  let downNode = 0;
  let upNode = 0;
  let downIn = -Infinity;
  let upIn = -Infinity;
  for (let i = 0; i < wIn.length; i++) {
    const own = wIn[i]! - (a + b * xIn[i]! + c * yIn[i]!);
    if (own > downIn) {
      downIn = own;
      downNode = i;
    }
    if (-own > upIn) {
      upIn = -own;
      upNode = i;
    }
  }
  return { downIn, downNode, upIn, upNode };
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
