/** Names and dates in a field. */
import type { Writing } from './typed-entry';

/** A name that must be there. */
export const NAME_WRITING: Writing<string> = {
  print: (name) => name,
  read: (text) => {
    const name = text.trim();
    return name === '' ? { ok: false, sentence: 'Give it a name.' } : { ok: true, value: name };
  },
};

/** A name that may be left out. */
export const OPTIONAL_NAME_WRITING: Writing<string | undefined> = {
  print: (name) => name ?? '',
  read: (text) => ({ ok: true, value: text.trim() === '' ? undefined : text.trim() }),
};

/** A day of the calendar; whether there is such a day is for the job to say. */
export const DATE_WRITING: Writing<string> = {
  print: (date) => date,
  read: (text) => {
    const date = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
    if (date === null) return { ok: false, sentence: 'Write the date as 2027-04-30.' };
    const [, year, month, day] = date;
    return { ok: true, value: `${year}-${month!.padStart(2, '0')}-${day!.padStart(2, '0')}` };
  },
};
