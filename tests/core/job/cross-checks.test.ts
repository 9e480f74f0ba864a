import { describe, expect, test } from 'vitest';
import type { CrossCheckCode } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import { rectangle, smallJob, withValue } from '../../support/small-job';

function problemsOf(value: unknown) {
  const reading = readJob(value);
  return reading.ok ? [] : reading.problems;
}

type Case = readonly [what: string, at: string, value: unknown, code: CrossCheckCode, path: string];

const BOW_TIE = [
  { xIn: 0, yIn: 0 },
  { xIn: 96, yIn: 24 },
  { xIn: 96, yIn: 0 },
  { xIn: 0, yIn: 24 },
];

const CASES: readonly Case[] = [
  [
    'an outline that crosses itself',
    'pieces[1].corners',
    BOW_TIE,
    'outline-crossing',
    'pieces[1].corners[0]',
  ],
  [
    'a corner drawn twice',
    'pieces[0].corners[1]',
    { xIn: 0, yIn: 0 },
    'outline-degenerate',
    'pieces[0].corners[1]',
  ],
  [
    'an outline 1/2 in wide',
    'pieces[1].corners',
    rectangle(0, 43, 60, 43.5),
    'outline-degenerate',
    'pieces[1].corners',
  ],
  [
    'a radius of 25 in on a 24 in end',
    'pieces[0].corners[1].radiusIn',
    25,
    'radius-too-large',
    'pieces[0].corners[1].radiusIn',
  ],
  [
    'three edges for four corners',
    'pieces[1].edges',
    Array(3).fill({ kind: 'wall' }),
    'edge-count',
    'pieces[1].edges',
  ],
  [
    'an edge against a piece that is not there',
    'pieces[0].edges[3].toPieceId',
    'gone',
    'butted-to-nothing',
    'pieces[0].edges[3].toPieceId',
  ],
  [
    'an edge against its own piece',
    'pieces[0].edges[3].toPieceId',
    'counter',
    'butted-to-nothing',
    'pieces[0].edges[3].toPieceId',
  ],
  [
    'an own profile without points',
    'pieces[0].edges[0].profile.points',
    undefined,
    'profile-points',
    'pieces[0].edges[0].profile.points',
  ],
  [
    'points on an eased profile',
    'pieces[0].edges[0].profile.kind',
    'eased',
    'profile-points',
    'pieces[0].edges[0].profile.points',
  ],
  [
    'a profile point 3 in up a 2 in slab',
    'pieces[0].edges[0].profile.points[1].upIn',
    3,
    'profile-too-tall',
    'pieces[0].edges[0].profile.points[1].upIn',
  ],
  [
    'a chamfer of 4 in on a 2 in slab',
    'pieces[0].edges[0].profile',
    { kind: 'chamfer', sizeIn: 4 },
    'profile-too-tall',
    'pieces[0].edges[0].profile.sizeIn',
  ],
  [
    'a cutout half outside',
    'pieces[0].cutouts[1].shape.centre.yIn',
    24,
    'cutout-outside',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'a cutout far away',
    'pieces[0].cutouts[1].shape.centre.xIn',
    500,
    'cutout-outside',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'a cutout 15/16 in from the edge',
    'pieces[0].cutouts[1].shape.centre.yIn',
    22.3125,
    'cutout-near-edge',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'a cutout that takes the whole piece in',
    'pieces[0].cutouts[1].shape',
    { kind: 'rectangle', centre: { xIn: 48, yIn: 12 }, widthIn: 200, depthIn: 100 },
    'cutout-outside',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'two cutouts that overlap',
    'pieces[0].cutouts[1].shape.centre.yIn',
    19,
    'cutouts-overlap',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'a cutout within another',
    'pieces[0].cutouts[1].shape.centre.yIn',
    12,
    'cutouts-overlap',
    'pieces[0].cutouts[1].shape',
  ],
  [
    'a corner radius of 8 in on a 14 in cutout',
    'pieces[0].cutouts[0].shape.radiusIn',
    8,
    'radius-too-large',
    'pieces[0].cutouts[0].shape.radiusIn',
  ],
  [
    'sink data on a hob',
    'pieces[0].cutouts[0].purpose',
    'hob',
    'sink-data-astray',
    'pieces[0].cutouts[0].sink',
  ],
  [
    'a joint that ends beyond the edge',
    'pieces[0].joints[0].to.yIn',
    30,
    'joint-outside',
    'pieces[0].joints[0].to',
  ],
  ['a joint without length', 'pieces[0].joints[0].to.yIn', 0, 'joint-outside', 'pieces[0].joints[0].to'],
  [
    'mesh below a 2 in slab',
    'pieces[0].reinforcement[0].depthIn',
    2.5,
    'steel-outside-depth',
    'pieces[0].reinforcement[0].depthIn',
  ],
  [
    'mesh of 0.1 in wire at 0.09 in',
    'pieces[0].reinforcement[0].depthIn',
    0.09,
    'steel-outside-depth',
    'pieces[0].reinforcement[0].depthIn',
  ],
  [
    'a 3/8 in bar with its centre 1/8 in from the soffit',
    'pieces[0].reinforcement[1].depthIn',
    1.875,
    'steel-outside-depth',
    'pieces[0].reinforcement[1].depthIn',
  ],
  [
    'a 3/8 in bar of 0.2 in2',
    'pieces[0].reinforcement[1].areaIn2',
    0.2,
    'bar-area-wrong',
    'pieces[0].reinforcement[1].areaIn2',
  ],
  [
    'bars beyond the outline',
    'pieces[0].reinforcement[1].corners[2].xIn',
    110,
    'bars-outside-slab',
    'pieces[0].reinforcement[1].corners',
  ],
  [
    'a bar field that crosses itself',
    'pieces[0].reinforcement[1].corners',
    BOW_TIE,
    'bars-outside-slab',
    'pieces[0].reinforcement[1].corners',
  ],
  [
    'a pier beside the slab',
    'pieces[0].supports[0].footprint.centre.yIn',
    60,
    'support-outside',
    'pieces[0].supports[0]',
  ],
  [
    'a leg under the sink opening',
    'pieces[0].supports[2].centre.yIn',
    12,
    'support-in-opening',
    'pieces[0].supports[2]',
  ],
  [
    'a wall without length',
    'pieces[1].supports[0].to.xIn',
    0,
    'support-no-length',
    'pieces[1].supports[0].to',
  ],
  [
    'one bracket arm of two beside the ledge',
    'pieces[1].supports[1].roots[1].xIn',
    90,
    'support-outside',
    'pieces[1].supports[1].roots[1]',
  ],
  [
    'a bed that crosses itself',
    'pieces[0].supports[2]',
    { kind: 'full-bed', id: 'leg', corners: BOW_TIE },
    'support-outside',
    'pieces[0].supports[2].corners',
  ],
  [
    'a low stiffness above the high one',
    'pieces[0].supports[2].stiffness.low',
    5000,
    'bounds-reversed',
    'pieces[0].supports[2].stiffness',
  ],
  [
    'a tie softer at best than at worst',
    'pieces[0].supports[2].hold',
    { kind: 'tied', stiffness: { low: 9, high: 8 } },
    'bounds-reversed',
    'pieces[0].supports[2].hold.stiffness',
  ],
  [
    'feet longer at shortest than at longest',
    'pieces[0].supports[2]',
    {
      kind: 'cabinet',
      id: 'leg',
      corner: { xIn: 20, yIn: 0 },
      widthIn: 30,
      depthIn: 24,
      feet: { count: 4, shortestIn: 6, longestIn: 4, ratingLb: 200 },
    },
    'bounds-reversed',
    'pieces[0].supports[2].feet',
  ],
  [
    'five fasteners in a row of four in all',
    'pieces[1].supports[1].fixing.topCount',
    5,
    'fixing-count',
    'pieces[1].supports[1].fixing.topCount',
  ],
  [
    'a top row above its heel',
    'pieces[1].supports[1].fixing.leverIn',
    9,
    'fixing-count',
    'pieces[1].supports[1].fixing.leverIn',
  ],
  [
    'a tube wall of 0.8 in on a 1.5 in tube',
    'pieces[1].supports[1].arm.wallIn',
    0.8,
    'wall-too-thick',
    'pieces[1].supports[1].arm.wallIn',
  ],
  [
    'equipment over the edge',
    'pieces[0].loads.fixed[0].centre.xIn',
    2,
    'load-outside',
    'pieces[0].loads.fixed[0]',
  ],
  [
    'equipment over the sink opening',
    'pieces[0].loads.fixed[0].centre.xIn',
    48,
    'load-outside',
    'pieces[0].loads.fixed[0]',
  ],
  ['a mix that is not there', 'pieces[1].mixId', 'gone', 'mix-unknown', 'pieces[1].mixId'],
  ['two pieces of one id', 'pieces[1].id', 'counter', 'id-repeated', 'pieces[1].id'],
  [
    'two supports of one id in two pieces',
    'pieces[1].supports[0].id',
    'leg',
    'id-repeated',
    'pieces[1].supports[0].id',
  ],
  [
    'a cutout and a joint of one id',
    'pieces[0].joints[0].id',
    'tap',
    'id-repeated',
    'pieces[0].cutouts[1].id',
  ],
  [
    'two mixes of one id',
    'mixes',
    [
      { id: 'mix', name: 'A' },
      { id: 'mix', name: 'B' },
    ],
    'id-repeated',
    'mixes[1].id',
  ],
  ['most water below least', 'mixes[0].bag.waterMostLb', 5, 'water-reversed', 'mixes[0].bag.waterLeastLb'],
  ['a bag of 80 lb that yields 6 ft3', 'mixes[0].bag.yieldFt3', 6, 'yield-unlikely', 'mixes[0].bag.yieldFt3'],
  ['30 February', 'site.calendar.startsOn', '2027-02-30', 'date-impossible', 'site.calendar.startsOn'],
  ['29 February 2027', 'site.calendar.startsOn', '2027-02-29', 'date-impossible', 'site.calendar.startsOn'],
  ['month 13', 'site.calendar.startsOn', '2027-13-01', 'date-impossible', 'site.calendar.startsOn'],
  ['a pour after the hand-over', 'pieces[1].pourDay', 50, 'hand-over-too-early', 'site.calendar.handOverDay'],
  [
    'a pier gone before it comes',
    'pieces[0].supports[1].lastDay',
    1,
    'days-reversed',
    'pieces[0].supports[1].lastDay',
  ],
  [
    'falsework gone before it comes',
    'falsework.sections[0].firstDay',
    25,
    'days-reversed',
    'falsework.sections[0].lastDay',
  ],
  [
    'falsework under no piece',
    'falsework.sections[0].pieceId',
    'gone',
    'reference-unknown',
    'falsework.sections[0].pieceId',
  ],
  [
    'falsework beside its piece',
    'falsework.sections[0].pieceId',
    'ledge',
    'section-astray',
    'falsework.sections[0].corners',
  ],
  [
    'falsework that crosses itself',
    'falsework.sections[0].corners',
    BOW_TIE,
    'section-astray',
    'falsework.sections[0].corners',
  ],
  [
    'a swap of a section that is not there',
    'swap.steps[0].sectionsOut[0]',
    'gone',
    'reference-unknown',
    'swap.steps[0].sectionsOut[0]',
  ],
  [
    'a swap to a support that is not there',
    'swap.steps[0].supportsIn[0]',
    'gone',
    'reference-unknown',
    'swap.steps[0].supportsIn[0]',
  ],
  [
    'a swap from a support that is not there',
    'swap.steps[0].supportsOut[0]',
    'gone',
    'reference-unknown',
    'swap.steps[0].supportsOut[0]',
  ],
];

describe('what does not fit together is named by its path', () => {
  test.each(CASES)('%s', (_, at, value, code, path) => {
    const problems = problemsOf(withValue(smallJob(), at, value));
    expect(problems.map((problem) => [problem.code, problem.path])).toContainEqual([code, path]);
    for (const { sentence, pieceId, path: place } of problems) {
      expect(sentence).toMatch(/^[A-Z"0-9].*\.$/);
      expect(pieceId !== undefined).toBe(place.startsWith('pieces['));
    }
  });

  test('every code of the cross-checks has a case above', () => {
    const all: { readonly [K in CrossCheckCode]: true } = {
      'bar-area-wrong': true,
      'bars-outside-slab': true,
      'bounds-reversed': true,
      'butted-to-nothing': true,
      'cutout-near-edge': true,
      'cutout-outside': true,
      'cutouts-overlap': true,
      'date-impossible': true,
      'days-reversed': true,
      'edge-count': true,
      'fixing-count': true,
      'hand-over-too-early': true,
      'id-repeated': true,
      'joint-outside': true,
      'load-outside': true,
      'mix-unknown': true,
      'outline-crossing': true,
      'outline-degenerate': true,
      'profile-points': true,
      'profile-too-tall': true,
      'radius-too-large': true,
      'reference-unknown': true,
      'section-astray': true,
      'sink-data-astray': true,
      'steel-outside-depth': true,
      'support-in-opening': true,
      'support-no-length': true,
      'support-outside': true,
      'wall-too-thick': true,
      'water-reversed': true,
      'yield-unlikely': true,
    };
    expect([...new Set(CASES.map(([, , , code]) => code))].sort()).toEqual(Object.keys(all).sort());
  });
});

describe('lengths in a sentence are in the units in which the job is shown', () => {
  const cases: [string, string, unknown, string, string][] = [
    [
      'a radius of 25 in on a 24 in end',
      'pieces[0].corners[1].radiusIn',
      25,
      'It is 25 in; 24 in would fit.',
      'It is 635 mm; 609.6 mm would fit.',
    ],
    [
      'a cutout 15/16 in from the edge',
      'pieces[0].cutouts[1].shape.centre.yIn',
      22.3125,
      'leaves 15/16 in of concrete to the edge; leave at least 1 in.',
      'leaves 23.81 mm of concrete to the edge; leave at least 25.4 mm.',
    ],
    [
      'a chamfer of 4 in on a 2 in slab',
      'pieces[0].edges[0].profile',
      { kind: 'chamfer', sizeIn: 4 },
      "the profile is 4 in high, more than the slab's 2 in.",
      "the profile is 101.6 mm high, more than the slab's 50.8 mm.",
    ],
    [
      'a bag of 8 lb of water at least and 7 lb at most',
      'mixes[0].bag.waterLeastLb',
      8,
      'takes at least 8 lb of water but at most 7 lb.',
      'takes at least 3.629 kg of water but at most 3.175 kg.',
    ],
  ];
  test.each(cases)('%s', (_, at, value, imperial, metric) => {
    const sentences = (shownIn: string) =>
      problemsOf(withValue(withValue(smallJob(), at, value), 'shownIn', shownIn)).map(
        ({ sentence }) => sentence,
      );
    expect(sentences('imperial')).toContainEqual(expect.stringContaining(imperial));
    expect(sentences('metric')).toContainEqual(expect.stringContaining(metric));
  });
});

describe('what just fits is taken', () => {
  const cases: [string, string, unknown][] = [
    ['a cutout exactly 1 in from the edge', 'pieces[0].cutouts[1].shape.centre.yIn', 22.25],
    ['a cutout exactly 1 in from another', 'pieces[0].cutouts[1].shape.centre.yIn', 20.75],
    ['a radius of 16 in on a 16 in end', 'pieces[1].corners[1].radiusIn', 16],
    ['29 February 2028', 'site.calendar.startsOn', '2028-02-29'],
    ['mesh of 0.1 in wire at 0.1 in', 'pieces[0].reinforcement[0].depthIn', 0.1],
    ['a bar that touches the soffit', 'pieces[0].reinforcement[1].depthIn', 1.8125],
    ['a pier half under the slab', 'pieces[0].supports[0].footprint.centre.yIn', 28],
    ['a support for one day', 'pieces[0].supports[1].lastDay', 2],
    ['a joint end 1/16 in beyond the edge', 'pieces[0].joints[0].to.yIn', 24.0625],
  ];
  test.each(cases)('%s', (_, at, value) => {
    expect(problemsOf(withValue(smallJob(), at, value))).toEqual([]);
  });

  test('a strip of a piece 60 x 1.02 in, 1.003 in wide on the whole', () => {
    const narrow = withValue(smallJob(), 'pieces[1].corners', rectangle(0, 43, 60, 44.02));
    expect(problemsOf(withValue(narrow, 'pieces[1].supports', []))).toEqual([]);
  });
});
