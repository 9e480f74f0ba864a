/** Days along the string: every day as wide as the next, and one stop more at the end for the finished job. */
import type { Job } from '../../src-core/job';
import type { DayLine } from '../../src-core/sequence';
import { shortDate } from './day-words';

type Range = Pick<DayLine, 'firstDay' | 'lastDay'>;

/** The stop that stands for the finished job. */
export function finishedStop({ lastDay }: Range): number {
  return lastDay + 1;
}

/** Place of a day on a string this wide, px. */
export function xOfDay(range: Range, day: number, widthPx: number): number {
  const days = finishedStop(range) - range.firstDay;
  return ((day - range.firstDay) / days) * widthPx;
}

/** Day of the playhead at a stop; null for the finished job. A day beyond the line counts as finished. */
export function dayAtStop(range: Range, stop: number): number | null {
  return stop > range.lastDay ? null : Math.max(range.firstDay, stop);
}

/** Stop of a day; the finished job's for null. */
export function stopOfDay(range: Range, day: number | null): number {
  if (day === null || day > range.lastDay) return finishedStop(range);
  return Math.max(range.firstDay, day);
}

export interface AxisMark {
  readonly day: number;
  readonly xPx: number;
  readonly words: string;
}

/** Days between marks that are tried, least first. */
const STEPS_DAYS = [1, 2, 7, 14, 28, 56, 112, 364];
const LEAST_APART_PX = 56;

/** Marks of the scale at even days, as close as their words allow; none where "finished" stands. */
export function axisMarks(range: Range, calendar: Job['site']['calendar'], widthPx: number): AxisMark[] {
  const dayPx = xOfDay(range, range.firstDay + 1, widthPx);
  const step = STEPS_DAYS.find((days) => days * dayPx >= LEAST_APART_PX) ?? STEPS_DAYS.at(-1)!;
  const marks: AxisMark[] = [];
  for (let day = range.firstDay; day <= range.lastDay; day += step) {
    const xPx = xOfDay(range, day, widthPx);
    if (xPx > widthPx - LEAST_APART_PX && day > range.firstDay) break;
    marks.push({ day, xPx, words: shortDate(calendar, day) ?? `day ${day}` });
  }
  return marks;
}
