/** What the work itself needs: falsework, swap, forms, crew, stock, prices, ticks on the day. */
import { z } from 'zod';
import {
  count,
  day,
  id,
  lengthIn,
  lengthOrZeroIn,
  minutes,
  name,
  note,
  point,
  pressurePsf,
  price,
} from './quantities';

export const stockItem = z.strictObject({
  id,
  name,
  kind: z.enum([
    'form-strip',
    'lumber',
    'sheet',
    'board',
    'mesh-sheet',
    'bar',
    'sealant',
    'screws',
    'tape',
    'other',
  ]),
  lengthIn: lengthIn.nullable().default(null),
  widthIn: lengthIn.nullable().default(null),
  thicknessIn: lengthIn.nullable().default(null),
  price: price.nullable().default(null),
  /** Shipped prices are invented for the demo; a person's own are not. */
  priceFrom: z.enum(['invented', 'own']).default('own'),
});

export const section = z.strictObject({
  id,
  name: name.optional(),
  pieceId: id,
  corners: z.array(point).min(3),
  firstDay: day,
  lastDay: day.nullable().default(null),
});

export const falsework = z.strictObject({
  livePsf: pressurePsf.default(50),
  leastTotalPsf: pressurePsf.default(100),
  wetDensityPcf: z.number().min(100).max(200).default(150),
  species: z.enum(['spf', 'df-l']).default('spf'),
  wetService: z.boolean().default(true),
  durationFactor: z.number().min(0.9).max(1.6).default(1.15),
  spanLimit: z.number().min(120).max(1000).default(360),
  deflectionLimitIn: lengthIn.max(1).default(0.0625),
  panel: z.enum(['span-24-16', 'span-32-16', 'span-40-20']).default('span-32-16'),
  backingBoardIn: lengthOrZeroIn.max(3).default(0.5),
  shimIn: lengthOrZeroIn.max(3).default(0.25),
  sections: z.array(section).default([]),
});

export const swapStep = z.strictObject({
  id,
  day,
  sectionsOut: z.array(id).default([]),
  supportsOut: z.array(id).default([]),
  supportsIn: z.array(id).default([]),
  note: note.default(''),
});

export const swap = z.strictObject({
  workingLoadPsf: pressurePsf.default(50),
  steps: z.array(swapStep).default([]),
});

export const forms = z.strictObject({
  kerfIn: lengthOrZeroIn.max(0.5).default(0.125),
  stripWidthIn: lengthIn.max(6).default(1.5),
  /** null: about 10 in, and as much closer as mesh asks that would sink between them. */
  standoffSpacingIn: lengthIn.min(1).max(36).nullable().default(null),
  wasteRatio: z.number().min(0).max(0.5).default(0.1),
  overfillRatio: z.number().min(0).max(0.2).default(0.02),
});

export const crew = z.strictObject({
  people: count.min(1).max(50).default(2),
  mixers: count.min(1).max(10).default(1),
  mixerBags: count.min(1).max(40).default(2),
  bucketGal: z.number().min(0.1).max(20).default(5),
  bucketFill: z.number().min(0.1).max(1).default(0.5),
  minutesABatch: minutes.default(8),
  placingFt3AnHour: z.number().min(0.1).max(500).default(10),
});

export const tick = z.strictObject({ id, done: z.boolean() });

export type StockItem = z.infer<typeof stockItem>;
export type SwapStep = z.infer<typeof swapStep>;
export type FalseworkSection = z.infer<typeof section>;
export const stock = z.array(stockItem);
