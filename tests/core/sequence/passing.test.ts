import { describe, expect, test } from 'vitest';
import type { CabinetSupport, Job, JobDraft } from '../../../src-core/job';
import type { SwapFinding } from '../../../src-core/sequence';
import { cabinetRoom, checkSwap, swapFindings } from '../../../src-core/sequence';
import { partsInTheWay } from '../../../src-core/sequence/sink-passage';
import { rectangle } from '../../support/pieces';
import { counterJob, lateCabinet, prop, SWAP_DAY, sectionUnder, wallLedger } from './swap-jobs';

const FEET = { count: 4, shortestIn: 3.5, longestIn: 6, ratingLb: 300 };
type PieceDraft = JobDraft['pieces'][number];

/** A 60 in counter, top 36-1/2 in up and 2 in thick, on two cabinets; the soffit is 34-1/2 in over the floor. */
function pair(
  cabinet: Record<string, unknown> = {},
  piece: Partial<PieceDraft> = {},
  more: Partial<JobDraft> = {},
): Job {
  return counterJob(
    {
      corners: rectangle(60, 25.5),
      topElevationIn: 36.5,
      supports: [
        lateCabinet('left', { xIn: 0, yIn: 1.5 }, 30, { feet: FEET, ...cabinet }),
        lateCabinet('right', { xIn: 30, yIn: 1.5 }, 30, { feet: FEET }),
        prop('leg-left', 15, 4),
        prop('leg-right', 45, 4),
        wallLedger('ledger', [0, 24.75], [60, 24.75]),
      ],
      ...piece,
    },
    {
      swap: {
        steps: [
          { id: 'first', day: SWAP_DAY, supportsOut: ['leg-left'], supportsIn: ['left'] },
          { id: 'second', day: SWAP_DAY, supportsOut: ['leg-right'], supportsIn: ['right'] },
          { id: 'last', day: SWAP_DAY, supportsOut: ['ledger'] },
        ],
      },
      ...more,
    },
  );
}

function leftOf(job: Job): CabinetSupport {
  return job.pieces[0]!.supports[0] as CabinetSupport;
}

function findingsOf(job: Job): SwapFinding[] {
  return swapFindings(job, checkSwap(job, 'counter', { meshSizeIn: 3 }));
}

function found(job: Job, id: SwapFinding['id'], aboutId?: string): SwapFinding[] {
  return findingsOf(job).filter((one) => one.id === id && (aboutId === undefined || one.aboutId === aboutId));
}

describe('the height of a cabinet against the soffit', () => {
  const room = (job: Job) => cabinetRoom(job, job.pieces[0]!, leftOf(job));

  // 34-1/2 in on feet of 4 in, wound in to 3-1/2 in: 34 in, 1/2 in under the soffit; wound out to 6 in: 36-1/2 in.
  test('a 34-1/2 in cabinet on 3-1/2 to 6 in feet has 1/2 in to slip in and reaches with its feet at 4 in', () => {
    const found = room(pair());
    expect(found).toMatchObject({
      soffitLeastIn: 34.5,
      lowestIn: 34,
      highestIn: 36.5,
      roomIn: 0.5,
      shortIn: 0,
    });
    expect(found.feetIn).toEqual({ least: 4, most: 4 });
  });

  test('a 1/2 in backing board that stays takes the room away', () => {
    const job = pair({ backingBoardIn: 0.5 });
    expect(room(job).roomIn).toBe(0);
    expect(found(job, 'cabinet-height', 'left')[0]).toMatchObject({ level: 'change' });
    expect(found(job, 'cabinet-height', 'right')[0]).toMatchObject({ level: 'holds' });
  });

  test('a floor that falls 3/8 in to the left gives room, and the feet come out by as much', () => {
    const readings = [
      { id: 'a', xIn: 0, yIn: 0, valueIn: -0.375 },
      { id: 'b', xIn: 60, yIn: 0, valueIn: 0 },
      { id: 'c', xIn: 0, yIn: 26, valueIn: -0.375 },
      { id: 'd', xIn: 60, yIn: 26, valueIn: 0 },
    ];
    const { roomIn, feetIn } = room(pair({}, {}, { site: { levels: { readings } } }));
    // under the left cabinet the floor lies 3/8 to 3/16 in below its highest reading
    expect(roomIn).toBeCloseTo(0.5 + 0.1875, 6);
    expect(feetIn!.least).toBeCloseTo(4.1875, 6);
    expect(feetIn!.most).toBeCloseTo(4.375, 6);
  });

  test('feet that end 1 in short are named with what is missing', () => {
    const job = pair({ heightIn: 31.5 });
    expect(room(job).shortIn).toBeCloseTo(1, 9);
    const [finding] = found(job, 'cabinet-height', 'left');
    expect(finding!.level).toBe('change');
    expect(finding!.words).toContain('stays 1 in short');
  });

  test('a cabinet without feet is packed up 1/2 in, but not 1 in', () => {
    const packed = found(pair({ feet: null, heightIn: 34 }), 'cabinet-height', 'left')[0]!;
    expect(packed).toMatchObject({ level: 'holds' });
    expect(packed.words).toContain('pack it up 1/2 in');
    expect(found(pair({ feet: null, heightIn: 33.5 }), 'cabinet-height', 'left')[0]!.level).toBe('change');
  });

  test('a foot over its rating is told by the load check', () => {
    expect(found(pair(), 'feet-rating', 'left')[0]).toMatchObject({ level: 'holds' });
    const weak = found(pair({ feet: { ...FEET, ratingLb: 20 } }), 'feet-rating', 'left')[0]!;
    expect(weak.level).toBe('change');
    expect(weak.words).toContain('rated for');
  });
});

describe('a sink bowl over a cabinet', () => {
  const sink = (
    mounting: 'dropped-in' | 'under-rim' | 'cast-over',
    carriedBySlab = true,
  ): Partial<PieceDraft> => ({
    cutouts: [
      {
        id: 'sink',
        purpose: 'sink',
        shape: { kind: 'rectangle', centre: { xIn: 15, yIn: 13 }, widthIn: 20, depthIn: 14 },
        sink: { mounting, bowlDepthIn: 9, carriedBySlab },
      },
    ],
  });
  const passage = (job: Job) => found(job, 'sink-passage')[0]!;

  test('cast over needs the back off and a sub-top off; a side or the front only where it reaches over them', () => {
    const cabinet = leftOf(pair({ subTop: true }));
    const opening = (fromX: number, toX: number, fromY: number) => [
      { xIn: fromX, yIn: fromY },
      { xIn: toX, yIn: fromY },
      { xIn: toX, yIn: 20 },
      { xIn: fromX, yIn: 20 },
    ];
    expect(partsInTheWay(cabinet, opening(5, 25, 6))).toEqual(['back', 'sub-top']);
    expect(partsInTheWay({ ...cabinet, subTop: false }, opening(0.5, 25, 6))).toEqual(['back', 'left-side']);
    expect(partsInTheWay(cabinet, opening(5, 29.5, 2))).toEqual(['back', 'sub-top', 'right-side', 'front']);
  });

  test('passes where the back comes off and goes back after, and not where it is fixed', () => {
    const loose = passage(pair({ removableParts: ['back'] }, sink('cast-over')));
    expect(loose.level).toBe('holds');
    expect(loose.words).toContain('take its back off to pass the bowl, and put it back after');
    const fixed = passage(pair({}, sink('cast-over')));
    expect(fixed.level).toBe('change');
    expect(fixed.words).toContain('its back does not come off');
  });

  test('dropped in, or hung from its cabinet, goes in after the cabinet', () => {
    expect(passage(pair({}, sink('dropped-in')))).toMatchObject({ level: 'holds', aboutId: 'left' });
    expect(passage(pair({}, sink('dropped-in'))).words).toContain('drops in from above');
    expect(passage(pair({}, sink('under-rim', false))).words).toContain('Hang "sink" after left is in');
    expect(passage(pair({}, sink('under-rim', true))).level).toBe('change');
  });

  test('concerns only the cabinet below it', () => {
    expect(found(pair({}, sink('cast-over')), 'sink-passage', 'right')).toEqual([]);
  });
});

describe('ways in and out', () => {
  test('are free where each bay is cleared first', () => {
    const ways = found(pair(), 'way-in');
    expect(ways.map(({ aboutId, level }) => [aboutId, level])).toEqual([
      ['left', 'holds'],
      ['right', 'holds'],
    ]);
  });

  test('a leg left where the cabinet goes, and a section over it, are named as in the way', () => {
    const job = pair(
      {},
      {},
      {
        falsework: { sections: [sectionUnder('deck', [0, 0, 30, 25.5])] },
        swap: {
          steps: [
            { id: 'first', day: SWAP_DAY, supportsIn: ['left'] },
            {
              id: 'second',
              day: SWAP_DAY,
              supportsOut: ['leg-left', 'leg-right'],
              supportsIn: ['right'],
              sectionsOut: ['deck'],
            },
          ],
        },
      },
    );
    const [left] = found(job, 'way-in', 'left');
    expect(left!.level).toBe('change');
    expect(left!.words).toContain('leg-left and section deck are in the way');
  });

  test('a section under a cabinet that is already in place cannot come out past it', () => {
    const job = pair(
      {},
      {},
      {
        falsework: { sections: [sectionUnder('deck', [20, 0, 60, 25.5])] },
        swap: {
          steps: [
            { id: 'first', day: SWAP_DAY, supportsOut: ['leg-left'], supportsIn: ['left'] },
            {
              id: 'second',
              day: SWAP_DAY,
              supportsOut: ['leg-right'],
              supportsIn: ['right'],
              sectionsOut: ['deck'],
            },
          ],
        },
      },
    );
    const [blocked] = found(job, 'section-way-out');
    expect(blocked).toMatchObject({ aboutId: 'deck', level: 'change', stepId: 'second' });
    expect(blocked!.words).toContain('left is already in place');
  });

  test('a leg that stays when its section goes is pointed out', () => {
    const job = pair(
      {},
      {},
      {
        falsework: { sections: [sectionUnder('deck', [30, 0, 60, 25.5])] },
        swap: {
          steps: [
            {
              id: 'first',
              day: SWAP_DAY,
              supportsOut: ['leg-left'],
              supportsIn: ['left'],
              sectionsOut: ['deck'],
            },
          ],
        },
      },
    );
    expect(found(job, 'prop-left-behind')[0]).toMatchObject({ aboutId: 'leg-right', level: 'holds' });
  });

  test('a cabinet set on day 20 that is drawn from day 30 on is told, since the check of a day goes by its own days', () => {
    const job = pair(
      {},
      {},
      {
        swap: { steps: [{ id: 'first', day: 20, supportsOut: ['leg-left'], supportsIn: ['left'] }] },
      },
    );
    const told = found(job, 'days-disagree');
    expect(told.map(({ aboutId }) => aboutId)).toEqual(['left', 'leg-left']);
    expect(told[0]!.words).toContain('comes in on day 20 but is drawn as standing from day 30');
  });

  test('every swap ends with a word on covering the new surface', () => {
    expect(findingsOf(pair()).at(-1)).toMatchObject({ id: 'protection', level: 'holds' });
  });
});
