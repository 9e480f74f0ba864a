import { useMemo, useRef } from 'react';
import type { SnapTarget } from '../../src-core/drawing';
import { snapTargets } from '../../src-core/drawing';
import type { Piece } from '../../src-core/job';
import { useStore } from '../state/store-context';
import type { WindowState } from '../state/window-store';
import type { Frame, Pixel } from './frame';
import { toPlan } from './frame';
import type { Handle } from './handles';
import { anchorsOf, handleOf, movesAlong } from './handles';
import type { Note } from './PointerNote';
import { moveHandleTo } from './plan-edits';
import { gridIn, smallestIn } from './plan-steps';
import { nearestAnchor, snapMove } from './snap-move';

/** A hand within this of a target is drawn to it. */
const REACH_PX = 8;

interface Drag {
  readonly pieceId: string;
  readonly key: string;
  readonly grip: { readonly handle: Handle; readonly anchor: ReturnType<typeof nearestAnchor> };
  readonly start: Pixel;
  readonly targets: readonly SnapTarget[];
  readonly stepsBefore: number;
}

export interface HandleDrag {
  readonly begin: (piece: Piece, handle: Handle, at: Pixel) => void;
  /** Takes the handle to where the pointer is; with `isFree` no target draws it, and it keeps to the smallest step. */
  readonly move: (at: Pixel, isFree: boolean) => void;
  readonly end: () => void;
  /** Ends the drag and takes back what it did. */
  readonly cancel: () => void;
}

/** Drags of handles: each move runs a command, all of them one step of the history; a refused move stays at the last good place. */
export function useHandleDrag(
  newest: { readonly current: Frame },
  say: (note: Note | null) => void,
): HandleDrag {
  const store = useStore();
  const drag = useRef<Drag | null>(null);
  return useMemo(() => {
    const end = () => {
      if (drag.current === null) return;
      drag.current = null;
      store.getState().endDrag();
      say(null);
    };
    return {
      begin: (piece, handle, start) => {
        const { history, beginDrag, endDrag } = store.getState();
        // what keys did to the same handle stays a step of its own
        endDrag();
        const anchor = nearestAnchor(anchorsOf(piece, handle), toPlan(newest.current, start));
        drag.current = {
          pieceId: piece.id,
          key: handle.key,
          grip: { handle, anchor },
          start,
          targets: snapTargets(history.job, movesAlong(piece, handle)),
          stepsBefore: history.past.length,
        };
        beginDrag();
      },
      move: (at, isFree) => {
        if (drag.current === null) return;
        const sentence = follow(store.getState(), newest.current, drag.current, at, isFree);
        say(sentence === null ? null : { ...sentence, at });
      },
      end,
      cancel: () => {
        if (drag.current === null) return;
        const { stepsBefore } = drag.current;
        end();
        const { history, undo } = store.getState();
        if (history.past.length > stepsBefore) undo();
      },
    };
  }, [store, newest, say]);
}

/** Runs one move; gives what to say beside the pointer. */
function follow(
  { history, run }: WindowState,
  frame: Frame,
  drag: Drag,
  at: Pixel,
  isFree: boolean,
): Omit<Note, 'at'> | null {
  const piece = history.job.pieces.find(({ id }) => id === drag.pieceId);
  const handle = piece === undefined ? undefined : handleOf(piece, drag.key);
  if (piece === undefined || handle === undefined) return null;
  const system = history.job.shownIn;
  const by = {
    dxIn: (at.xPx - drag.start.xPx) / frame.pxPerIn,
    dyIn: -(at.yPx - drag.start.yPx) / frame.pxPerIn,
  };
  const { to, words } = snapMove(drag.grip, by, {
    gridIn: isFree ? smallestIn(system) : gridIn(system),
    targets: isFree ? [] : drag.targets,
    reachIn: REACH_PX / frame.pxPerIn,
  });
  const [problem] = moveHandleTo(piece, handle, to)?.(run) ?? [];
  if (problem !== undefined) return { tone: 'trouble', sentence: problem.sentence };
  return words === null ? null : { tone: 'plain', sentence: words };
}
