/** Days of the job as a person reads them. */
import type { Job } from '../../src-core/job';
import { dateOfDay, weekdayOf } from '../../src-core/sequence';
import { sentenceCase } from '../../src-core/units';

type Calendar = Job['site']['calendar'];

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "30 Apr"; null where the job starts on no date. */
export function shortDate(calendar: Calendar, day: number): string | null {
  const date = dateOfDay(calendar, day);
  if (date === null) return null;
  const [, month, dayOfMonth] = date.split('-').map(Number) as [number, number, number];
  return `${dayOfMonth} ${MONTHS[month - 1]}`;
}

/** "Fri 30 Apr"; null where the job starts on no date. */
export function longDate(calendar: Calendar, day: number): string | null {
  const weekday = weekdayOf(calendar, day);
  if (weekday === null) return null;
  return `${sentenceCase(weekday)} ${shortDate(calendar, day)}`;
}

/** "day 36, Tue 1 Jun", or "day 36" where the job starts on no date. */
export function dayName(calendar: Calendar, day: number): string {
  const date = longDate(calendar, day);
  return date === null ? `day ${day}` : `day ${day}, ${date}`;
}

/** The same at the start of a sentence. */
export function dayTitle(calendar: Calendar, day: number): string {
  return `D${dayName(calendar, day).slice(1)}`;
}
