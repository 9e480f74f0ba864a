/** Whole bags shared out to batches that the mixer takes. */
import type { BagAmounts } from './bag-amounts';

export interface BatchAmounts {
  /** From 1, in the order of mixing. */
  readonly number: number;
  readonly bags: number;
  readonly waterLb: number | null;
  readonly waterGal: number | null;
  readonly pigmentLb: number | null;
  readonly yieldFt3: number;
  /** Into the forms, overfill included. */
  readonly placedFt3: number;
  /** Left in mixer and buckets. */
  readonly wastedFt3: number;
  /** Kept back for topping up, and what the whole bags give beyond that. With the two above it makes the yield. */
  readonly keptFt3: number;
}

export interface BatchTask {
  readonly bags: number;
  readonly mixerBags: number;
  readonly bagYieldFt3: number;
  /** What the forms take, overfill included. */
  readonly inFormsFt3: number;
  readonly wasteRatio: number;
}

/** Bags of each batch: full ones, and the rest in the last. They add up to the bags, and none is over `most`. */
export function splitBags(bags: number, most: number): number[] {
  const full = Math.floor(bags / most);
  const rest = bags - full * most;
  return [...Array.from({ length: full }, () => most), ...(rest > 0 ? [rest] : [])];
}

/** The batches of a pour. Every bag gets the same water and pigment; waste falls on each batch alike until the forms are full. */
export function batchesOf(task: BatchTask, { waterLb, waterGal, pigmentLb }: BagAmounts): BatchAmounts[] {
  let leftFt3 = task.inFormsFt3;
  return splitBags(task.bags, task.mixerBags).map((bags, i) => {
    const yieldFt3 = bags * task.bagYieldFt3;
    const placedFt3 = Math.min(leftFt3, yieldFt3 / (1 + task.wasteRatio));
    leftFt3 -= placedFt3;
    const wastedFt3 = placedFt3 * task.wasteRatio;
    return {
      number: i + 1,
      bags,
      waterLb: waterLb === null ? null : bags * waterLb,
      waterGal: waterGal === null ? null : bags * waterGal,
      pigmentLb: pigmentLb === null ? null : bags * pigmentLb,
      yieldFt3,
      placedFt3,
      wastedFt3,
      keptFt3: yieldFt3 - placedFt3 - wastedFt3,
    };
  });
}
