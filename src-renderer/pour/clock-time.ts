/** Minutes from the first water as times of day. */
import type { Writing } from '../forms/fields/typed-entry';

const MINUTES_A_HOUR = 60;
const MINUTES_A_DAY = 24 * MINUTES_A_HOUR;

/** When the first water goes in, unless somebody says otherwise: 08:00. */
export const USUAL_START_MINUTES = 8 * MINUTES_A_HOUR;

/** An arrow key moves the start by this much, minutes. */
const STEP_MINUTES = 5;

/** "08:07": a time of day, so many minutes after a start, to the nearest minute. Past midnight it begins anew. */
export function clockTime(startMinutes: number, afterMinutes: number): string {
  const whole = (Math.round(startMinutes + afterMinutes) % MINUTES_A_DAY) + MINUTES_A_DAY;
  const [hour, minute] = [Math.floor(whole / MINUTES_A_HOUR) % 24, whole % MINUTES_A_HOUR];
  return `${two(hour)}:${two(minute)}`;
}

function two(count: number): string {
  return String(count).padStart(2, '0');
}

/** How a time of day is typed: 8:00, 08.30, 8 or 0830. */
export const TIME_WRITING: Writing<number> = {
  print: (minutes) => clockTime(minutes, 0),
  read: (text) => {
    const refused = { ok: false as const, sentence: 'Write a time of day such as 8:00 or 13:30.' };
    const [, hour, minute = '0'] = /^\s*(\d{1,2})(?:[:. h]?(\d{2}))?\s*$/.exec(text) ?? [];
    if (hour === undefined) return refused;
    const [h, m] = [Number(hour), Number(minute)];
    return h < 24 && m < MINUTES_A_HOUR ? { ok: true, value: h * MINUTES_A_HOUR + m } : refused;
  },
  step: (minutes, direction) => (minutes + direction * STEP_MINUTES + MINUTES_A_DAY) % MINUTES_A_DAY,
};
