/** Finds the longest overhang that holds: a search on a coarse mesh, its answer settled on the fine one. */

/** What one overhang turned out to be. `ratio` is demand over limit of the check that decides; over 1 it fails. */
export interface Trial {
  readonly ratio: number;
}

export interface Tried<T extends Trial> {
  readonly step: number;
  readonly trial: T;
}

export interface Found<T extends Trial> {
  /** Longest step that holds on the fine mesh; null where the shortest fails. */
  readonly holds: Tried<T> | null;
  /** Shortest step beyond it that was seen to fail on the fine mesh; null where none was. */
  readonly fails: Tried<T> | null;
}

export interface Range {
  readonly least: number;
  readonly most: number;
  /** Where to look first, for instance where a like search ended. */
  readonly first: number;
}

interface Closeness {
  /** A step that holds with at least this ratio is near enough to the limit. */
  readonly enoughRatio: number;
  /** One that fails with no more than this ratio is too; 1 where only one that holds is. */
  readonly failingRatio: number;
  /** Steps between one that holds and one that fails at which nothing is left to find. */
  readonly enoughSteps: number;
  /** Runs after which what holds is kept as it is. */
  readonly mostRuns: number;
}

const COARSE: Closeness = { enoughRatio: 0.97, failingRatio: 1.03, enoughSteps: 4, mostRuns: 10 };
/** Within 1 % of the limit, or an eighth of an inch short of one that fails. */
const FINE: Closeness = { enoughRatio: 0.99, failingRatio: 1, enoughSteps: 1, mostRuns: 6 };
/** The ratio that is aimed for: a run that fails costs more than one that holds, and no answer is one. */
const AIM_RATIO = 0.995;
/** Growth of the ratio over a step: no less is believed, so that a flat stretch makes no endless stride. */
const LEAST_SLOPE = 1e-3;
/** A failing ratio counts as no more, so that a hopeless end does not bend the interpolation. */
const HOPELESS_RATIO = 2;

/**
 * Longest whole step from `least` to `most` that holds, `tryOn` being asked as seldom as possible. The ratio need not grow
 * evenly; where it rises and falls, one of its crossings of 1 is found. null where `tryOn` gives up.
 */
export function findLongest<T extends Trial>(
  range: Range,
  tryOn: (step: number, mesh: 'coarse' | 'fine') => T | null,
): Found<T> | null {
  const coarse = search(range, null, COARSE, (step) => tryOn(step, 'coarse'));
  if (coarse === null) return null;
  return search({ ...range, first: guessOf(coarse, range) }, coarse.slope, FINE, (step) =>
    tryOn(step, 'fine'),
  );
}

interface Outcome<T extends Trial> extends Found<T> {
  /** Growth of the ratio over a step near the answer. */
  readonly slope: number;
}

function search<T extends Trial>(
  { least, most, first }: Range,
  knownSlope: number | null,
  close: Closeness,
  tryAt: (step: number) => T | null,
): Outcome<T> | null {
  let low: Tried<T> | null = null;
  let high: Tried<T> | null = null;
  let last: Tried<T> | null = null;
  let slope = knownSlope;
  let step = first;
  for (let run = 1, onOneSide = 0; ; run++) {
    const trial = tryAt(step);
    if (trial === null) return null;
    const here: Tried<T> = { step, trial };
    const holds = trial.ratio <= 1;
    onOneSide = last !== null && last.trial.ratio <= 1 === holds ? onOneSide + 1 : 0;
    if (holds) low = here;
    else high = here;
    slope = slopeThrough(last, here) ?? slope ?? clipped(trial) / step;
    last = here;
    if (isDone(low, high, { least, most }, close, run)) return { holds: low, fails: high, slope };
    if (low !== null && high !== null) step = between(low, high, onOneSide >= 2);
    else step = Math.min(most, Math.max(least, beyond(here, slope)));
  }
}

function isDone<T extends Trial>(
  low: Tried<T> | null,
  high: Tried<T> | null,
  { least, most }: Pick<Range, 'least' | 'most'>,
  close: Closeness,
  run: number,
): boolean {
  if (low?.step === most || high?.step === least) return true;
  if (low !== null && low.trial.ratio >= close.enoughRatio) return true;
  if (high !== null && high.trial.ratio <= close.failingRatio) return true;
  if (low !== null && high !== null && high.step - low.step <= close.enoughSteps) return true;
  return low !== null && run >= close.mostRuns;
}

/** Where the fine search starts: at the ratio that is aimed for, by the coarse one. */
function guessOf<T extends Trial>(
  { holds, fails, slope }: Outcome<T>,
  { least, most }: Pick<Range, 'least' | 'most'>,
): number {
  const from = holds ?? fails!;
  if (from.step === most || (holds === null && from.step === least)) return from.step;
  const reached = from.step + Math.round((AIM_RATIO - from.trial.ratio) / slope);
  const within = fails === null ? reached : Math.min(fails.step, reached);
  return Math.min(most, Math.max(least, within));
}

/** Growth of the ratio from one trial to another; null where it does not grow, or there is only one. */
function slopeThrough<T extends Trial>(a: Tried<T> | null, b: Tried<T>): number | null {
  if (a === null || a.step === b.step) return null;
  const slope = (clipped(b.trial) - clipped(a.trial)) / (b.step - a.step);
  return slope > 0 ? Math.max(LEAST_SLOPE, slope) : null;
}

/** The step where the ratio aimed for should lie, at the least one further on and at the most twice or half as far. */
function beyond<T extends Trial>({ step, trial }: Tried<T>, slope: number): number {
  const stride = Math.round((AIM_RATIO - clipped(trial)) / Math.max(LEAST_SLOPE, slope));
  if (trial.ratio <= 1) return Math.min(2 * step, step + Math.max(1, stride));
  return Math.max(Math.floor(step / 2), step + Math.min(-1, stride));
}

/** A step strictly between: the middle, or where a straight line meets the ratio aimed for. */
function between<T extends Trial>(low: Tried<T>, high: Tried<T>, halve: boolean): number {
  const rise = clipped(high.trial) - low.trial.ratio;
  const share = halve ? 0.5 : (AIM_RATIO - low.trial.ratio) / rise;
  const step = low.step + Math.round((high.step - low.step) * share);
  return Math.min(high.step - 1, Math.max(low.step + 1, step));
}

function clipped({ ratio }: Trial): number {
  return Math.min(HOPELESS_RATIO, ratio);
}
