/** Prints everything but tape lengths, in the unit that suits its size. */
import {
  F_PER_C,
  FREEZING_F,
  IN2_PER_FT2,
  IN3_PER_FT3,
  KG_PER_LB,
  KG_PER_M3_PER_PCF,
  KPA_PER_PSF,
  L_PER_IN3,
  MM_PER_IN,
  MPA_PER_PSI,
  N_M_PER_LBF_IN,
  N_PER_LBF,
  N_PER_MM_PER_LBF_PER_IN,
  N_PER_MM3_PER_LBF_PER_IN3,
} from './conversions';
import type { UnitSystem } from './quantity-specs';

export interface QuantityPrint {
  readonly system: UnitSystem;
  /** Significant digits, 4 unless told; whole digits are never dropped and decimals stop at four. */
  readonly digits?: number;
}

interface PrintUnit {
  readonly name: string;
  readonly perCore: number;
}

/** Takes over from the unit before it once the number, in this unit, reaches `from`. */
interface LargerUnit extends PrintUnit {
  readonly from: number;
}

type PrintUnits = { readonly [S in UnitSystem]: readonly [PrintUnit, ...LargerUnit[]] };

const DEFAULT_DIGITS = 4;
/** Beyond four decimals a printed number is noise of the arithmetic, not a measure. */
const MOST_DECIMALS = 4;

const FORCE: PrintUnits = {
  imperial: [{ name: 'lbf', perCore: 1 }],
  metric: [
    { name: 'N', perCore: N_PER_LBF },
    { name: 'kN', perCore: N_PER_LBF / 1000, from: 10 },
  ],
};

const STRESS: PrintUnits = {
  imperial: [{ name: 'psi', perCore: 1 }],
  metric: [
    { name: 'kPa', perCore: MPA_PER_PSI * 1000 },
    { name: 'MPa', perCore: MPA_PER_PSI, from: 0.1 },
  ],
};

const SPREAD_LOAD: PrintUnits = {
  imperial: [{ name: 'psf', perCore: 1 }],
  metric: [{ name: 'kPa', perCore: KPA_PER_PSF }],
};

const LINE_LOAD: PrintUnits = {
  imperial: [{ name: 'lbf/in', perCore: 1 }],
  metric: [{ name: 'N/mm', perCore: N_PER_MM_PER_LBF_PER_IN }],
};

const MOMENT: PrintUnits = {
  imperial: [{ name: 'lbf-in/in', perCore: 1 }],
  metric: [{ name: 'N-m/m', perCore: N_PER_LBF }],
};

const COUPLE: PrintUnits = {
  imperial: [{ name: 'lbf-in', perCore: 1 }],
  metric: [{ name: 'N-m', perCore: N_M_PER_LBF_IN }],
};

const MASS: PrintUnits = {
  imperial: [{ name: 'lb', perCore: 1 }],
  metric: [{ name: 'kg', perCore: KG_PER_LB }],
};

const DENSITY: PrintUnits = {
  imperial: [{ name: 'pcf', perCore: 1 }],
  metric: [{ name: 'kg/m3', perCore: KG_PER_M3_PER_PCF }],
};

const AREA: PrintUnits = {
  imperial: [
    { name: 'sq in', perCore: 1 },
    { name: 'sq ft', perCore: 1 / IN2_PER_FT2, from: 1 },
  ],
  metric: [
    { name: 'mm2', perCore: MM_PER_IN ** 2 },
    { name: 'm2', perCore: MM_PER_IN ** 2 / 1_000_000, from: 0.01 },
  ],
};

const VOLUME: PrintUnits = {
  imperial: [{ name: 'cu ft', perCore: 1 / IN3_PER_FT3 }],
  metric: [
    { name: 'L', perCore: L_PER_IN3 },
    { name: 'm3', perCore: L_PER_IN3 / 1000, from: 1 },
  ],
};

const DEFLECTION: PrintUnits = {
  imperial: [{ name: 'in', perCore: 1 }],
  metric: [{ name: 'mm', perCore: MM_PER_IN }],
};

const LINE_STIFFNESS: PrintUnits = {
  imperial: [{ name: 'lbf/in per in', perCore: 1 }],
  metric: [{ name: 'N/mm per mm', perCore: MPA_PER_PSI }],
};

const BED_STIFFNESS: PrintUnits = {
  imperial: [{ name: 'lbf/in per sq in', perCore: 1 }],
  metric: [{ name: 'N/mm3', perCore: N_PER_MM3_PER_LBF_PER_IN3 }],
};

/** Prints a force: 250 lbf; 1112 N, or kN from 10 kN up. */
export function printForce(forceLbf: number, how: QuantityPrint): string {
  return printIn(FORCE, forceLbf, how);
}

/** Prints a stress or strength: 335.4 psi; 2.313 MPa, or kPa below 0.1 MPa. */
export function printStress(stressPsi: number, how: QuantityPrint): string {
  return printIn(STRESS, stressPsi, how);
}

/** Prints a load spread over an area: 50 psf; 2.394 kPa. */
export function printSpreadLoad(loadPsf: number, how: QuantityPrint): string {
  return printIn(SPREAD_LOAD, loadPsf, how);
}

/** Prints a load along a line: 56.25 lbf/in; 9.851 N/mm. */
export function printLineLoad(loadLbfPerIn: number, how: QuantityPrint): string {
  return printIn(LINE_LOAD, loadLbfPerIn, how);
}

/** Prints a moment per unit width, lbf-in per inch: 132.6 lbf-in/in; 589.8 N-m/m (a moment per width is a force). */
export function printMoment(momentLbfInPerIn: number, how: QuantityPrint): string {
  return printIn(MOMENT, momentLbfInPerIn, how);
}

/** Prints a whole moment, such as a bracket puts on its wall: 2000 lbf-in; 226 N-m. */
export function printCouple(momentLbfIn: number, how: QuantityPrint): string {
  return printIn(COUPLE, momentLbfIn, how);
}

/** Prints a weight as a scale shows it: 289 lb; 131.1 kg. */
export function printMass(massLb: number, how: QuantityPrint): string {
  return printIn(MASS, massLb, how);
}

/** Prints a density: 145 pcf; 2323 kg/m3. */
export function printDensity(densityPcf: number, how: QuantityPrint): string {
  return printIn(DENSITY, densityPcf, how);
}

/** Prints an area given in square inches: sq in below one square foot, then sq ft; mm2 below 0.01 m2, then m2. */
export function printArea(areaIn2: number, how: QuantityPrint): string {
  return printIn(AREA, areaIn2, how);
}

/** Prints a volume given in cubic inches: 1.993 cu ft; 56.44 L, or m3 from one cubic metre up. */
export function printVolume(volumeIn3: number, how: QuantityPrint): string {
  return printIn(VOLUME, volumeIn3, how);
}

/** Prints a length too small for a tape, such as a sag or a crack width: 0.0552 in; 1.402 mm. */
export function printDeflection(deflectionIn: number, how: QuantityPrint): string {
  return printIn(DEFLECTION, deflectionIn, how);
}

/** Prints the stiffness of a point support, lbf/in: 5000 lbf/in; 875.6 N/mm. */
export function printPointStiffness(stiffnessLbfPerIn: number, how: QuantityPrint): string {
  return printIn(LINE_LOAD, stiffnessLbfPerIn, how);
}

/** Prints the stiffness of a line support, lbf/in per inch of line: 2000 lbf/in per in; 13.79 N/mm per mm. */
export function printLineStiffness(stiffnessLbfPerIn2: number, how: QuantityPrint): string {
  return printIn(LINE_STIFFNESS, stiffnessLbfPerIn2, how);
}

/** Prints the stiffness of a bed, lbf/in per square inch: 5000 lbf/in per sq in; 1.357 N/mm3. */
export function printBedStiffness(stiffnessLbfPerIn3: number, how: QuantityPrint): string {
  return printIn(BED_STIFFNESS, stiffnessLbfPerIn3, how);
}

/** Prints a temperature given in degrees Celsius: 68 °F; 20 °C. */
export function printTemperature(tempC: number, how: QuantityPrint): string {
  return how.system === 'imperial'
    ? `${printNumber(tempC * F_PER_C + FREEZING_F, how)} °F`
    : `${printNumber(tempC, how)} °C`;
}

function printIn(units: PrintUnits, value: number, how: QuantityPrint): string {
  const [first, ...larger] = units[how.system];
  const suited = larger.findLast((unit) => Math.abs(value * unit.perCore) >= unit.from) ?? first;
  return `${printNumber(value * suited.perCore, how)} ${suited.name}`;
}

function printNumber(value: number, how: QuantityPrint): string {
  if (!Number.isFinite(value)) throw new Error(`A quantity must be finite to be printed: ${value}`);
  const digits = how.digits ?? DEFAULT_DIGITS;
  const size = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, digits - 1 - size));
  const text = value.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
