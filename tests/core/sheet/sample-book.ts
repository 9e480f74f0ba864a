/** A book with every kind of block, for the tests of its layout and of its markup. */
import type { Figure } from '../../../src-core/figure';
import type { Block, Book, Chapter, TableBlock } from '../../../src-core/sheet';
import { formula, readingLine } from '../../../src-core/workings';

export const bookOf = (...chapters: readonly Chapter[]): Book => ({
  title: 'Build book',
  jobName: 'The Boathouse galley',
  notice: 'Planning arithmetic, not engineered drawings. If in doubt leave the props in.',
  chapters,
});

export const chapterOf = (blocks: readonly Block[], others: Partial<Chapter> = {}): Chapter => ({
  id: 'hold-it-up',
  title: 'Hold it up',
  startsPage: true,
  blocks,
  ...others,
});

export const figureOf = (widthIn: number, heightIn: number): Figure => ({
  id: 'leg-plan',
  title: 'Plan of the legs',
  scaleWords: '1 : 16',
  widthIn,
  heightIn,
  words: 'Nine legs in three rows.',
  marks: [
    { kind: 'line', from: { x: 0, y: 0 }, to: { x: widthIn, y: heightIn }, pen: 'cut' },
    {
      kind: 'area',
      loops: [
        [
          { x: 0, y: 0 },
          { x: 1, y: 0 },
          { x: 1, y: 1 },
        ],
      ],
      fill: 'concrete',
      pen: 'visible',
    },
  ],
});

/** A cut list with rows of one line each. */
export const tableOf = (rowCount: number, others: Partial<TableBlock> = {}): TableBlock => ({
  kind: 'table',
  id: 'legs',
  caption: 'Legs, cut to the floor',
  columns: [
    { head: 'Leg', share: 1, align: 'start', namesRow: true },
    { head: 'Length', share: 1, align: 'end' },
    { head: 'Stands on', share: 2, align: 'start' },
  ],
  rows: Array.from({ length: rowCount }, (_, k) => ({
    cells: [`L${k + 1}`, '34-3/16 in', 'Concrete floor'],
  })),
  ...others,
});

/** Gives about 105 letters a sentence, more than a line and less than two. */
export const sentences = (count: number) =>
  'The deck is level when the string touches every block; look again after the first two batches are placed. '.repeat(
    count,
  );

const crackingMoment = formula({
  symbol: 'Mcr',
  label: 'Cracking moment',
  formula: 'fr * h^2 / 6',
  units: { fr: 'psi', h: 'in' },
  unit: 'lbf-in/in',
  source: 'ACI 318-19 24.2.3.5',
  fromMemory: true,
  compute: ({ fr, h }: { readonly fr: number; readonly h: number }) => (fr * h ** 2) / 6,
});

export const everyBlock = (): Block[] => [
  { kind: 'contents', shows: 'headings' },
  { kind: 'heading', level: 1, id: 'cut-list', words: 'Cut list' },
  {
    kind: 'paragraph',
    words: [
      'Lengths are in the table on ',
      { kind: 'page', to: 'legs' },
      ', places in ',
      { kind: 'figure', to: 'leg-places' },
      '. ',
      { kind: 'strong', words: 'Nobody below the deck.' },
    ],
  },
  tableOf(3, { rows: [...tableOf(3).rows, { cells: ['All', '8 ft', ''], isTotal: true }] }),
  tableOf(2, { id: 'record', caption: 'Written on the day', isForPen: true }),
  { kind: 'figure', id: 'leg-places', figure: figureOf(5, 2), caption: 'Places of the legs.' },
  { kind: 'heading', level: 2, id: 'glance', words: 'At a glance' },
  { kind: 'facts', facts: [{ label: 'Concrete', value: '3 cu ft' }] },
  {
    kind: 'verdicts',
    rows: [
      { level: 'holds', name: 'Counter', words: 'Holds', why: 'It bends to 0.42 of what it can.' },
      { level: 'steel', name: 'Ledge', words: 'Holds with steel', why: 'The mesh carries it.' },
      { level: 'change', name: 'Bench', words: 'Needs a corbel', why: 'It overhangs 14 in.' },
      { level: 'engineer', name: 'Hearth', words: 'Needs an engineer', why: 'Its floor is not known.' },
    ],
  },
  {
    kind: 'workings',
    lines: [
      crackingMoment({ fr: 410, h: 1.5 }).line,
      readingLine({ symbol: 'M', label: 'Moment', value: 88.5, unit: 'lbf-in/in', from: 'plate engine' }),
    ],
  },
  { kind: 'notice', level: 'danger', paragraphs: ['Wet concrete burns skin.', 'Wear gloves.'] },
  { kind: 'notice', level: 'notice', paragraphs: ['Keep this book dry.'] },
  { kind: 'list', isNumbered: true, items: ['Set the legs.', 'Set the deck.'] },
  { kind: 'list', isNumbered: false, items: ['Tape', 'String'] },
  { kind: 'checkboxes', items: ['Legs plumb', 'Wedges screwed'] },
];
