/** For fields that take a choice at once: the sentence of what was refused, until the value changes. */
import { useState } from 'react';

export interface TakenHandle<Value> {
  readonly sentence: string | null;
  readonly take: (value: Value) => void;
}

/** Commits a choice and keeps what was said against it. */
export function useTaken<Value>(
  current: unknown,
  commit: (value: Value) => string | null,
): TakenHandle<Value> {
  const [held, setHeld] = useState<{ over: unknown; sentence: string | null }>({
    over: current,
    sentence: null,
  });
  const sentence = Object.is(held.over, current) ? held.sentence : null;
  return { sentence, take: (value) => setHeld({ over: current, sentence: commit(value) }) };
}
