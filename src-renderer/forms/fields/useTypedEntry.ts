/** Holds what is being typed into one field. */
import { useState } from 'react';
import type { TypedEntry, Writing } from './typed-entry';
import { shows, stepped, taken, typed } from './typed-entry';

export interface EntryHandle {
  readonly text: string;
  readonly sentence: string | null;
  readonly type: (text: string) => void;
  /** Enter, or leaving the field. */
  readonly take: () => void;
  /** Escape; false where there was nothing to restore. */
  readonly restore: () => boolean;
  readonly step: (direction: 1 | -1) => void;
}

/** The entry over a value; it follows the value when that changes elsewhere. */
export function useTypedEntry<Value>(
  value: Value,
  writing: Writing<Value>,
  commit: (value: Value) => string | null,
): EntryHandle {
  const [held, setHeld] = useState<TypedEntry<Value>>(() => shows(value));
  const entry = Object.is(held.over, value) ? held : shows(value);
  if (entry !== held) setHeld(entry);
  return {
    text: entry.text ?? writing.print(value),
    sentence: entry.sentence,
    type: (text) => setHeld(typed(entry, text)),
    take: () => setHeld(taken(entry, writing, commit)),
    restore: () => {
      if (entry.text === null) return false;
      setHeld(shows(value));
      return true;
    },
    step: (direction) => setHeld(stepped(entry, writing, direction, commit)),
  };
}
