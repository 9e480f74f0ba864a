import { type KeyboardEvent, useMemo } from 'react';
import { splitEdge } from '../../src-core/edit';
import type { JobProblem, Piece } from '../../src-core/job';
import { useStore } from '../state/store-context';
import type { Pixel } from './frame';
import { panned, toPixel, zoomed } from './frame';
import type { Handle } from './handles';
import type { Note } from './PointerNote';
import { moveHandleTo, removeHandle } from './plan-edits';
import { arrowStep } from './plan-steps';
import { isOwn, targetAt } from './plan-targets';
import type { PlanFrame } from './use-frame';
import type { HandleDrag } from './use-handle-drag';

const ZOOM_STEP = 1.25;
const PAN_PX = 48;

/** Keys of the plan: on a handle they move and remove, anywhere they zoom, on the plan itself they pan. */
export function usePlanKeys(
  { newest, change, fitJob }: PlanFrame,
  drag: HandleDrag,
  say: (note: Note | null) => void,
) {
  const store = useStore();
  return useMemo(() => {
    const zoom = (factor: number) =>
      change((frame) => zoomed(frame, { xPx: frame.widthPx / 2, yPx: frame.heightPx / 2 }, factor));

    /** What a key does to the handle that has the focus; false where it is no key of a handle. */
    const press = (event: KeyboardEvent<HTMLElement>, piece: Piece, handle: Handle): boolean => {
      const { run, select, history } = store.getState();
      const by = arrowStep(event, history.job.shownIn);
      const at = toPixel(newest.current, handle.at);
      if (by !== null) {
        const to = { xIn: handle.at.xIn + by.dxIn, yIn: handle.at.yIn + by.dyIn };
        say(noteOf(moveHandleTo(piece, handle, to)?.(run) ?? [], at));
        return true;
      }
      if (event.key === 'Delete' || event.key === 'Backspace') {
        say(noteOf(removeHandle(piece, handle)?.(run) ?? [], at));
        return true;
      }
      if (event.key === 'Insert' && handle.role === 'edge') {
        say(noteOf(run(splitEdge, { pieceId: piece.id, index: handle.index, at: handle.at }), at));
        return true;
      }
      if (event.key === 'Enter' || event.key === ' ') {
        select({ pieceId: piece.id, part: handle.part });
        return true;
      }
      return false;
    };

    const view = (event: KeyboardEvent<HTMLElement>): boolean => {
      if (event.key === '+' || event.key === '=') zoom(ZOOM_STEP);
      else if (event.key === '-') zoom(1 / ZOOM_STEP);
      else if (event.key === '0') fitJob();
      else return false;
      return true;
    };

    const pan = (event: KeyboardEvent<HTMLElement>): boolean => {
      const way = arrowStep({ key: event.key, shiftKey: false, altKey: false }, 'imperial');
      if (way === null || event.target !== event.currentTarget) return false;
      change((frame) => panned(frame, -Math.sign(way.dxIn) * PAN_PX, Math.sign(way.dyIn) * PAN_PX));
      return true;
    };

    return (event: KeyboardEvent<HTMLElement>) => {
      if (event.ctrlKey || event.metaKey || isOwn(event.target)) return;
      if (event.key === 'Escape') {
        drag.cancel();
        say(null);
        event.currentTarget.focus();
        return;
      }
      const { history, selection } = store.getState();
      const piece = history.job.pieces.find(({ id }) => id === selection?.pieceId) ?? null;
      const target = targetAt(event.target, piece);
      const handle = target?.handle ?? null;
      const isTaken =
        (piece !== null && handle !== null && press(event, piece, handle)) || view(event) || pan(event);
      if (!isTaken) return;
      event.preventDefault();
      event.stopPropagation();
    };
  }, [store, newest, change, fitJob, drag, say]);
}

function noteOf([problem]: readonly JobProblem[], at: Pixel): Note | null {
  return problem === undefined ? null : { tone: 'trouble', sentence: problem.sentence, at };
}
