import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { SnapTarget } from '../../src-core/drawing';
import { snapPoint, snapTargets } from '../../src-core/drawing';
import { drawPiece } from '../../src-core/edit';
import type { Point } from '../../src-core/outline';
import { printLength } from '../../src-core/units';
import { useJob, useStore } from '../state/store-context';
import { DrawnSides } from './DrawnSides';
import styles from './DrawTool.module.css';
import type { DrawState } from './draw-state';
import { EMPTY_DRAWING, enter, placeCorner, pointTo, sideIn, stepBack, typeCharacter } from './draw-state';
import type { Frame } from './frame';
import { toPixel, toPlan } from './frame';
import { PointerNote } from './PointerNote';
import { arrowStep, gridIn } from './plan-steps';
import { placeIn } from './plan-targets';
import { snapWords } from './snap-move';

interface Props {
  readonly frame: Frame;
  /** Leaves drawing, with a piece made or without. */
  readonly onLeave: () => void;
}

const REACH_PX = 10;

/** Draws a piece corner by corner: corners by click or Space, sides by typed length, closed on the first corner or by Enter. */
export function DrawTool({ frame, onLeave }: Props) {
  const store = useStore();
  const job = useJob();
  const system = job.shownIn;
  const [state, setState] = useState(EMPTY_DRAWING);
  const [words, setWords] = useState<string | null>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const targets = useMemo(
    () => [...snapTargets(job, []), ...ownTargets(state.corners)],
    [job, state.corners],
  );
  const reachIn = REACH_PX / frame.pxPerIn;

  useEffect(() => sheet.current?.focus(), []);

  /** Goes on, or makes the piece where it has been closed; a piece that is refused stays to be mended. */
  const take = (next: DrawState) => {
    if (!next.isClosed) {
      setState(next);
      return;
    }
    const { run, select } = store.getState();
    const [problem] = run(drawPiece, { corners: next.corners });
    if (problem !== undefined) {
      setState({ ...next, isClosed: false, sentence: problem.sentence });
      return;
    }
    const made = store.getState().history.job.pieces.at(-1);
    if (made !== undefined) select({ pieceId: made.id, part: { kind: 'piece' } });
    onLeave();
  };

  const follow = (event: PointerEvent<HTMLDivElement>): DrawState => {
    const hand = toPlan(frame, placeIn(event.currentTarget, event));
    const snapped = snapPoint(hand, { gridIn: gridIn(system), targets, reachIn });
    setWords(snapWords(snapped.to));
    const next = pointTo(state, snapped.at, event.shiftKey);
    setState(next);
    return next;
  };

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.ctrlKey || event.metaKey) return;
    const by = arrowStep(event, system);
    if (event.key === 'Escape') onLeave();
    else if (event.key === 'Enter') take(enter(state, system));
    else if (event.key === 'Backspace') take(stepBack(state));
    else if (event.key === ' ' && state.typed === '') take(placeCorner(state, reachIn / 4));
    else if (by !== null) {
      const from = state.cursor ?? state.corners.at(-1) ?? frame.centre;
      take(pointTo(state, { xIn: from.xIn + by.dxIn, yIn: from.yIn + by.dyIn }, false));
    } else if (event.key.length === 1) take(typeCharacter(state, event.key));
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const length = sideIn(state) ?? 0;
  const figure = state.typed !== '' ? state.typed : length > 0 ? printLength(length, { system }) : null;
  const at = state.cursor === null ? null : toPixel(frame, state.cursor);
  const sentence = state.sentence ?? [figure, words].filter((part) => part !== null).join(', ');
  return (
    <div
      ref={sheet}
      className={styles.sheet}
      role="application"
      aria-label="Drawing a piece"
      aria-describedby="draw-help"
      data-own=""
      // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys, and this one is drawn in with them
      tabIndex={0}
      onPointerMove={follow}
      onPointerDown={(event) => {
        if (event.button === 0) take(placeCorner(follow(event), reachIn));
      }}
      onKeyDown={onKeyDown}
    >
      <DrawnSides frame={frame} corners={state.corners} cursor={state.cursor} />
      <p
        id="draw-help"
        className={styles.help}
        // out of the way of the hand
        data-at={at !== null && at.yPx > frame.heightPx / 2 ? 'top' : 'foot'}
      >
        Click each corner. Shift keeps a side straight. Type a length and Enter for the next side; Enter or
        the first corner closes the piece, Backspace takes a corner back, Escape leaves.
      </p>
      <PointerNote
        note={
          at === null || sentence === ''
            ? null
            : { tone: state.sentence === null ? 'plain' : 'trouble', sentence, at }
        }
        widthPx={frame.widthPx}
      />
    </div>
  );
}

/** Corners drawn so far draw the next one level with themselves. */
function ownTargets(corners: readonly Point[]): SnapTarget[] {
  return corners.map((at, i) => ({
    kind: 'point',
    key: `drawn/corner-${i}`,
    words: i === 0 ? 'first corner' : `corner ${i + 1}`,
    at,
  }));
}
