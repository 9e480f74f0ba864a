/** The load of a framed section followed down: joists and headers, stringers, legs and ledger, each a solved beam. */
import type { Job } from '../job';
import type { BeamInput, SolvedBeam, TimberMember } from '../timber';
import { formDesignLoad, PANELS, type Service, solveBeam, timberMember, wetSlabLoad } from '../timber';
import type { Worked } from '../workings';
import type { Arrangement } from './arrangement';
import { type FrameJoist, type Framing, lumberDepthIn } from './framing';
import { handlingWeightLb } from './handling';
import type { FalseworkPractice } from './practice';

const IN2_PER_FT2 = 144;

/** A stick with its load solved. */
export interface LoadedStick {
  readonly words: string;
  readonly member: TimberMember;
  readonly beam: SolvedBeam;
}

export interface LegLoad {
  readonly line: number;
  readonly s: number;
  readonly t: number;
  readonly loadLbf: number;
}

export interface CarriedSection {
  readonly framing: Framing;
  /** Weights a square foot: wet slab, form; and the design load with people, psf. */
  readonly wet: Worked;
  readonly formPsf: number;
  readonly design: Worked;
  /** One of each that carry alike. */
  readonly joists: readonly LoadedStick[];
  readonly headers: readonly LoadedStick[];
  readonly stringers: readonly LoadedStick[];
  readonly legs: readonly LegLoad[];
  /** Joist ends on the ledger, lbf. */
  readonly ledger: readonly { readonly s: number; readonly loadLbf: number }[];
  /** Largest load of one joist on a stringer, a leg or the ledger, and how far it stands from the joist's end, in. */
  readonly worstBearing: { readonly loadLbf: number; readonly fromEndIn: number; readonly onLedger: boolean };
  /** Headers' largest end load on a trimmer, lbf; 0 without. */
  readonly headerEndLbf: number;
  /** Everything that the legs and the ledger must carry, lbf, worked from areas. */
  readonly totalLbf: number;
  /** Wet slab and form, lbf. */
  readonly deadLbf: number;
  /** Deck, joists and stringers: what comes out in one go, lb. */
  readonly handlingLb: number;
  readonly castFt2: number;
}

/** Service of the falsework's lumber. */
export function serviceOf({ falsework }: Job): Service {
  return { durationFactor: falsework.durationFactor, isWet: falsework.wetService };
}

/** Follows the load of a section down to its legs and ledger; null where a stick lifts, or has nothing to span between. */
export function carrySection(
  job: Job,
  framing: Framing,
  thicknessIn: number,
  practice: FalseworkPractice,
): CarriedSection | null {
  const { falsework } = job;
  const { section, arrangement, acrossIn, alongIn, openings } = framing;
  const handlingLb = handlingWeightLb(framing, PANELS[falsework.panel].thicknessIn);
  const openIn2 = openings.reduce((sum, { s0, s1, t0, t1 }) => sum + (s1 - s0) * (t1 - t0), 0);
  const castFt2 = (acrossIn * alongIn - openIn2) / IN2_PER_FT2;
  const formPsf = Math.max(practice.leastFormPsf, (handlingLb * IN2_PER_FT2) / (acrossIn * alongIn));
  const wet = wetSlabLoad({ wc: falsework.wetDensityPcf, h: thicknessIn });
  const design = formDesignLoad({
    qw: wet.value,
    qf: formPsf,
    ql: falsework.livePsf,
    qmin: falsework.leastTotalPsf,
  });
  const q = design.value / IN2_PER_FT2;
  // What hangs in an opening, and a person stepping on it, is shared by the four sides of its frame.
  const rimLbf = openings.map(
    ({ opening, s0, s1, t0, t1 }) =>
      opening.weightLb + (falsework.livePsf * (s1 - s0) * (t1 - t0)) / IN2_PER_FT2,
  );
  const boredLbf = section.openings
    .filter(({ isFramed }) => !isFramed)
    .reduce((sum, { weightLb }) => sum + weightLb, 0);
  const service = serviceOf(job);
  const common = timberMember({
    species: falsework.species,
    size: arrangement.joistSize,
    use: 'edge',
    service,
    repetition: { members: framing.joists.length, spacingIn: framing.widestIn },
  });
  const alone = timberMember({
    species: falsework.species,
    size: arrangement.joistSize,
    use: 'edge',
    service,
    repetition: null,
  });

  const onLine: { line: number; s: number; loadLbf: number; fromEndIn: number }[] = [];
  const headerPoints = framing.headers.map((): { atIn: number; loadLbf: number }[] => []);
  const trimmerPoints = new Map<number, { atIn: number; loadLbf: number }[]>();
  const joists: LoadedStick[] = [];
  // Joists that carry alike are solved once.
  const alike = new Map<string, ReturnType<typeof solveJoist>>();
  const solve = (joist: FrameJoist): boolean => {
    const extra = joist.kind === 'trimmer' ? (trimmerPoints.get(joist.s) ?? []) : [];
    const key =
      joist.kind === 'joist'
        ? joist.strips.map(({ widthIn }) => widthIn.toFixed(9)).join()
        : `at ${joist.s} ${joist.t0}`;
    const known = alike.get(key);
    const solved = known ?? solveJoist(joist, framing, { q, extra, rimLbf, member: common, alone, boredLbf });
    if (solved === null || lifts(solved.stick.beam)) return false;
    if (known === undefined) {
      alike.set(key, solved);
      joists.push(solved.stick);
    }
    for (const { line, header, loadLbf, fromEndIn } of solved.ends) {
      if (header !== null) {
        headerPoints[header]!.push({ atIn: joist.s - framing.headers[header]!.s0, loadLbf });
      } else onLine.push({ line, s: joist.s, loadLbf, fromEndIn });
    }
    return true;
  };

  // tails first, for their headers; headers, for the trimmers; then all that runs through
  if (!framing.joists.filter(({ kind }) => kind === 'tail').every(solve)) return null;
  const headers = framing.headers.map(({ opening, t, s0, s1 }, i): LoadedStick => {
    const lengthIn = s1 - s0;
    const beam = solveBeam({
      leftEndIn: 0,
      rightEndIn: 0,
      spans: [{ lengthIn, stiffnessLbfIn2: alone.stiffnessLbfIn2 }],
      uniform: [{ fromIn: 0, toIn: lengthIn, loadLbfPerIn: rimLbf[opening]! / 4 / lengthIn }],
      points: headerPoints[i]!,
    });
    const ends: readonly [number, number] = [s0, s1];
    ends.forEach((s, end) => {
      const list = trimmerPoints.get(s) ?? [];
      list.push({ atIn: t, loadLbf: beam.supports[end]!.reactionLbf });
      trimmerPoints.set(s, list);
    });
    return { words: `header at ${framing.openings[opening]!.opening.words}`, member: alone, beam };
  });
  if (!framing.joists.filter(({ kind }) => kind !== 'tail').every(solve)) return null;

  const under = standOn(job, framing, onLine, service);
  if (under.stringers.some(({ beam }) => lifts(beam))) return null;
  const wetLbf = wet.value * castFt2;
  return {
    framing,
    wet,
    formPsf,
    design,
    joists,
    headers,
    ...under,
    worstBearing: worstOf(onLine, framing),
    headerEndLbf: Math.max(0, ...headers.flatMap(({ beam }) => beam.supports.map((s) => s.reactionLbf))),
    totalLbf: design.value * castFt2 + rimLbf.reduce((sum, lbf) => sum + lbf, 0) + boredLbf,
    deadLbf: wetLbf + (formPsf * acrossIn * alongIn) / IN2_PER_FT2,
    handlingLb,
    castFt2,
  };
}

/** A reaction that lifts by no more than this part of the largest is rounding. */
const LIFT_RATIO = 1e-9;

/** Whether a beam lifts off one of its supports, on which it only rests. */
function lifts({ supports }: SolvedBeam): boolean {
  const reactions = supports.map(({ reactionLbf }) => reactionLbf);
  return Math.min(...reactions) < -LIFT_RATIO * Math.max(...reactions);
}

interface JoistLoads {
  /** psi */
  readonly q: number;
  readonly extra: readonly { readonly atIn: number; readonly loadLbf: number }[];
  readonly rimLbf: readonly number[];
  readonly member: TimberMember;
  readonly alone: TimberMember;
  /** Plugs of bored holes, spread over the joists that run through. */
  readonly boredLbf: number;
}

function solveJoist(joist: FrameJoist, framing: Framing, loads: JoistLoads) {
  const { kind, s, t0, t1 } = joist;
  const held = [
    ...framing.lines.map(({ t }, line) => ({ t, line, header: null as number | null })),
    ...joist.headers.map((header) => ({ t: framing.headers[header]!.t, line: -1, header })),
  ]
    .filter(({ t }) => t > t0 - 1e-9 && t < t1 + 1e-9)
    .sort((a, b) => a.t - b.t);
  if (held.length < 2) return null;
  const member = kind === 'joist' ? loads.member : loads.alone;
  const through = framing.joists.filter((other) => other.kind !== 'tail').length;
  const uniform = joist.strips.map((strip) => ({
    fromIn: strip.t0 - t0,
    toIn: strip.t1 - t0,
    loadLbfPerIn: loads.q * strip.widthIn,
  }));
  if (kind === 'trimmer') {
    const side = framing.openings.findIndex(
      ({ s0, s1 }) => Math.min(Math.abs(s - s0), Math.abs(s - s1)) < 1.5,
    );
    const { t0: from, t1: to } = framing.openings[side]!;
    uniform.push({ fromIn: from, toIn: to, loadLbfPerIn: loads.rimLbf[side]! / 4 / (to - from) });
  }
  if (kind !== 'tail' && loads.boredLbf > 0) {
    uniform.push({ fromIn: 0, toIn: t1 - t0, loadLbfPerIn: loads.boredLbf / through / (t1 - t0) });
  }
  const input: BeamInput = {
    leftEndIn: held[0]!.t - t0,
    rightEndIn: t1 - held.at(-1)!.t,
    spans: held.slice(1).map(({ t }, i) => ({
      lengthIn: t - held[i]!.t,
      stiffnessLbfIn2: member.stiffnessLbfIn2,
    })),
    uniform,
    points: loads.extra,
  };
  const beam = solveBeam(input);
  return {
    stick: { words: kind, member, beam },
    ends: held.map(({ t, line, header }, i) => ({
      line,
      header,
      loadLbf: beam.supports[i]!.reactionLbf,
      fromEndIn: Math.min(t - t0, t1 - t),
    })),
  };
}

type OnLine = readonly {
  readonly line: number;
  readonly s: number;
  readonly loadLbf: number;
  readonly fromEndIn: number;
}[];

function standOn(job: Job, framing: Framing, onLine: OnLine, service: Service) {
  const { beamSize } = framing.arrangement;
  const stringers: LoadedStick[] = [];
  const legs: LegLoad[] = [];
  const ledger: { s: number; loadLbf: number }[] = [];
  framing.lines.forEach(({ kind, t, legsAt }, line) => {
    const points = onLine.filter((end) => end.line === line);
    if (kind === 'ledger') {
      ledger.push(...points.map(({ s, loadLbf }) => ({ s, loadLbf })));
      return;
    }
    if (kind === 'legs' || beamSize === null) {
      legs.push(...points.map(({ s, loadLbf }) => ({ line, s, t, loadLbf })));
      return;
    }
    const member = timberMember({
      species: job.falsework.species,
      size: beamSize,
      use: 'edge',
      service,
      repetition: null,
    });
    const beam = solveBeam({
      leftEndIn: legsAt[0]!,
      rightEndIn: framing.acrossIn - legsAt.at(-1)!,
      spans: legsAt.slice(1).map((s, i) => ({
        lengthIn: s - legsAt[i]!,
        stiffnessLbfIn2: member.stiffnessLbfIn2,
      })),
      uniform: [],
      points: points.map(({ s, loadLbf }) => ({ atIn: s, loadLbf })),
    });
    stringers.push({ words: `stringer ${line + 1}`, member, beam });
    legs.push(...beam.supports.map(({ atIn, reactionLbf }) => ({ line, s: atIn, t, loadLbf: reactionLbf })));
  });
  return { stringers, legs, ledger };
}

function worstOf(onLine: OnLine, framing: Framing): CarriedSection['worstBearing'] {
  const worst = onLine.reduce((most, end) => (end.loadLbf > most.loadLbf ? end : most));
  return {
    loadLbf: worst.loadLbf,
    fromEndIn: worst.fromEndIn,
    onLedger: framing.lines[worst.line]!.kind === 'ledger',
  };
}

/** Height that joists and stringers take up, in. */
export function frameDepthIn({ joistSize, beamSize }: Arrangement): number {
  return lumberDepthIn(joistSize) + (beamSize === null ? 0 : lumberDepthIn(beamSize));
}
