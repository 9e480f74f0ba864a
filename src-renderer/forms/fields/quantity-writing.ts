/** How every kind of figure is printed and read in a field, in the units of the job. */
import type { Refusal, UnitSystem } from '../../../src-core/units';
import {
  IN_PER_FT,
  IN3_PER_FT3,
  IN3_PER_GAL,
  IN3_PER_YD3,
  KG_PER_M3_PER_PCF,
  L_PER_IN3,
  M_PER_S_PER_MPH,
  MM_PER_IN,
  parseBedStiffness,
  parseDensity,
  parseForce,
  parseLineStiffness,
  parseMass,
  parsePointStiffness,
  parseSpreadLoad,
  parseStress,
  parseTemperature,
  printBedStiffness,
  printDensity,
  printForce,
  printLineStiffness,
  printMass,
  printPointStiffness,
  printSpreadLoad,
  printStress,
  printTemperature,
} from '../../../src-core/units';
import { lengthWriting } from './length-writing';
import type { PlainQuantity } from './plain-number';
import { plainWriting, sameInBoth } from './plain-number';
import type { QuantityName } from './quantity-names';
import type { Read, Writing } from './typed-entry';

/** Digits that a field shows: enough to read a typed figure back, few enough for its width. */
const DIGITS = 5;
const L_PER_FT3 = L_PER_IN3 * IN3_PER_FT3;

/** How a figure is written in a system. */
export function quantityWriting(name: QuantityName, system: UnitSystem): Writing<number> {
  const how = { system, digits: DIGITS };
  switch (name) {
    case 'length':
      return lengthWriting({ system });
    case 'force':
      return {
        print: (value) => printForce(value, how),
        read: (text) => reading(parseForce(text, system), (read) => read.valueLbf),
      };
    case 'spreadLoad':
      return {
        print: (value) => printSpreadLoad(value, how),
        read: (text) => reading(parseSpreadLoad(text, system), (read) => read.valuePsf),
      };
    case 'stress':
      return {
        print: (value) => printStress(value, how),
        read: (text) => reading(parseStress(text, system), (read) => read.valuePsi),
      };
    case 'density':
      return {
        print: (value) => printDensity(value, how),
        read: (text) => reading(parseDensity(text, system), (read) => read.valuePcf),
      };
    case 'mass':
      return {
        print: (value) => printMass(value, how),
        read: (text) => reading(parseMass(text, system), (read) => read.valueLb),
      };
    case 'temperature':
      return {
        print: (value) => printTemperature(value, how),
        read: (text) => reading(parseTemperature(text, system), (read) => read.valueC),
      };
    case 'lineStiffness':
      return {
        print: (value) => printLineStiffness(value, how),
        read: (text) => reading(parseLineStiffness(text, system), (read) => read.valueLbfPerIn2),
      };
    case 'pointStiffness':
      return {
        print: (value) => printPointStiffness(value, how),
        read: (text) => reading(parsePointStiffness(text, system), (read) => read.valueLbfPerIn),
      };
    case 'bedStiffness':
      return {
        print: (value) => printBedStiffness(value, how),
        read: (text) => reading(parseBedStiffness(text, system), (read) => read.valueLbfPerIn3),
      };
    default:
      return plainWriting(PLAIN[name], system);
  }
}

function reading<R extends { readonly ok: true }>(
  read: R | Refusal,
  figureOf: (read: R) => number,
): Read<number> {
  return read.ok ? { ok: true, value: figureOf(read) } : { ok: false, sentence: read.problem.sentence };
}

function figure(name: string, example: string, more: Partial<PlainQuantity> = {}): PlainQuantity {
  return { units: sameInBoth({ name, perCore: 1 }), example: sameInBoth(example), ...more };
}

type PlainName = Exclude<
  QuantityName,
  | 'length'
  | 'force'
  | 'spreadLoad'
  | 'stress'
  | 'density'
  | 'mass'
  | 'temperature'
  | 'lineStiffness'
  | 'pointStiffness'
  | 'bedStiffness'
>;

const PLAIN: { readonly [N in PlainName]: PlainQuantity } = {
  angle: figure('°', 'an angle in degrees such as 90', { step: 5 }),
  percent: {
    units: sameInBoth({ name: '%', perCore: 100 }),
    example: sameInBoth('a share such as 10 %'),
    step: 1,
  },
  count: figure('', 'a whole number such as 4', { step: 1, isWhole: true }),
  day: figure('', 'a whole number of days such as 28', { step: 1, isWhole: true }),
  minutes: figure('min', 'a time such as 45 min', { step: 5 }),
  plain: figure('', 'a number such as 0.42'),
  price: figure('', 'a price such as 12.50'),
  area: {
    units: { imperial: { name: 'sq in', perCore: 1 }, metric: { name: 'mm2', perCore: MM_PER_IN ** 2 } },
    example: { imperial: 'an area such as 0.11 sq in', metric: 'an area such as 79 mm2' },
  },
  windSpeed: {
    units: { imperial: { name: 'mph', perCore: 1 }, metric: { name: 'm/s', perCore: M_PER_S_PER_MPH } },
    example: { imperial: 'a wind speed such as 8 mph', metric: 'a wind speed such as 4 m/s' },
    step: 1,
  },
  bagYield: {
    units: { imperial: { name: 'cu ft', perCore: 1 }, metric: { name: 'L', perCore: L_PER_FT3 } },
    example: { imperial: 'a volume such as 0.6 cu ft', metric: 'a volume such as 17 L' },
  },
  bucket: {
    units: {
      imperial: { name: 'gal', perCore: 1 },
      metric: { name: 'L', perCore: IN3_PER_GAL * L_PER_IN3 },
    },
    example: { imperial: 'a volume such as 5 gal', metric: 'a volume such as 20 L' },
    step: 1,
  },
  placingRate: {
    units: { imperial: { name: 'cu ft/h', perCore: 1 }, metric: { name: 'L/h', perCore: L_PER_FT3 } },
    example: { imperial: 'a rate such as 10 cu ft/h', metric: 'a rate such as 280 L/h' },
  },
  dose: {
    units: {
      imperial: { name: 'lb/cu yd', perCore: 1 },
      metric: { name: 'kg/m3', perCore: (KG_PER_M3_PER_PCF * IN3_PER_FT3) / IN3_PER_YD3 },
    },
    example: { imperial: 'a dose such as 1.5 lb/cu yd', metric: 'a dose such as 0.9 kg/m3' },
  },
  fall: {
    units: {
      imperial: { name: 'in/ft', perCore: 1 },
      metric: { name: 'mm/m', perCore: 1000 / IN_PER_FT },
    },
    example: { imperial: 'a fall such as 1/8 in/ft', metric: 'a fall such as 10 mm/m' },
  },
};
