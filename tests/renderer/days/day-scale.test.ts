import { describe, expect, test } from 'vitest';
import { axisMarks, dayAtStop, finishedStop, stopOfDay, xOfDay } from '../../../src-renderer/days/day-scale';
import { dayName, dayTitle, longDate, shortDate } from '../../../src-renderer/days/day-words';
import { dayAfter, dayBefore } from '../../../src-renderer/days/next-day';

const line = { firstDay: 0, lastDay: 49 };
const undated = { startsOn: null, restDays: [], handOverDay: null };
const dated = { ...undated, startsOn: '2027-04-26' };

describe('the scale of the day line', () => {
  test('50 days and the finished job are even steps of a string 1000 px long', () => {
    expect([0, 25, 50].map((day) => xOfDay(line, day, 1000))).toEqual([0, 500, 1000]);
    expect(finishedStop(line)).toBe(50);
  });

  test('the stop after the last day is the finished job, either way round', () => {
    expect(dayAtStop(line, 50)).toBeNull();
    expect(dayAtStop(line, 49)).toBe(49);
    expect(stopOfDay(line, null)).toBe(50);
    expect(stopOfDay(line, 12)).toBe(12);
  });

  test('a day beyond the line, left over from a longer job, stands at its end', () => {
    expect(stopOfDay(line, 80)).toBe(50);
  });

  test('at 20 px a day the scale is marked every week, at 100 px every day', () => {
    expect(axisMarks(line, undated, 1000).map(({ day }) => day)).toEqual([0, 7, 14, 21, 28, 35, 42]);
    expect(axisMarks({ firstDay: 0, lastDay: 4 }, undated, 500).map(({ words }) => words)).toEqual([
      'day 0',
      'day 1',
      'day 2',
      'day 3',
      'day 4',
    ]);
  });

  test('with a start date the marks are dates', () => {
    expect(axisMarks(line, dated, 1000)[1]).toEqual({ day: 7, xPx: 140, words: '3 May' });
  });
});

describe('a day in words', () => {
  // 26 April 2027 is a Monday
  test('day 4 of a job that starts on 26 April 2027 is a Friday', () => {
    expect(longDate(dated, 4)).toBe('Fri 30 Apr');
    expect(shortDate(dated, 36)).toBe('1 Jun');
    expect(dayTitle(dated, 36)).toBe('Day 36, Tue 1 Jun');
  });

  test('without a start date it is a number', () => {
    expect(longDate(undated, 4)).toBeNull();
    expect(dayName(undated, 4)).toBe('day 4');
  });
});

describe('from event to event', () => {
  const days = [0, 7, 28, 40];

  test('the next after day 7 is day 28, and after the last the job is finished', () => {
    expect(dayAfter(days, 7)).toBe(28);
    expect(dayAfter(days, 40)).toBeNull();
    expect(dayAfter(days, null)).toBeNull();
  });

  test('the one before the finished job is the last, and before the first the day stays', () => {
    expect(dayBefore(days, null)).toBe(40);
    expect(dayBefore(days, 29)).toBe(28);
    expect(dayBefore(days, 0)).toBe(0);
  });
});
