/** Every bucket of a pour: which batch, when, into which form, how heavy. */
import type { Pour } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { massWords } from './amount-words';
import { clockTime } from './clock-time';
import { castingName } from './pour-choice';

export interface BucketRow {
  readonly id: string;
  /** "1.3": the third bucket of the first batch. */
  readonly number: string;
  readonly time: string;
  readonly pieceId: string;
  readonly name: string;
  readonly weight: string;
}

/** One row a bucket, in the order of tipping. */
export function bucketRows(pour: Pour, startMinutes: number, system: UnitSystem): BucketRow[] {
  return (pour.clock?.buckets ?? []).map(({ id, batch, number, fromMinutes, pieceId, copy, weightLb }) => ({
    id,
    number: `${batch}.${number}`,
    time: clockTime(startMinutes, fromMinutes),
    pieceId,
    name: castingName(pour, pieceId, copy),
    weight: massWords(weightLb, system),
  }));
}
