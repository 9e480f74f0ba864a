/** Where the job stands: what is below it, readings of the floor, the weather, the calendar. */
import { z } from 'zod';
import { coordinateIn, id, lengthOrZeroIn, note, pressurePsf, tempC } from './quantities';

export const standsOn = z.strictObject({
  kind: z.enum(['slab-on-ground', 'ground', 'timber-floor', 'timber-deck', 'suspended-concrete', 'unknown']),
  /** What the floor or deck may carry, as its owner, drawings or local code state; null is not known. */
  allowancePsf: pressurePsf.nullable().default(null),
  /** Where the allowance was found. */
  allowanceFrom: note.default(''),
});

export const levelReading = z.strictObject({
  id,
  xIn: coordinateIn,
  yIn: coordinateIn,
  valueIn: coordinateIn,
});

export const levels = z.strictObject({
  /** A rod reading grows as the floor falls; a height grows as it rises. */
  convention: z.enum(['height', 'rod']).default('height'),
  readings: z.array(levelReading).default([]),
});

export const weather = z.strictObject({
  airC: tempC.default(20),
  concreteC: tempC.default(20),
  humidity: z.number().min(0).max(1).default(0.5),
  windMph: z.number().min(0).max(100).default(5),
  outdoors: z.boolean().default(false),
  /** Mean temperature day by day from day 0; the last one goes on. */
  dailyC: z.array(tempC).default([]),
});

export const calendar = z.strictObject({
  /** ISO date of day 0; null leaves days as numbers. */
  startsOn: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, 'write the date as 2027-04-30')
    .nullable()
    .default(null),
  restDays: z.array(z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'])).default([]),
  handOverDay: z.number().int().min(0).max(3650).nullable().default(null),
});

export const site = z.strictObject({
  standsOn: standsOn.default({ kind: 'unknown', allowancePsf: null, allowanceFrom: '' }),
  levels: levels.default({ convention: 'height', readings: [] }),
  weather: weather.default({
    airC: 20,
    concreteC: 20,
    humidity: 0.5,
    windMph: 5,
    outdoors: false,
    dailyC: [],
  }),
  calendar: calendar.default({ startsOn: null, restDays: [], handOverDay: null }),
  /** Nearest combustible to a hearth or stove; null where there is no fire. */
  combustiblesAtIn: lengthOrZeroIn.nullable().default(null),
  /** Whether any piece acts as a guard over a drop of more than 30 in. */
  actsAsGuard: z.boolean().default(false),
  /** Whether local rules ask for seismic anchorage of heavy furniture. */
  seismicAnchorage: z.boolean().default(false),
  permitBound: z.boolean().default(false),
});

export type Site = z.infer<typeof site>;
