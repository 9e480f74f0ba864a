/** Prints the figures of a job file as sentences show them, in the units in which the job is shown. */
import type { UnitSystem } from '../units';
import {
  IN3_PER_FT3,
  IN3_PER_GAL,
  IN3_PER_YD3,
  M_PER_S_PER_MPH,
  printArea,
  printDensity,
  printExactLength,
  printForce,
  printMass,
  printSpreadLoad,
  printStress,
  printTemperature,
  printVolume,
} from '../units';

export { printArea, printDensity, printExactLength, printMass };

/** Digits that keep a figure apart from the limit it has just passed. */
const DIGITS = 6;

type Print = (value: number, system: UnitSystem) => string;

/** By the end of a field's name, which says its unit in the file. */
const PRINTS: Readonly<Record<string, Print>> = {
  In: (value, system) => printExactLength(value, { system }),
  In2: (value, system) => printArea(value, { system, digits: DIGITS }),
  Ft3: printFt3,
  Ft3AnHour: (value, system) => `${printFt3(value, system)} an hour`,
  Gal: (value, system) =>
    system === 'imperial'
      ? `${plain(value)} gal`
      : printVolume(value * IN3_PER_GAL, { system, digits: DIGITS }),
  Lb: (value, system) => printMass(value, { system, digits: DIGITS }),
  Lbf: (value, system) => printForce(value, { system, digits: DIGITS }),
  Psi: (value, system) => printStress(value, { system, digits: DIGITS }),
  Psf: (value, system) => printSpreadLoad(value, { system, digits: DIGITS }),
  Pcf: (value, system) => printDensity(value, { system, digits: DIGITS }),
  Pcy: (value, system) =>
    system === 'imperial'
      ? `${plain(value)} lb/cu yd`
      : printDensity((value * IN3_PER_FT3) / IN3_PER_YD3, { system, digits: DIGITS }),
  Deg: (value) => `${plain(value)} degrees`,
  C: (value, system) => printTemperature(value, { system, digits: DIGITS }),
  Mph: (value, system) =>
    system === 'imperial' ? `${plain(value)} mph` : `${plain(value * M_PER_S_PER_MPH)} m/s`,
  Days: (value) => `${plain(value)} days`,
  Ratio: (value) => `${plain(value * 100)} %`,
};

/** Shares of a whole whose names do not end in Ratio. */
const SHARES: readonly string[] = ['humidity', 'bucketFill'];

/** A field's name in its words and, where the name ends in a unit, that unit: `cornerRadiusIn` as corner Radius and In. */
export function splitUnit(field: string): {
  readonly words: readonly string[];
  readonly unit: string | null;
} {
  const words = field.split(/(?=[A-Z])/);
  if (SHARES.includes(field)) return { words, unit: 'Ratio' };
  for (let from = 1; from < words.length; from++) {
    const unit = words.slice(from).join('');
    if (Object.hasOwn(PRINTS, unit)) return { words: words.slice(0, from), unit };
  }
  return { words, unit: null };
}

/** A figure of a field with the unit that the field's name ends in; the bare figure where it ends in none. */
export function printFigure(value: number, field: string, system: UnitSystem): string {
  const { unit } = splitUnit(field);
  return unit === null ? plain(value) : PRINTS[unit]!(value, system);
}

function printFt3(valueFt3: number, system: UnitSystem): string {
  return printVolume(valueFt3 * IN3_PER_FT3, { system, digits: DIGITS });
}

function plain(value: number): string {
  return String(Number(value.toPrecision(DIGITS)));
}
