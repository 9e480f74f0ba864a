/** What holds a section against a push from the side: lags of its ledger in the studs, or braces to its own feet. */
import type { Job } from '../job';
import { checkBeam, columnCapacity, lateralLoad, solveBeam, timberMember } from '../timber';
import { IN_PER_FT } from '../units';
import type { Line, Worked } from '../workings';
import { formula } from '../workings';
import type { CarriedSection } from './carry';
import { serviceOf } from './carry';
import { loadShare } from './check-bearing';
import { sagLimitsOf } from './check-deck';
import { joinScrews, lagTogether, lagValues } from './fastener-values';
import type { FormCheck } from './form-check';
import { formCheck, passes } from './form-check';
import { type FalseworkPractice, LAG, SCREW } from './practice';

/** Braces each way, lumber of each, and lags that a stud has room for. Common practice, no source. */
export const BRACES_EACH_WAY = 2;
export const BRACE_SIZE = '2x4';
export const LEDGER_SIZE = '2x4';
const MOST_LAGS = 6;

type Symbols<Name extends string> = Readonly<Record<Name, number>>;

/** Load that a ledger brings one stud, lbf. R: all of it, lbf; ns: studs; 1.25: the second of several. Statics. */
export const ledgerOnStud = formula<Symbols<'R' | 'ns'>>({
  symbol: 'Vg',
  label: 'load that the ledger brings the most loaded stud',
  formula: '1.25 * R / ns',
  units: { R: 'lbf', ns: '' },
  unit: 'lbf',
  source: 'uniform load on equal spans, any beam table',
  compute: ({ R, ns }) => (1.25 * R) / ns,
});

/** Pull at the last stud from a push along the wall, lbf. H: lbf; b: depth of the section, in; ss: stud spacing, in; ns: studs, two or more. Statics. */
export const couplePull = formula<Symbols<'H' | 'b' | 'ss' | 'ns'>>({
  symbol: 'Tc',
  label: 'pull at the last stud from a push along the wall',
  formula: 'H * b / 2 * 6 / (ss * ns * (ns + 1))',
  units: { H: 'lbf', b: 'in', ss: 'in', ns: '' },
  unit: 'lbf',
  source: 'statics, pull growing evenly from the middle stud',
  compute: ({ H, b, ss, ns }) => (((H * b) / 2) * 6) / (ss * ns * (ns + 1)),
});

/** Force in one brace, lbf. H: push, lbf; nb: braces each way; h: height, r: run of the brace, in. Statics. */
export const braceForce = formula<Symbols<'H' | 'nb' | 'h' | 'r'>>({
  symbol: 'F',
  label: 'force in one brace',
  formula: 'H / nb * sqrt(h^2 + r^2) / r',
  units: { H: 'lbf', nb: '', h: 'in', r: 'in' },
  unit: 'lbf',
  source: 'statics',
  compute: ({ H, nb, h, r }) => ((H / nb) * Math.hypot(h, r)) / r,
});

/** What a brace adds to its leg, and lifts at the other, lbf. H: lbf; nb: braces; h, r: in. Statics. */
export const braceLift = formula<Symbols<'H' | 'nb' | 'h' | 'r'>>({
  symbol: 'Vb',
  label: 'load that the brace adds to a leg, and lifts at another',
  formula: 'H / nb * h / r',
  units: { H: 'lbf', nb: '', h: 'in', r: 'in' },
  unit: 'lbf',
  source: 'statics',
  compute: ({ H, nb, h, r }) => ((H / nb) * h) / r,
});

export interface LateralDesign {
  readonly kind: 'ledger' | 'braces';
  readonly checks: readonly FormCheck[];
  /** What braces add to a leg, lbf; 0 on a ledger. */
  readonly addedLegLbf: number;
  /** Hold of each foot against lifting, lbf; 0 where its own weight does. */
  readonly holdDownLbf: number;
  /** Lags to a stud and studs; or screws at each end of a brace. */
  readonly lagsAStud: number;
  readonly studs: number;
  readonly screwsABraceEnd: number;
  /** Length of each brace, in. */
  readonly bracesIn: readonly number[];
}

interface Push {
  /** Along the joists, and across them. */
  readonly along: Worked;
  readonly across: Worked;
}

function pushOf({ framing, deadLbf }: CarriedSection): Push {
  return {
    along: lateralLoad({ D: deadLbf, Le: framing.acrossIn / IN_PER_FT }),
    across: lateralLoad({ D: deadLbf, Le: framing.alongIn / IN_PER_FT }),
  };
}

/** Holds a section sideways: by its ledger where it has one, else by braces of its own. */
export function designLateral(
  job: Job,
  carried: CarriedSection,
  legIn: number,
  practice: FalseworkPractice,
): LateralDesign {
  return carried.framing.arrangement.ledgerSide === null
    ? onBraces(job, carried, legIn)
    : onLedger(job, carried, practice);
}

function onLedger(job: Job, carried: CarriedSection, practice: FalseworkPractice): LateralDesign {
  const { framing, ledger } = carried;
  const push = pushOf(carried);
  const ss = practice.studSpacingIn;
  const ns = Math.max(2, Math.floor(framing.acrossIn / ss));
  const gravity = ledgerOnStud({ R: ledger.reduce((sum, { loadLbf }) => sum + loadLbf, 0), ns });
  const couple = couplePull({ H: push.across.value, b: framing.alongIn, ss, ns });
  const values = lagValues(job);
  const cases = [
    { pullLbf: push.along.value / ns, shearLbf: gravity.value, lines: [push.along.line, gravity.line] },
    {
      pullLbf: couple.value,
      shearLbf: Math.hypot(gravity.value, push.across.value / ns),
      lines: [push.across.line, gravity.line, couple.line],
    },
  ];
  const withLags = (n: number) =>
    cases
      .map(({ pullLbf, shearLbf, lines }) => ({ lines, ...lagTogether(values, pullLbf / n, shearLbf / n) }))
      .reduce((a, b) => (b.demandLbf / b.capacityLbf > a.demandLbf / a.capacityLbf ? b : a));
  let lags = 1;
  while (lags < MOST_LAGS && !passes({ ratio: withLags(lags).demandLbf / withLags(lags).capacityLbf }))
    lags++;
  const worst = withLags(lags);
  const fasteners = formCheck(framing.section, {
    id: 'falsework-ledger-fasteners',
    title: 'Ledger screwed to the studs',
    demand: { value: worst.demandLbf, unit: 'lbf' },
    capacity: { value: worst.capacityLbf, unit: 'lbf' },
    words: `${lags} ${LAG.words} in each of ${ns} studs, weight and a push from the side together, one lag.`,
    workings: [
      ...values.lines,
      ...worst.lines,
      worst.line,
      loadShare({ P: worst.demandLbf, Pmax: worst.capacityLbf }).line,
    ],
    cautions: [
      `Find the studs: each ledger needs ${ns} of them, or blocking between. Cut wallboard away behind it. A wall of block or brick, or one whose framing nobody has seen, is for an engineer.`,
    ],
  });
  return {
    kind: 'ledger',
    checks: [checkLedgerBending(job, carried, ss), fasteners],
    addedLegLbf: 0,
    holdDownLbf: 0,
    lagsAStud: lags,
    studs: ns,
    screwsABraceEnd: 0,
    bracesIn: [],
  };
}

/** The ledger between two studs with the heaviest joist in the middle. */
function checkLedgerBending(job: Job, { framing, ledger }: CarriedSection, spanIn: number): FormCheck {
  const member = timberMember({
    species: job.falsework.species,
    size: LEDGER_SIZE,
    use: 'edge',
    service: serviceOf(job),
    repetition: null,
  });
  const beam = solveBeam({
    leftEndIn: 0,
    rightEndIn: 0,
    spans: [{ lengthIn: spanIn, stiffnessLbfIn2: member.stiffnessLbfIn2 }],
    uniform: [],
    points: [{ atIn: spanIn / 2, loadLbf: Math.max(...ledger.map(({ loadLbf }) => loadLbf)) }],
  });
  const { worst } = checkBeam(beam, member, sagLimitsOf(job));
  const unit = { bending: 'lbf-in', shear: 'lbf', deflection: 'in' }[worst.id];
  return formCheck(framing.section, {
    id: 'falsework-ledger-bending',
    title: 'Ledger between studs',
    demand: { value: worst.demand, unit },
    capacity: { value: worst.capacity, unit },
    words: `${member.words}, the heaviest joist midway between two studs; ${worst.id} governs.`,
    workings: worst.lines,
  });
}

function onBraces(job: Job, carried: CarriedSection, legIn: number): LateralDesign {
  const { framing, legs } = carried;
  const push = pushOf(carried);
  const ts = legs.map(({ t }) => t);
  const ss = legs.map(({ s }) => s);
  const nb = BRACES_EACH_WAY;
  const ways = [
    { H: push.along, r: Math.max(...ts) - Math.min(...ts) },
    { H: push.across, r: Math.max(...ss) - Math.min(...ss) },
  ].map(({ H, r }) => ({
    H,
    lengthIn: Math.hypot(legIn, r),
    force: braceForce({ H: H.value, nb, h: legIn, r }),
    lift: braceLift({ H: H.value, nb, h: legIn, r }),
  }));
  const worst = ways.reduce((a, b) => (b.force.value > a.force.value ? b : a));
  const longestIn = Math.max(...ways.map(({ lengthIn }) => lengthIn));
  const lift = Math.max(...ways.map((way) => way.lift.value));
  const screws = joinScrews(job, worst.force.value, false);
  return {
    kind: 'braces',
    checks: [
      braceCheck(job, carried, { force: worst.force, lines: [worst.H.line, worst.force.line], longestIn }),
      formCheck(framing.section, {
        id: 'falsework-brace-screws',
        title: 'Screws of the braces',
        demand: { value: worst.force.value, unit: 'lbf' },
        capacity: { value: screws.capacityLbf, unit: 'lbf' },
        words: `${screws.count} ${SCREW.words} at each end of each brace.`,
        workings: [
          worst.H.line,
          worst.force.line,
          ...screws.lines,
          loadShare({ P: worst.force.value, Pmax: screws.capacityLbf }).line,
        ],
      }),
    ],
    addedLegLbf: lift,
    holdDownLbf: Math.max(0, lift - carried.deadLbf / legs.length),
    lagsAStud: 0,
    studs: 0,
    screwsABraceEnd: screws.count,
    bracesIn: ways.flatMap(({ lengthIn }) => Array.from({ length: nb }, () => lengthIn)),
  };
}

function braceCheck(
  job: Job,
  carried: CarriedSection,
  brace: { readonly force: Worked; readonly lines: readonly Line[]; readonly longestIn: number },
): FormCheck {
  const member = timberMember({
    species: job.falsework.species,
    size: BRACE_SIZE,
    use: 'edge',
    service: serviceOf(job),
    repetition: null,
  });
  const column = columnCapacity({
    member,
    thinWayIn: brace.longestIn,
    wideWayIn: brace.longestIn,
    isDuringConstruction: true,
  });
  const base = { id: 'falsework-brace', title: 'Braces, pushed' } as const;
  if (!column.ok) {
    return formCheck(carried.framing.section, {
      ...base,
      demand: { value: column.slendernessRatio, unit: '' },
      capacity: { value: column.limitRatio, unit: '' },
      words: 'A brace from foot to head is too slender here.',
      workings: column.lines,
    });
  }
  return formCheck(carried.framing.section, {
    ...base,
    demand: { value: brace.force.value, unit: 'lbf' },
    capacity: { value: column.capacityLbf, unit: 'lbf' },
    words: `${BRACES_EACH_WAY} braces each way, ${member.words}, from the foot of one leg to the head of another.`,
    workings: [
      ...brace.lines,
      ...column.lines,
      loadShare({ P: brace.force.value, Pmax: column.capacityLbf }).line,
    ],
  });
}
