/** Where lengths of steel lap along one line: as few lengths as reach, and their laps away from bending peaks. */
import type { Stretch } from './frame';
import { LAP_STEP_IN, PEAK_CLEAR_IN } from './practice';

/** A stretch of a line over which bending peaks, in. */
export interface Peak extends Stretch {
  /** "midspan", "over cabinet R1". */
  readonly words: string;
}

export interface LapLine {
  /** From the start of the line to its end, in. */
  readonly spanIn: number;
  /** Longest length to be had, and the lap, in. */
  readonly mostIn: number;
  readonly lapIn: number;
  /** By distance from the start of the line. */
  readonly peaks: readonly Peak[];
  /** Full lengths from the start of the line, or from its end. */
  readonly fullFrom: 'start' | 'end';
}

export interface LapPlace {
  /** The lap runs from here for `lapIn`, in. */
  readonly atIn: number;
  readonly clearIn: number | null;
  readonly nearestPeak: string;
}

export interface LapPlaces {
  /** The lengths in order; neighbours share a lap. */
  readonly lengths: readonly Stretch[];
  readonly laps: readonly LapPlace[];
  /** No length is long enough to lap: the line is one length longer than the stock. */
  readonly isTooLong: boolean;
}

const NEAR_IN = 1e-6;

/**
 * Fewest lengths that reach, lapped where they stay clearest of the peaks (up to the distance that is worth seeking);
 * of places equally clear those that leave full lengths. Where a lap would still lie over a peak one length more is
 * tried, and taken if none does then.
 */
export function lapPlaces(line: LapLine): LapPlaces {
  const { spanIn, mostIn, lapIn } = line;
  if (spanIn <= mostIn + NEAR_IN)
    return { lengths: [{ fromIn: 0, toIn: spanIn }], laps: [], isTooLong: false };
  if (mostIn < 3 * lapIn) return { lengths: [{ fromIn: 0, toIn: spanIn }], laps: [], isTooLong: true };
  const count = Math.ceil((spanIn - lapIn) / (mostIn - lapIn) - 1e-9);
  const fewest = clearestPlaces(line, count);
  const hasRoom = spanIn >= (count + 2) * lapIn;
  const more = hasRoom && leastClearIn(line, fewest) < 0 ? clearestPlaces(line, count + 1) : null;
  const starts = more !== null && leastClearIn(line, more) >= 0 ? more : fewest;
  const laps = starts.map((atIn) => ({ atIn, ...nearest(line, atIn) }));
  const lengths = [0, ...starts].map((fromIn, k) => ({
    fromIn,
    toIn: k < starts.length ? starts[k]! + lapIn : spanIn,
  }));
  return { lengths, laps, isTooLong: false };
}

/** From a lap to the nearest peak, in: below 0 by how deep it reaches into one. */
function nearest({ lapIn, peaks }: LapLine, atIn: number): Omit<LapPlace, 'atIn'> {
  let best: Omit<LapPlace, 'atIn'> = { clearIn: null, nearestPeak: '' };
  for (const { fromIn, toIn, words } of peaks) {
    const clearIn = Math.max(fromIn - (atIn + lapIn), atIn - toIn);
    if (best.clearIn === null || clearIn < best.clearIn) best = { clearIn, nearestPeak: words };
  }
  return best;
}

function worthIn(line: LapLine, atIn: number): number {
  return Math.min(PEAK_CLEAR_IN, nearest(line, atIn).clearIn ?? PEAK_CLEAR_IN);
}

function leastClearIn(line: LapLine, starts: readonly number[]): number {
  return Math.min(...starts.map((atIn) => worthIn(line, atIn)));
}

/** First the best that the worst lap can do, then, no worse than that, the fullest lengths. */
function clearestPlaces(line: LapLine, count: number): number[] {
  const places = placesToTry(line, count);
  const clearIn = bestChain(
    line,
    places,
    (atIn, soFar) => Math.min(soFar, worthIn(line, atIn)),
    PEAK_CLEAR_IN,
  );
  const sign = line.fullFrom === 'start' ? 1 : -1;
  const allowed = places.map((each) => each.filter((atIn) => worthIn(line, atIn) >= clearIn.score - NEAR_IN));
  return bestChain(line, allowed, (atIn, soFar) => soFar + sign * atIn, 0).places;
}

/** Places that each lap could take: the two ends of where it may lie, and steps between. */
function placesToTry({ spanIn, mostIn, lapIn }: LapLine, count: number): number[][] {
  const stepIn = mostIn - lapIn;
  return Array.from({ length: count - 1 }, (_, k) => {
    const before = k + 1;
    const after = count - before;
    const lowIn = Math.max(before * lapIn, spanIn - after * stepIn - lapIn);
    const highIn = Math.min(before * stepIn, spanIn - (after + 1) * lapIn);
    const first = Math.floor(lowIn / LAP_STEP_IN) + 1;
    const steps = Math.max(0, Math.ceil(highIn / LAP_STEP_IN) - first);
    return [lowIn, ...Array.from({ length: steps }, (_, i) => (first + i) * LAP_STEP_IN), highIn];
  });
}

interface Chain {
  readonly places: readonly number[];
  readonly score: number;
}

/** Best chain of places, one a lap, whose lengths between are neither longer than the stock nor shorter than two laps. */
function bestChain(
  { mostIn, lapIn }: LapLine,
  places: readonly (readonly number[])[],
  add: (atIn: number, soFar: number) => number,
  from: number,
): { readonly places: number[]; readonly score: number } {
  let chains: Chain[] = [{ places: [0], score: from }];
  places.forEach((each, k) => {
    chains = each.flatMap((atIn) => {
      let best: Chain | null = null;
      for (const chain of chains) {
        const onIn = atIn - chain.places.at(-1)!;
        if (onIn > mostIn - lapIn + NEAR_IN || onIn < lapIn - NEAR_IN) continue;
        const score = add(atIn, chain.score);
        if (best === null || score > best.score) best = { places: [...chain.places, atIn], score };
      }
      return best === null ? [] : [best];
    });
    if (chains.length === 0) throw new Error(`Lap ${k + 1} of ${places.length} has no place`);
  });
  const best = chains.reduce((most, chain) => (chain.score > most.score ? chain : most));
  return { places: best.places.slice(1), score: best.score };
}
