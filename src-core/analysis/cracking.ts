/**
 * The second state: where the slab would crack it is softened and solved again, until no new zone cracks or four
 * factorisations are spent. A crack that steel crosses keeps its effective inertia (ACI 318-19 24.2.3.5); one that it does
 * not keeps two hundredths of the gross inertia, so that what it sheds goes to the rest of the slab and to its brackets.
 */
import { effectiveInertia, grossInertia } from '../concrete';
import type { Locate, PlateLayout, PlateMesh } from '../plate';
import { bendingMatrix, crackedBendingMatrix, plateRigidity, woodArmer } from '../plate';
import type { BoundOutcome, BoundRun } from './bound-state';
import { runBound } from './bound-state';
import type { Envelope } from './governing';
import { averageAt } from './governing';
import type { ArmFlexibility } from './plate-state';
import { buildPlateState } from './plate-state';
import type { Combination, LoadSet, SolvedCase } from './solve-cases';
import { freeDeflections, solveCases } from './solve-cases';
import type { SteelLayer } from './steel';
import { crackedInertiaIn4PerIn, tensionLayers } from './steel';
import type { Bearing, Bound, ConcreteState, Contact, CrackedState, Face, SteelDemand } from './types';

/** Share of the gross inertia left to a crack that no steel crosses. Decision of this project, no source. */
const PLAIN_CRACK_SHARE = 0.02;
/** Factorisations in all, the uncracked one among them. */
export const MOST_FACTORISATIONS = 4;
/** Cases that are looked at under factored load: those that govern somewhere in the cracked zone. */
const MOST_FACTORED_CASES = 24;
const BOUNDS = ['low', 'high'] as const satisfies readonly Bound[];
const FACES = ['bottom', 'top'] as const satisfies readonly Face[];

export interface CrackingInput {
  readonly mesh: PlateMesh;
  readonly layout: PlateLayout;
  readonly locate: Locate;
  readonly concrete: ConcreteState;
  readonly thicknessIn: number;
  readonly steel: readonly SteelLayer[];
  readonly bearings: readonly Bearing[];
  readonly contacts: readonly Contact[];
  readonly addArms: ArmFlexibility;
  readonly loads: LoadSet;
  readonly overhangIn: number;
  readonly run: Omit<BoundRun, 'state' | 'bound' | 'free' | 'cases' | 'visit'>;
  readonly caseCount: number;
  /** Factorisations at the most, the uncracked one included. */
  readonly mostFactorisations: number;
}

/** A crack of one triangle: how much stiffness is left across it and which way the slab bends there. */
interface Crack {
  readonly share: number;
  readonly bendingRad: number;
}

/** Solves the piece again with its cracked zones, starting from the uncracked outcome of both bounds. */
export function crackedState(input: CrackingInput, elastic: Record<Bound, BoundOutcome>): CrackedState {
  const triangles = input.mesh.triangles.length / 3;
  const cracks: (Crack | null)[] = new Array<Crack | null>(triangles).fill(null);
  let outcome = elastic;
  let grown = growCracks(input, cracks, outcome);
  let factorisations = 1;
  let demands: readonly SteelDemand[] = [];
  while (true) {
    const bending = crackedBending(input, cracks);
    const state = buildPlateState(input.mesh, input.layout, bending, input.contacts, input.addArms);
    factorisations++;
    const free = freeDeflections(state, input.loads);
    const isLast = factorisations >= input.mostFactorisations;
    const few = governingCases(outcome, MOST_FACTORED_CASES);
    const solve = (cases: readonly number[], visit?: (bound: Bound, solved: SolvedCase) => void) => {
      const each = (bound: Bound): BoundOutcome =>
        runBound({
          ...input.run,
          state,
          bound,
          free,
          cases,
          ...(visit === undefined ? {} : { visit: (solved: SolvedCase) => visit(bound, solved) }),
        });
      return { low: each('low'), high: each('high') };
    };
    outcome = solve(few);
    grown = growCracks(input, cracks, outcome);
    if (grown > 0 && !isLast) continue;

    const finder = demandFinder(input, cracks);
    outcome = solve(
      Array.from({ length: input.caseCount }, (_, i) => i),
      (_, solved) => finder.service(solved),
    );
    if (input.steel.length > 0) {
      const factored: Combination[] = [
        { deadFactor: 1.4, liveFactor: 0, liveIndex: -1 },
        ...few.slice(1).map((index) => ({ deadFactor: 1.2, liveFactor: 1.6, liveIndex: index - 1 })),
      ];
      const ids = [0, ...few.slice(1)].map((index) => input.run.labels[index]!.id);
      for (const bound of BOUNDS) {
        solveCases(state, bound, input.loads, free, factored, (solved) =>
          finder.factored(solved, ids[solved.index]!),
        );
      }
      demands = finder.demands();
    }
    return {
      low: outcome.low.state,
      high: outcome.high.state,
      demands,
      crackedShare: crackedAreaShare(input.mesh, cracks),
      factorisations,
      settled: grown === 0,
    };
  }
}

/** Adds the triangles whose service moment passes the cracking limit; returns how many are new. */
function growCracks(
  input: CrackingInput,
  cracks: (Crack | null)[],
  outcome: Record<Bound, BoundOutcome>,
): number {
  const { mesh, concrete, thicknessIn } = input;
  const limit = concrete.crackingLimitLbfInPerIn;
  const Ig = grossInertia.compute({ h: thicknessIn });
  let grown = 0;
  for (let t = 0; t < cracks.length; t++) {
    let worst = { moment: limit, bendingRad: 0, face: 'bottom' as Face };
    for (const bound of BOUNDS)
      for (const face of FACES) {
        const { moment, bendingRad } = atTriangle(mesh, outcome[bound].envelopes[face], t);
        if (moment > worst.moment) worst = { moment, bendingRad, face };
      }
    if (worst.moment <= limit || cracks[t] !== null) continue;
    const at = centroid(mesh, t);
    const layers = tensionLayers(input.steel, worst.face, thicknessIn, worst.bendingRad, at);
    const Icr = crackedInertiaIn4PerIn(layers, concrete.modulusPsi);
    const Ie =
      Icr <= 0 || Icr >= Ig
        ? Icr
        : effectiveInertia.compute({ Icr, Ig, Mcr: concrete.crackingMomentLbfInPerIn, Ma: worst.moment });
    cracks[t] = { share: Math.min(1, Math.max(PLAIN_CRACK_SHARE, Ie / Ig)), bendingRad: worst.bendingRad };
    grown++;
  }
  return grown;
}

function atTriangle(mesh: PlateMesh, envelope: Envelope, t: number): { moment: number; bendingRad: number } {
  let sum = 0;
  let best = mesh.triangles[3 * t]!;
  for (let c = 0; c < 3; c++) {
    const node = mesh.triangles[3 * t + c]!;
    sum += envelope.lbfInPerIn[node]! / 3;
    if (envelope.lbfInPerIn[node]! > envelope.lbfInPerIn[best]!) best = node;
  }
  return { moment: sum, bendingRad: envelope.bendingRad[best]! };
}

/** One bending matrix a triangle, softened across its crack. */
function crackedBending(input: CrackingInput, cracks: readonly (Crack | null)[]): Float64Array {
  const { concrete, thicknessIn } = input;
  const { modulusPsi, poisson } = concrete;
  const whole = bendingMatrix(modulusPsi, thicknessIn, poisson);
  const rigidityLbfIn = plateRigidity.compute({ E: modulusPsi, h: thicknessIn, nu: poisson });
  const bending = new Float64Array(cracks.length * 9);
  cracks.forEach((crack, t) => {
    bending.set(
      crack === null
        ? whole
        : crackedBendingMatrix({ rigidityLbfIn, poisson }, crack.bendingRad, crack.share),
      t * 9,
    );
  });
  return bending;
}

/** Self weight and the live cases that govern at most nodes, the likeliest first. */
function governingCases(outcome: Record<Bound, BoundOutcome>, most: number): number[] {
  const votes = new Map<number, number>();
  for (const bound of BOUNDS)
    for (const face of FACES) {
      const { caseIndex, lbfInPerIn } = outcome[bound].envelopes[face];
      caseIndex.forEach((index, node) => {
        if (index >= 0) votes.set(index, (votes.get(index) ?? 0) + lbfInPerIn[node]! ** 2);
      });
    }
  const ranked = [...votes.entries()].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([index]) => index);
  return [0, ...ranked.filter((index) => index !== 0).slice(0, most)].sort((a, b) => a - b);
}

interface DemandFinder {
  readonly service: (solved: SolvedCase) => void;
  readonly factored: (solved: SolvedCase, caseId: string) => void;
  readonly demands: () => readonly SteelDemand[];
}

interface Record4 {
  moment: number;
  node: number;
  widthIn: number;
  caseId: string;
}

/** Finds the Wood-Armer moments that the steel must take, at the nodes of cracked triangles, in both bar directions. */
function demandFinder(input: CrackingInput, cracks: readonly (Crack | null)[]): DemandFinder {
  const { mesh, locate, thicknessIn } = input;
  const barRad = input.steel[0]?.barRad ?? 0;
  const nodes = new Set<number>();
  cracks.forEach((crack, t) => {
    if (crack !== null) for (let c = 0; c < 3; c++) nodes.add(mesh.triangles[3 * t + c]!);
  });
  const empty = (): Record4 => ({ moment: 0, node: -1, widthIn: 0, caseId: '' });
  const make = () => ({
    bottomAlong: empty(),
    bottomAcross: empty(),
    topAlong: empty(),
    topAcross: empty(),
  });
  const service = make();
  const factored = make();
  const widths = {
    bottom: 2 * thicknessIn,
    top: Math.max(2 * thicknessIn, input.overhangIn / 2),
  };

  const look = (into: ReturnType<typeof make>, solved: SolvedCase, caseId: string) => {
    const { mx, my, mxy } = solved.moments;
    for (const node of nodes) {
      const peak = woodArmer({ mx: mx[node]!, my: my[node]!, mxy: mxy[node]! }, barRad);
      const offers = [
        [into.bottomAlong, peak.bottomAlongLbfInPerIn, 'bottom', 0],
        [into.bottomAcross, peak.bottomAcrossLbfInPerIn, 'bottom', 1],
        [into.topAlong, -peak.topAlongLbfInPerIn, 'top', 0],
        [into.topAcross, -peak.topAcrossLbfInPerIn, 'top', 1],
      ] as const;
      for (const [record, value, face, across] of offers) {
        if (value <= record.moment) continue;
        const bendingRad = barRad + (across === 1 ? Math.PI / 2 : 0);
        const average = averageAt({ mesh, locate }, solved.moments, node, bendingRad, widths[face]);
        if (average === null) continue;
        const m = woodArmer(average.tensor, barRad);
        const moment =
          face === 'bottom'
            ? across === 1
              ? m.bottomAcrossLbfInPerIn
              : m.bottomAlongLbfInPerIn
            : across === 1
              ? -m.topAcrossLbfInPerIn
              : -m.topAlongLbfInPerIn;
        if (moment > record.moment) Object.assign(record, { moment, node, widthIn: average.widthIn, caseId });
      }
    }
  };

  return {
    service: (solved) => look(service, solved, ''),
    factored: (solved, caseId) => look(factored, solved, caseId),
    demands: () =>
      (
        [
          ['bottom', 0, 'bottomAlong'],
          ['bottom', 1, 'bottomAcross'],
          ['top', 0, 'topAlong'],
          ['top', 1, 'topAcross'],
        ] as const
      ).flatMap(([face, across, key]) => {
        const found = factored[key];
        if (found.node < 0) return [];
        return [
          {
            face,
            barRad: barRad + (across === 1 ? Math.PI / 2 : 0),
            factoredLbfInPerIn: found.moment,
            serviceLbfInPerIn: service[key].moment,
            averagedOverIn: found.widthIn,
            at: { xIn: mesh.xIn[found.node]!, yIn: mesh.yIn[found.node]! },
            caseId: found.caseId,
          },
        ];
      }),
  };
}

function crackedAreaShare(mesh: PlateMesh, cracks: readonly (Crack | null)[]): number {
  let all = 0;
  let cracked = 0;
  cracks.forEach((crack, t) => {
    const [i, j, k] = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
    const twice =
      (mesh.xIn[j]! - mesh.xIn[i]!) * (mesh.yIn[k]! - mesh.yIn[i]!) -
      (mesh.xIn[k]! - mesh.xIn[i]!) * (mesh.yIn[j]! - mesh.yIn[i]!);
    all += twice;
    if (crack !== null) cracked += twice;
  });
  return cracked / all;
}

function centroid(mesh: PlateMesh, t: number): { xIn: number; yIn: number } {
  const nodes = [mesh.triangles[3 * t]!, mesh.triangles[3 * t + 1]!, mesh.triangles[3 * t + 2]!];
  return {
    xIn: nodes.reduce((sum, node) => sum + mesh.xIn[node]!, 0) / 3,
    yIn: nodes.reduce((sum, node) => sum + mesh.yIn[node]!, 0) / 3,
  };
}
