/** The falsework of one piece by itself, from its outline to the last screw. */
import type { Level } from '../checks';
import { stands, worstLevel } from '../checks';
import type { Job } from '../job';
import { floorRange } from '../levels';
import { N_PER_LBF, printForce, printLength } from '../units';
import { bearingOnEachOther } from './apart';
import type { ArrangementChoices } from './arrangement';
import { DEFAULT_CHOICES } from './arrangement';
import type { Bill } from './bill';
import { billOf } from './bill';
import type { CheapestSection } from './cheapest';
import { cheapestSection } from './cheapest';
import { cutLegs, type FormLeg } from './cut-legs';
import { type CutList, cutList } from './cut-list';
import type { Fastening } from './fastenings';
import { fasteningRefusals, fasteningsOf } from './fastenings';
import type { FormFloorLoad } from './floor-load';
import { formFloorLoad } from './floor-load';
import type { FormCheck } from './form-check';
import { checkLayers, type LayerCheck } from './layers';
import { planSections } from './plan-sections';
import type { FalseworkPractice } from './practice';
import { DEFAULT_PRACTICE } from './practice';
import { type Prices, pricesOf } from './prices';
import type { Section } from './section';
import { formStack } from './stack';
import { type WayOut, wayOut } from './way-out';
import type { WorkedSection } from './work-section';

export interface FalseworkOptions {
  readonly practice?: Partial<FalseworkPractice>;
  readonly choices?: Partial<ArrangementChoices>;
  /** Fastenings of the builder's own, looked at beside those of the design. */
  readonly ownFastenings?: readonly Fastening[];
}

/** A section as it is to be built. */
export interface DesignedSection {
  readonly section: Section;
  readonly worked: WorkedSection;
  readonly checks: readonly FormCheck[];
  readonly price: number;
  /** Arrangements that fit, and those worked until this one passed. */
  readonly fitting: number;
  readonly tried: number;
  readonly legs: readonly FormLeg[];
  readonly layers: LayerCheck;
  readonly way: WayOut;
  readonly bill: Bill;
}

/** The falsework of one piece by itself, as if every part of it were bought for it. */
export interface PieceDesign {
  readonly pieceId: string;
  readonly pieceName: string;
  readonly sections: readonly DesignedSection[];
  readonly fastenings: readonly Fastening[];
  readonly prices: Prices;
  readonly price: number;
  readonly cuts: CutList;
  /** Highest and lowest floor that was read, and the fall between, in; null where nothing was read. */
  readonly floor: { readonly highestIn: number; readonly lowestIn: number; readonly fallIn: number } | null;
  readonly floorLoad: FormFloorLoad | null;
  /** What cannot be built so, a sentence each. */
  readonly refusals: readonly string[];
  readonly remarks: readonly string[];
  readonly cautions: readonly string[];
  /** When to shoot the levels. */
  readonly levelAgain: readonly string[];
  readonly level: Level;
  readonly needsAttention: boolean;
}

/** Said with every design. */
export const FALSEWORK_CAUTIONS: readonly string[] = [
  'Nobody stands or works under a fresh slab. Nobody climbs on it.',
  'No section comes out before the strength by day allows it, overhangs last, and never with anyone under the slab.',
  'Wet concrete burns skin and eyes: gloves, boots and glasses; rinse at once.',
  'Look along every leg before and during the pour: plumb, wedged tight, braced both ways. Stop pouring if anything moves.',
];

/** When the levels are shot again. */
export const LEVEL_AGAIN: readonly string[] = [
  'With the falsework up, before the pour.',
  'With the form loaded by its steel, mix and people, where it stands on a deck or a wooden floor: it sags too.',
  'After a night of rain or frost, and whenever a leg was knocked.',
  'Before the swap, at the soffit and at the floor under every cabinet.',
];

/**
 * Designs the falsework under a piece: sections that follow the cabinets to come, each in the cheapest arrangement that passes every
 * check, with legs cut to the floor. Refusals say what cannot be built. Throws for a piece that the job does not have.
 */
export function designPiece(job: Job, pieceId: string, options: FalseworkOptions = {}): PieceDesign {
  const piece = job.pieces.find(({ id }) => id === pieceId);
  if (piece === undefined) throw new Error(`job ${job.id} has no piece ${pieceId}`);
  const practice = { ...DEFAULT_PRACTICE, ...options.practice };
  const choices = { ...DEFAULT_CHOICES, ...options.choices };
  const prices = pricesOf(job);
  const plan = planSections(job, piece, practice);
  const stack = formStack(job, piece);
  const context = { job, piece, stack, practice };
  const tall = tallWords(job, piece.name, stack.highestSoffitIn - stack.lowestFloorIn, practice);
  const refusals = [...(tall === null ? [] : [tall]), ...plan.refusals];
  const sections: DesignedSection[] = [];
  const known = new Map<string, CheapestSection>();
  for (const section of tall === null ? plan.sections : []) {
    const key = JSON.stringify([
      section.frame.widthIn.toFixed(6),
      section.frame.depthIn.toFixed(6),
      section.openings,
      section.wallSides,
    ]);
    const found = known.get(key) ?? cheapestSection(context, section, choices, prices);
    known.set(key, found);
    if (!found.ok) {
      refusals.push(unbuildable(section, found));
      continue;
    }
    const worked = ownedBy(found.worked, section);
    const legs = cutLegs(job, stack, worked);
    const way = wayOut(job, piece, section);
    if (way.refusal !== null) refusals.push(way.refusal);
    const layers = checkLayers(job, piece, stack, section);
    if (!layers.isMet) refusals.push(`"${section.name}": ${layers.words}`);
    sections.push({
      section,
      worked,
      checks: found.checks.map((check) => ({ ...check, sectionId: section.id })),
      price: found.price,
      fitting: found.fitting,
      tried: found.tried,
      legs,
      layers,
      way,
      bill: billOf(
        worked.framing,
        legs.map(({ leg }) => leg.cutIn),
        practice,
      ),
    });
  }
  refusals.push(...bearingOnEachOther(sections));
  const fastenings = [
    ...sections.flatMap(({ worked }) => fasteningsOf(worked, stack)),
    ...(options.ownFastenings ?? []),
  ];
  refusals.push(...fasteningRefusals(fastenings));
  const noRoom = sections.flatMap(({ legs }) =>
    legs.filter(({ leg }) => leg.warnings.some(({ code }) => code === 'no-room')),
  );
  refusals.push(
    ...noRoom.map(({ id }) => `There is no room for ${id} between the floor and what it carries.`),
  );
  const floorLoad = formFloorLoad(
    job,
    sections.map(({ worked }) => worked.carried),
  );
  const range = floorRange(stack.floor);
  const level = worstLevel([
    ...sections.flatMap(({ checks }) => checks),
    ...(floorLoad === null ? [] : [floorLoad]),
    ...(refusals.length > 0 ? [{ level: 'change' as const }] : []),
    ...(tall === null ? [] : [{ level: 'engineer' as const }]),
  ]);
  return {
    pieceId,
    pieceName: piece.name,
    sections,
    fastenings,
    prices,
    price: sections.reduce((sum, section) => sum + section.price, 0),
    cuts: cutList(
      job,
      sections.flatMap(({ bill }) => bill.sticks),
      sections.flatMap(({ bill }) => bill.panels),
    ),
    floor:
      range === null
        ? null
        : {
            highestIn: range.highest.heightIn,
            lowestIn: range.lowest.heightIn,
            fallIn: range.highest.heightIn - range.lowest.heightIn,
          },
    floorLoad,
    refusals,
    remarks: [
      ...plan.remarks,
      ...stack.floor.remarks.map(({ sentence }) => sentence),
      ...sidewaysWords(sections),
      ...(piece.copies > 1 ? [`One of ${piece.copies}: the lists are for one.`] : []),
    ],
    cautions: cautionsOf(job, sections),
    levelAgain: LEVEL_AGAIN,
    level,
    needsAttention: !stands(level),
  };
}

/** A worked section found for another just like it, in this one's place. */
function ownedBy(worked: WorkedSection, section: Section): WorkedSection {
  const framing = { ...worked.framing, section };
  return { ...worked, framing, carried: { ...worked.carried, framing } };
}

function unbuildable({ name }: Section, found: Extract<CheapestSection, { ok: false }>): string {
  if (found.fitting === 0) {
    return `"${name}": no arrangement fits; there is too little height for joists and legs, or too little width round its openings.`;
  }
  const stop = found.stops === null ? '' : ` Most stop at "${found.stops.title}": ${found.stops.words}`;
  return `"${name}": none of ${found.fitting} arrangements passes.${stop}`;
}

/** Falsework this tall is for an engineer, and is not designed here: a sentence, or null. */
function tallWords(
  job: Job,
  name: string,
  heightIn: number,
  { engineerHeightIn }: FalseworkPractice,
): string | null {
  if (heightIn <= engineerHeightIn) return null;
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  return `The soffit of "${name}" lies ${length(heightIn)} above the floor. Falsework over ${length(engineerHeightIn)} is for an engineer.`;
}

function sidewaysWords(sections: readonly DesignedSection[]): string[] {
  return sections.flatMap(({ section, way }) =>
    way.by === 'left' || way.by === 'right'
      ? [`"${section.name}" comes out to the ${way.by}, through the next bay while that is empty.`]
      : [],
  );
}

const HANGING_FLOORS: readonly string[] = ['timber-floor', 'timber-deck', 'suspended-concrete'];

function cautionsOf(job: Job, sections: readonly DesignedSection[]): string[] {
  const floor = HANGING_FLOORS.includes(job.site.standsOn.kind)
    ? [
        'It stands on a floor or deck that hangs in the air: shore below it, or let an engineer say that it carries this.',
      ]
    : [];
  const own = sections.flatMap(({ checks }) => checks.flatMap(({ cautions }) => [...cautions]));
  const holds = sections
    .filter(({ worked }) => worked.lateral.holdDownLbf > 0)
    .map(({ worked }) => worked.lateral.holdDownLbf);
  const feet =
    holds.length === 0
      ? []
      : [
          `Sections without a ledger would tip under the sideways push that the code asks for: hold every foot down against ${holdDownWords(job, Math.max(...holds))}, or tie their decks to something that stands. Anchors in concrete are for an engineer.`,
        ];
  const legs = sections.flatMap(({ section, legs: each }) =>
    each.flatMap(({ leg }) => leg.warnings.map(({ sentence }) => `Legs of "${section.name}": ${sentence}`)),
  );
  return [...FALSEWORK_CAUTIONS, ...new Set([...floor, ...own, ...feet, ...legs])];
}

/** Steps to which a force that feet are held against is rounded up. Common practice, no source. */
const HOLD_STEP_LBF = 10;
const HOLD_STEP_N = 50;

/** A force rounded up in the job's own unit: "130 lbf", "600 N". */
function holdDownWords({ shownIn: system }: Job, forceLbf: number): string {
  const stepLbf = system === 'imperial' ? HOLD_STEP_LBF : HOLD_STEP_N / N_PER_LBF;
  return printForce(Math.ceil(forceLbf / stepLbf) * stepLbf, { system });
}
