/** Lets one file at a time leave, and keeps what came of it in words. */
import { useState } from 'react';
import { faultSentence } from '../sheets/use-answer';
import type { Left } from './leave';

export interface Leaving {
  /** What is on its way; null where nothing is. */
  readonly busy: string | null;
  readonly words: string | null;
  readonly trouble: string | null;
  readonly start: (id: string, work: () => Promise<Left>) => void;
}

export function useLeaving(): Leaving {
  const [busy, setBusy] = useState<string | null>(null);
  const [left, setLeft] = useState<Left | null>(null);
  return {
    busy,
    words: left?.outcome === 'left' || left?.outcome === 'printing' ? left.words : null,
    trouble: left?.outcome === 'trouble' ? left.sentence : null,
    start: (id, work) => {
      if (busy !== null) return;
      setBusy(id);
      setLeft(null);
      work()
        .then(setLeft, (fault: unknown) => setLeft({ outcome: 'trouble', sentence: faultSentence(fault) }))
        .finally(() => setBusy(null));
    },
  };
}
