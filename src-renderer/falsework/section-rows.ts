/** A section as it is told: how it is framed, what it weighs, what of it stays, how it comes out, and its checks. */
import type { Level } from '../../src-core/checks';
import { governingCheck, sortChecks, worstLevel } from '../../src-core/checks';
import type { DesignedSection, FalseworkDesign, FormCheck } from '../../src-core/falsework';
import { sectionLetter } from '../../src-core/falsework';
import type { Job } from '../../src-core/job';
import { printRatio } from '../../src-core/report';
import { PANELS } from '../../src-core/timber';
import { printLength, printMass } from '../../src-core/units';

export interface SectionFact {
  readonly term: string;
  readonly words: string;
  /** A rung where the fact is wrong; null where there is nothing to mark. */
  readonly level: Level | null;
}

export interface SectionRow {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly level: Level;
  /** Highest ratio of its checks; empty where it has none. */
  readonly ratio: string;
  readonly facts: readonly SectionFact[];
  readonly cautions: readonly string[];
  /** Worst first. */
  readonly checks: readonly FormCheck[];
}

/** Sections in the order of the drawing. */
export function sectionRows(job: Job, { sections }: FalseworkDesign): SectionRow[] {
  return sections.map((designed, index) => {
    const { section, checks, layers, way } = designed;
    const wrong = !layers.isMet || way.refusal !== null;
    const worst = governingCheck(checks);
    const sorted = sortChecks(checks);
    return {
      id: section.id,
      letter: sectionLetter(index),
      name: section.name,
      level: worstLevel([...checks, { level: wrong ? 'change' : 'holds' }]),
      ratio: worst === null ? '' : printRatio(worst.ratio),
      facts: factsOf(job, designed),
      cautions: [...new Set(checks.flatMap(({ cautions }) => cautions))],
      checks: sorted.flatMap((each) => checks.filter((check) => check === each)),
    };
  });
}

function factsOf(job: Job, designed: DesignedSection): SectionFact[] {
  const system = job.shownIn;
  const length = (valueIn: number) => printLength(valueIn, { system });
  const { section, worked, layers, way, price, fitting, tried } = designed;
  const { arrangement, joists, headers, widestIn } = worked.framing;
  const run = arrangement.joistRun === 'back' ? 'from front to back' : 'along the front';
  const fact = (term: string, words: string, level: Level | null = null): SectionFact => ({
    term,
    words,
    level,
  });
  return [
    fact(
      'Size',
      `${length(section.frame.widthIn)} by ${length(section.frame.depthIn)}, days ${section.firstDay} to ${section.lastDay}.`,
    ),
    fact(
      'Joists',
      `${joists.length} of ${arrangement.joistSize} ${run}, ${length(widestIn)} apart at the most.`,
    ),
    ...(section.openings.length === 0 ? [] : [fact('Openings', openingWords(designed, headers.length))]),
    fact('Below them', belowWords(designed)),
    fact('Sideways', sidewaysWords(designed)),
    fact('Deck', `${panelWords(job)}.`),
    fact(
      'Weight',
      `${printMass(worked.carried.handlingLb, { system, digits: 3 })} comes out in one go, without its legs.`,
    ),
    fact('Layers', layerWords(designed, system)),
    fact('Fit', layers.words, layers.isMet ? null : 'change'),
    fact('Way out', wayWords(way), way.refusal === null ? null : 'change'),
    fact('Price', `${price.toFixed(2)}, the cheapest of ${fitting} that fit; ${tried} worked.`),
  ];
}

function openingWords({ section, worked }: DesignedSection, headers: number): string {
  const names = section.openings.map(({ words }) => words).join(', ');
  const trimmers = worked.framing.joists.filter(({ kind }) => kind === 'trimmer').length;
  const tails = worked.framing.joists.filter(({ kind }) => kind === 'tail').length;
  if (headers === 0) return `${names}: bored between the joists.`;
  return `${names}: ${trimmers} trimmers, ${headers} headers and ${tails} tails, counted among the joists but for the headers.`;
}

function belowWords({ worked }: DesignedSection): string {
  const { beamSize, legSize, legsALine } = worked.framing.arrangement;
  if (beamSize === null) return `A leg of ${legSize} under every joist on each line.`;
  const stringers = worked.framing.lines.filter(({ kind }) => kind === 'stringer').length;
  const many = stringers === 1 ? `One ${beamSize} stringer` : `${stringers} stringers of ${beamSize}`;
  return `${many} on ${legsALine} legs of ${legSize}${stringers === 1 ? '' : ' each'}.`;
}

function sidewaysWords({ worked: { framing, lateral } }: DesignedSection): string {
  const { ledgerSide } = framing.arrangement;
  if (ledgerSide !== null) return `A ledger at the ${ledgerSide}, screwed to ${lateral.studs} studs.`;
  return `${lateral.bracesIn.length} braces, both ways.`;
}

/** The panel by its rating; its thickness is a trade size, so metric says it again in millimetres. */
function panelWords({ falsework, shownIn: system }: Job): string {
  const { words, thicknessIn } = PANELS[falsework.panel];
  return system === 'imperial' ? words : `${words} (${printLength(thicknessIn, { system, roundToMm: 0.1 })})`;
}

function layerWords({ layers: { layers } }: DesignedSection, system: Job['shownIn']): string {
  const each = layers.map(
    ({ what, thicknessIn, stays }) =>
      `${what} ${printLength(thicknessIn, { system, roundToIn: 1 / 32 })}, ${stays ? 'stays' : 'comes out'}`,
  );
  return `From the slab down: ${each.join('; ')}.`;
}

function wayWords({ by, refusal }: DesignedSection['way']): string {
  if (refusal !== null) return refusal;
  if (by === 'front' || by === null) return 'Straight out by the front.';
  return `To the ${by} through the next bay while that is empty, then out by its front.`;
}
