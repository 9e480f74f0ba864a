/** Sends plan and model to the part of the drawing that a number comes from, and picks it out there. */
import type { Trace } from '../../src-core/trace';
import type { WindowStore } from '../state/window-store';
import { placeOf, selectionOf } from './sources';

/** Selects the part and flies to it; nothing where its piece is gone. */
export function lookAtSource(store: WindowStore, trace: Trace): void {
  const { history, flyTo } = store.getState();
  const selection = selectionOf(history.job, trace);
  if (selection === null) return;
  store.setState({
    selection,
    flyTo: {
      pieceId: trace.pieceId,
      at: placeOf(history.job, trace),
      request: (flyTo?.request ?? 0) + 1,
    },
  });
}

/** Marks the part in both views while the pointer or the focus rests on its number. */
export function hoverSource(store: WindowStore, trace: Trace | null): void {
  const { history, setHover } = store.getState();
  setHover(trace === null ? null : selectionOf(history.job, trace));
}
