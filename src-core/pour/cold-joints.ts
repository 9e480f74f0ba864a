/** Where concrete of one batch meets that of the batch before it, and how old that is by then. */
import type { BatchTime } from './batch-clock';
import type { Turn } from './fill-path';

/** One form to fill: one copy of a piece. */
export interface Casting {
  readonly pieceId: string;
  /** From 1. */
  readonly copy: number;
  /** What the form takes, overfill included. */
  readonly volumeFt3: number;
  /** Where its way turns into another leg. */
  readonly turns: readonly Turn[];
}

/** A meeting of two batches within one form. */
export interface BatchJoint {
  readonly pieceId: string;
  readonly copy: number;
  /** The batch that is placed against an earlier one. */
  readonly batch: number;
  /** Share of the form that is full by then. */
  readonly fullRatio: number;
  /** From the water of the earlier batch until the later one is placed against it. */
  readonly gapMinutes: number;
  /** Working time less that; negative where the joint is cold. */
  readonly slackMinutes: number;
}

/** A volume below this is rounding, ft3. */
const SAME_FT3 = 1e-9;

/**
 * Every meeting of two batches within a form, for castings filled one after another in the order given: where one batch
 * ends and the next begins, and where the way turns into a leg beside one that an earlier batch filled.
 */
export function batchJoints(
  castings: readonly Casting[],
  placedFt3: readonly number[],
  times: readonly BatchTime[],
  workingMinutes: number,
): BatchJoint[] {
  return [
    ...frontJoints(castings, placedFt3, times, workingMinutes),
    ...turnJoints(castings, placedFt3, times, workingMinutes),
  ];
}

function frontJoints(
  castings: readonly Casting[],
  placedFt3: readonly number[],
  times: readonly BatchTime[],
  workingMinutes: number,
): BatchJoint[] {
  const joints: BatchJoint[] = [];
  let casting = 0;
  let filledBefore = 0;
  let placed = 0;
  for (let k = 0; k + 1 < placedFt3.length; k++) {
    placed += placedFt3[k]!;
    if (placedFt3[k + 1]! <= SAME_FT3) break;
    while (casting < castings.length && filledBefore + castings[casting]!.volumeFt3 <= placed + SAME_FT3) {
      filledBefore += castings[casting]!.volumeFt3;
      casting++;
    }
    const open = castings[casting];
    if (open === undefined) break;
    const fullFt3 = placed - filledBefore;
    if (fullFt3 <= SAME_FT3) continue;
    const gapMinutes = times[k + 1]!.readyMinutes - times[k]!.waterMinutes;
    joints.push({
      pieceId: open.pieceId,
      copy: open.copy,
      batch: k + 2,
      fullRatio: fullFt3 / open.volumeFt3,
      gapMinutes,
      slackMinutes: workingMinutes - gapMinutes,
    });
  }
  return joints;
}

function turnJoints(
  castings: readonly Casting[],
  placedFt3: readonly number[],
  times: readonly BatchTime[],
  workingMinutes: number,
): BatchJoint[] {
  let filledBefore = 0;
  return castings.flatMap(({ pieceId, copy, volumeFt3, turns }) => {
    const beginsFt3 = filledBefore;
    filledBefore += volumeFt3;
    return turns.flatMap(({ atRatio, againstRatio }): BatchJoint[] => {
      const now = batchAt(placedFt3, beginsFt3 + atRatio * volumeFt3);
      const then = batchAt(placedFt3, beginsFt3 + againstRatio * volumeFt3);
      if (now.batch <= then.batch) return [];
      const { readyMinutes, placedMinutes } = times[now.batch]!;
      const gapMinutes =
        readyMinutes + now.doneRatio * (placedMinutes - readyMinutes) - times[then.batch]!.waterMinutes;
      const slackMinutes = workingMinutes - gapMinutes;
      return [{ pieceId, copy, batch: now.batch + 1, fullRatio: atRatio, gapMinutes, slackMinutes }];
    });
  });
}

/** The batch, from 0, in which a volume of the whole pour is reached, and how much of it is placed by then. */
function batchAt(
  placedFt3: readonly number[],
  reachedFt3: number,
): { readonly batch: number; readonly doneRatio: number } {
  let leftFt3 = reachedFt3;
  for (const [batch, volumeFt3] of placedFt3.entries()) {
    if (leftFt3 < volumeFt3 - SAME_FT3) return { batch, doneRatio: Math.max(0, leftFt3) / volumeFt3 };
    leftFt3 -= volumeFt3;
  }
  return { batch: Math.max(0, placedFt3.length - 1), doneRatio: 1 };
}

/** Least of the time to spare in any batch by itself: it is placed before it stiffens. */
export function batchSlackMinutes(times: readonly BatchTime[], workingMinutes: number): number {
  return times.reduce(
    (least, { waterMinutes, placedMinutes }) =>
      Math.min(least, workingMinutes - (placedMinutes - waterMinutes)),
    Number.POSITIVE_INFINITY,
  );
}

/** Least time to spare of a pour, minutes: every joint, and every batch by itself. */
export function leastSlackMinutes(
  joints: readonly BatchJoint[],
  times: readonly BatchTime[],
  workingMinutes: number,
): number {
  return joints.reduce(
    (least, { slackMinutes }) => Math.min(least, slackMinutes),
    batchSlackMinutes(times, workingMinutes),
  );
}
