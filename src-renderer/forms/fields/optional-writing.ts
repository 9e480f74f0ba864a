/** A field that may stay empty. */
import type { Writing } from './typed-entry';

/** The same writing, with an empty field for null. */
export function orNone<Value>(writing: Writing<Value>): Writing<Value | null> {
  const { step } = writing;
  return {
    print: (value) => (value === null ? '' : writing.print(value)),
    read: (text) => (text.trim() === '' ? { ok: true, value: null } : writing.read(text)),
    ...(step !== undefined && {
      step: (value, direction) => (value === null ? null : step(value, direction)),
    }),
  };
}
