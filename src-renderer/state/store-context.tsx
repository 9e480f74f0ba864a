/** Gives the window's store to every component below. */
import { createContext, use } from 'react';
import type { Job, Piece } from '../../src-core/job';
import type { WindowState, WindowStore } from './window-store';

const Store = createContext<WindowStore | null>(null);

export const StoreProvider = Store.Provider;

/** The store itself, for callbacks that read the newest state without drawing again. */
export function useStore(): WindowStore {
  const store = use(Store);
  if (store === null) throw new Error('a view was drawn outside the window, which holds the store');
  return store;
}

/** One thing out of the store; the component draws again when it changes. */
export function useWindow<T>(pick: (state: WindowState) => T): T {
  return useStore()(pick);
}

export function useJob(): Job {
  return useWindow(({ history }) => history.job);
}

/** The piece that is selected, or the first. */
export function usePiece(): Piece {
  return useWindow(({ history, selection }) => {
    const { pieces } = history.job;
    return pieces.find(({ id }) => id === selection?.pieceId) ?? pieces[0]!;
  });
}
