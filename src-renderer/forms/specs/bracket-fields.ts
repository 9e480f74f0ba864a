/** What can be said of a row of brackets or corbels. */
import { STOCK_ARMS } from '../../../src-core/bracket';
import type { ArmSection, BracketFixing } from '../../../src-core/job';
import { changeArm, changeFixing } from '../starts/bracket-parts';
import type { Field, Kind } from './field';
import { nextRoot } from './next-in-list';
import { choice, kindsOf, length, quantity } from './write-fields';

const YIELD = quantity('stress', 'yieldPsi', 'Yield strength');

const ARM = kindsOf<ArmSection, ArmSection['kind']>(
  {
    at: 'arm',
    label: 'Section of the arm',
    by: 'kind',
    kinds: [
      {
        value: 'flat-bar',
        words: 'Flat bar',
        fields: [length('widthIn', 'Bar width'), length('depthIn', 'Bar depth'), YIELD],
      },
      {
        value: 'angle',
        words: 'Angle',
        fields: [
          length('legWidthIn', 'Flat leg'),
          length('legDepthIn', 'Upright leg'),
          length('wallIn', 'Wall'),
          YIELD,
        ],
      },
      {
        value: 'tee',
        words: 'Tee',
        fields: [
          length('flangeWidthIn', 'Flange width'),
          length('depthIn', 'Tee depth'),
          length('wallIn', 'Wall'),
          YIELD,
        ],
      },
      {
        value: 'tube',
        words: 'Tube',
        fields: [
          length('widthIn', 'Tube width'),
          length('depthIn', 'Tube depth'),
          length('wallIn', 'Wall'),
          YIELD,
        ],
      },
      {
        value: 'knee-brace',
        words: 'Timber knee brace',
        fields: [
          choice('species', 'Timber', { spf: 'Spruce-pine-fir', 'df-l': 'Douglas fir-larch' }),
          length('widthIn', 'Timber width'),
          length('depthIn', 'Timber depth'),
          length('dropIn', 'Drop of the brace', { help: 'Height of its foot below the arm.' }),
        ],
      },
    ],
  },
  changeArm,
);

const THREADED: Kind['fields'] = [
  length('diameterIn', 'Diameter'),
  length('threadIn', 'Thread in the timber'),
  quantity('count', 'topCount', 'In the top row'),
  quantity('count', 'totalCount', 'In all'),
  length('leverIn', 'Top row above the toe'),
  quantity('plain', 'specificGravity', 'Specific gravity of the timber'),
  quantity('force', 'lateralLbf', 'Lateral value of one', { emptyWords: 'worked out' }),
];

const FIXING = kindsOf<BracketFixing, BracketFixing['kind']>(
  {
    at: 'fixing',
    label: 'Fixed with',
    by: 'kind',
    kinds: [
      { value: 'screws', words: 'Screws', fields: THREADED },
      { value: 'lags', words: 'Lag screws', fields: THREADED },
      {
        value: 'through-bolts',
        words: 'Bolts right through',
        fields: [
          length('diameterIn', 'Diameter'),
          quantity('count', 'topCount', 'In the top row'),
          quantity('count', 'totalCount', 'In all'),
          length('leverIn', 'Top row above the toe'),
          length('washerIn', 'Washer'),
        ],
      },
      {
        value: 'rated',
        words: 'A load its maker states',
        fields: [
          quantity('force', 'ratedLoadLbf', 'Rated load'),
          length('ratedAtIn', 'Rated at this reach'),
          { kind: 'name', at: 'ratedBy', label: 'Rated by' },
        ],
      },
    ],
  },
  changeFixing,
);

export const BRACKET_FIELDS: readonly Field[] = [
  {
    kind: 'pick',
    label: 'Usual arms',
    ownWords: 'A section of my own',
    picks: STOCK_ARMS.map(({ id, words, arm, seatWidthIn }) => ({ id, words, values: { arm, seatWidthIn } })),
  },
  length('reachIn', 'Reach'),
  quantity('angle', 'directionDeg', 'Reaches toward', { help: '0° is right, 90° back, 270° front.' }),
  length('seatWidthIn', 'Seat width under the slab'),
  length('heelIn', 'Heel on the wall'),
  {
    kind: 'list',
    at: 'roots',
    label: 'Where the arms leave the wall',
    one: 'arm',
    look: 'table',
    least: 1,
    item: [length('xIn', 'From the left'), length('yIn', 'From the front')],
    next: nextRoot,
  },
  choice('make', 'Make', {
    rolled: 'Rolled steel',
    bought: 'Bought ready made',
    'shop-welded': 'Welded in a shop',
    'cast-concrete': 'Cast concrete',
    timber: 'Timber',
  }),
  ARM,
  choice('backing', 'Fixed to', {
    'timber-stud': 'Timber studs',
    'steel-post': 'Steel post',
    'grouted-block': 'Grouted block',
    'hollow-block': 'Hollow block',
    'brick-veneer': 'Brick veneer',
    concrete: 'Concrete',
    unknown: 'Not known',
  }),
  FIXING,
];
