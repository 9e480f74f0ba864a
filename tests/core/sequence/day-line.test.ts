import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { stands } from '../../../src-core/analysis';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import { dayLine, standingOn } from '../../../src-core/sequence';
import { straightCounter } from './swap-jobs';

const galley = ((): Job => {
  const file = new URL('../../../assets/jobs/boathouse-galley.json', import.meta.url);
  const reading = readJobText(readFileSync(file, 'utf8'));
  if (!reading.ok) throw new Error(reading.problems[0]?.sentence);
  return reading.job;
})();

/** The straight counter poured on day 9, a Wednesday, of a job that starts on Monday 26 April 2027. */
function onCalendar(restDays: Job['site']['calendar']['restDays']): Job {
  const job = straightCounter(2, {
    site: { calendar: { startsOn: '2027-04-26', restDays, handOverDay: 60 }, weather: { dailyC: [20] } },
  });
  const [piece] = job.pieces as [Job['pieces'][number]];
  const mesh = { id: 'fibre', kind: 'fibre' as const, material: 'glass' as const, dosePcy: null };
  return { ...job, pieces: [{ ...piece, pourDay: 9, reinforcement: [mesh] }] };
}

const dayOf = (job: Job, kind: string) => dayLine(job).events.find((event) => event.kind === kind)?.day;

describe('the events of a job', () => {
  test('run from the build to the hand-over, in the order in which they are done', () => {
    const kinds = dayLine(onCalendar([])).events.map(({ kind }) => kind);
    expect(kinds).toEqual([
      'build',
      'form',
      'reinforce',
      'pour',
      'float',
      'trowel',
      'strip',
      'cure-end',
      'strength-75',
      'swap',
      'age-28',
      'seal',
      'hand-over',
    ]);
  });

  test('poured on day 9 at 20 deg C: forms set on 7, steel on 8, stripped on 10, cured to 16, 75 % on 18, 28 d on 37', () => {
    const job = onCalendar([]);
    expect(
      ['form', 'reinforce', 'pour', 'strip', 'cure-end', 'strength-75', 'age-28'].map((kind) =>
        dayOf(job, kind),
      ),
    ).toEqual([7, 8, 9, 10, 16, 18, 37]);
  });

  test('skip days of rest: with Mondays and Tuesdays off, the steel for Wednesday is laid on Sunday and the forms on Saturday', () => {
    const job = onCalendar(['mon', 'tue']);
    expect([dayOf(job, 'form'), dayOf(job, 'reinforce')]).toEqual([5, 6]);
    const { events } = dayLine(job);
    expect(events.find(({ kind }) => kind === 'reinforce')!.date).toBe('2027-05-02');
  });

  test('a strip that falls on a day of rest waits for the next work day', () => {
    expect(dayOf(onCalendar(['thu']), 'strip')).toBe(11);
  });

  test('work that the job itself puts on a day of rest stays there and is marked', () => {
    const marked = dayLine(onCalendar(['wed'])).events.filter(({ isOnRestDay }) => isOnRestDay);
    // the swap on day 30 is a Wednesday too
    expect(marked.map(({ kind, day }) => [kind, day])).toEqual([
      ['pour', 9],
      ['float', 9],
      ['trowel', 9],
      ['swap', 30],
    ]);
  });

  test('have no dates where the job has none', () => {
    expect(
      dayLine(straightCounter()).events.every(({ date, isOnRestDay }) => date === null && !isOnRestDay),
    ).toBe(true);
  });

  test('of the example show its seven swap steps on days 40, 42 and 43, none of them a day of rest, and its hand-over on day 49', () => {
    const line = dayLine(galley);
    const swaps = line.events.filter(({ kind }) => kind === 'swap');
    expect(swaps.map(({ stepId, day }) => [stepId, day])).toEqual(
      galley.swap.steps.map(({ id, day }) => [id, day]),
    );
    expect([...new Set(swaps.map(({ day }) => day))]).toEqual([40, 42, 43]);
    expect(line.events.filter(({ isOnRestDay }) => isOnRestDay)).toEqual([]);
    expect(line.lastDay).toBe(49);
    expect(new Set(line.events.map(({ id }) => id)).size).toBe(line.events.length);
  });
});

describe('the bars of a job', () => {
  test('have falsework, forms, the slab wet and hard, and its supports by their days', () => {
    const { bars } = dayLine(galley);
    const bar = (id: string) => bars.find((one) => one.id === id)!;
    expect(bar('section-fw-r1')).toMatchObject({ fromDay: 0, toDay: 40, toDate: '2027-06-05' });
    expect(bar('slab-wet-serving-counter')).toMatchObject({ fromDay: 0, toDay: 0 });
    expect(bar('slab-hard-serving-counter')).toMatchObject({ fromDay: 1, toDay: 49 });
    expect(bar('cabinet-cab-c4')).toMatchObject({ kind: 'cabinet', fromDay: 43, toDay: 49 });
    expect(bar('support-leg-r1')).toMatchObject({ fromDay: 0, toDay: 40 });
    expect(bar('edge-forms-bar-ledge').fromDay).toBe(0);
    expect(bars.every(({ fromDay, toDay }) => fromDay <= toDay)).toBe(true);
  });
});

describe('what stands on a day', () => {
  const state = (job: Job, day: number) => standingOn(job, day)[0]!;

  test('nothing, then forms, then a wet slab in them, then a hard one without', () => {
    const job = onCalendar([]);
    expect([6, 7, 9, 10].map((day) => [state(job, day).state, state(job, day).formsStand])).toEqual([
      ['nothing', false],
      ['formed', true],
      ['wet', true],
      ['hard', false],
    ]);
  });

  test('is what the load check of that day takes', () => {
    for (const day of [0, 20, 39, 40, 41, 42, 43, 44]) {
      for (const [i, piece] of galley.pieces.entries()) {
        const expected = piece.supports.filter((support) => stands(support, day)).map(({ id }) => id);
        expect(standingOn(galley, day)[i]!.supports).toEqual(expected);
      }
    }
  });

  test('has the sections until the day on which they go', () => {
    expect(state(galley, 40).sections).toContain('fw-r1');
    expect(state(galley, 41).sections).not.toContain('fw-r1');
    expect(state(galley, 44).sections).toEqual([]);
  });
});
