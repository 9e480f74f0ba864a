/** The steps of a swap as rows: what goes, what comes, and how near the slab is to cracking at the worst moment of each. */
import type { Level } from '../../src-core/checks';
import { stands } from '../../src-core/checks';
import type { Job, Piece } from '../../src-core/job';
import { printRatio } from '../../src-core/report';
import type { CheckedMoment, ProposedOrder, SwapFinding, SwapResult } from '../../src-core/sequence';
import { dayName } from '../days/day-words';
import { levelWords } from '../verdict/level-words';
import type { HeightRow } from './height-words';
import { heightRows } from './height-words';

export interface StepRow {
  readonly id: string;
  readonly day: number;
  /** "Step 3: day 41, Sun 6 Jun". */
  readonly title: string;
  /** Names of what goes; empty where nothing does. */
  readonly out: string;
  readonly comesIn: string;
  readonly note: string;
  /** Title of the check that is nearest its limit in the worst moment; empty where it has none. */
  readonly governing: string;
  readonly ratio: number;
  /** "0.82, holds". */
  readonly ratioWords: string;
  readonly level: Level;
  /** The moment and where it bends most, or what fails. */
  readonly where: string;
  readonly heights: readonly HeightRow[];
  /** Findings that need attention. */
  readonly attention: readonly SwapFinding[];
  /** Findings in which all is well, such as how a cabinet slips in. */
  readonly fine: readonly SwapFinding[];
  /** Sizes that a finished piece may not have and this step has for a while. */
  readonly cautions: readonly string[];
}

const PHASES: { readonly [P in CheckedMoment['phase']]: string } = {
  before: 'Before anything is touched',
  out: 'With the bay open',
  in: 'With what comes in standing',
};

/** One row a step, in order. */
export function stepRows(job: Job, drawn: Piece, { steps, findings, proposal }: SwapResult): StepRow[] {
  const piece = withProps(drawn, proposal);
  return steps.map(({ step, worst, moments, heights }, index) => {
    const own = findings.filter(({ stepId }) => stepId === step.id);
    return {
      id: step.id,
      day: step.day,
      title: `Step ${index + 1}: ${dayName(job.site.calendar, step.day)}`,
      out: [
        ...step.sectionsOut.map((id) => `falsework section ${sectionName(job, id)}`),
        ...step.supportsOut.map((id) => supportName(piece, id)),
      ].join(', '),
      comesIn: step.supportsIn.map((id) => supportName(piece, id)).join(', '),
      note: step.note,
      governing: worst.checks.find(({ id }) => id === worst.checkId)?.title ?? '',
      ratio: worst.ratio,
      ratioWords: `${printRatio(worst.ratio)}, ${levelWords(worst.level)}`,
      level: worst.level,
      where: whereWords(worst),
      heights: heightRows(heights, job.shownIn),
      attention: own.filter(({ level }) => !stands(level)),
      fine: own.filter(({ level }) => stands(level)),
      cautions: [...new Set(moments.flatMap((moment) => moment.cautions))],
    };
  });
}

/** Findings about the swap as a whole, what needs attention first. */
export function wholeFindings({ findings }: SwapResult): SwapFinding[] {
  const whole = findings.filter(({ stepId }) => stepId === null);
  return [...whole.filter(({ level }) => !stands(level)), ...whole.filter(({ level }) => stands(level))];
}

/** Whose order it is, and how it was found. */
export function orderWords({ from, proposal }: SwapResult): string {
  if (from === 'job' || proposal === null) return "The job's own order, each step checked.";
  const how = proposal.isExact
    ? 'no order has a milder worst moment'
    : 'the likeliest orders were weighed, not every one';
  const blocked = proposal.isBlocked ? ' No order leaves every cabinet a free way in.' : '';
  const cracks =
    proposal.worstCrackingRatio > 1
      ? ' The slab cracks in it all the same, and no place for a prop clear of the cabinets was found that keeps it whole.'
      : '';
  return `A proposed order: ${how} (${proposal.tried} steps weighed).${blocked}${cracks}`;
}

/** What an order comes to that is offered where the job's own fails. */
export function offerWords(piece: Piece, { order, worstCrackingRatio }: ProposedOrder): string {
  const names = order.map((id) => supportName(piece, id)).join('; ');
  return `Another order holds: ${names}. Its worst moment comes to ${printRatio(worstCrackingRatio)} of what cracks the slab.`;
}

/** A proposed order's props are not in the job yet. */
function withProps(piece: Piece, proposal: ProposedOrder | null): Piece {
  const props = (proposal?.props ?? []).map(({ support }) => support);
  return { ...piece, supports: [...piece.supports, ...props] };
}

function whereWords({ phase, level, cracking, words }: CheckedMoment): string {
  if (!stands(level) || cracking === null) return `${PHASES[phase]}: ${words}`;
  return `${PHASES[phase]} it bends most ${cracking.words}; ${printRatio(cracking.ratio)} of what cracks it.`;
}

function supportName({ supports }: Piece, id: string): string {
  return supports.find((support) => support.id === id)?.name ?? id;
}

function sectionName({ falsework }: Job, id: string): string {
  return falsework.sections.find((section) => section.id === id)?.name ?? id;
}
