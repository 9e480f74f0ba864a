/** Tables of a swap: its steps with what each does to the slab, and how far what comes in may be wound or fall short. */
import type { Job, Piece } from '../job';
import { printRatio } from '../report';
import type { CheckedMoment, SwapResult } from '../sequence';
import { heightWords } from '../sequence';
import type { Block } from '../sheet';
import { columns, paragraph, table } from './blocks';
import type { BookContext } from './context';
import { LEVEL_WORDS } from './practice';

/** Steps in order; `piece` may lack the props of a proposed order, which are named by that. */
export function stepTable(
  { job, print }: BookContext,
  { steps, proposal }: SwapResult,
  piece: Piece,
  id: string,
): Block[] {
  const props = (proposal?.props ?? []).map(({ support }) => support);
  const supports = [...piece.supports, ...props];
  const nameOf = (supportId: string) => supports.find((one) => one.id === supportId)?.name ?? supportId;
  return table(
    `${id}-steps`,
    'Steps, in order',
    columns(
      ['Step', 0.65],
      ['On', 1.5],
      ['First out', 2.2],
      ['Then in', 1.8],
      ['Of what cracks it', 0.9, 'end'],
      ['At its worst', 2.8],
    ),
    steps.map(({ step, worst }, k) => [
      String(k + 1),
      print.day(step.day),
      [...step.sectionsOut.map((section) => sectionName(job, section)), ...step.supportsOut.map(nameOf)].join(
        ', ',
      ) || 'nothing',
      step.supportsIn.map(nameOf).join(', ') || 'nothing',
      worst.cracking === null ? '' : printRatio(worst.cracking.ratio),
      momentWords(worst, step.note),
    ]),
  );
}

function sectionName({ falsework }: Job, id: string): string {
  return `section ${falsework.sections.find((section) => section.id === id)?.name ?? id}`;
}

const PHASES: { readonly [P in CheckedMoment['phase']]: string } = {
  before: 'before anything moves',
  out: 'with it out',
  in: 'with it in',
};

function momentWords({ level, phase, cracking, words }: CheckedMoment, note: string): string {
  const place = cracking === null ? '' : `, ${cracking.words}`;
  const isFine = level === 'holds' || level === 'steel';
  const found = isFine ? `${PHASES[phase]}${place}` : `${LEVEL_WORDS[level]}, ${PHASES[phase]}: ${words}`;
  return note === '' ? found : `${found}. ${note}`;
}

/** How far each foot or side that comes in may be wound up, or left short, before the slab cracks. */
export function heightTable({ print }: BookContext, { steps }: SwapResult, id: string): Block[] {
  const rows = steps.flatMap(({ step, heights }) =>
    heights.map(({ words, raise, gap }) => [
      words,
      print.day(step.day),
      heightWords(raise, print.system, 'as far as it winds: the slab lifts off first'),
      heightWords(gap, print.system, 'any gap'),
    ]),
  );
  return [
    ...(rows.length === 0
      ? []
      : [
          paragraph(
            'Wind each foot by hand until it just touches, then stop. Beyond touching, and short of it, the slab cracks on paper at these heights; stay well within them.',
          ),
        ]),
    ...table(
      `${id}-heights`,
      'Limits for what comes in',
      columns(['What', 2.4], ['On', 1.9], ['Raised at the most', 1.9], ['Short at the most', 1.6]),
      rows,
    ),
  ];
}
