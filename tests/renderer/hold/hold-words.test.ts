import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import type { HeightLimits } from '../../../src-core/sequence';
import { earliestDays } from '../../../src-core/sequence';
import { dayAnswer } from '../../../src-renderer/hold/day-answer';
import { earliestRows } from '../../../src-renderer/hold/earliest-rows';
import { heightRows } from '../../../src-renderer/hold/height-words';
import { slabOnDay } from '../../../src-renderer/hold/slab-words';
import { standingRows } from '../../../src-renderer/hold/standing-rows';
import { EXAMPLE_JOBS } from '../forms/example-jobs';

const galley = EXAMPLE_JOBS.find(({ id }) => id === 'boathouse-galley')!;
const counter = galley.pieces.find(({ id }) => id === 'serving-counter')!;
const cap = galley.pieces.find(({ id }) => id === 'gate-cap')!;

describe('what stands under the serving counter', () => {
  test('on day 36 it is 6 sections, 12 legs and 2 ledgers, those that go first at the top', () => {
    const rows = standingRows(galley, counter, 36).map(({ title, until }) => `${title}, ${until}`);
    expect(rows).toEqual([
      '2 falsework sections, stands until day 40',
      '4 legs, stands until day 40',
      '2 falsework sections, stands until day 42',
      '3 legs, stands until day 42',
      '2 falsework sections, stands until day 43',
      '2 ledgers, stands until day 43',
      '5 legs, stands until day 43',
    ]);
  });

  test('on day 42 two cabinets stay and two more come', () => {
    const cabinets = standingRows(galley, counter, 42).at(-1)!;
    expect(cabinets).toMatchObject({ title: '4 cabinets', until: '', names: 'R1, R2, C1, corner, C2, sink' });
  });

  test('in the finished job it is six cabinets and nothing else', () => {
    expect(standingRows(galley, counter, null).map(({ title }) => title)).toEqual(['6 cabinets']);
  });
});

describe('the slab on a day', () => {
  test('the gate-pier cap, poured on day 3, goes from nothing to formed, wet and hard', () => {
    const states = [0, 2, 3, 4].map((day) => slabOnDay(galley, cap, day).state);
    expect(states).toEqual(['nothing', 'formed', 'wet', 'hard']);
  });

  test('a day after the pour it is a day old, with its forms on', () => {
    const { title, words } = slabOnDay(galley, cap, 4);
    expect(title).toBe('Hard, 1 day old');
    expect(words).toMatch(/^\d+ psi, \d+ % of its 28-day strength by the strength curve\. The edge forms/);
  });

  test('finished it counts with its 28-day strength', () => {
    expect(slabOnDay(galley, counter, null).words).toBe('Counted at its 28-day strength, 5000 psi.');
  });

  test('a mix that nobody tested says so', () => {
    const untested: Job = { ...galley, mixes: galley.mixes.map((mix) => ({ ...mix, strengthPsi: null })) };
    expect(slabOnDay(untested, counter, null).words).toContain('3000 psi, the figure for a mix that nobody');
  });
});

describe('the verdict of the day', () => {
  const hard = slabOnDay(galley, counter, 36);
  const result = { id: counter.id, checks: [] } as never;

  test('an answer for another day is not shown', () => {
    const days = { day: 35, pieces: { [counter.id]: result } };
    expect(dayAnswer(36, counter.id, hard, days, undefined)).toEqual({
      kind: 'none',
      words: 'Working out whether it stands on that day.',
    });
    expect(dayAnswer(36, counter.id, hard, { ...days, day: 36 }, undefined).kind).toBe('verdict');
  });

  test('a wet slab has none, whatever came back', () => {
    const wet = slabOnDay(galley, counter, 0);
    const days = { day: 0, pieces: { [counter.id]: result } };
    expect(dayAnswer(0, counter.id, wet, days, undefined).kind).toBe('none');
  });

  test('the finished job takes its own verdict, once it is up to date', () => {
    const none = { day: null, pieces: {} };
    expect(dayAnswer(null, counter.id, hard, none, { result, isStale: true }).kind).toBe('none');
    expect(dayAnswer(null, counter.id, hard, none, { result, isStale: false }).kind).toBe('verdict');
  });
});

describe('heights', () => {
  const limit: HeightLimits = {
    supportId: 'cab-1',
    part: 'whole',
    words: 'all feet of B1',
    crackingRatio: 0.5,
    raise: { limitIn: 0.0314, sixtyFourths: 2 },
    gap: { limitIn: null, sixtyFourths: null },
  };

  test('0.0314 in is 1/32 in, or 0.7 mm rounded down', () => {
    expect(heightRows([limit], 'imperial')[0]).toMatchObject({ raise: '1/32 in', gap: 'any' });
    expect(heightRows([limit], 'metric')[0]).toMatchObject({ raise: '0.7 mm' });
  });

  test('less than a 64th is never printed as nought', () => {
    const tight = { ...limit, raise: { limitIn: 0.0126, sixtyFourths: 0 } };
    expect(heightRows([tight], 'imperial')[0]!.raise).toBe('less than 1/64 in');
  });
});

describe('earliest days', () => {
  test('a swap planned before its day is cautioned beside it', () => {
    const early: Job = {
      ...galley,
      pieces: galley.pieces.map((piece) => (piece.id === counter.id ? { ...piece, pourDay: 36 } : piece)),
    };
    const piece = early.pieces.find(({ id }) => id === counter.id)!;
    const swap = earliestRows(early, earliestDays(early, piece)).find(({ id }) => id === 'swap')!;
    expect(swap.planned).toBe('planned on day 40');
    expect(swap.caution).toMatch(/^Planned on day 40, before day \d+/);
  });

  test('sealing has no day of its own in the plan: the row tells the hand over, not a day on which it is sealed', () => {
    const rows = earliestRows(galley, earliestDays(galley, counter));
    expect(rows.find(({ id }) => id === 'seal')).toMatchObject({
      when: 'day 33, Sat 29 May',
      planned: 'handed over on day 49',
    });
    expect(rows.find(({ id }) => id === 'swap')!.planned).toBe('planned on day 40');
  });

  test('as the galley is planned nothing of the swap is too early', () => {
    const rows = earliestRows(galley, earliestDays(galley, counter));
    expect(rows.find(({ id }) => id === 'swap')).toMatchObject({ when: 'day 10, Thu 6 May', caution: '' });
  });
});
