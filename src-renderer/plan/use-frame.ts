import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { piecePlanBounds, planBounds } from '../../src-core/drawing';
import type { Point } from '../../src-core/outline';
import { useStore, useWindow } from '../state/store-context';
import type { WindowStore } from '../state/window-store';
import type { Frame } from './frame';
import { fitted, isSeen } from './frame';

/** Room round what is fitted, for its dimensions; in a small container less, so that the piece is not lost in it. */
const MARGIN_PX = 88;
const MARGIN_SHARE = 0.2;
/** How long a point that was flown to keeps its ring. */
const RING_MS = 1600;
const UNSEEN: Frame = { centre: { xIn: 0, yIn: 0 }, pxPerIn: 4, widthPx: 0, heightPx: 0 };

export interface PlanFrame {
  /** What is seen; without size until the container has been measured. */
  readonly frame: Frame;
  /** The newest frame, for callbacks that outlive a drawing. */
  readonly newest: RefObject<Frame>;
  readonly change: (next: (frame: Frame) => Frame) => void;
  /** Shows the whole job. */
  readonly fitJob: () => void;
  /** A point that was flown to a moment ago. */
  readonly ring: { readonly at: Point; readonly request: number } | null;
}

/** The frame of the plan: as large as its container, fitted at first sight to the selected piece, and sent where the window asks. */
export function useFrame(container: RefObject<HTMLElement | null>): PlanFrame {
  const store = useStore();
  const [frame, setFrame] = useState(UNSEEN);
  const newest = useRef(frame);
  /** Whether the piece stands as it was fitted, and nothing has moved the frame since. */
  const isFitted = useRef(true);
  const change = useCallback((next: (frame: Frame) => Frame) => {
    newest.current = next(newest.current);
    isFitted.current = false;
    setFrame(newest.current);
  }, []);
  const fitPiece = useCallback(() => {
    const { history, selection } = store.getState();
    const piece = history.job.pieces.find(({ id }) => id === selection?.pieceId) ?? history.job.pieces[0]!;
    change((old) => fitted(old, piecePlanBounds(piece), marginPx(old)));
    isFitted.current = true;
  }, [change, store]);
  const fitJob = useCallback(() => {
    change((old) => fitted(old, planBounds(store.getState().history.job), marginPx(old)));
  }, [change, store]);

  useLayoutEffect(() => {
    const element = container.current;
    if (element === null) return;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      const wasFitted = isFitted.current;
      change((old) => ({ ...old, widthPx: width, heightPx: height }));
      if (wasFitted && width > 0) fitPiece();
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [container, change, fitPiece]);

  const jobId = useWindow(({ history }) => history.job.id);
  const pieceId = useWindow(({ selection }) => selection?.pieceId ?? null);
  const seen = useRef({ jobId, pieceId });
  useEffect(() => {
    const before = seen.current;
    seen.current = { jobId, pieceId };
    if (before.jobId !== jobId) fitPiece();
    // what is selected in the plan itself stays where the hand is
    else if (before.pieceId === pieceId || container.current?.matches(':hover') === true) return;
    else if (!isInSight(store, newest.current)) fitPiece();
  }, [jobId, pieceId, fitPiece, store, container]);

  return { frame, newest, change, fitJob, ring: useFlight(newest, change) };
}

function marginPx({ widthPx, heightPx }: Frame): number {
  return Math.min(MARGIN_PX, MARGIN_SHARE * Math.min(widthPx, heightPx));
}

/** Whether the whole of the selected piece is on the screen. */
function isInSight(store: WindowStore, frame: Frame): boolean {
  const { history, selection } = store.getState();
  const piece = history.job.pieces.find(({ id }) => id === selection?.pieceId);
  return piece === undefined || isSeen(frame, piecePlanBounds(piece));
}

/** Answers the window's requests to go somewhere; gives the point to ring for a short while. */
function useFlight(newest: RefObject<Frame>, change: PlanFrame['change']): PlanFrame['ring'] {
  const store = useStore();
  const flyTo = useWindow((state) => state.flyTo);
  const [ring, setRing] = useState<PlanFrame['ring']>(null);
  useEffect(() => {
    if (flyTo === null || newest.current.widthPx === 0) return;
    const piece = store.getState().history.job.pieces.find(({ id }) => id === flyTo.pieceId);
    if (piece === undefined) return;
    const { at, request } = flyTo;
    change((old) => {
      const whole = fitted(old, piecePlanBounds(piece), marginPx(old));
      // nearer than a fit the eye has chosen its own distance
      const pxPerIn = Math.max(old.pxPerIn, whole.pxPerIn);
      return at === null ? whole : { ...old, pxPerIn, centre: at };
    });
    if (at === null) return;
    setRing({ at, request });
    const timer = setTimeout(() => setRing(null), RING_MS);
    return () => clearTimeout(timer);
  }, [flyTo, newest, change, store]);
  return ring;
}
