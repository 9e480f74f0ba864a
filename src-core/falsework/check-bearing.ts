/** Legs, and every place where one stick presses into the side of another. */
import type { Job } from '../job';
import {
  bearingCapacity,
  columnCapacity,
  LUMBER,
  lumberSection,
  type TimberMember,
  timberMember,
} from '../timber';
import { printLength } from '../units';
import { formula, readingLine } from '../workings';
import type { CarriedSection } from './carry';
import { serviceOf } from './carry';
import type { FormCheck } from './form-check';
import { formCheck } from './form-check';
import { type FalseworkPractice, SOLE } from './practice';

/** A joist or stringer is this wide, in: the contact across it. */
const STICK_IN = 1.5;

/** Share of a load that a bearing or leg uses (a ratio). P, Pmax: lbf. */
export const loadShare = formula<Readonly<Record<'P' | 'Pmax', number>>>({
  symbol: 'uP',
  label: 'share of what it may carry that is used',
  formula: 'P / Pmax',
  units: { P: 'lbf', Pmax: 'lbf' },
  unit: '',
  source: 'arithmetic',
  compute: ({ P, Pmax }) => P / Pmax,
});

/** Load on the most loaded leg with what the bracing adds, lbf. R: reaction, Vb: from the brace, lbf. */
export const legLoad = formula<Readonly<Record<'R' | 'Vb', number>>>({
  symbol: 'P',
  label: 'load on the most loaded leg, with what bracing adds',
  formula: 'R + Vb',
  units: { R: 'lbf', Vb: 'lbf' },
  unit: 'lbf',
  source: 'statics',
  compute: ({ R, Vb }) => R + Vb,
});

function stick(
  job: Job,
  size: CarriedSection['framing']['arrangement']['joistSize'],
  use: 'edge' | 'flat',
): TimberMember {
  return timberMember({
    species: job.falsework.species,
    size,
    use,
    service: serviceOf(job),
    repetition: null,
  });
}

/** The most loaded joist where it bears: its own side, and that of what it bears on. */
export function checkJoistBearing(job: Job, carried: CarriedSection): FormCheck {
  const { framing, worstBearing } = carried;
  const { arrangement, section } = framing;
  const onLeg = !worstBearing.onLedger && arrangement.beamSize === null;
  const lengthIn = onLeg ? legWidthIn(arrangement.legSize) : STICK_IN;
  const capacity = bearingCapacity({
    bearingPsi: stick(job, arrangement.joistSize, 'edge').bearingPsi,
    widthIn: STICK_IN,
    lengthIn,
    fromEndIn: worstBearing.onLedger ? 0 : worstBearing.fromEndIn - lengthIn / 2,
  });
  const share = loadShare({ P: worstBearing.loadLbf, Pmax: capacity.capacityLbf });
  return formCheck(section, {
    id: 'falsework-joist-bearing',
    title: 'Joists where they bear',
    demand: { value: worstBearing.loadLbf, unit: 'lbf' },
    capacity: { value: capacity.capacityLbf, unit: 'lbf' },
    words: `Contact of ${contactWords(job, lengthIn)} on the ${worstBearing.onLedger ? 'ledger' : onLeg ? 'leg' : 'stringer'}.`,
    workings: [...stick(job, arrangement.joistSize, 'edge').lines.bearing, ...capacity.lines, share.line],
  });
}

/** "1-1/2 in by 3-1/2 in": a stick on what it bears on. */
function contactWords({ shownIn: system }: Job, lengthIn: number): string {
  return `${printLength(STICK_IN, { system })} by ${printLength(lengthIn, { system })}`;
}

/** Width of a leg along what bears on it, in. */
function legWidthIn(size: CarriedSection['framing']['arrangement']['legSize']): number {
  return LUMBER[size].widthIn;
}

/** The most loaded leg under its stringer. */
export function checkStringerBearing(
  job: Job,
  carried: CarriedSection,
  braceLbf: number,
): readonly FormCheck[] {
  const { arrangement, section } = carried.framing;
  if (arrangement.beamSize === null) return [];
  const loadLbf = mostLegLbf(carried, braceLbf);
  const lengthIn = legWidthIn(arrangement.legSize);
  const member = stick(job, arrangement.beamSize, 'edge');
  const capacity = bearingCapacity({
    bearingPsi: member.bearingPsi,
    widthIn: STICK_IN,
    lengthIn,
    fromEndIn: arrangement.legEndIn - lengthIn / 2,
  });
  const share = loadShare({ P: loadLbf, Pmax: capacity.capacityLbf });
  return [
    formCheck(section, {
      id: 'falsework-stringer-bearing',
      title: 'Stringers on their legs',
      demand: { value: loadLbf, unit: 'lbf' },
      capacity: { value: capacity.capacityLbf, unit: 'lbf' },
      words: `Contact of ${contactWords(job, lengthIn)}, the wide side of the leg along the stringer.`,
      workings: [...member.lines.bearing, ...capacity.lines, share.line],
    }),
  ];
}

/** Load of the most loaded leg with bracing, lbf; 0 without legs. */
export function mostLegLbf({ legs }: CarriedSection, braceLbf: number): number {
  return Math.max(0, ...legs.map(({ loadLbf }) => loadLbf)) + braceLbf;
}

/** The longest leg as a column, and its foot on the sole. */
export function checkLegs(
  job: Job,
  carried: CarriedSection,
  lengthIn: number,
  braceLbf: number,
): readonly FormCheck[] {
  const { arrangement, section } = carried.framing;
  if (carried.legs.length === 0) return [];
  const member = stick(job, arrangement.legSize, 'edge');
  const column = columnCapacity({
    member,
    thinWayIn: lengthIn,
    wideWayIn: lengthIn,
    isDuringConstruction: true,
  });
  const load = legLoad({ R: mostLegLbf(carried, 0), Vb: braceLbf });
  const length = printLength(lengthIn, { system: job.shownIn });
  const leg = column.ok
    ? formCheck(section, {
        id: 'falsework-leg',
        title: 'Legs as columns',
        demand: { value: load.value, unit: 'lbf' },
        capacity: { value: column.capacityLbf, unit: 'lbf' },
        words: `${arrangement.legSize} leg ${length} long at the most, pinned at both ends.`,
        workings: [load.line, ...column.lines, loadShare({ P: load.value, Pmax: column.capacityLbf }).line],
      })
    : formCheck(section, {
        id: 'falsework-leg',
        title: 'Legs as columns',
        demand: { value: column.slendernessRatio, unit: '' },
        capacity: { value: column.limitRatio, unit: '' },
        words: `${arrangement.legSize} leg ${length} long is too slender.`,
        workings: column.lines,
      });
  const sole = stick(job, SOLE.size, 'flat');
  const { breadthIn, depthIn } = lumberSection(arrangement.legSize, 'edge');
  const foot = bearingCapacity({
    bearingPsi: sole.bearingPsi,
    widthIn: breadthIn,
    lengthIn: depthIn,
    fromEndIn: (SOLE.lengthIn - depthIn) / 2,
  });
  return [
    leg,
    formCheck(section, {
      id: 'falsework-sole-bearing',
      title: 'Feet on their soles',
      demand: { value: load.value, unit: 'lbf' },
      capacity: { value: foot.capacityLbf, unit: 'lbf' },
      words: `The foot of a ${arrangement.legSize} on a ${SOLE.size} laid flat, ${printLength(SOLE.lengthIn, { system: job.shownIn })} long.`,
      workings: [
        load.line,
        ...sole.lines.bearing,
        ...foot.lines,
        loadShare({ P: load.value, Pmax: foot.capacityLbf }).line,
      ],
    }),
  ];
}

/** A weight that two people carry; the size was kept when the sections were laid out. */
export function checkHandling(job: Job, carried: CarriedSection, practice: FalseworkPractice): FormCheck {
  const { section } = carried.framing;
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  return formCheck(section, {
    id: 'falsework-handling',
    title: 'Weight that comes out in one go',
    demand: { value: carried.handlingLb, unit: 'lb' },
    capacity: { value: practice.mostWeightLb, unit: 'lb' },
    words: `Deck, joists and stringers without legs, for two people from their knees. Sections are laid out at most ${length(practice.mostWidthIn)} wide and ${length(practice.mostDepthIn)} deep.`,
    workings: [
      readingLine({
        symbol: 'Wh',
        label: 'deck, joists, headers and stringers',
        value: carried.handlingLb,
        unit: 'lb',
        from: 'volumes by 35 lb/ft3 for damp lumber, 40 lb/ft3 for panels; common practice, no source',
      }),
    ],
    cautions: [
      'Two people lift a section out, with gloves and straight backs; nobody reaches under it with the head or an arm while it is loose.',
    ],
  });
}
