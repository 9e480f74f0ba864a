/** The readable report of a swap: its steps, what a foot may be wound, what was found, and the earliest days. */
import Table from 'cli-table3';
import { stands } from '../../../src-core/checks';
import type { Job, Piece } from '../../../src-core/job';
import { printRatio } from '../../../src-core/report';
import type {
  CheckedMoment,
  EarliestDay,
  NoSwap,
  ProposedOrder,
  SwapCheck,
  SwapFinding,
  SwapResult,
  SwapStepResult,
} from '../../../src-core/sequence';
import { heightWords, SIZE_CAUTION } from '../../../src-core/sequence';
import type { UnitSystem } from '../../../src-core/units';
import { markOf, paintShape, shapeOf } from './marks';
import { noticeLines, section, showable, textOf } from './result-lines';
import type { SwapFacts } from './swap-json';
import { BORDERS } from './table-borders';
import { wrap } from './wrap';

interface Style {
  readonly system: UnitSystem;
  readonly colour: boolean;
}

/** Widths of the columns with their padding; they fill a page of 100. */
const COLUMNS = [5, 23, 15, 11, 46];
const HEADINGS = ['Day', 'Out', 'In', 'Cracking', 'Worst moment'];
/** What of a step the moment is; a step that brings nothing in opens no bay, and what comes in may be a prop. */
function phaseOf({ phase, stepId }: CheckedMoment, { steps }: SwapCheck, { supports }: Piece): string {
  if (phase === 'before') return 'before';
  const comes = steps.find(({ id }) => id === stepId)?.supportsIn ?? [];
  if (phase === 'out') return comes.length > 0 ? 'bay open' : 'falsework out';
  return supports.some(({ id, kind }) => kind === 'cabinet' && comes.includes(id))
    ? 'cabinet in'
    : 'prop set';
}

/** The report as text, at most 100 columns wide. */
export function swapReport(
  found: Job,
  results: readonly (SwapResult | NoSwap)[],
  { seconds, colour }: SwapFacts & { readonly colour: boolean },
): string {
  const job = showable(found);
  const style = { system: job.shownIn, colour };
  const shown = showable(results);
  const swaps = shown.filter((result): result is SwapResult => !('sentence' in result));
  const none = shown.filter((result): result is NoSwap => 'sentence' in result);
  return textOf([
    ...wrap(`${job.name}: the swap from falsework to cabinets`),
    ...swaps.flatMap((result) => ['', ...swapLines(job, result, style)]),
    ...section(
      'Nothing to swap',
      none.flatMap(({ name, sentence, needsAttention }) =>
        wrap(`${needsAttention ? `${shapeOf('engineer')} ` : ''}${name}: ${sentence}`, '- '),
      ),
    ),
    ...noticeLines(),
    '',
    ...wrap(`Worked out in ${seconds.toFixed(1)} s. Every moment with its checks, as JSON: --json.`),
  ]);
}

function swapLines(job: Job, result: SwapResult, style: Style): string[] {
  const piece = proppedPiece(job, result);
  const worst = result.check.worst === null ? null : result.check.moments[result.check.worst]!;
  return [
    ...wrap(`${result.name}: ${orderWords(result)}`),
    '',
    ...stepTable(job, piece, result),
    ...section(
      'Props that this order needs',
      (result.proposal?.props ?? []).flatMap(({ words }) => wrap(words, '- ')),
    ),
    ...(result.offer === null ? [] : section('An order that holds', offerLines(result.offer, piece))),
    ...(worst === null ? [] : ['', ...worstLines(worst, result.check, piece, style)]),
    ...section(
      'How far feet may be wound up, or fall short, before the slab cracks',
      heightLines(result, style),
    ),
    ...section('For a while beyond what a finished piece may have', sizeLines(result)),
    ...section('Found', findingLines(result, style)),
    ...section('Earliest days', result.earliest.flatMap(earliestLine)),
  ];
}

/** The piece with the props of a proposed order, so that they have their names. */
function proppedPiece(job: Job, { pieceId, proposal }: SwapResult): Piece {
  const piece = job.pieces.find(({ id }) => id === pieceId)!;
  const props = (proposal?.props ?? []).map(({ support }) => support);
  return props.length === 0 ? piece : { ...piece, supports: [...piece.supports, ...props] };
}

function orderWords({ from, proposal, check }: SwapResult): string {
  if (from === 'job' || proposal === null) return "the job's own steps";
  const of = stands(check.level)
    ? 'of all orders that stand'
    : 'of all orders, though not every moment stands';
  const how = proposal.isExact
    ? `the mildest ${of} (${proposal.tried} steps weighed)`
    : `the mildest of the likeliest orders (${proposal.tried} steps weighed), not of every one`;
  const blocked = proposal.isBlocked ? '; no order leaves every cabinet a free way in' : '';
  const cracks =
    proposal.worstCrackingRatio > 1
      ? '; no place for a prop clear of the cabinets was found that keeps the slab whole'
      : '';
  return `proposed order; ${how}${blocked}${cracks}`;
}

function stepTable(job: Job, piece: Piece, { steps, check }: SwapResult): string[] {
  const table = new Table({
    head: HEADINGS,
    colWidths: COLUMNS,
    colAligns: ['right', 'left', 'left', 'right', 'left'],
    wordWrap: true,
    chars: {
      ...Object.fromEntries(BORDERS.map((name) => [name, ''])),
      mid: '─',
      bottom: '─',
    },
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2 },
  });
  const [before] = check.moments;
  if (before?.phase === 'before')
    table.push([String(before.day), '', '', crackingOf(before), momentWords(before, check, piece)]);
  for (const { step, worst } of steps) {
    table.push([
      String(step.day),
      [
        ...step.sectionsOut.map((id) => sectionName(job, id)),
        ...step.supportsOut.map((id) => supportName(piece, id)),
      ].join(', '),
      step.supportsIn.map((id) => supportName(piece, id)).join(', '),
      crackingOf(worst),
      momentWords(worst, check, piece),
    ]);
  }
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}

function crackingOf({ cracking }: CheckedMoment): string {
  return cracking === null ? '' : printRatio(cracking.ratio);
}

/** Where it bends most; for a moment that does not stand, what fails. */
function momentWords(moment: CheckedMoment, check: SwapCheck, piece: Piece): string {
  const { level, cracking, words } = moment;
  const phase = phaseOf(moment, check, piece);
  const place = cracking === null ? '' : `, ${cracking.words}`;
  return stands(level) ? `${phase}${place}` : `${markOf(level)}, ${phase}: ${words}`;
}

function worstLines(worst: CheckedMoment, check: SwapCheck, piece: Piece, { colour }: Style): string[] {
  const text = `Worst moment: day ${worst.day}, ${phaseOf(worst, check, piece)}, ${printRatio(worst.ratio)} of the limit. ${worst.words}`;
  return wrap(text, `${shapeOf(worst.level)} `).map((line) => paintShape(line, worst.level, colour));
}

/** Sizes that a finished piece may not have and a step has for a while. */
function sizeLines({ steps }: SwapResult): string[] {
  const lines = steps.flatMap(({ step, moments }) =>
    [...new Set(moments.flatMap(({ cautions }) => cautions))].flatMap((caution) =>
      wrap(`Day ${step.day}. ${caution}`, '- '),
    ),
  );
  return lines.length === 0 ? [] : [...lines, ...wrap(SIZE_CAUTION)];
}

/** The order in one line, and its props; its steps are walked through when they are asked for. */
function offerLines({ order, props, worstCrackingRatio }: ProposedOrder, piece: Piece): string[] {
  const names = order.map((id) => supportName(piece, id)).join('; ');
  return [
    ...wrap(
      `${names}. Its worst moment comes to ${printRatio(worstCrackingRatio)} of what cracks the slab. Every step of it: --propose.`,
    ),
    ...props.flatMap(({ words }) => wrap(words, '- ')),
  ];
}

function heightLines({ steps }: SwapResult, { system }: Style): string[] {
  return steps.flatMap(({ heights }: SwapStepResult) =>
    heights.flatMap(({ words, raise, gap }) =>
      wrap(
        `${words}: up ${heightWords(raise, system, 'as far as it winds, as the slab lifts off first')}, short ${heightWords(gap, system, 'by any gap')}`,
        '- ',
      ),
    ),
  );
}

/** What needs attention first; a way in that is free is not worth a line. */
function findingLines({ findings, check }: SwapResult, { colour }: Style): string[] {
  const day = (finding: SwapFinding) => check.steps.find(({ id }) => id === finding.stepId)?.day;
  const told = findings.filter(({ id, level }) => id !== 'way-in' || !stands(level));
  const ordered = [...told].sort((a, b) => Number(stands(a.level)) - Number(stands(b.level)));
  return ordered.flatMap((finding) => {
    const when = day(finding);
    const text = `${when === undefined ? '' : `Day ${when}. `}${finding.title}: ${finding.words}`;
    return wrap(text, `${shapeOf(finding.level)} `).map((line) => paintShape(line, finding.level, colour));
  });
}

function earliestLine({ title, words, plannedDay, source }: EarliestDay): string[] {
  const planned = plannedDay === null ? '' : ` Planned on day ${plannedDay}.`;
  return wrap(`${title}: ${words}${planned} (${source})`, '- ');
}

function supportName({ supports }: Piece, id: string): string {
  return supports.find((support) => support.id === id)?.name ?? id;
}

function sectionName({ falsework }: Job, id: string): string {
  const name = falsework.sections.find((one) => one.id === id)?.name ?? id;
  return `section ${name}`;
}
