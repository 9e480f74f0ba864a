/** Screed, fill, screed again, vibrate, wait, float, trowel: the steps of each form on the clock of the batches. */
import type { Piece } from '../job';
import { pieceRegion } from '../job';
import { distanceIn, regionAreaIn2 } from '../outline';
import type { Trace } from '../trace';
import { IN_PER_FT, IN2_PER_FT2 } from '../units';
import type { Line } from '../workings';
import type { BatchTime } from './batch-clock';
import type { Casting } from './cold-joints';
import {
  FILL_MINUTES_A_FT2,
  FLOAT_AFTER_RATIO,
  FLOAT_MINUTES_A_FT2,
  LEAST_STEP_MINUTES,
  SCREED_MINUTES_A_FT2,
  SECOND_SCREED_MINUTES_A_FT2,
  TROWEL_AFTER_RATIO,
  TROWEL_MINUTES_A_FT2,
  VIBRATE_MINUTES_A_FT,
} from './practice';
import { finishTime } from './setting-time';
import type { Bucket } from './timeline';

export type FinishKind = 'screed' | 'fill' | 'screed-again' | 'vibrate' | 'bleed' | 'float' | 'trowel';

export interface FinishStep {
  readonly id: string;
  readonly trace: Trace;
  readonly pieceId: string;
  readonly copy: number;
  readonly kind: FinishKind;
  /** Minutes from the first water of the pour. */
  readonly fromMinutes: number;
  readonly toMinutes: number;
  readonly words: string;
  readonly source: string;
}

export interface FinishTask {
  readonly pourId: string;
  readonly castings: readonly Casting[];
  readonly pieces: ReadonlyMap<string, Piece>;
  readonly buckets: readonly Bucket[];
  readonly times: readonly BatchTime[];
  /** Working time on the bag, and how fast the concrete sets beside the same at 20 deg C. */
  readonly workingMinutes: number;
  readonly settingRate: number;
}

const WORDS: { readonly [K in FinishKind]: string } = {
  screed: 'Draw the straightedge across with a sawing stroke, a roll of concrete always before it.',
  fill: 'Fill low spots from the concrete kept back, and tread it in with the float.',
  'screed-again': 'Draw the straightedge once more, the other way round.',
  vibrate: 'Vibrate the edges from outside the form until no more air comes up along it.',
  bleed: 'Wait until the sheen of water is gone. Never work bleed water in; draw it off.',
  float:
    'Float once a thumb leaves a print of 1/4 in (6 mm) at the most, from the end that was filled first.',
  trowel: 'Trowel once a thumb leaves hardly a mark, then again with the blade raised.',
};

const SOURCE = 'common practice, no source; from memory. The concrete says when, not the clock';

/** The steps of every form, in its order. Waits count from the water of the first batch in it, which sets first. */
export function finishSteps(task: FinishTask): {
  readonly steps: readonly FinishStep[];
  readonly lines: readonly Line[];
} {
  const { workingMinutes: tb, settingRate: k } = task;
  const waits = {
    float: finishTime({ tb, r: FLOAT_AFTER_RATIO, k }),
    trowel: finishTime({ tb, r: TROWEL_AFTER_RATIO, k }),
  };
  const steps = task.castings.flatMap((casting) => {
    const own = task.buckets.filter(
      ({ pieceId, copy }) => pieceId === casting.pieceId && copy === casting.copy,
    );
    const [first, last] = [own[0], own.at(-1)];
    if (first === undefined || last === undefined) return [];
    const waterMinutes = task.times[first.batch - 1]!.waterMinutes;
    return stepsOf(task.pourId, task.pieces.get(casting.pieceId)!, casting, {
      placedMinutes: last.toMinutes,
      floatMinutes: waterMinutes + waits.float.value,
      trowelMinutes: waterMinutes + waits.trowel.value,
    });
  });
  return { steps, lines: [waits.float.line, waits.trowel.line] };
}

interface Clock {
  readonly placedMinutes: number;
  readonly floatMinutes: number;
  readonly trowelMinutes: number;
}

function stepsOf(pourId: string, piece: Piece, { copy }: Casting, clock: Clock): FinishStep[] {
  const { areaFt2, edgeFt } = sizeOf(piece);
  const steps: FinishStep[] = [];
  let now = clock.placedMinutes;
  const add = (kind: FinishKind, untilMinutes: number) => {
    steps.push({
      id: `${pourId}/${piece.id}/${copy}/${kind}`,
      trace: { pieceId: piece.id, part: { kind: 'piece' } },
      pieceId: piece.id,
      copy,
      kind,
      fromMinutes: now,
      toMinutes: untilMinutes,
      words: WORDS[kind],
      source: SOURCE,
    });
    now = untilMinutes;
  };
  const work = (kind: FinishKind, minutes: number) => add(kind, now + Math.max(LEAST_STEP_MINUTES, minutes));
  work('screed', SCREED_MINUTES_A_FT2 * areaFt2);
  work('fill', FILL_MINUTES_A_FT2 * areaFt2);
  work('screed-again', SECOND_SCREED_MINUTES_A_FT2 * areaFt2);
  work('vibrate', VIBRATE_MINUTES_A_FT * edgeFt);
  add('bleed', Math.max(now, clock.floatMinutes));
  work('float', FLOAT_MINUTES_A_FT2 * areaFt2);
  now = Math.max(now, clock.trowelMinutes);
  work('trowel', TROWEL_MINUTES_A_FT2 * areaFt2);
  return steps;
}

/** Area of a slab and length of the edges that have a form of their own. */
function sizeOf(piece: Piece): { readonly areaFt2: number; readonly edgeFt: number } {
  const region = pieceRegion(piece);
  if (!region.ok) return { areaFt2: 0, edgeFt: 0 };
  const edgeIn = region.outer.reduce((sum, point, k) => {
    const isFree = (piece.edges?.[region.edgeOfPoint[k]!]?.kind ?? 'free') === 'free';
    return isFree ? sum + distanceIn(point, region.outer[(k + 1) % region.outer.length]!) : sum;
  }, 0);
  return { areaFt2: regionAreaIn2(region) / IN2_PER_FT2, edgeFt: edgeIn / IN_PER_FT };
}
