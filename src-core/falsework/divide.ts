/** Where a run of deck is cut into sections. */
import { sharedIn } from './runs';

/** A stretch along a run, and the thing that it lies under, or null. */
export interface Stretch {
  readonly fromIn: number;
  readonly toIn: number;
  readonly ownerId: string | null;
}

/** Bays nearer than this share their line; ends of a run this near to a bay belong to it, in. Common practice, no source. */
const SAME_LINE_IN = 6;
const END_BELONGS_IN = 12;
/** A cut keeps this far from an opening, for its trimmer, in; no stretch gets shorter than the least, in. */
const CLEAR_OF_OPENING_IN = 3;
const LEAST_STRETCH_IN = 6;

/**
 * Cuts a run from `fromIn` to `toIn` into stretches: one to each bay, the ends and gaps left over between them, none wider than
 * `mostIn` by more than rounding. No cut falls into or beside an opening where it can be moved aside.
 */
export function divideRun(
  run: { readonly fromIn: number; readonly toIn: number },
  bays: readonly Stretch[],
  openings: readonly { readonly fromIn: number; readonly toIn: number }[],
  mostIn: number,
): Stretch[] {
  const sorted = [...bays].sort((a, b) => a.fromIn - b.fromIn);
  const rough: Stretch[] = [];
  let at = run.fromIn;
  sorted.forEach((bay, i) => {
    const nextIn = sorted[i + 1]?.fromIn ?? null;
    const startIn = Math.max(at, bay.fromIn);
    if (startIn - at > (i === 0 ? END_BELONGS_IN : SAME_LINE_IN)) {
      rough.push({ fromIn: at, toIn: startIn, ownerId: null });
      at = startIn;
    }
    const gapIn = (nextIn ?? run.toIn) - bay.toIn;
    const reachIn =
      nextIn === null
        ? gapIn <= END_BELONGS_IN
          ? run.toIn
          : bay.toIn
        : gapIn <= SAME_LINE_IN
          ? (bay.toIn + nextIn) / 2
          : bay.toIn;
    const endIn = Math.min(run.toIn, Math.max(at, reachIn));
    if (endIn > at) rough.push({ fromIn: at, toIn: endIn, ownerId: bay.ownerId });
    at = endIn;
  });
  if (run.toIn - at > 1e-9) rough.push({ fromIn: at, toIn: run.toIn, ownerId: null });
  return movedOffOpenings(
    rough.flatMap((stretch) => evenly(stretch, mostIn)),
    openings,
  );
}

/** A stretch cut into as few equal ones as keep within a width. */
export function evenly({ fromIn, toIn, ownerId }: Stretch, mostIn: number): Stretch[] {
  const count = Math.max(1, Math.ceil((toIn - fromIn) / mostIn - 1e-9));
  const stepIn = (toIn - fromIn) / count;
  return Array.from({ length: count }, (_, i) => ({
    fromIn: fromIn + i * stepIn,
    toIn: fromIn + (i + 1) * stepIn,
    ownerId,
  }));
}

function movedOffOpenings(
  stretches: readonly Stretch[],
  openings: readonly { readonly fromIn: number; readonly toIn: number }[],
): Stretch[] {
  const cuts = stretches.slice(1).map(({ fromIn }) => fromIn);
  const [first, last] = [stretches[0]?.fromIn ?? 0, stretches.at(-1)?.toIn ?? 0];
  const clear = cuts.map((cut, i) => {
    const struck = openings.find(
      ({ fromIn, toIn }) =>
        sharedIn(cut, cut, fromIn - CLEAR_OF_OPENING_IN, toIn + CLEAR_OF_OPENING_IN) > -1e-9,
    );
    if (struck === undefined) return cut;
    const before = struck.fromIn - CLEAR_OF_OPENING_IN;
    const after = struck.toIn + CLEAR_OF_OPENING_IN;
    const lowIn = (cuts[i - 1] ?? first) + LEAST_STRETCH_IN;
    const highIn = (cuts[i + 1] ?? last) - LEAST_STRETCH_IN;
    const choices = [before, after].filter((place) => place >= lowIn && place <= highIn);
    return (
      choices.reduce(
        (best: number | null, place) =>
          best === null || Math.abs(place - cut) < Math.abs(best - cut) ? place : best,
        null,
      ) ?? cut
    );
  });
  return stretches.map(({ ownerId }, i) => ({
    fromIn: clear[i - 1] ?? first,
    toIn: clear[i] ?? last,
    ownerId,
  }));
}
