/** Bucket by bucket: which batch, into which form, where along it, when. */
import type { Point } from '../outline';
import type { Trace } from '../trace';
import type { BatchTime, Pace } from './batch-clock';
import { placingMinutes } from './batch-clock';
import type { Casting } from './cold-joints';
import type { FillPath } from './fill-path';
import { fillPlace } from './fill-path';
import { wholeUp } from './mix-formulas';

export interface Bucket {
  readonly id: string;
  readonly trace: Trace;
  /** Within its batch, from 1. */
  readonly number: number;
  readonly batch: number;
  readonly pieceId: string;
  readonly copy: number;
  /** Where it is tipped, in the drawing. */
  readonly at: Point;
  readonly volumeFt3: number;
  readonly weightLb: number;
  /** Minutes from the first water. */
  readonly fromMinutes: number;
  readonly toMinutes: number;
}

export interface TimelineTask {
  readonly pourId: string;
  readonly castings: readonly Casting[];
  readonly placedFt3: readonly number[];
  readonly times: readonly BatchTime[];
  readonly pace: Pace;
  readonly bucketFt3: number;
  readonly wetDensityPcf: number;
  readonly paths: ReadonlyMap<string, FillPath>;
}

/** A volume below this is rounding, ft3. */
const SAME_FT3 = 1e-9;

/** Every bucket in order. What of a batch goes into one form is shared out to buckets alike, none over its fill. */
export function bucketTimeline(task: TimelineTask): Bucket[] {
  const buckets: Bucket[] = [];
  let casting = 0;
  let filledFt3 = 0;
  task.placedFt3.forEach((placedFt3, k) => {
    let number = 0;
    let doneFt3 = 0;
    while (placedFt3 - doneFt3 > SAME_FT3 && casting < task.castings.length) {
      const open = task.castings[casting]!;
      const intoFt3 = Math.min(placedFt3 - doneFt3, open.volumeFt3 - filledFt3);
      const count = Math.max(1, wholeUp(intoFt3 / task.bucketFt3));
      for (let i = 0; i < count; i++) {
        number++;
        buckets.push(bucketOf(task, open, { batch: k, number, i, count, intoFt3, doneFt3, filledFt3 }));
      }
      doneFt3 += intoFt3;
      filledFt3 += intoFt3;
      if (open.volumeFt3 - filledFt3 > SAME_FT3) continue;
      casting++;
      filledFt3 = 0;
    }
  });
  return buckets;
}

interface Share {
  readonly batch: number;
  readonly number: number;
  readonly i: number;
  readonly count: number;
  readonly intoFt3: number;
  readonly doneFt3: number;
  readonly filledFt3: number;
}

function bucketOf(task: TimelineTask, { pieceId, copy, volumeFt3: formFt3 }: Casting, share: Share): Bucket {
  const { batch, number, i, count, intoFt3, doneFt3, filledFt3 } = share;
  const volumeFt3 = intoFt3 / count;
  const at = (buckets: number) =>
    task.times[batch]!.readyMinutes + placingMinutes(task.pace, doneFt3 + buckets * volumeFt3);
  const full = (buckets: number) => (filledFt3 + buckets * volumeFt3) / formFt3;
  return {
    id: `${task.pourId}/batch/${batch + 1}/bucket/${number}`,
    trace: { pieceId, part: { kind: 'piece' } },
    number,
    batch: batch + 1,
    pieceId,
    copy,
    at: fillPlace(task.paths.get(pieceId)!, full(i), full(i + 1)),
    volumeFt3,
    weightLb: volumeFt3 * task.wetDensityPcf,
    fromMinutes: at(i),
    toMinutes: at(i + 1),
  };
}
