/** What can be said of an edge and a corner. */
import type { PieceEdge } from '../../../src-core/job';
import { changeEdge } from '../starts/new-parts';
import type { Field } from './field';
import { choice, follows, kindsOf, length } from './write-fields';

type Profile = Extract<PieceEdge, { kind: 'free' }>['profile'];

/** A profile of one's own begins as a plain slope that a person then alters. */
const OWN_POINTS = [
  { outIn: 0, upIn: 0 },
  { outIn: 0.25, upIn: 0.25 },
];

const changeProfile = follows<Profile>((profile, kind) => ({
  ...profile,
  kind,
  points: kind === 'own' ? (profile.points ?? OWN_POINTS) : null,
}));

const PROFILE: readonly Field[] = [
  {
    ...choice('kind', 'Profile', {
      square: 'Square',
      eased: 'Eased',
      chamfer: 'Chamfer',
      'round-over': 'Round-over',
      bullnose: 'Bullnose',
      'half-bullnose': 'Half bullnose',
      cove: 'Cove',
      ogee: 'Ogee',
      stepped: 'Stepped',
      own: 'My own',
    }),
    follows: changeProfile,
  },
  length('sizeIn', 'Profile size', { emptyWords: 'usual size', help: 'Leg or radius of the profile.' }),
  {
    kind: 'list',
    at: 'points',
    label: 'Points of the profile',
    help: 'From the underside up: how far out from the face, and how high.',
    one: 'point',
    look: 'table',
    least: 2,
    item: [length('outIn', 'Out'), length('upIn', 'Up')],
    next: (points) => points.at(-1) ?? OWN_POINTS[0],
    none: { words: 'The profile is a usual one.', start: () => OWN_POINTS },
    when: { at: 'kind', is: ['own'] },
  },
];

export const EDGE_FIELDS: readonly Field[] = [
  kindsOf<PieceEdge, PieceEdge['kind']>(
    {
      at: '',
      label: 'This edge',
      by: 'kind',
      kinds: [
        {
          value: 'free',
          words: 'Is free',
          fields: [
            {
              kind: 'part',
              at: 'profile',
              label: 'Profile',
              isAlways: true,
              start: () => ({}),
              fields: PROFILE,
            },
            {
              kind: 'part',
              at: 'dripGroove',
              label: 'Drip groove',
              start: () => ({ widthIn: 0.25, depthIn: 0.25, setbackIn: 0.75 }),
              fields: [
                length('widthIn', 'Groove width'),
                length('depthIn', 'Groove depth'),
                length('setbackIn', 'Back from the face'),
              ],
            },
          ],
        },
        {
          value: 'wall',
          words: 'Meets a wall',
          fields: [
            length('gapIn', 'Gap to the wall', { help: 'Isolation gap, filled with foam and sealed.' }),
          ],
        },
        {
          value: 'butted',
          words: 'Meets another piece',
          needs: 'other-piece',
          fields: [
            { kind: 'reference', at: 'toPieceId', label: 'Which piece', to: 'other-piece' },
            length('gapIn', 'Gap between them'),
          ],
        },
      ],
    },
    (old, kind, { job, piece }) => changeEdge(old, kind, { job, piece: piece! }),
  ),
];

export const CORNER_FIELDS: readonly Field[] = [
  length('xIn', 'From the left'),
  length('yIn', 'From the front'),
  length('radiusIn', 'Radius', { help: '0 leaves the corner sharp.' }),
];
