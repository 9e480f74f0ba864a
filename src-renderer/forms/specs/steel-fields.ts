/** What can be said of steel, loads and joints. */
import { BARS, MESHES } from '../../../src-core/concrete';
import type { Reinforcement, RovingLoad } from '../../../src-core/job';
import { changeRoving } from '../starts/change-roving';
import { barValues, changeSteel, meshValues } from '../starts/new-steel';
import type { Field } from './field';
import { nextCorner } from './next-in-list';
import { choice, follows, kindsOf, length, place, quantity, yesNo } from './write-fields';

type Bars = Extract<Reinforcement, { kind: 'bars' }>;

/** A new diameter brings its area along: that of the table, else of a round bar. */
const changeDiameter = follows<Bars>((bars, diameter) => {
  const barIn = Number(diameter);
  const known = BARS.find(({ diameterIn }) => Math.abs(diameterIn - barIn) < 1e-6);
  const roundIn2 = Math.round((Math.PI / 4) * barIn ** 2 * 1e5) / 1e5;
  return { ...bars, barIn, areaIn2: known?.areaIn2 ?? roundIn2 };
});

const LIST_ONLY: readonly Field[] = [
  choice(
    'material',
    'Material',
    { glass: 'Glass', basalt: 'Basalt', carbon: 'Carbon', polymer: 'Polymer', steel: 'Steel' },
    { help: 'Counts zero for strength; it is recorded for the list.' },
  ),
  quantity('dose', 'dosePcy', 'Dose', { emptyWords: 'as the bag says' }),
];

export const STEEL_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'label', label: 'Name', emptyWords: 'no name' },
  kindsOf<Reinforcement, Reinforcement['kind']>(
    {
      at: '',
      label: 'Kind',
      by: 'kind',
      kinds: [
        {
          value: 'mesh',
          words: 'Welded mesh',
          fields: [
            {
              kind: 'pick',
              label: 'Style',
              ownWords: 'A mesh of my own',
              picks: MESHES.map(({ id }) => ({ id, words: id, values: meshValues(id) })),
            },
            length('wireIn', 'Wire'),
            length('spacingIn', 'Wires apart'),
            length('crossWireIn', 'Cross wire'),
            length('crossSpacingIn', 'Cross wires apart'),
            quantity('angle', 'angleDeg', 'Wires run toward', { help: '0° is along the front.' }),
            length('depthIn', 'Depth from the top', {
              help: 'To where the two layers of wire touch. These wires lie above, the cross wires below.',
            }),
            quantity('stress', 'yieldPsi', 'Yield strength'),
            length('edgeCoverIn', 'Cover at the edges'),
          ],
        },
        {
          value: 'bars',
          words: 'Bars',
          fields: [
            {
              kind: 'pick',
              label: 'Size',
              ownWords: 'A bar of my own',
              picks: BARS.map(({ id }) => ({ id, words: id, values: barValues(id) })),
            },
            length('barIn', 'Bar diameter', { follows: changeDiameter }),
            quantity('area', 'areaIn2', 'Area of one bar'),
            length('spacingIn', 'Bars apart'),
            quantity('angle', 'angleDeg', 'Bars run toward', { help: '0° is along the front.' }),
            length('depthIn', 'Depth from the top', { help: 'To the middle of the bars.' }),
            quantity('stress', 'yieldPsi', 'Yield strength'),
            length('edgeCoverIn', 'Cover at the edges'),
            yesNo('hooked', 'Hooked at the ends'),
            {
              kind: 'list',
              at: 'corners',
              label: 'Where the bars lie',
              one: 'corner',
              look: 'table',
              least: 3,
              item: [length('xIn', 'From the left'), length('yIn', 'From the front')],
              next: nextCorner,
              none: {
                words: 'They lie all over the piece.',
                start: (_, { piece }) => piece!.corners.map(({ xIn, yIn }) => ({ xIn, yIn })),
              },
            },
          ],
        },
        { value: 'fabric', words: 'Fabric (counts zero for strength)', fields: LIST_ONLY },
        { value: 'fibre', words: 'Fibre (counts zero for strength)', fields: LIST_ONLY },
      ],
    },
    (old, kind, { piece }) => changeSteel(old, kind, piece!),
  ),
];

export const FIXED_LOAD_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'name', label: 'Name' },
  place('centre', 'Middle'),
  length('widthIn', 'Width'),
  length('depthIn', 'Depth'),
  quantity('angle', 'angleDeg', 'Turned'),
  quantity('mass', 'weightLb', 'Weight'),
];

export const JOINT_FIELDS: readonly Field[] = [
  choice('kind', 'Kind', {
    control: 'Control joint',
    isolation: 'Isolation joint',
    construction: 'Construction joint',
  }),
  place('from', 'Starts at'),
  place('to', 'Ends at'),
  length('widthIn', 'Width'),
];

/** The load that may stand anywhere: a person leaning, sitting or climbing. */
export const ROVING_FIELD: Field = kindsOf<RovingLoad | null, RovingLoad['setting']>(
  {
    at: 'roving',
    label: 'A person anywhere on it',
    by: 'setting',
    noneWords: 'As its use asks',
    kinds: [
      { value: 'leaning', words: 'Leaning', fields: [] },
      { value: 'sitting', words: 'Sitting', fields: [] },
      { value: 'climbing', words: 'Climbing', fields: [] },
      { value: 'none', words: 'Nobody', fields: [] },
      {
        value: 'own',
        words: 'A load of my own',
        fields: [
          quantity('force', 'forceLbf', 'Force'),
          length('widthIn', 'Footprint width'),
          length('depthIn', 'Footprint depth'),
          { kind: 'note', at: 'source', label: 'Where the figure is from' },
        ],
      },
    ],
  },
  changeRoving,
);
