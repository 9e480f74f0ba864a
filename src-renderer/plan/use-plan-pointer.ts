import { type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import type { Piece } from '../../src-core/job';
import { useStore } from '../state/store-context';
import type { WindowState } from '../state/window-store';
import type { Pixel } from './frame';
import { panned, pinched } from './frame';
import type { PlanTarget } from './plan-targets';
import { hoverAt, isOwn, placeIn, targetAt } from './plan-targets';
import type { PlanFrame } from './use-frame';
import type { HandleDrag } from './use-handle-drag';

/** A press that moves less than this is a click. */
const CLICK_PX = 4;

type Gesture =
  | { readonly kind: 'pan'; last: Pixel }
  | { readonly kind: 'press'; readonly start: Pixel; readonly target: PlanTarget | null }
  | { readonly kind: 'handle' }
  | { readonly kind: 'pinch'; last: readonly [Pixel, Pixel] };

/** Mouse, pen and fingers on the plan: select, drag handles, pan and pinch. Moves are taken once a frame of the screen. */
export function usePlanPointer(
  container: RefObject<HTMLElement | null>,
  { change }: PlanFrame,
  drag: HandleDrag,
) {
  const store = useStore();
  const isSpaceDown = useSpaceKey();
  const gesture = useRef<Gesture | null>(null);
  const fingers = useRef(new Map<number, Pixel>());
  const waiting = useRef<number | null>(null);

  return useMemo(() => {
    const select = (target: PlanTarget | null) => {
      const { selection, select: set } = store.getState();
      if (target !== null) set(target.selection);
      else if (selection !== null) set({ pieceId: selection.pieceId, part: { kind: 'piece' } });
    };

    /** A press that has moved far enough becomes a drag of its handle, or a pan. */
    const grow = (press: Extract<Gesture, { kind: 'press' }>, at: Pixel): Gesture => {
      if (Math.hypot(at.xPx - press.start.xPx, at.yPx - press.start.yPx) < CLICK_PX) return press;
      const { target } = press;
      const piece = selectedPiece(store.getState());
      if (piece === null || target === null || target.handle === null)
        return { kind: 'pan', last: press.start };
      select(target);
      drag.begin(piece, target.handle, press.start);
      return { kind: 'handle' };
    };

    const step = (at: Pixel, isFree: boolean) => {
      if (gesture.current?.kind === 'press') gesture.current = grow(gesture.current, at);
      const now = gesture.current;
      if (now?.kind === 'handle') drag.move(at, isFree);
      if (now?.kind === 'pan') {
        const { last } = now;
        change((frame) => panned(frame, at.xPx - last.xPx, at.yPx - last.yPx));
        now.last = at;
      }
      if (now?.kind === 'pinch' && fingers.current.size === 2) {
        const [a, b] = [...fingers.current.values()];
        const { last } = now;
        change((frame) => pinched(frame, last, [a!, b!]));
        now.last = [a!, b!];
      }
    };

    const flush = () => {
      if (waiting.current !== null) cancelAnimationFrame(waiting.current);
      waiting.current = null;
    };

    return {
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        const element = container.current;
        if (element === null) return;
        const isWithinOwn = isOwn(event.target);
        if (isWithinOwn && event.button !== 1) return;
        const at = placeIn(element, event);
        element.setPointerCapture(event.pointerId);
        fingers.current.set(event.pointerId, at);
        if (fingers.current.size === 2) {
          drag.cancel();
          const [a, b] = [...fingers.current.values()];
          gesture.current = { kind: 'pinch', last: [a!, b!] };
        } else if (event.button === 1 || isSpaceDown.current) {
          event.preventDefault();
          gesture.current = { kind: 'pan', last: at };
        } else if (event.button === 0) {
          const target = targetAt(event.target, selectedPiece(store.getState()));
          gesture.current = { kind: 'press', start: at, target };
        }
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const element = container.current;
        if (element === null) return;
        if (gesture.current === null) {
          const state = store.getState();
          state.setHover(hoverAt(event.target, selectedPiece(state), state.hover));
          return;
        }
        const at = placeIn(element, event);
        if (fingers.current.has(event.pointerId)) fingers.current.set(event.pointerId, at);
        const isFree = event.altKey;
        flush();
        waiting.current = requestAnimationFrame(() => {
          waiting.current = null;
          step(at, isFree);
        });
      },
      onPointerUp: (event: PointerEvent<HTMLElement>) => {
        const element = container.current;
        if (element === null || !fingers.current.delete(event.pointerId)) return;
        flush();
        step(placeIn(element, event), event.altKey);
        if (gesture.current?.kind === 'press') {
          select(gesture.current.target);
          focusHandle(element, gesture.current.target?.handle?.key ?? null);
        }
        drag.end();
        gesture.current = null;
      },
      onPointerCancel: (event: PointerEvent<HTMLElement>) => {
        fingers.current.delete(event.pointerId);
        flush();
        drag.cancel();
        gesture.current = null;
      },
      onPointerLeave: () => {
        if (gesture.current === null) store.getState().setHover(null);
      },
    };
  }, [container, change, drag, isSpaceDown, store]);
}

function selectedPiece({ history, selection }: WindowState): Piece | null {
  return history.job.pieces.find(({ id }) => id === selection?.pieceId) ?? null;
}

/** Keys go where the hand went: to the handle that was pressed, or to the plan. */
function focusHandle(element: HTMLElement, key: string | null): void {
  const button = key === null ? null : element.querySelector<HTMLElement>(`button[data-handle="${key}"]`);
  (button ?? element).focus({ preventScroll: true });
}

function useSpaceKey(): RefObject<boolean> {
  const isDown = useRef(false);
  useEffect(() => {
    const set = (event: KeyboardEvent) => {
      if (event.key === ' ') isDown.current = event.type === 'keydown';
    };
    const clear = () => {
      isDown.current = false;
    };
    window.addEventListener('keydown', set);
    window.addEventListener('keyup', set);
    window.addEventListener('blur', clear);
    return () => {
      window.removeEventListener('keydown', set);
      window.removeEventListener('keyup', set);
      window.removeEventListener('blur', clear);
    };
  }, []);
  return isDown;
}
