/** Steps of the playhead from event to event. */

/** The first of `days` after a day; null where none follows, or the job is finished already. */
export function dayAfter(days: readonly number[], day: number | null): number | null {
  return day === null ? null : (days.find((one) => one > day) ?? null);
}

/** The last of `days` before a day, or the last of all from the finished job; the day itself where none comes before. */
export function dayBefore(days: readonly number[], day: number | null): number | null {
  if (day === null) return days.at(-1) ?? null;
  return days.findLast((one) => one < day) ?? day;
}
