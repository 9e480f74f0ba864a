/** Number fields of a job file, with the ranges outside which a value is a slip of the pen. */
import { z } from 'zod';

/** Longest length that a worktop job can mean, in inches (200 ft). */
export const LONGEST_IN = 2400;

/** Below this a length is a slip, and a spacing would never come to an end. A tenth of a millimetre is .0039 in. */
export const SHORTEST_IN = 0.0035;

export const lengthIn = z.number().min(SHORTEST_IN).max(LONGEST_IN);
/** Size in plan of an opening, a bearing or a load. */
export const planSizeIn = lengthIn.min(0.25);
export const lengthOrZeroIn = z.number().nonnegative().max(LONGEST_IN);
export const coordinateIn = z.number().min(-LONGEST_IN).max(LONGEST_IN);
export const elevationIn = z.number().min(-LONGEST_IN).max(LONGEST_IN);
export const thicknessIn = z.number().min(0.25).max(24);
export const forceLbf = z.number().nonnegative().max(100_000);
export const weightLb = z.number().nonnegative().max(100_000);
export const pressurePsf = z.number().nonnegative().max(5_000);
export const strengthPsi = z.number().min(500).max(20_000);
export const yieldPsi = z.number().min(20_000).max(120_000);
export const densityPcf = z.number().min(50).max(200);
export const stiffness = z.number().min(1).max(1e9);
export const angleDeg = z.number().min(-360).max(360);
export const tempC = z.number().min(-40).max(60);
export const ratio = z.number().min(0).max(1);
export const count = z.number().int().nonnegative().max(10_000);
/** Whole days from the first day of the job, which is day 0. */
export const day = z.number().int().min(0).max(3650);
export const minutes = z.number().nonnegative().max(10_080);
export const price = z.number().nonnegative().max(1_000_000);
/** Stable handle of a thing in the job: letters, digits and hyphens. */
export const id = z
  .string()
  .min(1)
  .max(60)
  .regex(/^[A-Za-z0-9][A-Za-z0-9-]*$/, 'use letters, digits and hyphens');
export const name = z.string().min(1).max(120);
export const note = z.string().max(2000);

export const point = z.strictObject({ xIn: coordinateIn, yIn: coordinateIn });
