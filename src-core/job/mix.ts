/** The concrete: what the bag or the test says, and how the bag is mixed. */
import { z } from 'zod';
import { day, densityPcf, id, minutes, name, strengthPsi, weightLb } from './quantities';

export const mix = z.strictObject({
  id,
  name,
  /** Compressive strength at 28 days; null takes 3000 psi, the figure for untested hand-mixed concrete. */
  strengthPsi: strengthPsi.nullable().default(null),
  strengthFrom: z.enum(['tested', 'bag', 'assumed']).default('assumed'),
  densityPcf: densityPcf.default(145),
  /** Lightweight factor lambda, 1 for normalweight. */
  lambda: z.number().min(0.75).max(1).default(1),
  cement: z.enum(['ordinary', 'rapid']).default('ordinary'),
  workingMinutes: minutes.default(45),
  bag: z
    .strictObject({
      weightLb: weightLb.min(1),
      yieldFt3: z.number().min(0.01).max(10),
      cementLb: weightLb.nullable().default(null),
      waterLeastLb: weightLb,
      waterMostLb: weightLb,
      /** Water that every bag gets; null takes midway between least and most. */
      waterLb: weightLb.nullable().default(null),
    })
    .nullable()
    .default(null),
  /** The builder's own cylinder results; they override the strength curve. */
  cylinders: z.array(z.strictObject({ ageDays: day, strengthPsi })).default([]),
});

export type Mix = z.infer<typeof mix>;
