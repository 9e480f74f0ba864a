/** The batches of a pour as rows to tick off. */
import type { Pour } from '../../src-core/pour';
import { tickIdOf } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { countWords, pigmentWords, volumeWords, waterWords } from './amount-words';
import { clockTime } from './clock-time';
import { castingName } from './pour-choice';

export interface BatchTimeRow {
  readonly label: string;
  /** "08:14". */
  readonly time: string;
  /** "14 min" from the first water. */
  readonly minutes: string;
}

export interface BatchPlace {
  readonly key: string;
  /** "4 buckets". */
  readonly buckets: string;
  readonly pieceId: string;
  readonly name: string;
}

export interface BatchRow {
  readonly id: string;
  readonly tickId: string;
  readonly number: number;
  readonly isDone: boolean;
  readonly bags: string;
  /** "13.5 lb (1.62 gal) of water, 1.2 lb of Slate grey". */
  readonly amounts: string;
  readonly times: readonly BatchTimeRow[];
  readonly places: readonly BatchPlace[];
  /** "0.46 cu ft is kept back to top up."; empty where nothing is. */
  readonly kept: string;
}

/** Less than this is rounding of the arithmetic, ft3. */
const LEAST_KEPT_FT3 = 0.005;

/** One row a batch, in the order of mixing. */
export function batchRows(
  pour: Pour,
  ticks: ReadonlySet<string>,
  startMinutes: number,
  system: UnitSystem,
): BatchRow[] {
  const time = (label: string, minutes: number): BatchTimeRow => ({
    label,
    time: clockTime(startMinutes, minutes),
    minutes: `${Math.round(minutes)} min`,
  });
  return pour.batches.map((batch) => {
    const tickId = tickIdOf(batch);
    const pigment = pigmentWords(batch.pigmentLb, pour.colour, system);
    return {
      id: batch.id,
      tickId,
      number: batch.number,
      isDone: ticks.has(tickId),
      bags: countWords(batch.bags, 'bag', 'bags'),
      amounts: [waterWords(batch, system), ...(pigment === null ? [] : [pigment])].join(', '),
      times: [
        time('Water in', batch.waterMinutes),
        time('Ready', batch.readyMinutes),
        time('Placed by', batch.placedMinutes),
      ],
      places: placesOf(pour, batch.number),
      kept:
        batch.keptFt3 < LEAST_KEPT_FT3 ? '' : `${volumeWords(batch.keptFt3, system)} is kept back to top up.`,
    };
  });
}

/** Where a batch goes, form after form. */
function placesOf(pour: Pour, number: number): BatchPlace[] {
  const counts = new Map<string, { readonly pieceId: string; readonly copy: number; count: number }>();
  for (const { batch, pieceId, copy } of pour.clock?.buckets ?? []) {
    if (batch !== number) continue;
    const key = `${pieceId} ${copy}`;
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { pieceId, copy, count: 1 });
    else known.count++;
  }
  return [...counts].map(([key, { pieceId, copy, count }]) => ({
    key,
    buckets: countWords(count, 'bucket', 'buckets'),
    pieceId,
    name: castingName(pour, pieceId, copy),
  }));
}
