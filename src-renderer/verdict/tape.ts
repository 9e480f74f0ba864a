/** A ratio as a measuring tape: ticks every tenth, a heavy one at the limit, a fill up to the ratio. */

/** Shortest and longest tape; what is beyond the longest is cut off with an arrow. */
const SHORTEST_RATIO = 1.75;
const LONGEST_RATIO = 2.5;
const STEP_RATIO = 0.25;
const TICKS_PER_ONE = 10;
const TICKS_PER_LONG = 5;

export interface TapeTick {
  /** Place along the tape as a share of its length. */
  readonly share: number;
  readonly isLong: boolean;
}

export interface TapeDrawing {
  readonly ticks: readonly TapeTick[];
  readonly limitShare: number;
  readonly fillShare: number;
  /** Whether the ratio lies beyond the end of the tape. */
  readonly isCut: boolean;
}

/** Ratio at the end of the tapes of one piece: all are cut to one length, so that their limits stand in one line. */
export function tapeEndRatio(ratios: readonly number[]): number {
  const highest = Math.max(0, ...ratios);
  const rounded = Math.ceil(highest / STEP_RATIO) * STEP_RATIO;
  return Math.min(LONGEST_RATIO, Math.max(SHORTEST_RATIO, rounded));
}

/** Where everything on the tape of `ratio` lies. */
export function tapeOf(ratio: number, endRatio: number): TapeDrawing {
  const count = Math.floor(endRatio * TICKS_PER_ONE + 1e-9);
  return {
    ticks: Array.from({ length: count + 1 }, (_, tick) => ({
      share: tick / TICKS_PER_ONE / endRatio,
      isLong: tick % TICKS_PER_LONG === 0,
    })),
    limitShare: 1 / endRatio,
    fillShare: Math.min(1, ratio / endRatio),
    isCut: ratio > endRatio,
  };
}
