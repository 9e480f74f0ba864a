import { describe, expect, test } from 'vitest';
import type { Weekday } from '../../../src-core/sequence';
import { dateOfDay, isRestDay, weekdayOf, workDayFrom, workDayUntil } from '../../../src-core/sequence';

const calendar = (startsOn: string | null, ...restDays: Weekday[]) => ({
  startsOn,
  restDays,
  handOverDay: null,
});

describe('days of a job as dates', () => {
  // Gregorian calendar: leap years by 4, not by 100, but by 400.
  test.each([
    ['2027-04-26', 0, '2027-04-26', 'mon'],
    ['2027-04-26', 40, '2027-06-05', 'sat'],
    ['2024-02-28', 1, '2024-02-29', 'thu'],
    ['2023-02-28', 1, '2023-03-01', 'wed'],
    ['2000-02-28', 1, '2000-02-29', 'tue'],
    ['2100-02-28', 1, '2100-03-01', 'mon'],
    ['1999-12-31', 1, '2000-01-01', 'sat'],
    ['2027-01-01', 3650, '2036-12-29', 'mon'],
  ] as const)('%s and %i days is %s, a %s', (startsOn, day, date, weekday) => {
    expect(dateOfDay(calendar(startsOn), day)).toBe(date);
    expect(weekdayOf(calendar(startsOn), day)).toBe(weekday);
  });

  test('agree with another calendar over forty years', () => {
    for (let day = 0; day < 14_610; day += 7) {
      const other = new Date(Date.UTC(2019, 5, 17 + day)).toISOString().slice(0, 10);
      expect(dateOfDay(calendar('2019-06-17'), day)).toBe(other);
      expect(weekdayOf(calendar('2019-06-17'), day)).toBe('mon');
    }
  });

  test('are only numbers where the job has no start date', () => {
    expect(dateOfDay(calendar(null, 'sun'), 6)).toBeNull();
    expect(isRestDay(calendar(null, 'sun'), 6)).toBe(false);
  });
});

describe('work days', () => {
  const weekends = calendar('2027-04-26', 'sat', 'sun');

  test('a Saturday waits for Monday, and a job before it is done on Friday', () => {
    expect(workDayFrom(weekends, 5)).toBe(7);
    expect(workDayUntil(weekends, 6)).toBe(4);
    expect(workDayFrom(weekends, 4)).toBe(4);
  });

  test('none lies before the first day', () => {
    expect(workDayUntil(calendar('2027-04-25', 'sun'), 0)).toBe(0);
  });

  test('where every day is a rest day none is kept', () => {
    const never = calendar('2027-04-26', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun');
    expect(workDayFrom(never, 12)).toBe(12);
  });
});
