import { describe, expect, test } from 'vitest';
import { setTick } from '../../../src-core/edit';
import { tickIdOf } from '../../../src-core/pour';
import { bagFigures } from '../../../src-renderer/pour/bag-figures';
import { batchRows } from '../../../src-renderer/pour/batch-rows';
import { bucketRows } from '../../../src-renderer/pour/bucket-rows';
import { crewRows } from '../../../src-renderer/pour/crew-rows';
import { placedFindings } from '../../../src-renderer/pour/finding-rows';
import { finishRows } from '../../../src-renderer/pour/finish-rows';
import { batchesWords, headFigures, mixWords } from '../../../src-renderer/pour/head-words';
import { castingName, pieceNames, pourOfPiece, pourTitle } from '../../../src-renderer/pour/pour-choice';
import { screedRows } from '../../../src-renderer/pour/screed-rows';
import { ticksOf } from '../../../src-renderer/pour/ticks';
import { bandRows, weatherFacts } from '../../../src-renderer/pour/weather-rows';
import { mixOf, slabJob } from '../../core/pour/pour-jobs';
import { GALLEY, planned, SLAB } from './pour-plans';

const NONE: ReadonlySet<string> = new Set();
const AT_EIGHT = 480;

describe('the head of a pour', () => {
  // 60 * 24 * 2 / 1728 = 1.667 ft3; with a tenth of a batch of 1.2 ft3 kept back, 1.787 ft3; /.6 = 2.98 bags
  test('a slab of 1.67 cu ft is 1.79 cu ft to mix, out of 3 bags', () => {
    const [volume, bags] = headFigures(SLAB.pour, 'imperial');
    expect(volume).toMatchObject({ value: '1.79', unit: 'cu ft' });
    expect(bags).toMatchObject({ value: '3', unit: 'bags' });
  });

  // 1.787 ft3 * 28.3168 L = 50.6 L; NIST SP 811 B.8
  test('in a metric job it is 50.6 L', () => {
    expect(headFigures(SLAB.pour, 'metric')[0]).toMatchObject({ value: '50.6', unit: 'L' });
  });

  test.each([
    [[2, 2, 2], 'Mix 3 batches of 2 bags.'],
    [[2, 2, 1], 'Mix 3 batches: 2 of 2 bags, 1 of 1 bag.'],
    [[1], 'Mix 1 batch of 1 bag.'],
    [[], 'Nothing to mix.'],
  ])('batches of %j bags are put as %j', (sizes, words) => {
    expect(batchesWords(sizes.map((bags) => ({ bags })))).toBe(words);
  });

  test('a colour is named with its share of the cement', () => {
    expect(mixWords(GALLEY.pour)).toMatch(/, Slate grey at 3 % of the cement\.$/);
    expect(mixWords(SLAB.pour)).toBe('Countertop mix, no pigment.');
  });

  // 25 minutes to mix, and 45 of working time: the second batch meets concrete that is 50 minutes old
  test('a crew that is too slow is told by how much, rounded against it', () => {
    const { pour } = planned(slabJob({ crew: { minutesABatch: 25 } }));
    expect(headFigures(pour, 'imperial')[2]).toEqual({
      id: 'slack',
      label: 'Too late by',
      value: '5',
      unit: 'min',
      isWrong: true,
    });
  });
});

describe('which pour is shown', () => {
  test('it is the one that the selected piece is cast in, and the first for a piece of none', () => {
    expect(pourOfPiece(GALLEY.plan, 'gate-cap')?.day).toBe(3);
    expect(pourOfPiece(GALLEY.plan, 'not-there')?.day).toBe(0);
    expect(pourOfPiece({ ...GALLEY.plan, pours: [] }, 'gate-cap')).toBeNull();
  });

  test('pieces cast more than once say how often, and their castings are counted', () => {
    const caps = pourOfPiece(GALLEY.plan, 'gate-cap')!;
    expect(pieceNames(caps)).toBe('Gate-pier cap x 3');
    expect(castingName(caps, 'gate-cap', 2)).toBe('Gate-pier cap 2');
    expect(pourTitle(GALLEY.pour)).toBe('Day 0: Serving counter');
  });
});

describe('the batches to tick off', () => {
  const rows = batchRows(SLAB.pour, NONE, AT_EIGHT, 'imperial');

  test('their bags add up to the bags of the pour', () => {
    expect(rows.map(({ bags }) => bags)).toEqual(['2 bags', '1 bag']);
    expect(rows.reduce((sum, { bags }) => sum + Number.parseInt(bags, 10), 0)).toBe(SLAB.pour.bags!.bags);
  });

  // midway of 6 and 7.5 lb to a bag is 6.75 lb; 13.5 lb / 8.345 lb a gallon = 1.62 gal
  test('two bags take 13.5 lb of water, 1.62 gal', () => {
    expect(rows[0]!.amounts).toBe('13.5 lb (1.62 gal) of water');
  });

  // 1.2 ft3 at 10 ft3 an hour takes 7.2 minutes after 8 of mixing
  test('the first is ready at 08:08 and placed by 08:15', () => {
    expect(rows[0]!.times.map(({ time }) => time)).toEqual(['08:00', '08:08', '08:15']);
    expect(rows[0]!.times.map(({ minutes }) => minutes)).toEqual(['0 min', '8 min', '15 min']);
  });

  // buckets of 5 gal half full hold .334 ft3; 1.2 ft3 is four of them, the .467 ft3 left is two
  test('four buckets of the first and two of the second go to the slab', () => {
    expect(rows.map(({ places }) => places.map(({ buckets, name }) => `${buckets} to ${name}`))).toEqual([
      ['4 buckets to Piece'],
      ['2 buckets to Piece'],
    ]);
    expect(bucketRows(SLAB.pour, AT_EIGHT, 'imperial').map(({ number }) => number)).toEqual([
      ...['1.1', '1.2', '1.3', '1.4'],
      ...['2.1', '2.2'],
    ]);
  });

  // 1.8 ft3 in three bags, less 1.667 ft3 in the form
  test('what is left of the last is kept back, and no more is said of the first', () => {
    expect(rows.map(({ kept }) => kept)).toEqual(['', '0.133 cu ft is kept back to top up.']);
  });

  test('a tick in the job is a tick in its row alone, and is gone when it is taken away', () => {
    const [batch] = SLAB.pour.batches;
    const id = tickIdOf(batch!);
    const ticked = setTick.perform(SLAB.job, { id, done: true, words: 'batch 1' });
    if (!ticked.ok) throw new Error('the tick is refused');
    const done = batchRows(SLAB.pour, ticksOf(ticked.job), AT_EIGHT, 'imperial').map((row) => row.isDone);
    expect(done).toEqual([true, false]);
    const undone = setTick.perform(ticked.job, { id, done: false, words: 'batch 1' });
    expect(undone.ok && ticksOf(undone.job).size).toBe(0);
  });

  test('every item of the galley that can be ticked has a tick of its own', () => {
    const items = GALLEY.plan.pours.flatMap(({ batches, clock }) => [...batches, ...(clock?.finish ?? [])]);
    expect(items.length).toBeGreaterThan(60);
    expect(new Set(items.map(tickIdOf)).size).toBe(items.length);
  });
});

describe('water and pigment to a bag', () => {
  // 3 % of 20 lb of cement; 6.75 lb of water to 20 lb of cement
  test('the counter of the galley takes 6.75 lb of water and .6 lb of pigment', () => {
    expect(bagFigures(GALLEY.pour, 'imperial')).toEqual([
      { term: 'Water', value: '6.75 lb', words: '0.809 gal, 0.338 of the cement', isRefused: false },
      { term: 'Slate grey', value: '0.6 lb', words: '3 % of the cement', isRefused: false },
    ]);
  });

  test('water outside the range of the bag is refused, and a batch says so too', () => {
    const { pour } = planned(slabJob({ mixes: [mixOf({ waterLb: 12 })] }));
    expect(bagFigures(pour, 'imperial')[0]).toMatchObject({ value: 'Refused', isRefused: true });
    expect(batchRows(pour, NONE, AT_EIGHT, 'imperial')[0]!.amounts).toBe('water refused');
  });

  test('without a bag there is nothing to weigh, and nothing to tick off', () => {
    const { pour, plan } = planned(slabJob({ mixes: [mixOf(null)] }));
    expect(bagFigures(pour, 'imperial')).toEqual([]);
    expect(batchRows(pour, NONE, AT_EIGHT, 'imperial')).toEqual([]);
    expect(finishRows(pour, NONE, AT_EIGHT)).toEqual([]);
    expect(headFigures(pour, 'imperial').map(({ id }) => id)).toEqual(['volume']);
    expect(placedFindings(plan, pour).first[0]!.title).toBe('Attention: the bag is not known');
  });
});

describe('findings', () => {
  test('notes about rain and heavy bags stand beside their numbers, not at the head', () => {
    const placed = placedFindings(GALLEY.plan, GALLEY.pour);
    expect(placed.first).toEqual([]);
    expect(placed.weather.map(({ title }) => title)).toEqual(['Note: rain']);
    expect(placed.lifting.map(({ title }) => title)).toEqual(['Note: heavy bag']);
  });

  test('what is refused comes before what asks for attention, and each is shown once', () => {
    const { plan, pour } = planned(
      slabJob({
        mixes: [mixOf({ waterLb: 12 })],
        crew: { minutesABatch: 25, mixers: 2, bucketFill: 0.9 },
        site: { weather: { airC: 35, concreteC: 36, humidity: 0.2, windMph: 20 } },
      }),
    );
    const { first, weather, lifting } = placedFindings(plan, pour);
    expect(first.map(({ level }) => level)).toEqual([
      'refused',
      ...Array.from({ length: first.length - 2 }, () => 'attention'),
      'note',
    ]);
    expect(first.map(({ title }) => title)).toContain('Attention: cold joint');
    expect(first.map(({ title }) => title)).toContain('Attention: heavy bucket');
    const joint = first.find(({ title }) => title === 'Attention: cold joint');
    expect(joint?.piece).toEqual({ pieceId: 'piece', name: 'Piece' });
    expect(first.find(({ title }) => title === 'Attention: heavy bucket')?.piece).toBeNull();
    const all = [...first, ...weather, ...lifting].map(({ id }) => id);
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBe(plan.findings.length + pour.findings.length);
  });
});

describe('screed and finish', () => {
  // 24 in between forms, and 6 in past each
  test('the slab takes a straightedge of 36 in on the rims of its forms', () => {
    const [row] = screedRows(SLAB.pour, 'imperial');
    expect(row).toMatchObject({ name: 'Piece', straightedge: '36 in' });
    expect(row!.lines[0]!.words).toContain('rides on the rim of the edge form on both sides, 24 in apart');
  });

  test('strips beside the sink do not make the straightedge of the counter shorter', () => {
    expect(screedRows(GALLEY.pour, 'imperial')[0]!.straightedge).toBe('31-1/2 in');
  });

  test('steps come by the clock, and each is explained once', () => {
    const pour = pourOfPiece(GALLEY.plan, 'bench-seat')!;
    const rows = finishRows(pour, NONE, AT_EIGHT);
    expect(rows).toHaveLength(21);
    const times = rows.map(({ time }) => time);
    expect([...times].sort()).toEqual(times);
    const told = rows.filter(({ words }) => words !== '').map(({ title }) => title);
    expect(new Set(told).size).toBe(told.length);
    expect(told).toHaveLength(7);
  });

  // one and a half and three working times of 60 minutes after the first water, at 20 deg C
  test('the counter is floated at 09:30 and trowelled at 11:00', () => {
    const rows = finishRows(GALLEY.pour, NONE, AT_EIGHT);
    const at = (title: string) => rows.find((row) => row.title === title)?.time;
    expect([at('Float'), at('Trowel')]).toEqual(['09:30', '11:00']);
  });
});

describe('crew and weather', () => {
  test('four people with two mixers: two mix, two carry and place', () => {
    const rows = crewRows(GALLEY.job, GALLEY.plan, GALLEY.pour, 'imperial');
    expect(rows[0]).toEqual({ term: 'Crew', words: '4 people: 2 mix, 2 carry and place.' });
    expect(rows[1]!.words).toBe('2 people, 1 mixer: 35 min to spare.');
  });

  // .334 ft3 at 150 pcf is 50.1 lb; 51 lb is the load constant of NIOSH 94-110
  test('a bucket of 50.1 lb is lifted by one pair of hands at 50 % full or less', () => {
    const bucket = crewRows(GALLEY.job, GALLEY.plan, GALLEY.pour, 'imperial').find(
      ({ term }) => term === 'One bucket',
    );
    expect(bucket!.words).toBe('50.1 lb as filled. One pair of hands lifts it at 50 % full or less.');
  });

  test('one person alone mixes and places in turn', () => {
    const { job, plan, pour } = planned(slabJob({ crew: { people: 1 } }));
    expect(crewRows(job, plan, pour, 'imperial')[0]!.words).toBe('One person, who mixes and places in turn.');
  });

  test.each([
    [0.6, 8, 'slow'],
    [0.4, 12, 'watch'],
    [0.2, 25, 'act'],
  ])('at humidity %d and %d mph, just one band is that of the day', (humidity, windMph, band) => {
    const { pour } = planned(slabJob({ site: { weather: { airC: 18, concreteC: 20, humidity, windMph } } }));
    expect(
      bandRows(pour.weather)
        .filter(({ isNow }) => isNow)
        .map((row) => row.band),
    ).toEqual([band]);
  });

  // 20 deg C is 68 deg F; 8 mph is 12.9 km/h
  test('a metric job has degrees Celsius and km/h', () => {
    const { pour } = planned(slabJob({ site: { weather: { airC: 20, windMph: 8, humidity: 0.55 } } }));
    expect(weatherFacts(pour.weather, 'metric').map(({ value }) => value)).toEqual([
      '20 °C',
      '20 °C',
      '55 %',
      '13 km/h',
    ]);
    expect(weatherFacts(pour.weather, 'imperial')[0]!.value).toBe('68 °F');
  });
});
