import fc from 'fast-check';
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
  printArea,
  printBedStiffness,
  printCouple,
  printDeflection,
  printDensity,
  printForce,
  printLineLoad,
  printLineStiffness,
  printMass,
  printMoment,
  printPointStiffness,
  printSpreadLoad,
  printStress,
  printTemperature,
  printVolume,
} from '../../../src-core/units';

const imperial = { system: 'imperial' } as const;
const metric = { system: 'metric' } as const;

describe('quantities on paper', () => {
  // Metric texts by the NIST SP 811 (2008) B.8 factors, rounded by hand to four digits.
  test.each([
    ['a 250 lbf person', printForce, 250, '250 lbf', '1112 N'],
    ['a 5000 lbf load', printForce, 5000, '5000 lbf', '22.24 kN'],
    ['a 335.41 psi stress', printStress, 335.41, '335.4 psi', '2.313 MPa'],
    ['a 5 psi bearing', printStress, 5, '5 psi', '34.47 kPa'],
    ['a 50 psf load', printSpreadLoad, 50, '50 psf', '2.394 kPa'],
    ['a 56.25 lbf/in line load', printLineLoad, 56.25, '56.25 lbf/in', '9.851 N/mm'],
    // A moment per width is a force: 132.6 lbf = 589.8 N.
    ['a 132.6 lbf-in/in moment', printMoment, 132.6, '132.6 lbf-in/in', '589.8 N-m/m'],
    ['a 2000 lbf-in couple', printCouple, 2000, '2000 lbf-in', '226 N-m'],
    ['a 289 lb slab', printMass, 289, '289 lb', '131.1 kg'],
    ['a 145 pcf mix', printDensity, 145, '145 pcf', '2323 kg/m3'],
    ['a 0.11 sq in bar', printArea, 0.11, '0.11 sq in', '70.97 mm2'],
    ['a 96 x 25.5 in top', printArea, 2448, '17 sq ft', '1.579 m2'],
    ['basis 8.1 net volume, 3444 in3', printVolume, 3444, '1.993 cu ft', '56.44 L'],
    ['a 3 cubic yard pour', printVolume, 139968, '81 cu ft', '2.294 m3'],
    ['a 0.0552 in sag', printDeflection, 0.0552, '0.0552 in', '1.402 mm'],
    ['a 20 degree room', printTemperature, 20, '68 °F', '20 °C'],
    ['a -40 degree night', printTemperature, -40, '-40 °F', '-40 °C'],
    ['a 5000 lbf/in leg', printPointStiffness, 5000, '5000 lbf/in', '875.6 N/mm'],
    ['a 2000 lbf/in per in wall', printLineStiffness, 2000, '2000 lbf/in per in', '13.79 N/mm per mm'],
    ['a 5000 lbf/in3 bed', printBedStiffness, 5000, '5000 lbf/in per sq in', '1.357 N/mm3'],
  ] as const)('%s prints in both systems', (_name, print, value, imperialText, metricText) => {
    expect(print(value, imperial)).toBe(imperialText);
    expect(print(value, metric)).toBe(metricText);
  });

  test('a unit changes over at its limit: 10 kN, 0.1 MPa, one square foot', () => {
    expect(printForce(9990 / 4.4482216, metric)).toBe('9990 N');
    expect(printForce(10010 / 4.4482216, metric)).toBe('10.01 kN');
    expect(printStress(14.5, metric)).toBe('99.97 kPa');
    expect(printStress(14.51, metric)).toBe('0.1 MPa');
    expect(printArea(143.9, imperial)).toBe('143.9 sq in');
    expect(printArea(144, imperial)).toBe('1 sq ft');
  });

  test('noise of the arithmetic prints as 0, never as -0', () => {
    expect(printForce(-1e-17, imperial)).toBe('0 lbf');
    expect(printStress(-0, metric)).toBe('0 kPa');
    expect(printDeflection(-0.00004, imperial)).toBe('0 in');
    expect(printTemperature(-32 / 1.8, imperial)).toBe('0 °F');
  });

  test('digits can be asked for, and whole digits are kept', () => {
    expect(printForce(123456.7, { ...imperial, digits: 2 })).toBe('123457 lbf');
    expect(printStress(335.41, { ...imperial, digits: 2 })).toBe('335 psi');
    expect(printStress(3.3541, { ...imperial, digits: 2 })).toBe('3.4 psi');
  });

  test('a number that is not finite is our bug', () => {
    expect(() => printForce(Number.POSITIVE_INFINITY, imperial)).toThrow('Infinity');
    expect(() => printTemperature(Number.NaN, metric)).toThrow('NaN');
  });
});

describe('any printed quantity', () => {
  test.each([
    ['force', (v, h) => printForce(v, h), parseForce],
    ['stress', (v, h) => printStress(v, h), parseStress],
    ['spread load', (v, h) => printSpreadLoad(v, h), parseSpreadLoad],
    ['line load', (v, h) => printLineLoad(v, h), parseLineLoad],
    ['weight', (v, h) => printMass(v, h), parseMass],
    ['density', (v, h) => printDensity(v, h), parseDensity],
    ['point stiffness', (v, h) => printPointStiffness(v, h), parsePointStiffness],
    ['line stiffness', (v, h) => printLineStiffness(v, h), parseLineStiffness],
    ['bed stiffness', (v, h) => printBedStiffness(v, h), parseBedStiffness],
    ['temperature', (v, h) => printTemperature(v, h), parseTemperature],
  ] as const satisfies readonly (readonly [string, Print, Parse])[])(
    'a %s reads back within half of its last digit, under either system',
    (_name, print: Print, parse: Parse) => {
      fc.assert(
        fc.property(
          fc.double({ min: -250, max: 1e5, noNaN: true }),
          fc.constantFrom('imperial', 'metric'),
          fc.constantFrom('imperial', 'metric'),
          (value, printed, read) => {
            const text = print(value, { system: printed });
            const back = parse(text, read);
            if (!back.ok) throw new Error(text);
            const number = Number(Object.entries(back).find(([key]) => key.startsWith('value'))?.[1]);
            // Half of the fourth digit, or of the fourth decimal in the coarsest unit here (N/mm3, 3684 lbf/in3).
            // A temperature's digits count from the zero of its own scale.
            const halfDigit = Math.max(5e-4 * (Math.abs(value) + 32), 5e-5 * 3685);
            expect(Math.abs(number - value)).toBeLessThanOrEqual(halfDigit);
          },
        ),
      );
    },
  );
});

type Print = (value: number, how: { readonly system: 'imperial' | 'metric' }) => string;
type Parse = (text: string, system: 'imperial' | 'metric') => { readonly ok: boolean };
