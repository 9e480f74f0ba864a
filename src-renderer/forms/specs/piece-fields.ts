/** What can be said of a piece. */
import { CUTOUT_FIELDS } from './cutout-fields';
import { CORNER_FIELDS, EDGE_FIELDS } from './edge-fields';
import type { Field } from './field';
import { FIXED_LOAD_FIELDS, JOINT_FIELDS, ROVING_FIELD, STEEL_FIELDS } from './steel-fields';
import { SUPPORT_FIELDS } from './support-fields';
import { choice, length, quantity } from './write-fields';

export const PIECE_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'name', label: 'Name' },
  choice('use', 'Used as', {
    counter: 'Counter',
    'bar-ledge': 'Bar ledge',
    'foot-ledge': 'Foot ledge',
    bench: 'Bench',
    hearth: 'Hearth',
    cap: 'Cap',
    other: 'Something else',
  }),
  length('thicknessIn', 'Thickness'),
  length('topElevationIn', 'Top above the floor'),
  { kind: 'reference', at: 'mixId', label: 'Concrete mix', to: 'mix' },
  quantity('day', 'pourDay', 'Poured on day'),
  choice('exposure', 'Stands', { indoors: 'Indoors', outdoors: 'Outdoors' }),
  quantity('count', 'copies', 'How many of it'),
  choice('finish', 'Finish', { smooth: 'Smooth', honed: 'Honed', exposed: 'Aggregate exposed' }),
  {
    kind: 'part',
    at: 'colour',
    label: 'Pigment',
    start: () => ({ pigment: 'Grey', pigmentRatio: 0.03 }),
    fields: [
      { kind: 'name', at: 'pigment', label: 'Which pigment' },
      quantity('percent', 'pigmentRatio', 'Share of the cement'),
    ],
  },
  {
    kind: 'part',
    at: 'fall',
    label: 'Falls, to drain',
    start: () => ({ inPerFt: 0.125, towardDeg: 270 }),
    fields: [
      quantity('fall', 'inPerFt', 'Fall'),
      quantity('angle', 'towardDeg', 'Falls toward', { help: '0° is right, 90° back, 270° front.' }),
    ],
  },
  { kind: 'note', at: 'note', label: 'Note' },
  { kind: 'parts', at: 'corners', part: 'corner', label: 'Corners', fields: CORNER_FIELDS },
  { kind: 'parts', at: 'edges', part: 'edge', label: 'Edges', fields: EDGE_FIELDS },
  { kind: 'parts', at: 'supports', part: 'support', label: 'What it stands on', fields: SUPPORT_FIELDS },
  { kind: 'parts', at: 'cutouts', part: 'cutout', label: 'Openings', fields: CUTOUT_FIELDS },
  { kind: 'parts', at: 'reinforcement', part: 'steel', label: 'Steel in it', fields: STEEL_FIELDS },
  {
    kind: 'group',
    label: 'Loads',
    fields: [
      { ...ROVING_FIELD, at: 'loads.roving' } as Field,
      quantity('spreadLoad', 'loads.spreadPsf', 'Spread all over', {
        help: 'Never together with the person.',
      }),
    ],
  },
  { kind: 'parts', at: 'loads.fixed', part: 'load', label: 'Fixed equipment', fields: FIXED_LOAD_FIELDS },
  { kind: 'parts', at: 'joints', part: 'joint', label: 'Joints', fields: JOINT_FIELDS },
];
