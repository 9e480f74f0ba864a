import { useRef } from 'react';
import { useWindow } from './store-context';
import type { WindowState } from './window-store';

/**
 * One thing out of the store, as it was before a drag began while one goes on: for what may wait until the hand rests. The
 * component does not draw again for the moves between.
 */
export function useAtRest<T>(pick: (state: WindowState) => T): T {
  const kept = useRef<{ readonly value: T } | null>(null);
  return useWindow((state) => {
    if (kept.current === null || !state.isDragging) kept.current = { value: pick(state) };
    return kept.current.value;
  });
}
