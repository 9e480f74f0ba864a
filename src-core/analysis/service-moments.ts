/** The service moments of many moments of one piece at a time, with feet raised or short: what a search for an order or a height needs. */
import type { CabinetSupport } from '../job';
import type { Point } from '../outline';
import { directionAt } from '../outline';
import type { Governing } from './governing';
import { addCase, startGoverning } from './governing';
import type { PlateState } from './plate-state';
import type { Combination, SettledCase } from './solve-cases';
import { settleCases, sweepCases } from './solve-cases';
import type { OpenMoment, SupportSets } from './support-sets';
import type { Bearing, Bound, Face } from './types';

/** What of a support is raised: all of it, or one side of a cabinet while the other stays. */
export type LiftedPart = 'whole' | 'left-side' | 'right-side';

/** A support raised beyond where it is drawn; a negative raise leaves a gap. */
export interface Lift {
  readonly supportId: string;
  readonly part: LiftedPart;
  readonly raiseIn: number;
}

export interface MomentQuestion {
  readonly moment: OpenMoment;
  readonly lift: Lift | null;
}

/** The largest averaged service moment over self weight, working load and both stiffness bounds. */
export interface ServiceMoment {
  /** Over the cracking limit of that day; infinite where the slab would turn over. */
  readonly crackingRatio: number;
  readonly momentLbfInPerIn: number;
  readonly face: Face;
  readonly bound: Bound;
  readonly at: Point;
  readonly turnsOver: boolean;
}

const BOUNDS = ['low', 'high'] as const satisfies readonly Bound[];

/** Answers many questions about one piece with one sweep of its factor. */
export function serviceMoments(sets: SupportSets, questions: readonly MomentQuestion[]): ServiceMoment[] {
  const { mesh, locate, piece } = sets.meshed;
  const combinations: Combination[] = [
    { deadFactor: 1, liveFactor: 0, liveIndex: -1 },
    ...sets.loads.live.map((_, liveIndex) => ({ deadFactor: 1, liveFactor: 1, liveIndex })),
  ];
  const settled: SettledCase[] = [];
  const asked: { readonly question: number; readonly bound: Bound }[] = [];
  questions.forEach(({ moment, lift }, question) => {
    const state = lift === null ? moment.state : withLift(moment, lift);
    for (const bound of BOUNDS)
      for (const one of settleCases(state, bound, sets.loads, moment.free, combinations)) {
        settled.push(one);
        asked.push({ question, bound });
      }
  });
  const records = questions.map(() => ({
    low: startGoverning(mesh, locate, piece.thicknessIn),
    high: startGoverning(mesh, locate, piece.thicknessIn),
    turnsOver: false,
  }));
  sweepCases(sets.plate, sets.loads, settled, (index, moments) => {
    const { question, bound } = asked[index]!;
    const record = records[question]!;
    record.turnsOver ||= settled[index]!.asIfHeld;
    addCase(record[bound], moments, 0);
  });
  return records.map((record, question) => {
    const offers = BOUNDS.flatMap((bound) =>
      (['bottom', 'top'] as const).map((face) => offerOf(record[bound], bound, face)),
    );
    const worst = offers.reduce((a, b) => (b.momentLbfInPerIn > a.momentLbfInPerIn ? b : a));
    const limit = questions[question]!.moment.crackingLimitLbfInPerIn;
    const { turnsOver } = record;
    return { ...worst, turnsOver, crackingRatio: turnsOver ? Infinity : worst.momentLbfInPerIn / limit };
  });
}

function offerOf(
  governing: Governing,
  bound: Bound,
  face: Face,
): Pick<ServiceMoment, 'momentLbfInPerIn' | 'face' | 'bound' | 'at'> {
  const { momentLbfInPerIn, node } = governing.faces[face].peak;
  const at = { xIn: governing.mesh.xIn[node]!, yIn: governing.mesh.yIn[node]! };
  return { momentLbfInPerIn, face, bound, at };
}

/** The same plate with some of its gaps changed; springs and flexibility stay. */
function withLift({ set, state }: OpenMoment, lift: Lift): PlateState {
  const gapIn = Float64Array.from(state.contacts, ({ gapIn: drawn, acts, bearing, at }) => {
    const { support } = set.bearings[bearing]!;
    if (acts === 'pull' || support.id !== lift.supportId) return drawn;
    return drawn - lift.raiseIn * liftShare(set.bearings[bearing]!, lift.part, at);
  });
  const { low, high } = state.systems;
  const changed = <S extends PlateState['systems']['low']>(system: S) =>
    system === null ? null : { ...system, links: { ...system.links, gapIn } };
  return { ...state, systems: { low: changed(low), high: changed(high) } };
}

/** Share of the raise that a contact point gets: on a cabinet raised at one side the other side stays and the rails tilt. */
function liftShare({ support }: Bearing, part: LiftedPart, at: Point): number {
  if (part === 'whole' || support.kind !== 'cabinet') return 1;
  const share = shareFromLeft(support, at);
  return part === 'right-side' ? share : 1 - share;
}

/** 0 over the middle of the left panel, 1 over that of the right one. */
function shareFromLeft({ corner, angleDeg, widthIn, panelIn }: CabinetSupport, at: Point): number {
  const along = directionAt((angleDeg * Math.PI) / 180);
  const fromLeftIn = (at.xIn - corner.xIn) * along.x + (at.yIn - corner.yIn) * along.y - panelIn / 2;
  return Math.min(1, Math.max(0, fromLeftIn / Math.max(panelIn, widthIn - panelIn)));
}
