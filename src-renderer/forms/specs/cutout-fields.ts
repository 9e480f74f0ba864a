/** What can be said of an opening. */
import type { Cutout, CutoutShape } from '../../../src-core/job';
import { changeShape, newSink } from '../starts/new-cutout';
import { CORNER_FIELDS } from './edge-fields';
import type { Field } from './field';
import { nextCorner } from './next-in-list';
import { choice, follows, kindsOf, length, place, quantity, yesNo } from './write-fields';

const changePurpose = follows<Cutout>((cutout, purpose) => ({
  ...cutout,
  purpose,
  sink: purpose === 'sink' ? (cutout.sink ?? newSink('dropped-in')) : null,
}));

const SHAPE = kindsOf<CutoutShape, CutoutShape['kind']>(
  {
    at: 'shape',
    label: 'Shape',
    by: 'kind',
    kinds: [
      {
        value: 'rectangle',
        words: 'Rectangle',
        fields: [
          place('centre', 'Middle'),
          length('widthIn', 'Width'),
          length('depthIn', 'Depth'),
          length('radiusIn', 'Corner radius'),
          quantity('angle', 'angleDeg', 'Turned'),
        ],
      },
      {
        value: 'circle',
        words: 'Circle',
        fields: [place('centre', 'Middle'), length('diameterIn', 'Diameter')],
      },
      {
        value: 'polygon',
        words: 'Corner by corner',
        fields: [
          {
            kind: 'list',
            at: 'corners',
            label: 'Corners',
            one: 'corner',
            look: 'table',
            least: 3,
            item: CORNER_FIELDS,
            next: nextCorner,
          },
        ],
      },
    ],
  },
  changeShape,
);

export const CUTOUT_FIELDS: readonly Field[] = [
  { kind: 'name', at: 'name', label: 'Name', emptyWords: 'no name' },
  {
    ...choice('purpose', 'Cut for', {
      sink: 'Sink',
      hob: 'Hob',
      tap: 'Tap',
      drain: 'Drain',
      other: 'Something else',
    }),
    follows: changePurpose,
  },
  SHAPE,
  {
    kind: 'part',
    at: 'sink',
    label: 'Sink data',
    when: { at: 'purpose', is: ['sink'] },
    start: () => newSink('dropped-in'),
    fields: [
      choice('mounting', 'Mounting', {
        'dropped-in': 'Dropped in from above',
        'under-rim': 'Under the rim',
        'cast-over': 'Cast over',
      }),
      length('rimIn', 'Rim on the slab'),
      length('bowlDepthIn', 'Bowl depth'),
      quantity('mass', 'emptyWeightLb', 'Empty weight'),
      quantity('mass', 'contentsLb', 'Water and contents', { emptyWords: 'full to the brim' }),
      yesNo('carriedBySlab', 'The slab carries it', 'An under-rim sink may hang from its cabinet instead.'),
    ],
  },
  quantity('mass', 'applianceLb', 'Appliance on its rim', { help: 'Weight of a hob or the like.' }),
];
