/** Days of a job as dates, without a clock: day 0 is the date on which the job starts. */
import type { Job } from '../job';

export type Weekday = 'mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun';

const WEEKDAYS: readonly Weekday[] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const DAYS_OF_ERA = 146_097;
const DAYS_TO_1970 = 719_468;
/** A work day is found within this many days, else every day of the week is a rest day and none is kept. */
const LONGEST_REST_DAYS = 7;

type Calendar = Job['site']['calendar'];

/** ISO date of a day of the job; null where the job has no start date. */
export function dateOfDay({ startsOn }: Calendar, day: number): string | null {
  return startsOn === null ? null : civilOf(serialOf(startsOn) + day);
}

/** Day of the week of a day of the job; null where the job has no start date. */
export function weekdayOf({ startsOn }: Calendar, day: number): Weekday | null {
  if (startsOn === null) return null;
  // 1970-01-01, serial 0, was a Thursday
  return WEEKDAYS[(((serialOf(startsOn) + day + 3) % 7) + 7) % 7]!;
}

/** Whether nobody works on a day. Without a start date no day is known to be a rest day. */
export function isRestDay(calendar: Calendar, day: number): boolean {
  const weekday = weekdayOf(calendar, day);
  return weekday !== null && calendar.restDays.includes(weekday);
}

/** This day, or the first after it on which somebody works. */
export function workDayFrom(calendar: Calendar, day: number): number {
  return nearestWorkDay(calendar, day, 1);
}

/** This day, or the last before it on which somebody works, but not before day 0. */
export function workDayUntil(calendar: Calendar, day: number): number {
  const found = nearestWorkDay(calendar, day, -1);
  return found < 0 ? Math.max(0, day) : found;
}

function nearestWorkDay(calendar: Calendar, day: number, step: 1 | -1): number {
  for (let i = 0; i < LONGEST_REST_DAYS; i++) {
    if (!isRestDay(calendar, day + i * step)) return day + i * step;
  }
  return day;
}

/** Days from 1970-01-01 to an ISO date of the Gregorian calendar, by eras of 400 years that begin on 1 March. */
function serialOf(isoDate: string): number {
  const [year, month, dayOfMonth] = isoDate.split('-').map(Number) as [number, number, number];
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_OF_ERA + dayOfEra - DAYS_TO_1970;
}

/** The way back from `serialOf`. */
function civilOf(serial: number): string {
  const z = serial + DAYS_TO_1970;
  const era = Math.floor(z / DAYS_OF_ERA);
  const dayOfEra = z - era * DAYS_OF_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const dayOfMonth = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return [String(year).padStart(4, '0'), two(month), two(dayOfMonth)].join('-');
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
