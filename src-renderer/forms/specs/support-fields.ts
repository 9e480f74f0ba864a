/** What can be said of what a piece bears on. */
import type { Support, SupportKind } from '../../../src-core/job';
import { STIFFNESS } from '../../../src-core/job';
import { changeFootprint, changeHold, changeSupport } from '../starts/change-support';
import { BRACKET_FIELDS } from './bracket-fields';
import type { BoundsField, Field } from './field';
import { nextCorner } from './next-in-list';
import { choice, choices, kindsOf, length, place, quantity, yesNo } from './write-fields';

/** A bracket with stiffness of its own begins with that of a light one. Common practice, no source. */
const BRACKET_STIFFNESS = { low: 1_000, high: 10_000 };

function stiffness(of: BoundsField['of'], start: BoundsField['start'], emptyWords: string): Field {
  const help = 'As soft and as stiff as it may be; every verdict is the worse of the two.';
  return { kind: 'bounds', at: 'stiffness', label: 'Stiffness', of, start, emptyWords, help };
}

const USUAL = 'the usual range';

const CABINET: readonly Field[] = [
  place('corner', 'Front left corner'),
  quantity('angle', 'angleDeg', 'Front runs toward', {
    help: '0° is to the right; the depth lies to its left.',
  }),
  length('widthIn', 'Width'),
  length('depthIn', 'Depth'),
  length('heightIn', 'Height'),
  length('panelIn', 'Side panels'),
  yesNo('frontRail', 'Front rail'),
  yesNo('backRail', 'Back rail'),
  yesNo('subTop', 'Full sub-top', 'With one it bears all over, without one only on its sides and rails.'),
  stiffness('lineStiffness', STIFFNESS.cabinetSide, USUAL),
  {
    kind: 'bounds',
    at: 'railStiffness',
    label: 'Rail stiffness',
    of: 'lineStiffness',
    start: STIFFNESS.cabinetRail,
    emptyWords: USUAL,
  },
  {
    kind: 'part',
    at: 'feet',
    label: 'Adjustable feet',
    start: () => ({ count: 4, shortestIn: 3.5, longestIn: 6, ratingLb: 300 }),
    fields: [
      quantity('count', 'count', 'How many feet'),
      length('shortestIn', 'Wound right in'),
      length('longestIn', 'Wound right out'),
      quantity('mass', 'ratingLb', 'Rated load of one foot'),
    ],
  },
  {
    kind: 'many',
    at: 'removableParts',
    label: 'What comes off to set it',
    choices: choices({
      front: 'Front',
      back: 'Back',
      'left-side': 'Left side',
      'right-side': 'Right side',
      'sub-top': 'Sub-top',
      'toe-kick': 'Toe kick',
    }),
  },
  length('backingBoardIn', 'Backing board that stays', { emptyWords: 'comes out' }),
  quantity('mass', 'weightLb', 'Weight of the cabinet'),
];

const LINE: readonly Field[] = [
  place('from', 'Starts at'),
  place('to', 'Ends at'),
  length('widthIn', 'Bearing width'),
];

const WALL: readonly Field[] = [
  choice('build', 'Built of', { stud: 'Studs', block: 'Block', brick: 'Brick' }),
  ...LINE,
  length('studSpacingIn', 'Stud spacing', { when: { at: 'build', is: ['stud'] } }),
  length('heightIn', 'Height', { emptyWords: 'not known' }),
  stiffness('lineStiffness', STIFFNESS.studWall, USUAL),
];

const PIER: readonly Field[] = [
  choice('build', 'Built of', {
    block: 'Block',
    brick: 'Brick',
    concrete: 'Concrete',
    stone: 'Stone',
    'timber-post': 'Timber post',
  }),
  kindsOf<Extract<Support, { kind: 'pier' }>['footprint'], 'rectangle' | 'circle'>(
    {
      at: 'footprint',
      label: 'Top of it',
      by: 'kind',
      kinds: [
        {
          value: 'rectangle',
          words: 'Square or oblong',
          fields: [
            place('centre', 'Middle'),
            length('widthIn', 'Width'),
            length('depthIn', 'Depth'),
            quantity('angle', 'angleDeg', 'Turned'),
          ],
        },
        {
          value: 'circle',
          words: 'Round',
          fields: [place('centre', 'Middle'), length('diameterIn', 'Diameter')],
        },
      ],
    },
    changeFootprint,
  ),
  choice('bed', 'Bedded', { mortar: 'In mortar', dry: 'Dry' }),
  length('heightIn', 'Height', { emptyWords: 'not known' }),
  stiffness('bedStiffness', STIFFNESS.bed, USUAL),
];

const LEG: readonly Field[] = [
  place('centre', 'Middle'),
  length('widthIn', 'Width'),
  length('depthIn', 'Depth'),
  quantity('angle', 'angleDeg', 'Turned'),
  stiffness('pointStiffness', STIFFNESS.leg, USUAL),
];

const FULL_BED: readonly Field[] = [
  {
    kind: 'list',
    at: 'corners',
    label: 'Corners of the bed',
    one: 'corner',
    look: 'table',
    least: 3,
    item: [length('xIn', 'From the left'), length('yIn', 'From the front')],
    next: nextCorner,
    none: {
      words: 'The whole piece is bedded.',
      start: (_, { piece }) => piece!.corners.map(({ xIn, yIn }) => ({ xIn, yIn })),
    },
  },
  stiffness('bedStiffness', STIFFNESS.bed, USUAL),
];

const HOLD = kindsOf<Support['hold'], 'resting' | 'tied'>(
  {
    at: 'hold',
    label: 'The slab',
    by: 'kind',
    kinds: [
      { value: 'resting', words: 'Rests on it', fields: [] },
      {
        value: 'tied',
        words: 'Is tied down to it',
        fields: [
          length('spacingIn', 'Ties apart'),
          quantity('force', 'ratingLbf', 'Rating of one tie', { emptyWords: 'not stated' }),
          {
            kind: 'bounds',
            at: 'stiffness',
            label: 'Stiffness of one tie',
            of: 'pointStiffness',
            start: { low: 2_000, high: 20_000 },
          },
        ],
      },
    ],
  },
  changeHold,
);

/** The words of a support's kind, as its form and its row have them. */
export const SUPPORT_WORDS: { readonly [K in SupportKind]: string } = {
  cabinet: 'Cabinet',
  wall: 'Wall',
  ledger: 'Ledger',
  pier: 'Pier',
  leg: 'Leg',
  bracket: 'Brackets',
  'full-bed': 'Full bed',
};

const FIELDS_OF: { readonly [K in SupportKind]: readonly Field[] } = {
  cabinet: CABINET,
  wall: WALL,
  ledger: [...LINE, stiffness('lineStiffness', STIFFNESS.ledger, USUAL)],
  pier: PIER,
  leg: LEG,
  bracket: [...BRACKET_FIELDS, stiffness('pointStiffness', BRACKET_STIFFNESS, 'from its arm and fixing')],
  'full-bed': FULL_BED,
};

export const SUPPORT_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'name', label: 'Name', emptyWords: 'no name' },
  kindsOf<Support, SupportKind>(
    {
      at: '',
      label: 'Kind',
      by: 'kind',
      kinds: (Object.keys(SUPPORT_WORDS) as SupportKind[]).map((value) => ({
        value,
        words: SUPPORT_WORDS[value],
        fields: FIELDS_OF[value],
      })),
    },
    (old, kind, { piece }) => changeSupport(old, kind, piece!),
  ),
  {
    kind: 'group',
    label: 'When it stands and how it meets the slab',
    fields: [
      quantity('day', 'firstDay', 'First day'),
      quantity('day', 'lastDay', 'Last day', { emptyWords: 'stays' }),
      length('gapIn', 'Gap before it touches'),
      length('raisedIn', 'Raised beyond touching', { help: 'A foot wound up against the slab.' }),
      HOLD,
    ],
  },
];
