/** Which units each kind of quantity is written in. Factors are exact arithmetic on the definitions in `conversions`. */
import {
  F_PER_C,
  FREEZING_F,
  IN_PER_FT,
  IN_PER_YD,
  IN2_PER_FT2,
  IN3_PER_FT3,
  KG_PER_LB,
  KG_PER_M3_PER_PCF,
  KPA_PER_PSF,
  LBF_PER_KIP,
  MM_PER_IN,
  MPA_PER_PSI,
  N_PER_LBF,
  N_PER_MM_PER_LBF_PER_IN,
  N_PER_MM3_PER_LBF_PER_IN3,
  OZ_PER_LB,
  STANDARD_GRAVITY_M_PER_S2,
} from './conversions';

export type UnitSystem = 'imperial' | 'metric';

/** One unit: core value = (written - zeroAt) * times / over. Dividing by `over` keeps 648 mm from picking up a rounding. */
export interface Unit {
  /** Lower case, as typed. A spelling that ends in a full stop may not touch a digit (2ft.5 is unclear). */
  readonly spellings: readonly string[];
  readonly times?: number;
  readonly over?: number;
  readonly zeroAt?: number;
}

export interface QuantitySpec {
  readonly noun: string;
  readonly units: readonly Unit[];
  /** The unit of a bare number. */
  readonly bareUnit: { readonly [S in UnitSystem]: Unit };
  /** Completes "Write ...". */
  readonly examples: { readonly [S in UnitSystem]: string };
  readonly sumExample: string;
  readonly unitNames: string;
  /** Set where a second, smaller unit may follow: 2' 6". */
  readonly feetAndInches?: { readonly feet: Unit; readonly inch: Unit };
}

/** Turns a written number into core units. */
export function toCore(written: number, unit: Unit): number {
  return ((written - (unit.zeroAt ?? 0)) * (unit.times ?? 1)) / (unit.over ?? 1);
}

const INCH: Unit = { spellings: ['in', 'in.', 'ins', 'inch', 'inches', '"', "''"] };
const FOOT: Unit = { spellings: ['ft', 'ft.', 'foot', 'feet', "'"], times: IN_PER_FT };
const YARD: Unit = { spellings: ['yd', 'yds', 'yd.', 'yard', 'yards'], times: IN_PER_YD };
const MILLIMETRE: Unit = {
  spellings: ['mm', 'mm.', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  over: MM_PER_IN,
};
const CENTIMETRE: Unit = {
  spellings: ['cm', 'cm.', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  times: 10,
  over: MM_PER_IN,
};
const METRE: Unit = {
  spellings: ['m', 'm.', 'metre', 'metres', 'meter', 'meters'],
  times: 1000,
  over: MM_PER_IN,
};

export const LENGTH: QuantitySpec = {
  noun: 'length',
  units: [INCH, FOOT, YARD, MILLIMETRE, CENTIMETRE, METRE],
  bareUnit: { imperial: INCH, metric: MILLIMETRE },
  examples: {
    imperial: `a length such as 25-1/2, 2' 1-1/2" or 648 mm`,
    metric: 'a length such as 648, 64.8 cm or 25-1/2 in',
  },
  sumExample: '=24 + 1 1/2',
  unitNames: 'in, ft, yd, mm, cm and m',
  feetAndInches: { feet: FOOT, inch: INCH },
};

const POUND_FORCE: Unit = { spellings: ['lbf', 'lb', 'lbs', 'lb.', 'lbs.', 'pound', 'pounds'] };
const NEWTON: Unit = { spellings: ['n', 'newton', 'newtons'], over: N_PER_LBF };

export const FORCE: QuantitySpec = {
  noun: 'force',
  units: [
    POUND_FORCE,
    { spellings: ['kip', 'kips'], times: LBF_PER_KIP },
    NEWTON,
    { spellings: ['kn'], times: 1000, over: N_PER_LBF },
    // A mass given where a force is wanted means its weight under standard gravity.
    { spellings: ['kg', 'kgf', 'kgs'], times: STANDARD_GRAVITY_M_PER_S2, over: N_PER_LBF },
  ],
  bareUnit: { imperial: POUND_FORCE, metric: NEWTON },
  examples: {
    imperial: 'a force such as 250, 1.2 kip or 90 kg',
    metric: 'a force such as 900, 1.1 kN or 90 kg',
  },
  sumExample: '=2*250',
  unitNames: 'lb, kip, N, kN and kg',
};

const PSI: Unit = { spellings: ['psi', 'lb/in2', 'lbf/in2', 'lb/sq in', 'lbf/sq in'] };
const MEGAPASCAL: Unit = { spellings: ['mpa', 'n/mm2'], over: MPA_PER_PSI };

export const STRESS: QuantitySpec = {
  noun: 'stress',
  units: [
    PSI,
    { spellings: ['ksi', 'kip/in2', 'kips/in2'], times: 1000 },
    { spellings: ['psf', 'lb/ft2', 'lbf/ft2', 'lb/sq ft', 'lbf/sq ft'], over: IN2_PER_FT2 },
    MEGAPASCAL,
    { spellings: ['gpa', 'kn/mm2'], times: 1000, over: MPA_PER_PSI },
    { spellings: ['kpa', 'kn/m2'], over: 1000 * MPA_PER_PSI },
    { spellings: ['pa', 'n/m2'], over: 1_000_000 * MPA_PER_PSI },
  ],
  bareUnit: { imperial: PSI, metric: MEGAPASCAL },
  examples: {
    imperial: 'a stress such as 4000, 60 ksi or 30 MPa',
    metric: 'a stress such as 30, 420 MPa or 4000 psi',
  },
  sumExample: '=0.75*4000',
  unitNames: 'psi, ksi, psf, Pa, kPa, MPa and GPa',
};

const PSF: Unit = { spellings: ['psf', 'lb/ft2', 'lbf/ft2', 'lb/sq ft', 'lbf/sq ft'] };
const KILOPASCAL: Unit = { spellings: ['kpa', 'kn/m2'], over: KPA_PER_PSF };

export const SPREAD_LOAD: QuantitySpec = {
  noun: 'spread load',
  units: [
    PSF,
    { spellings: ['psi', 'lb/in2', 'lbf/in2'], times: IN2_PER_FT2 },
    KILOPASCAL,
    { spellings: ['pa', 'n/m2'], over: 1000 * KPA_PER_PSF },
    { spellings: ['kg/m2', 'kgf/m2'], times: STANDARD_GRAVITY_M_PER_S2, over: 1000 * KPA_PER_PSF },
  ],
  bareUnit: { imperial: PSF, metric: KILOPASCAL },
  examples: {
    imperial: 'a spread load such as 50, 50 psf or 2.4 kN/m2',
    metric: 'a spread load such as 2.4, 2.4 kN/m2 or 250 kg/m2',
  },
  sumExample: '=40 + 10',
  unitNames: 'psf, psi, Pa, kPa, kN/m2 and kg/m2',
};

const PCF: Unit = { spellings: ['pcf', 'lb/ft3', 'lb/cu ft', 'lb/cf'] };
const KG_PER_M3: Unit = { spellings: ['kg/m3'], over: KG_PER_M3_PER_PCF };

export const DENSITY: QuantitySpec = {
  noun: 'density',
  units: [
    PCF,
    { spellings: ['lb/in3', 'lb/cu in'], times: IN3_PER_FT3 },
    KG_PER_M3,
    { spellings: ['g/cm3', 'kg/l', 't/m3'], times: 1000, over: KG_PER_M3_PER_PCF },
    { spellings: ['kn/m3'], times: 1000, over: STANDARD_GRAVITY_M_PER_S2 * KG_PER_M3_PER_PCF },
  ],
  bareUnit: { imperial: PCF, metric: KG_PER_M3 },
  examples: {
    imperial: 'a density such as 145, 145 pcf or 2320 kg/m3',
    metric: 'a density such as 2320, 24 kN/m3 or 145 pcf',
  },
  sumExample: '=145 + 5',
  unitNames: 'pcf, lb/ft3, lb/in3, kg/m3, g/cm3 and kN/m3',
};

const POUND: Unit = { spellings: ['lb', 'lbs', 'lb.', 'lbs.', 'pound', 'pounds'] };
const KILOGRAM: Unit = {
  spellings: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  over: KG_PER_LB,
};

export const MASS: QuantitySpec = {
  noun: 'weight',
  units: [
    POUND,
    { spellings: ['oz', 'oz.', 'ounce', 'ounces'], over: OZ_PER_LB },
    KILOGRAM,
    { spellings: ['g', 'gram', 'grams'], over: 1000 * KG_PER_LB },
    { spellings: ['tonne', 'tonnes'], times: 1000, over: KG_PER_LB },
  ],
  bareUnit: { imperial: POUND, metric: KILOGRAM },
  examples: {
    imperial: 'a weight such as 80, 80 lb or 36 kg',
    metric: 'a weight such as 25, 25 kg or 80 lb',
  },
  sumExample: '=3*80',
  unitNames: 'lb, oz, kg, g and tonne',
};

const CELSIUS: Unit = { spellings: ['c', '°c', '° c', '℃', 'deg c', 'degc', 'celsius'] };
const FAHRENHEIT: Unit = {
  spellings: ['f', '°f', '° f', '℉', 'deg f', 'degf', 'fahrenheit'],
  over: F_PER_C,
  zeroAt: FREEZING_F,
};

export const TEMPERATURE: QuantitySpec = {
  noun: 'temperature',
  units: [CELSIUS, FAHRENHEIT],
  bareUnit: { imperial: FAHRENHEIT, metric: CELSIUS },
  examples: {
    imperial: 'a temperature such as 68, 68 F or 20 C',
    metric: 'a temperature such as 20, 20 C or 68 F',
  },
  sumExample: '',
  unitNames: 'C and F',
};

const LBF_PER_IN: Unit = { spellings: ['lbf/in', 'lb/in', 'pli'] };
const N_PER_MM: Unit = { spellings: ['n/mm', 'kn/m'], over: N_PER_MM_PER_LBF_PER_IN };
const PER_RUN_UNITS: readonly Unit[] = [
  LBF_PER_IN,
  { spellings: ['plf', 'lbf/ft', 'lb/ft'], over: IN_PER_FT },
  { spellings: ['kip/in', 'kips/in'], times: LBF_PER_KIP },
  N_PER_MM,
  { spellings: ['n/m'], over: 1000 * N_PER_MM_PER_LBF_PER_IN },
];

export const LINE_LOAD: QuantitySpec = {
  noun: 'line load',
  units: PER_RUN_UNITS,
  bareUnit: { imperial: LBF_PER_IN, metric: N_PER_MM },
  examples: {
    imperial: 'a line load such as 56, 675 plf or 10 kN/m',
    metric: 'a line load such as 10, 10 kN/m or 675 plf',
  },
  sumExample: '=2*28',
  unitNames: 'lbf/in, plf, N/mm, N/m and kN/m',
};

export const POINT_STIFFNESS: QuantitySpec = {
  noun: 'stiffness of a point',
  units: PER_RUN_UNITS,
  bareUnit: { imperial: LBF_PER_IN, metric: N_PER_MM },
  examples: {
    imperial: 'a stiffness such as 5000, 5000 lbf/in or 875 N/mm',
    metric: 'a stiffness such as 875, 875 N/mm or 5000 lbf/in',
  },
  sumExample: '=2*2500',
  unitNames: 'lbf/in, kip/in, N/mm and kN/m',
};

const LBF_PER_IN_PER_IN: Unit = {
  spellings: ['lbf/in per in', 'lb/in per in', 'lbf/in/in', 'lb/in/in', 'lbf/in2', 'lb/in2', 'psi'],
};
const N_PER_MM_PER_MM: Unit = { spellings: ['n/mm per mm', 'n/mm/mm', 'n/mm2', 'mpa'], over: MPA_PER_PSI };

export const LINE_STIFFNESS: QuantitySpec = {
  noun: 'stiffness of a line',
  units: [
    LBF_PER_IN_PER_IN,
    N_PER_MM_PER_MM,
    { spellings: ['kn/m per m', 'kn/m/m', 'kn/m2', 'kpa'], over: 1000 * MPA_PER_PSI },
  ],
  bareUnit: { imperial: LBF_PER_IN_PER_IN, metric: N_PER_MM_PER_MM },
  examples: {
    imperial: 'a stiffness such as 2000, 2000 lbf/in per in or 14 N/mm per mm',
    metric: 'a stiffness such as 14, 14 N/mm per mm or 2000 lbf/in per in',
  },
  sumExample: '=2*1000',
  unitNames: 'lbf/in per in, N/mm per mm and kN/m per m',
};

const LBF_PER_IN_PER_IN2: Unit = {
  spellings: [
    'lbf/in per in2',
    'lb/in per in2',
    'lbf/in per sq in',
    'lb/in per sq in',
    'lbf/in3',
    'lb/in3',
    'pci',
  ],
};
const N_PER_MM_PER_MM2: Unit = {
  spellings: ['n/mm per mm2', 'n/mm3'],
  over: N_PER_MM3_PER_LBF_PER_IN3,
};

export const BED_STIFFNESS: QuantitySpec = {
  noun: 'stiffness of a bed',
  units: [
    LBF_PER_IN_PER_IN2,
    N_PER_MM_PER_MM2,
    { spellings: ['kn/m per m2', 'kn/m3'], over: 1_000_000 * N_PER_MM3_PER_LBF_PER_IN3 },
  ],
  bareUnit: { imperial: LBF_PER_IN_PER_IN2, metric: N_PER_MM_PER_MM2 },
  examples: {
    imperial: 'a stiffness such as 5000, 5000 lbf/in per sq in or 1.36 N/mm3',
    metric: 'a stiffness such as 1.36, 1.36 N/mm3 or 5000 pci',
  },
  sumExample: '=2*2500',
  unitNames: 'lbf/in per sq in, pci, N/mm3 and kN/m3',
};
