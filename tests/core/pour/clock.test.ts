import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Casting, CrewSize } from '../../../src-core/pour';
import {
  batchJoints,
  batchTimes,
  leastCrew,
  leastSlackMinutes,
  paceOf,
  paceWith,
  pourOrder,
  pourPlan,
} from '../../../src-core/pour';
import { mixOf, slabJob } from './pour-jobs';

const paceFor = (crew: CrewSize, placingFt3AnHour = 10, minutesABatch = 8) =>
  paceOf({ ...crew, placingFt3AnHour, minutesABatch });

describe('the clock of two batches, by hand', () => {
  // 60 x 24 x 2 in: 1.6667 ft3. Batches of 2 and 1 bags of .6 ft3; one of two people places 10 ft3 an hour.
  // Batch 1: water 0, ready 8, 1.2 ft3 placed in 7.2 min by 15.2. Batch 2: water 8, ready 16, .46667 ft3 in 2.8 min by 18.8.
  // Batch 2 meets concrete of batch 1 at 16 min, 29 min before its 45 are over.
  const { clock, batches } = pourPlan(slabJob()).pours[0]!;

  test('water at 0 and 8, ready at 8 and 16, placed by 15.2 and 18.8 min', () => {
    const times = batches.map(({ waterMinutes, readyMinutes, placedMinutes }) => [
      waterMinutes,
      readyMinutes,
      placedMinutes,
    ]);
    const wanted = [
      [0, 8, 15.2],
      [8, 16, 18.8],
    ];
    times.flat().forEach((time, k) => {
      expect(time).toBeCloseTo(wanted.flat()[k]!, 9);
    });
  });

  test('one joint, 72 % of the way along, 16 min old, with 29 min to spare', () => {
    expect(clock!.joints).toHaveLength(1);
    const [joint] = clock!.joints;
    expect(joint).toMatchObject({ pieceId: 'piece', copy: 1, batch: 2 });
    expect(joint!.fullRatio).toBeCloseTo(0.72, 9);
    expect(joint!.gapMinutes).toBeCloseTo(16, 9);
    expect(joint!.slackMinutes).toBeCloseTo(29, 9);
    expect(clock!.leastSlackMinutes).toBeCloseTo(29, 9);
  });

  test('4 and 2 buckets of at most .3342 ft3, from the left to the right along the middle', () => {
    // Half a 5 gal bucket: 577.5 in3 = .33420 ft3. Strips of .3 ft3 are 10.8 in long, of .23333 ft3 8.4 in.
    const { buckets } = clock!;
    expect(buckets.map(({ batch, number }) => [batch, number])).toEqual([
      [1, 1],
      [1, 2],
      [1, 3],
      [1, 4],
      [2, 1],
      [2, 2],
    ]);
    const places = [5.4, 16.2, 27, 37.8, 47.4, 55.8];
    const minutes = [8, 9.8, 11.6, 13.4, 16, 17.4];
    buckets.forEach(({ at, fromMinutes, volumeFt3, weightLb }, k) => {
      expect(at.xIn).toBeCloseTo(places[k]!, 6);
      expect(at.yIn).toBeCloseTo(12, 6);
      expect(fromMinutes).toBeCloseTo(minutes[k]!, 9);
      expect(weightLb).toBeCloseTo(150 * volumeFt3, 9);
    });
  });
});

describe('round the corner of an L', () => {
  // Legs 24 in wide and 2 in thick: 48 in along the front with the corner, 1152 in2, and 48 in more toward the back.
  const corners = [
    { xIn: 0, yIn: 0 },
    { xIn: 48, yIn: 0 },
    { xIn: 48, yIn: 24 },
    { xIn: 24, yIn: 24 },
    { xIn: 24, yIn: 72 },
    { xIn: 0, yIn: 72 },
  ];
  const square = { kind: 'free', profile: { kind: 'square' } } as const;
  const { clock } = pourPlan(
    slabJob({ crew: { mixerBags: 1 } }, { corners, edges: corners.map(() => square) }),
  ).pours[0]!;

  test('the second leg meets the oldest concrete along the rail, 16.8 min old, not the last of it', () => {
    // The first leg is half of 2.6667 ft3, and the latter half of it lies along the rail: from .6667 to 1.3333 ft3.
    // Batches of .6 ft3 get water every 8 min: batch 2 from .6 on at 8 min, batch 3 from 1.2 on, ready at 24.
    // The turn comes .1333 ft3 or .8 min into batch 3: 24.8 - 8 = 16.8 min.
    expect(clock!.order[0]!.turns).toHaveLength(1);
    const [turn] = clock!.order[0]!.turns;
    expect(turn!.atRatio).toBeCloseTo(0.5, 9);
    expect(turn!.againstRatio).toBeCloseTo(0.25, 9);
    const joint = clock!.joints.find(({ fullRatio }) => fullRatio === turn!.atRatio);
    expect(joint).toMatchObject({ batch: 3 });
    expect(joint!.gapMinutes).toBeCloseTo(16.8, 6);
    expect(joint!.slackMinutes).toBeCloseTo(28.2, 6);
    expect(clock!.leastSlackMinutes).toBeCloseTo(28.2, 6);
  });
});

describe('crews', () => {
  test('two mixers start 4 min apart, so that batches of no volume are ready every 4 min', () => {
    const times = batchTimes([0, 0, 0], paceFor({ people: 3, mixers: 2 }));
    expect(times.map(({ readyMinutes }) => readyMinutes)).toEqual([8, 12, 16]);
  });

  test('no batch is mixed before it can be placed: 2 ft3 at 10 an hour hold the next up to 12 min', () => {
    // Placed 8 to 20; the next gets its water at 20 - 8 = 12 and is ready as the first is down.
    expect(batchTimes([2, 1], paceFor({ people: 3, mixers: 2 }))[1]).toMatchObject({
      waterMinutes: 12,
      readyMinutes: 20,
    });
  });

  test('somebody alone mixes and places in turn: 1 ft3 is 8 + 6 min', () => {
    const times = batchTimes([1, 1], paceFor({ people: 1, mixers: 2 }));
    expect(times.map(({ waterMinutes }) => waterMinutes)).toEqual([0, 14]);
  });

  test('of four people two run two mixers and two place; of three with three mixers one is left to place', () => {
    expect(paceFor({ people: 4, mixers: 2 })).toMatchObject({ mixers: 2, placers: 2 });
    expect(paceFor({ people: 3, mixers: 3 })).toMatchObject({ mixers: 2, placers: 1 });
  });

  test('a crew with twice the placers places twice as fast', () => {
    const pace = paceFor({ people: 2, mixers: 1 });
    expect(paceWith(pace, { people: 4, mixers: 2 }).placingFt3AnHour).toBe(20);
  });
});

describe('a mixer that is too slow', () => {
  const slow = (crew: CrewSize, minutesABatch = 30) =>
    pourPlan(slabJob({ crew: { ...crew, minutesABatch } })).pours[0]!;

  test('30 min a batch makes a joint of 60 min, 15 too late, and two mixers of three people cure it', () => {
    const one = slow({ people: 3, mixers: 1 });
    const cold = one.findings.find(({ kind }) => kind === 'cold-joint');
    expect(cold).toMatchObject({ level: 'attention', trace: { pieceId: 'piece', part: { kind: 'piece' } } });
    expect(cold!.words).toContain('concrete that is 60 minutes old, 15 minutes too late');
    // Two mixers: water at 0 and 15, ready 30 and 45: exactly the working time.
    const two = slow({ people: 3, mixers: 2 });
    expect(two.clock!.joints[0]!.gapMinutes).toBeCloseTo(45, 9);
    expect(two.findings.map(({ kind }) => kind)).not.toContain('cold-joint');
    expect(two.findings.map(({ kind }) => kind)).toContain('little-slack');
  });

  test('20 min a batch leaves 5 min to spare, and the least crew with ten is three people with two mixers', () => {
    // 20 + 20 = 40 of 45 with one mixer; 10 + 20 = 30 with two.
    const one = slow({ people: 2, mixers: 1 }, 20);
    expect(one.clock!.leastSlackMinutes).toBeCloseTo(5, 9);
    expect(one.clock!.leastCrew).toMatchObject({ people: 3, mixers: 2 });
    expect(one.clock!.leastCrew!.slackMinutes).toBeCloseTo(15, 9);
    expect(slow({ people: 3, mixers: 2 }, 20).findings.map(({ kind }) => kind)).not.toContain('little-slack');
  });

  test('50 min a batch is beyond any crew, and the words name retarder and an engineer', () => {
    const { clock, findings } = slow({ people: 2, mixers: 1 }, 50);
    expect(clock!.leastCrew).toBeNull();
    const { words } = findings.find(({ kind }) => kind === 'batch-stiffens')!;
    expect(words).toMatch(
      /No crew of a usual size.*set retarder.*construction joint where an engineer puts it/,
    );
  });

  test('at 30 deg C a working time of 45 min counts 25.6, and at 10 no more than 45', () => {
    const at = (concreteC: number) =>
      pourPlan(slabJob({ site: { weather: { concreteC } } })).pours[0]!.clock!.workingMinutes;
    // Equivalent age factor of ASTM C1074 at 30 deg C, 20 reference: 1.755.
    expect(Math.abs(at(30) / (45 / 1.755) - 1)).toBeLessThan(0.003);
    expect(at(10)).toBe(45);
    expect(at(20)).toBe(45);
  });
});

describe('order of the forms', () => {
  const castings: readonly Casting[] = [
    { pieceId: 'small', copy: 1, volumeFt3: 1, turns: [] },
    { pieceId: 'large', copy: 1, volumeFt3: 2, turns: [] },
  ];

  test('a batch that fills the small form to the brim goes there first, so that no joint is left', () => {
    // Batches of 1 and 2 ft3: small first, the batches part between the forms; large first, they meet within it.
    // At 60 ft3 an hour a batch is down 10 min after its water at the latest, and the second meets the first at 16.
    const pace = paceFor({ people: 2, mixers: 1 }, 60);
    const times = batchTimes([1, 2], pace);
    const order = pourOrder(castings, [1, 2], times, 25);
    expect(order.map(({ pieceId }) => pieceId)).toEqual(['small', 'large']);
    expect(batchJoints(order, [1, 2], times, 25)).toEqual([]);
    expect(batchJoints([...order].reverse(), [1, 2], times, 25)).toHaveLength(1);
  });

  test('among equals the form that takes most comes first, and copies stay together', () => {
    const caps = [1, 2, 3].map((copy) => ({ pieceId: 'cap', copy, volumeFt3: 0.3, turns: [] }));
    const placed = [1.5, 1.5];
    const times = batchTimes(placed, paceFor({ people: 2, mixers: 1 }));
    const order = pourOrder([...caps, castings[1]!], placed, times, 45);
    expect(order.map(({ pieceId }) => pieceId)).toEqual(['large', 'cap', 'cap', 'cap']);
  });
});

describe('any pour', () => {
  const parts = fc.record({
    volumes: fc.array(fc.double({ min: 0.1, max: 8, noNaN: true }), { minLength: 1, maxLength: 5 }),
    batchFt3: fc.double({ min: 0.3, max: 3, noNaN: true }),
    people: fc.integer({ min: 1, max: 6 }),
    mixers: fc.integer({ min: 1, max: 4 }),
    minutesABatch: fc.double({ min: 0, max: 40, noNaN: true }),
    rate: fc.double({ min: 1, max: 60, noNaN: true }),
    working: fc.double({ min: 5, max: 120, noNaN: true }),
  });
  const set = (drawn: typeof parts extends fc.Arbitrary<infer Value> ? Value : never) => {
    const castings = drawn.volumes.map((volumeFt3, i) => ({
      pieceId: `p${i}`,
      copy: 1,
      volumeFt3,
      turns: [],
    }));
    const totalFt3 = drawn.volumes.reduce((sum, volume) => sum + volume, 0);
    const full = Math.floor(totalFt3 / drawn.batchFt3);
    const placed = [...Array.from({ length: full }, () => drawn.batchFt3), totalFt3 - full * drawn.batchFt3];
    const pace = paceFor(drawn, drawn.rate, drawn.minutesABatch);
    return { castings, placed, pace, times: batchTimes(placed, pace), working: drawn.working };
  };

  test('is placed in order, one batch at a time, and no mixer holds two batches', () => {
    fc.assert(
      fc.property(parts, (drawn) => {
        const { times, pace } = set(drawn);
        times.slice(1).forEach((time, k) => {
          expect(time.readyMinutes).toBeGreaterThanOrEqual(times[k]!.placedMinutes - 1e-6);
          const before = times[k + 1 - pace.mixers];
          if (before !== undefined)
            expect(time.waterMinutes).toBeGreaterThanOrEqual(before.readyMinutes - 1e-6);
        });
      }),
    );
  });

  test('goes in an order that spares no less than the order given, largest first or any other', () => {
    fc.assert(
      fc.property(parts, (drawn) => {
        const { castings, placed, times, working } = set(drawn);
        const slack = (order: readonly Casting[]) =>
          leastSlackMinutes(batchJoints(order, placed, times, working), times, working);
        const best = slack(pourOrder(castings, placed, times, working));
        for (const other of [castings, [...castings].reverse()])
          expect(best).toBeGreaterThanOrEqual(slack(other) - 1e-5);
      }),
    );
  });

  test('has ten minutes to spare with the crew that is said to serve', () => {
    fc.assert(
      fc.property(parts, (drawn) => {
        const { castings, placed, pace, working } = set(drawn);
        const crew = leastCrew(castings, placed, pace, working);
        if (crew === null) return;
        const times = batchTimes(placed, paceWith(pace, crew));
        const joints = batchJoints(castings, placed, times, working);
        expect(leastSlackMinutes(joints, times, working)).toBeGreaterThanOrEqual(10);
      }),
    );
  });
});

test('a slab poured first of ten is floated an hour after its water, while the last is still placed', () => {
  const { findings, clock } = pourPlan(
    slabJob({ mixes: [mixOf({}, { workingMinutes: 40 })] }, { copies: 10 }),
  ).pours[0]!;
  const firstFloat = clock!.finish.find(({ kind }) => kind === 'float')!;
  expect(firstFloat.fromMinutes).toBeLessThan(clock!.buckets.at(-1)!.toMinutes);
  expect(findings.map(({ kind }) => kind)).toContain('finish-while-placing');
});
