/** Amounts and minutes of a pour as a person reads them. */
import type { Job } from '../../../src-core/job';
import type { BagAmounts, Colour } from '../../../src-core/pour';
import { KMH_PER_MPH } from '../../../src-core/pour';
import { dateOfDay } from '../../../src-core/sequence';
import type { UnitSystem } from '../../../src-core/units';
import { IN3_PER_FT3, IN3_PER_GAL, printMass, printVolume } from '../../../src-core/units';

/** Digits of what is weighed and measured out. */
const DIGITS = 3;

/** "day 3, 2027-04-29", or "day 3" where the job starts on no date. */
export function dayWords({ site }: Job, day: number): string {
  const date = dateOfDay(site.calendar, day);
  return date === null ? `day ${day}` : `day ${day}, ${date}`;
}

/** "5.66 cu ft"; "160 L". */
export function volumeWords(volumeFt3: number, system: UnitSystem): string {
  return printVolume(volumeFt3 * IN3_PER_FT3, { system, digits: DIGITS });
}

/** "6.75 lb"; "3.06 kg". */
export function massWords(massLb: number, system: UnitSystem): string {
  return printMass(massLb, { system, digits: DIGITS });
}

/** "6.75 lb (0.81 gal)"; "3.06 kg (3.06 L)". Says that it is refused where it is. */
export function waterWords(
  { waterLb, waterGal }: Pick<BagAmounts, 'waterLb' | 'waterGal'>,
  system: UnitSystem,
): string {
  if (waterLb === null || waterGal === null) return 'refused';
  const volume =
    system === 'imperial'
      ? `${plain(waterGal)} gal`
      : printVolume(waterGal * IN3_PER_GAL, { system, digits: DIGITS });
  return `${massWords(waterLb, system)} (${volume})`;
}

/** "0.6 lb"; "none" without a colour; says that it is refused where it is. */
export function pigmentWords(pigmentLb: number | null, colour: Colour | null, system: UnitSystem): string {
  if (colour === null) return 'none';
  return pigmentLb === null ? 'refused' : massWords(pigmentLb, system);
}

/** "Slate grey at 3 % of the cement"; "no pigment". */
export function colourWords(colour: Colour | null): string {
  return colour === null
    ? 'no pigment'
    : `${colour.pigment} at ${plain(100 * colour.pigmentRatio)} % of the cement`;
}

/** A whole number of minutes; time to spare is never rounded up. */
export function minutesWords(minutes: number): string {
  const whole = Math.floor(minutes);
  return `${whole} ${whole === 1 ? 'minute' : 'minutes'}`;
}

/** "8 mph"; "13 km/h". */
export function windWords(windMph: number, system: UnitSystem): string {
  return system === 'imperial' ? `${plain(windMph)} mph` : `${Math.round(windMph * KMH_PER_MPH)} km/h`;
}

/** "1 bucket", "3 buckets". */
export function countWords(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** A ratio or a number without a unit, to three digits. */
export function plain(value: number): string {
  return String(Number(value.toPrecision(DIGITS)));
}
