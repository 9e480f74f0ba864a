import { describe, expect, test } from 'vitest';
import { dayLine } from '../../../src-core/sequence';
import { barRows } from '../../../src-renderer/days/bar-rows';
import { knotsOf, ownDays } from '../../../src-renderer/days/knots';
import { spokenDay } from '../../../src-renderer/days/spoken-day';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

const galley = EXAMPLE_JOBS.find(({ id }) => id === 'boathouse-galley')!;
const line = dayLine(galley);
const counter = galley.pieces.find(({ id }) => id === 'serving-counter')!;

describe('knots of the galley with its serving counter selected', () => {
  const knots = knotsOf(line, counter.id);

  test('the day of the pour is named by what is done up to it, floating and trowelling understood', () => {
    expect(knots[0]).toMatchObject({
      day: 0,
      isOwn: true,
      labels: ['falsework, forms, steel, pour', '4 events'],
      count: 4,
    });
  });

  test('the swap steps are numbered through its three days', () => {
    const words = [40, 42, 43].map((day) => knots.find((knot) => knot.day === day)!.labels);
    expect(words).toEqual([['swap 1-2'], ['swap 3-4'], ['swap 5-7']]);
  });

  test('day 8 belongs to other pieces: a knot without words that still says what is done', () => {
    const knot = knots.find(({ day }) => day === 8)!;
    expect(knot).toMatchObject({ isOwn: false, labels: [] });
    expect(knot.details).toContain('End of moist curing of Bar ledge');
  });

  test('the hand-over is for every piece', () => {
    expect(ownDays(line, counter.id)).toContain(49);
    expect(ownDays(line, 'bar-ledge')).toContain(49);
  });
});

describe('bars of the serving counter', () => {
  const rows = barRows(galley, counter, line);

  test('falsework, edge forms, slab and cabinets are a row each', () => {
    expect(rows.map(({ name }) => name)).toEqual(['Falsework', 'Edge forms', 'Slab', 'Cabinets']);
  });

  test('6 sections, 12 legs and 2 ledgers stand to day 40, then fewer, then none', () => {
    const spans = rows[0]!.spans.map(({ fromDay, toDay, count }) => [fromDay, toDay, count]);
    expect(spans).toEqual([
      [0, 40, 20],
      [41, 42, 14],
      [43, 43, 9],
    ]);
    expect(rows[0]!.spans[2]!.share).toBeCloseTo(9 / 20, 12);
  });

  test('the slab is wet on the day of its pour and hard from the next', () => {
    expect(rows[2]!.spans).toEqual([
      { fromDay: 0, toDay: 0, count: 1, share: 1, isWet: true },
      { fromDay: 1, toDay: 49, count: 1, share: 1, isWet: false },
    ]);
  });

  test('a piece whose supports all stay has no row of falsework', () => {
    const ledge = galley.pieces.find(({ id }) => id === 'bar-ledge')!;
    expect(barRows(galley, ledge, line).map(({ name }) => name)).toEqual([
      'Edge forms',
      'Slab',
      'What stays',
    ]);
  });
});

describe('the day read out', () => {
  test('day 40 tells its events and what stands under the counter', () => {
    const spoken = spokenDay(galley, line, counter, 40);
    expect(spoken).toMatch(/^Day 40, Sat 5 Jun\. Set C2, sink under Serving counter\. /);
    expect(spoken).toMatch(/the slab is hard, 16 supports under it, 6 falsework sections\.$/);
  });

  test('a day on which only other pieces have events says how many', () => {
    expect(spokenDay(galley, line, counter, 8)).toContain('2 events of other pieces.');
  });

  test('at the end the job is finished', () => {
    expect(spokenDay(galley, line, counter, null)).toBe('Finished: Serving counter as it stays.');
  });
});
