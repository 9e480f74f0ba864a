/** The minutes of a pour as a drawing in px: batches in their mixers, buckets in their forms, and where each batch turns stiff. */
import type { Pour, PourClock } from '../../src-core/pour';
import { castingName } from './pour-choice';

export interface TimelineBar {
  readonly key: string;
  readonly x: number;
  readonly widthPx: number;
  /** Number of the batch; empty where it would not fit. */
  readonly label: string;
  readonly batch: number;
}

export interface TimelineRow {
  readonly key: string;
  readonly kind: 'mixer' | 'form' | 'limit';
  readonly label: string;
  /** Of the line of words above the bars, and of the top of the bars, px. */
  readonly labelY: number;
  readonly barY: number;
  /** For a limit, marks without a width. */
  readonly bars: readonly TimelineBar[];
}

export interface TimelineTick {
  readonly minutes: number;
  readonly x: number;
}

export interface TimelineDrawing {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rows: readonly TimelineRow[];
  readonly ticks: readonly TimelineTick[];
  readonly axisY: number;
  /** Where the first batch turns stiff, px. */
  readonly firstLimitX: number;
}

/** Of a row: a line of words, the bars below it, and the space to the next row, px. */
const LABEL_PX = 18;
/** Height of a bar, px. */
export const BAR_PX = 18;
const GAP_PX = 8;
const AXIS_PX = 40;
/** Free at both ends, so that the words under the first tick and beside the last mark are whole, px. */
const LEFT_PX = 18;
const RIGHT_PX = 24;
/** Narrowest bar, and narrowest that takes a number, px. */
const LEAST_BAR_PX = 1.5;
const NUMBER_PX = 20;
/** Least distance of ticks, px, and the steps that they may have, minutes. */
const TICK_PX = 48;
const STEPS = [5, 10, 15, 20, 30, 60, 120, 240];

/** The drawing in a width; null where there is no clock, or no width to draw in. */
export function timelineDrawing(pour: Pour, widthPx: number): TimelineDrawing | null {
  const { clock } = pour;
  if (clock === null || widthPx <= LEFT_PX + RIGHT_PX) return null;
  const limits = clock.times.map(({ waterMinutes }) => waterMinutes + clock.workingMinutes);
  const endMinutes = Math.max(...limits, ...clock.times.map(({ placedMinutes }) => placedMinutes));
  const pxAMinute = (widthPx - LEFT_PX - RIGHT_PX) / endMinutes;
  const xOf = (minutes: number) => LEFT_PX + minutes * pxAMinute;
  const bare = [...mixerRows(clock, xOf), ...formRows(pour, clock, xOf), limitRow(limits, xOf)];
  const rows = bare.map((row, k) => {
    const top = k * (LABEL_PX + BAR_PX + GAP_PX);
    return { ...row, labelY: top + LABEL_PX / 2, barY: top + LABEL_PX };
  });
  const axisY = rows.length * (LABEL_PX + BAR_PX + GAP_PX);
  return {
    widthPx,
    heightPx: axisY + AXIS_PX,
    rows,
    ticks: ticksTo(endMinutes, pxAMinute).map((minutes) => ({ minutes, x: xOf(minutes) })),
    axisY,
    firstLimitX: xOf(limits[0] ?? 0),
  };
}

type BareRow = Omit<TimelineRow, 'labelY' | 'barY'>;

/** Batches go to the mixers in turn. */
function mixerRows({ pace, times }: PourClock, xOf: (minutes: number) => number): BareRow[] {
  const mixers = Math.min(pace.mixers, times.length);
  return Array.from({ length: mixers }, (_, mixer) => ({
    key: `mixer-${mixer + 1}`,
    kind: 'mixer' as const,
    label: mixers === 1 ? 'Mixer' : `Mixer ${mixer + 1}`,
    bars: times.flatMap(({ waterMinutes, readyMinutes }, k) =>
      k % mixers === mixer ? [barOf(`batch-${k + 1}`, k + 1, xOf(waterMinutes), xOf(readyMinutes))] : [],
    ),
  }));
}

function formRows(pour: Pour, { order, buckets }: PourClock, xOf: (minutes: number) => number): BareRow[] {
  return order.map(({ pieceId, copy }) => ({
    key: `${pieceId}-${copy}`,
    kind: 'form' as const,
    label: castingName(pour, pieceId, copy),
    bars: buckets
      .filter((bucket) => bucket.pieceId === pieceId && bucket.copy === copy)
      .map(({ id, batch, fromMinutes, toMinutes }) => ({
        ...barOf(id, batch, xOf(fromMinutes), xOf(toMinutes)),
        label: '',
      })),
  }));
}

function limitRow(limits: readonly number[], xOf: (minutes: number) => number): BareRow {
  let freeFromX = Number.NEGATIVE_INFINITY;
  return {
    key: 'limit',
    kind: 'limit',
    label: 'Stiff: end of the working time of each batch',
    bars: limits.map((minutes, k) => {
      const x = xOf(minutes);
      const isShown = x >= freeFromX;
      if (isShown) freeFromX = x + NUMBER_PX;
      return { key: `limit-${k + 1}`, x, widthPx: 0, batch: k + 1, label: isShown ? String(k + 1) : '' };
    }),
  };
}

function barOf(key: string, batch: number, fromX: number, toX: number): TimelineBar {
  const widthPx = Math.max(LEAST_BAR_PX, toX - fromX);
  return { key, x: fromX, widthPx, batch, label: widthPx >= NUMBER_PX ? String(batch) : '' };
}

/** Round minutes from the first water on, no closer than words take. */
function ticksTo(endMinutes: number, pxAMinute: number): number[] {
  const step = STEPS.find((minutes) => minutes * pxAMinute >= TICK_PX) ?? STEPS.at(-1)!;
  return Array.from({ length: Math.floor(endMinutes / step) + 1 }, (_, k) => k * step);
}

/** The drawing in words. */
export function timelineWords({ clock, batches }: Pour): string {
  if (clock === null) return '';
  const placed = Math.round(Math.max(...clock.times.map(({ placedMinutes }) => placedMinutes)));
  const mixers = clock.pace.mixers === 1 ? 'one mixer' : `${clock.pace.mixers} mixers`;
  return `Minute by minute: ${batches.length} batches in ${mixers}, the first water at minute 0, the last placed by minute ${placed}. The first batch turns stiff at minute ${Math.floor(clock.workingMinutes)}.`;
}
