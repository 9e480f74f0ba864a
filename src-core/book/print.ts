/** Numbers of the book in the units in which the job is shown, as the reports print them. */
import type { Quantity } from '../checks';
import type { Job } from '../job';
import { printQuantity } from '../report';
import type { Weekday } from '../sequence';
import { dateOfDay, weekdayOf } from '../sequence';
import type { UnitSystem } from '../units';
import {
  IN3_PER_FT3,
  IN3_PER_GAL,
  printArea,
  printDeflection,
  printExactLength,
  printForce,
  printLength,
  printMass,
  printSpreadLoad,
  printStress,
  printTemperature,
  printVolume,
  sentenceCase,
} from '../units';

/** Printers bound to a job. */
export interface Print {
  readonly system: UnitSystem;
  /** As a tape shows it: to a sixteenth, or a millimetre. */
  readonly length: (valueIn: number) => string;
  /** To a thirty-second, or a millimetre: shims, standoffs. */
  readonly fine: (valueIn: number) => string;
  readonly exact: (valueIn: number) => string;
  /** Too small for a tape. */
  readonly small: (valueIn: number) => string;
  readonly force: (forceLbf: number) => string;
  /** Rounded up: what must be carried. */
  readonly forceUp: (forceLbf: number) => string;
  readonly mass: (massLb: number) => string;
  readonly area: (areaIn2: number) => string;
  readonly volume: (volumeFt3: number) => string;
  readonly water: (waterGal: number) => string;
  readonly stress: (stressPsi: number) => string;
  readonly spread: (loadPsf: number) => string;
  readonly temperature: (tempC: number) => string;
  readonly quantity: (quantity: Quantity) => string;
  /** "day 12, Sat 2027-05-08"; "day 12" where the job has no start date. */
  readonly day: (day: number) => string;
}

const SHORT_DAYS: { readonly [D in Weekday]: string } = {
  mon: 'Mon',
  tue: 'Tue',
  wed: 'Wed',
  thu: 'Thu',
  fri: 'Fri',
  sat: 'Sat',
  sun: 'Sun',
};

/** Weights and volumes are measured on site to three digits at the most. */
const SITE_DIGITS = 3;
const THIRTY_SECOND_IN = 1 / 32;

export function printOf(job: Job): Print {
  const system = job.shownIn;
  const how = { system };
  const onSite = { system, digits: SITE_DIGITS };
  const { calendar } = job.site;
  return {
    system,
    length: (valueIn) => printLength(valueIn, how),
    fine: (valueIn) => printLength(valueIn, { system, roundToIn: THIRTY_SECOND_IN }),
    exact: (valueIn) => printExactLength(valueIn, how),
    small: (valueIn) => printDeflection(valueIn, how),
    force: (forceLbf) => printForce(Math.round(forceLbf), how),
    forceUp: (forceLbf) => printForce(Math.ceil(forceLbf), how),
    mass: (massLb) => printMass(massLb, onSite),
    area: (areaIn2) => printArea(areaIn2, onSite),
    volume: (volumeFt3) => printVolume(volumeFt3 * IN3_PER_FT3, onSite),
    water: (waterGal) =>
      system === 'imperial' ? `${waterGal.toFixed(2)} gal` : printVolume(waterGal * IN3_PER_GAL, onSite),
    stress: (stressPsi) => printStress(stressPsi, how),
    spread: (loadPsf) => printSpreadLoad(loadPsf, onSite),
    temperature: (tempC) => printTemperature(tempC, onSite),
    quantity: (quantity) => printQuantity(quantity, system),
    day: (day) => {
      const date = dateOfDay(calendar, day);
      const weekday = weekdayOf(calendar, day);
      return date === null || weekday === null ? `day ${day}` : `day ${day}, ${SHORT_DAYS[weekday]} ${date}`;
    },
  };
}

const MINUTES_AN_HOUR = 60;

/** Hours and minutes from the first water: "1:08". */
export function printClock(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / MINUTES_AN_HOUR);
  return `${hours}:${String(whole % MINUTES_AN_HOUR).padStart(2, '0')}`;
}

/** "1 leg", "3 legs". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** With a capital first letter. */
export function capital(words: string): string {
  return sentenceCase(words);
}

/** With a full stop at its end. */
export function sentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}
