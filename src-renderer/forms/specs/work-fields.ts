/** How the work is done: falsework, swap, forms, crew, stock, ticks. Places start at the job. */
import { newId } from '../../../src-core/edit';
import type { Job, SwapStep } from '../../../src-core/job';
import { boundingBox } from '../../../src-core/outline';
import type { Field, Surroundings } from './field';
import { nextCorner } from './next-in-list';
import { choice, length, quantity, yesNo } from './write-fields';

const FALSEWORK: readonly Field[] = [
  quantity('spreadLoad', 'falsework.livePsf', 'People and tools'),
  quantity('spreadLoad', 'falsework.leastTotalPsf', 'Least load in all'),
  quantity('density', 'falsework.wetDensityPcf', 'Wet concrete'),
  choice('falsework.species', 'Timber', { spf: 'Spruce-pine-fir', 'df-l': 'Douglas fir-larch' }),
  yesNo('falsework.wetService', 'Timber gets wet'),
  quantity('plain', 'falsework.durationFactor', 'Duration factor'),
  quantity('plain', 'falsework.spanLimit', 'Sag at most a span over'),
  length('falsework.deflectionLimitIn', 'Sag at most'),
  choice('falsework.panel', 'Sheathing', {
    'span-24-16': 'Span rating 24/16',
    'span-32-16': 'Span rating 32/16',
    'span-40-20': 'Span rating 40/20',
  }),
  length('falsework.backingBoardIn', 'Backing board'),
  length('falsework.shimIn', 'Shims'),
  {
    kind: 'list',
    at: 'falsework.sections',
    label: 'Sections',
    one: 'section',
    look: 'blocks',
    least: 0,
    next: nextSection,
    summary: (section, { job }) =>
      String(section.name ?? `Under ${job.pieces.find(({ id }) => id === section.pieceId)?.name}`),
    item: [
      { kind: 'name', at: 'name', label: 'Name', emptyWords: 'no name' },
      { kind: 'reference', at: 'pieceId', label: 'Holds up', to: 'piece' },
      quantity('day', 'firstDay', 'First day'),
      quantity('day', 'lastDay', 'Last day', { emptyWords: 'stays' }),
      {
        kind: 'list',
        at: 'corners',
        label: 'Corners',
        one: 'corner',
        look: 'table',
        least: 3,
        item: [length('xIn', 'From the left'), length('yIn', 'From the front')],
        next: nextCorner,
      },
    ],
  },
];

/** A section under the whole of the first piece, from the first day. */
function nextSection(_: readonly unknown[], { job }: Surroundings): unknown {
  const piece = job.pieces[0]!;
  const { minXIn, maxXIn, minYIn, maxYIn } = boundingBox(piece.corners);
  const corners = [
    { xIn: minXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: minYIn },
    { xIn: maxXIn, yIn: maxYIn },
    { xIn: minXIn, yIn: maxYIn },
  ];
  return { id: newId(job, 'section'), pieceId: piece.id, corners, firstDay: 0, lastDay: null };
}

const SWAP: readonly Field[] = [
  quantity('spreadLoad', 'swap.workingLoadPsf', 'Load while working'),
  {
    kind: 'list',
    at: 'swap.steps',
    label: 'Steps',
    one: 'step',
    look: 'blocks',
    least: 0,
    next: nextStep,
    summary: (step, { job }) => stepWords(step as unknown as SwapStep, job),
    item: [
      quantity('day', 'day', 'Day'),
      { kind: 'many', at: 'sectionsOut', label: 'Sections out', choices: 'section' },
      { kind: 'many', at: 'supportsOut', label: 'Supports out', choices: 'support' },
      { kind: 'many', at: 'supportsIn', label: 'Supports in', choices: 'support' },
      { kind: 'note', at: 'note', label: 'Note' },
    ],
  },
];

/** "Day 40: out Return, outer, leg-r1; in R1": by name, as plan and swap say it; by id what has no name. */
function stepWords({ day, sectionsOut, supportsOut, supportsIn }: SwapStep, job: Job): string {
  const named = [...job.falsework.sections, ...job.pieces.flatMap(({ supports }) => supports)];
  const nameOf = (id: string) => named.find((one) => one.id === id)?.name ?? id;
  const out = [...sectionsOut, ...supportsOut];
  const parts = [
    out.length > 0 && `out ${out.map(nameOf).join(', ')}`,
    supportsIn.length > 0 && `in ${supportsIn.map(nameOf).join(', ')}`,
  ];
  const said = parts.filter((part) => part !== false).join('; ');
  return said === '' ? `Day ${day}` : `Day ${day}: ${said}`;
}

/** Day on which a first swap step is set: the concrete has its full strength. */
const FIRST_SWAP_DAY = 28;

function nextStep(steps: readonly unknown[], { job }: Surroundings): unknown {
  const last = steps.at(-1) as SwapStep | undefined;
  return { id: newId(job, 'step'), day: last === undefined ? FIRST_SWAP_DAY : last.day + 1 };
}

const FORMS: readonly Field[] = [
  length('forms.kerfIn', 'Saw kerf'),
  length('forms.stripWidthIn', 'Width of form strips'),
  length('forms.standoffSpacingIn', 'Standoffs apart', {
    emptyWords: 'as the steel asks',
  }),
  quantity('percent', 'forms.wasteRatio', 'Waste'),
  quantity('percent', 'forms.overfillRatio', 'Overfill'),
];

const CREW: readonly Field[] = [
  quantity('count', 'crew.people', 'People'),
  quantity('count', 'crew.mixers', 'Mixers'),
  quantity('count', 'crew.mixerBags', 'Bags a mixer takes'),
  quantity('bucket', 'crew.bucketGal', 'Bucket'),
  quantity('percent', 'crew.bucketFill', 'Filled to'),
  quantity('minutes', 'crew.minutesABatch', 'Time for a batch'),
  quantity('placingRate', 'crew.placingFt3AnHour', 'Placed in an hour'),
];

const STOCK: readonly Field[] = [
  {
    kind: 'list',
    at: 'stock',
    label: 'Stock and prices',
    one: 'item',
    look: 'blocks',
    least: 0,
    next: (items, { job }) => ({ id: newId(job, 'stock'), name: `Item ${items.length + 1}`, kind: 'other' }),
    summary: (item) => String(item.name),
    item: [
      { kind: 'name', at: 'name', label: 'Name' },
      choice('kind', 'Kind', {
        'form-strip': 'Form strip',
        lumber: 'Lumber',
        sheet: 'Sheet',
        board: 'Board',
        'mesh-sheet': 'Sheet of mesh',
        bar: 'Bar',
        sealant: 'Sealant',
        screws: 'Screws',
        tape: 'Tape',
        other: 'Something else',
      }),
      length('lengthIn', 'Length', { emptyWords: 'none' }),
      length('widthIn', 'Width', { emptyWords: 'none' }),
      length('thicknessIn', 'Thickness', { emptyWords: 'none' }),
      quantity('price', 'price', 'Price', { emptyWords: 'not known' }),
      choice('priceFrom', 'The price is', { invented: 'Invented for the example', own: 'My own' }),
    ],
  },
];

const TICKS: readonly Field[] = [
  {
    kind: 'list',
    at: 'ticks',
    label: 'Ticked off',
    help: 'What the build book lists and somebody has ticked.',
    one: 'tick',
    look: 'blocks',
    least: 0,
    next: null,
    summary: (tick) => String(tick.id),
    item: [yesNo('done', 'Done')],
  },
];

export const WORK_FIELDS: readonly Field[] = [
  { kind: 'group', label: 'Falsework', fields: FALSEWORK },
  { kind: 'group', label: 'Swap', fields: SWAP },
  { kind: 'group', label: 'Forms', fields: FORMS },
  { kind: 'group', label: 'Crew', fields: CREW },
  { kind: 'group', label: 'Stock', fields: STOCK },
  { kind: 'group', label: 'Ticks', fields: TICKS },
];
