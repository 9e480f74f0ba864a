import { useEffect, useState, useSyncExternalStore } from 'react';
import { useStore, useWindow } from '../state/store-context';
import { dayAfter } from './next-day';

const STEP_MS = 1000;
const REDUCED = '(prefers-reduced-motion: reduce)';

export interface Play {
  readonly isPlaying: boolean;
  /** Whether a press goes on by one event instead of playing, as where less motion is asked for. */
  readonly isByStep: boolean;
  readonly press: () => void;
}

/** Goes through the days one after another, about a second each, until the job is finished. */
export function usePlay(days: readonly number[]): Play {
  const store = useStore();
  const day = useWindow(({ day: shown }) => shown);
  const isByStep = useSyncExternalStore(listenReduced, isReduced);
  const [wantsPlay, setWantsPlay] = useState(false);
  const isPlaying = wantsPlay && !isByStep;
  useEffect(() => {
    if (!isPlaying) return;
    const timer = setTimeout(() => {
      const next = dayAfter(days, day);
      store.getState().setDay(next);
      if (next === null) setWantsPlay(false);
    }, STEP_MS);
    return () => clearTimeout(timer);
  }, [isPlaying, days, store, day]);
  const press = () => {
    if (isPlaying) {
      setWantsPlay(false);
      return;
    }
    store.getState().setDay(day === null ? (days[0] ?? null) : dayAfter(days, day));
    setWantsPlay(!isByStep);
  };
  return { isPlaying, isByStep, press };
}

function isReduced(): boolean {
  return window.matchMedia(REDUCED).matches;
}

function listenReduced(changed: () => void): () => void {
  const query = window.matchMedia(REDUCED);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
}
