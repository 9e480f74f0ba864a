import { type MouseEvent, useCallback, useDeferredValue, useEffect, useRef, useState } from 'react';
import { splitEdge } from '../../src-core/edit';
import { useJob, usePiece, useStore } from '../state/store-context';
import { Dimensions } from './Dimensions';
import { DrawTool } from './DrawTool';
import { toPlan, zoomed } from './frame';
import { Handles } from './Handles';
import { PlanDrawing } from './PlanDrawing';
import { PlanToolbar } from './PlanToolbar';
import styles from './PlanView.module.css';
import type { Note } from './PointerNote';
import { PointerNote } from './PointerNote';
import { isOwn, placeIn, targetAt } from './plan-targets';
import type { PlanFrame } from './use-frame';
import { useFrame } from './use-frame';
import { useHandleDrag } from './use-handle-drag';
import { usePlanKeys } from './use-plan-keys';
import { usePlanLabels } from './use-plan-labels';
import { usePlanPointer } from './use-plan-pointer';

/** The job from above, dimensioned and editable: the front is at the bottom. */
export function PlanView() {
  const store = useStore();
  const job = useJob();
  const piece = usePiece();
  const container = useRef<HTMLElement>(null);
  const plan = useFrame(container);
  const [note, setNote] = useState<Note | null>(null);
  const [isDrawing, setIsDrawing] = useState(false);
  const drag = useHandleDrag(plan.newest, setNote);
  const pointer = usePlanPointer(container, plan, drag);
  const onKeyDown = usePlanKeys(plan, drag, setNote);
  useWheelZoom(container, plan);

  const { frame, change } = plan;
  // what is written may come a moment after the outline has followed the hand
  const written = useDeferredValue(piece);
  const labels = usePlanLabels(useDeferredValue(job), written, frame);
  const onZoom = useCallback(
    (factor: number) => change((old) => zoomed(old, { xPx: old.widthPx / 2, yPx: old.heightPx / 2 }, factor)),
    [change],
  );
  const isMeasured = frame.widthPx > 0;

  /** A double click on an edge puts a corner there. */
  const onDoubleClick = (event: MouseEvent<HTMLElement>) => {
    const handle = targetAt(event.target, piece)?.handle;
    if (handle?.role !== 'edge') return;
    const at = toPlan(frame, placeIn(event.currentTarget, event));
    store.getState().run(splitEdge, { pieceId: piece.id, index: handle.index, at });
  };

  return (
    <section
      ref={container}
      className={styles.plan}
      aria-label="Plan. Tab reaches the handles of the selected piece; arrow keys move them."
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the plan pans and zooms by keys
      tabIndex={0}
      onKeyDown={onKeyDown}
      onDoubleClick={onDoubleClick}
      {...pointer}
    >
      {isMeasured && (
        <>
          <PlanDrawing job={job} frame={frame} labels={labels} ring={plan.ring} />
          {labels.frontAtPx !== null && (
            <p className={styles.front} style={{ left: labels.frontAtPx }}>
              Front
            </p>
          )}
          {isDrawing ? (
            <DrawTool frame={frame} onLeave={() => setIsDrawing(false)} />
          ) : (
            <>
              <Handles piece={piece} frame={frame} sizes={labels.handleSizes} system={job.shownIn} />
              <Dimensions pieceId={written.id} placed={labels.dimensions} system={job.shownIn} />
            </>
          )}
        </>
      )}
      <PointerNote note={note} widthPx={frame.widthPx} />
      <PlanToolbar isDrawing={isDrawing} onDraw={setIsDrawing} onZoom={onZoom} onFit={plan.fitJob} />
    </section>
  );
}

const WHEEL_RATE = 0.0015;
/** Pixels of one line, where a wheel counts lines. */
const LINE_PX = 18;

/** The wheel zooms about the pointer. React listens to wheels passively, so this listens for itself. */
function useWheelZoom(container: { readonly current: HTMLElement | null }, { change }: PlanFrame): void {
  useEffect(() => {
    const element = container.current;
    if (element === null) return;
    const turn = (event: WheelEvent) => {
      if (isOwn(event.target) && event.target instanceof HTMLInputElement) return;
      event.preventDefault();
      const byPx = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * LINE_PX : event.deltaY;
      const about = placeIn(element, event);
      change((frame) => zoomed(frame, about, Math.exp(-byPx * WHEEL_RATE)));
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [container, change]);
}
