import { describe, expect, test } from 'vitest';
import {
  parseBedStiffness,
  parseDensity,
  parseForce,
  parseLineLoad,
  parseLineStiffness,
  parseMass,
  parsePointStiffness,
  parseSpreadLoad,
  parseStress,
  parseTemperature,
  type Refusal,
  type UnitSystem,
} from '../../../src-core/units';

type Parse = (text: string, system: UnitSystem) => { readonly ok: true } | Refusal;

/** The one number of a reading, whatever its unit; a refusal gives its code. */
function numberOf(parse: Parse, text: string, system: UnitSystem = 'imperial'): number | string {
  const read = parse(text, system);
  if ('problem' in read) return read.problem.code;
  const value = Object.entries(read).find(([key]) => key.startsWith('value'))?.[1];
  return Number(value);
}

describe('forces and weights', () => {
  test('the key of each reading names its unit', () => {
    expect(parseForce('250', 'imperial')).toEqual({ ok: true, valueLbf: 250 });
    expect(parseStress('4000', 'imperial')).toEqual({ ok: true, valuePsi: 4000 });
    expect(parseSpreadLoad('50', 'imperial')).toEqual({ ok: true, valuePsf: 50 });
    expect(parseDensity('145', 'imperial')).toEqual({ ok: true, valuePcf: 145 });
    expect(parseMass('80', 'imperial')).toEqual({ ok: true, valueLb: 80 });
    expect(parseTemperature('68', 'imperial')).toEqual({ ok: true, valueC: 20 });
    expect(parseLineLoad('56', 'imperial')).toEqual({ ok: true, valueLbfPerIn: 56 });
    expect(parsePointStiffness('5000', 'imperial')).toEqual({ ok: true, valueLbfPerIn: 5000 });
    expect(parseLineStiffness('2000', 'imperial')).toEqual({ ok: true, valueLbfPerIn2: 2000 });
    expect(parseBedStiffness('5000', 'imperial')).toEqual({ ok: true, valueLbfPerIn3: 5000 });
  });

  // Reciprocals of the NIST SP 811 (2008) B.8 factors: 4.448222 N/lbf, 0.4535924 kg/lb.
  test.each([
    ['250 lb', 250],
    ['1.2 kip', 1200],
    ['1 kN', 1000 / 4.448222],
    ['4.448222 N', 1],
    ['90 kg', 90 / 0.4535924],
    ['=2*250 + 1 kN', 500 + 1000 / 4.448222],
  ])('%s is a force', (text, lbf) => {
    expect(Number(numberOf(parseForce, text)) / lbf).toBeCloseTo(1, 6);
  });

  test.each([
    ['25 kg', 25 / 0.4535924],
    ['8 oz', 0.5],
    ['500 g', 0.5 / 0.4535924],
    ['1 tonne', 1000 / 0.4535924],
    ['=3*80', 240],
  ])('%s is a weight', (text, lb) => {
    expect(Number(numberOf(parseMass, text)) / lb).toBeCloseTo(1, 6);
  });

  test('a bare number is newtons or kilograms in a metric job', () => {
    expect(numberOf(parseForce, '1000', 'metric')).toBeCloseTo(224.8089, 4);
    expect(numberOf(parseMass, '25', 'metric')).toBeCloseTo(55.11557, 5);
  });

  test('a ton is refused, since it may be short, long or metric', () => {
    expect(numberOf(parseMass, '1 ton')).toBe('unknown-unit');
    expect(numberOf(parseForce, '1 ton')).toBe('unknown-unit');
  });
});

describe('stresses, spread loads and densities', () => {
  // NIST SP 811 (2008) B.8: psi 6.894757 kPa; psf 47.88026 Pa; lb/ft3 16.01846 kg/m3.
  test.each([
    [parseStress, '60 ksi', 60000],
    [parseStress, '30 MPa', 30000 / 6.894757],
    [parseStress, '30 N/mm²', 30000 / 6.894757],
    [parseStress, '25 GPa', 25e6 / 6.894757],
    [parseStress, '100 kPa', 100 / 6.894757],
    [parseStress, '100 Pa', 0.1 / 6.894757],
    [parseStress, '144 psf', 1],
    [parseSpreadLoad, '2.4 kN/m2', 2400 / 47.88026],
    [parseSpreadLoad, '2400 Pa', 2400 / 47.88026],
    [parseSpreadLoad, '1 psi', 144],
    // 1 lb/ft2 is 4.882428 kg/m2: NIST SP 811 (2008) B.8.
    [parseSpreadLoad, '4.882428 kg/m2', 1],
    [parseDensity, '2320 kg/m3', 2320 / 16.01846],
    [parseDensity, '2320 kg/m³', 2320 / 16.01846],
    [parseDensity, '2.32 g/cm3', 2320 / 16.01846],
    [parseDensity, '145 lb/ft3', 145],
    [parseDensity, '1 lb/in3', 1728],
    [parseDensity, '24 kN/m3', 24000 / 9.80665 / 16.01846],
  ] as const)('%o reads %s', (parse, text, value) => {
    expect(Number(numberOf(parse, text)) / value).toBeCloseTo(1, 6);
  });

  test('a bare number is MPa, kPa or kg/m3 in a metric job', () => {
    expect(numberOf(parseStress, '30', 'metric')).toBeCloseTo(4351.132, 3);
    expect(numberOf(parseSpreadLoad, '2.4', 'metric')).toBeCloseTo(50.12504, 5);
    expect(numberOf(parseDensity, '2320', 'metric')).toBeCloseTo(144.8329, 4);
  });

  test('the unit of another quantity is refused', () => {
    expect(numberOf(parseForce, '250 lb/ft')).toBe('unknown-unit');
    expect(numberOf(parseStress, '30 mm')).toBe('unknown-unit');
    expect(numberOf(parseDensity, '145 lb/ft^3')).toBe('unknown-unit');
    expect(numberOf(parseLineLoad, '675 lb/ft3')).toBe('unknown-unit');
    expect(numberOf(parseDensity, '145 kg/m33')).toBe('unknown-unit');
    expect(numberOf(parseSpreadLoad, '50 lb')).toBe('unknown-unit');
    expect(numberOf(parseMass, '3 kg/m3')).toBe('unknown-unit');
  });

  test('two stresses do not multiply to a stress', () => {
    expect(numberOf(parseStress, '=30 MPa * 2 MPa')).toBe('wrong-kind');
  });
});

describe('line loads and stiffness', () => {
  // NIST SP 811 (2008) B.8: lbf/in 175.1268 N/m; lbf/ft 14.59390 N/m; psi 6.894757 kPa.
  test.each([
    [parseLineLoad, '675 plf', 56.25],
    [parseLineLoad, '10 kN/m', 10000 / 175.1268],
    [parseLineLoad, '14.5939 N/m', 1 / 12],
    [parsePointStiffness, '5 kip/in', 5000],
    [parsePointStiffness, '875.634 N/mm', 5000],
    [parseLineStiffness, '2000 lbf/in per in', 2000],
    [parseLineStiffness, '13.78951 N/mm per mm', 2000],
    [parseLineStiffness, '13789.51 kN/m per m', 2000],
    [parseBedStiffness, '5000 lbf/in per sq in', 5000],
    [parseBedStiffness, '5000 pci', 5000],
    // 4.448222 N / 25.4^3 mm3 = 2.714471e-4 N/mm3.
    [parseBedStiffness, '1.357236 N/mm3', 5000],
    [parseBedStiffness, '1357236 kN/m3', 5000],
  ] as const)('%o reads %s', (parse, text, value) => {
    expect(Number(numberOf(parse, text)) / value).toBeCloseTo(1, 6);
  });
});

describe('temperatures', () => {
  test.each([
    ['68 F', 20],
    ['68 °F', 20],
    ['20 C', 20],
    ['20°C', 20],
    ['-40 F', -40],
    ['-40', -40],
    ['32', 0],
    ['0 deg C', 0],
    ['68½ F', 36.5 / 1.8],
    ['-459.67 F', -273.15],
  ])('%s is read', (text, celsius) => {
    expect(numberOf(parseTemperature, text)).toBeCloseTo(celsius, 10);
  });

  test('a bare number is degrees Celsius in a metric job', () => {
    expect(numberOf(parseTemperature, '20', 'metric')).toBe(20);
    expect(numberOf(parseTemperature, '-5', 'metric')).toBe(-5);
  });

  test('a sum, a bare degree sign and a temperature under absolute zero are refused', () => {
    expect(numberOf(parseTemperature, '=20 + 5')).toBe('no-sums');
    expect(numberOf(parseTemperature, '68°')).toBe('unknown-unit');
    expect(numberOf(parseTemperature, '-460 F')).toBe('below-absolute-zero');
    expect(numberOf(parseTemperature, '-274 C')).toBe('below-absolute-zero');
  });
});
