import type { KeyboardEvent } from 'react';
import { useLayoutEffect, useMemo, useRef } from 'react';
import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import type { Job, Piece } from '../../src-core/job';
import type { DayLine } from '../../src-core/sequence';
import { useStore, useWindow } from '../state/store-context';
import { Bars } from './Bars';
import type { BarRow } from './bar-rows';
import styles from './DayString.module.css';
import { dayAtStop, finishedStop, stopOfDay, xOfDay } from './day-scale';
import { longDate } from './day-words';
import { Knots } from './Knots';
import { knotsOf } from './knots';
import { dayAfter, dayBefore } from './next-day';
import { spokenDay } from './spoken-day';
import { wordsWidthPx } from './string-levels';
import { useWidth } from './use-width';

interface Props {
  readonly job: Job;
  readonly line: DayLine;
  readonly piece: Piece;
  readonly rows: readonly BarRow[];
  readonly isFolded: boolean;
}

/** Room at either end of the string for half a playhead, px, as its margins in the style sheet. */
const LEFT_ROOM_PX = 16;
const RIGHT_ROOM_PX = 40;
const PLAYHEAD_SIDES_PX = 20;

/** The string with its knots and bars, and the playhead on it: drag it, press anywhere, or use the keys. */
export function DayString({ job, line, piece, rows, isFolded }: Props) {
  const store = useStore();
  const day = useWindow((state) => state.day);
  const box = useRef<HTMLDivElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const widthPx = Math.max(0, useWidth(box) - LEFT_ROOM_PX - RIGHT_ROOM_PX);
  const knots = useMemo(() => knotsOf(line, piece.id), [line, piece.id]);
  const days = useMemo(() => knots.filter(({ isOwn }) => isOwn).map((knot) => knot.day), [knots]);
  const stop = stopOfDay(line, day);
  const shownDay = dayAtStop(line, stop);
  const spoken = useMemo(() => spokenDay(job, line, piece, shownDay), [job, line, piece, shownDay]);

  // the slider would read out the bare number of the stop
  useLayoutEffect(() => input.current?.setAttribute('aria-valuetext', spoken));

  const onKey = (event: KeyboardEvent) => {
    const to = KEYS[event.key]?.(days, shownDay, line);
    if (to === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    store.getState().setDay(to);
  };

  const words =
    shownDay === null
      ? 'finished'
      : [`day ${shownDay}`, longDate(job.site.calendar, shownDay)].flatMap((one) => one ?? []).join(', ');
  const xPx = xOfDay(line, stop, widthPx);
  const halfPx = wordsWidthPx(words) / 2 + PLAYHEAD_SIDES_PX / 2;
  const nudgePx =
    Math.max(0, halfPx - xPx - LEFT_ROOM_PX) - Math.max(0, xPx + halfPx - widthPx - RIGHT_ROOM_PX);
  return (
    <div ref={box} className={`${styles.box} ${isFolded ? styles.folded : ''}`} onKeyDownCapture={onKey}>
      <Slider
        aria-label="Day that is shown"
        value={stop}
        onChange={(value: number) => store.getState().setDay(dayAtStop(line, value))}
        minValue={line.firstDay}
        maxValue={finishedStop(line)}
        className={styles.slider ?? ''}
      >
        <SliderTrack className={styles.track ?? ''}>
          <svg className={styles.drawing} aria-hidden="true">
            {!isFolded && <Bars job={job} line={line} rows={rows} widthPx={widthPx} />}
            <Knots line={line} knots={knots} day={shownDay} widthPx={widthPx} isFolded={isFolded} />
          </svg>
          <SliderThumb inputRef={input} className={styles.playhead ?? ''}>
            <span className={styles.words} style={{ translate: `calc(-50% + ${nudgePx}px) 0` }}>
              {words}
            </span>
          </SliderThumb>
        </SliderTrack>
      </Slider>
    </div>
  );
}

type Move = (days: readonly number[], day: number | null, line: DayLine) => number | null;

/** Keys beside the arrows, which go a day. */
const KEYS: { readonly [key: string]: Move | undefined } = {
  PageUp: dayAfter,
  PageDown: dayBefore,
  Home: (_, __, { firstDay }) => firstDay,
  End: () => null,
};
