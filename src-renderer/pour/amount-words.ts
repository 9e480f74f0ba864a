/** Amounts of a pour as they are measured out: volumes, weights, water and pigment. */
import type { BagAmounts, Colour } from '../../src-core/pour';
import { KMH_PER_MPH } from '../../src-core/pour';
import type { UnitSystem } from '../../src-core/units';
import { IN3_PER_FT3, IN3_PER_GAL, printMass, printVolume } from '../../src-core/units';

/** Digits that a scale and a jug can show. */
const DIGITS = 3;

/** "5.66 cu ft"; "160 L". */
export function volumeWords(volumeFt3: number, system: UnitSystem): string {
  return printVolume(volumeFt3 * IN3_PER_FT3, { system, digits: DIGITS });
}

/** "6.75 lb"; "3.06 kg". */
export function massWords(massLb: number, system: UnitSystem): string {
  return printMass(massLb, { system, digits: DIGITS });
}

/** "0.81 gal"; "3.06 L". */
export function jugWords(waterGal: number, system: UnitSystem): string {
  if (system === 'imperial') return `${figure(waterGal)} gal`;
  return printVolume(waterGal * IN3_PER_GAL, { system, digits: DIGITS });
}

/** "13.5 lb (1.62 gal) of water"; says that it is refused where it is. */
export function waterWords(
  { waterLb, waterGal }: Pick<BagAmounts, 'waterLb' | 'waterGal'>,
  system: UnitSystem,
): string {
  if (waterLb === null || waterGal === null) return 'water refused';
  return `${massWords(waterLb, system)} (${jugWords(waterGal, system)}) of water`;
}

/** "1.2 lb of Slate grey"; says that it is not given where it is not; null without a colour. */
export function pigmentWords(
  pigmentLb: number | null,
  colour: Colour | null,
  system: UnitSystem,
): string | null {
  if (colour === null) return null;
  return pigmentLb === null
    ? `${colour.pigment} not given`
    : `${massWords(pigmentLb, system)} of ${colour.pigment}`;
}

/** "3 % of the cement". */
export function shareWords({ pigmentRatio }: Colour): string {
  return `${figure(100 * pigmentRatio)} % of the cement`;
}

/** "8 mph"; "13 km/h". */
export function windWords(windMph: number, system: UnitSystem): string {
  return system === 'imperial' ? `${figure(windMph)} mph` : `${Math.round(windMph * KMH_PER_MPH)} km/h`;
}

/** "1 bucket"; "3 buckets". */
export function countWords(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** A number without a unit, to three digits. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(DIGITS)));
}
