import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength, printExactLength, printLength } from '../../../src-core/units';

describe('inches on paper', () => {
  test.each([
    [25.5, '25-1/2 in', '2\' 1-1/2"'],
    [0, '0 in', '0"'],
    [-0, '0 in', '0"'],
    [0.0625, '1/16 in', '1/16"'],
    [12, '12 in', '1\' 0"'],
    [12.125, '12-1/8 in', '1\' 0-1/8"'],
    [-25.5, '-25-1/2 in', '-2\' 1-1/2"'],
    [-0.02, '0 in', '0"'],
    [0.03125, '1/16 in', '1/16"'],
    [-0.03125, '-1/16 in', '-1/16"'],
    [5.96, '5-15/16 in', '5-15/16"'],
    [5.97, '6 in', '6"'],
    [11.97, '12 in', '1\' 0"'],
    [23.99, '24 in', '2\' 0"'],
    [648 / 25.4, '25-1/2 in', '2\' 1-1/2"'],
  ])('%d in prints as %s or %s', (valueIn, inches, feet) => {
    expect(printLength(valueIn, { system: 'imperial' })).toBe(inches);
    expect(printLength(valueIn, { system: 'imperial', style: 'feet-inches' })).toBe(feet);
  });

  test('17/32 in rounds to the step asked for', () => {
    const texts = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64].map((roundToIn) =>
      printLength(17 / 32, { system: 'imperial', roundToIn }),
    );
    expect(texts).toEqual(['1 in', '1/2 in', '1/2 in', '1/2 in', '9/16 in', '17/32 in', '17/32 in']);
  });

  test('a step that no tape has, or a length that is not finite, is our bug', () => {
    expect(() => printLength(1, { system: 'imperial', roundToIn: 1 / 3 })).toThrow('1/64');
    expect(() => printLength(1, { system: 'imperial', roundToIn: 0.06 })).toThrow('0.06');
    expect(() => printLength(1, { system: 'metric', roundToMm: 0 })).toThrow('0.01');
    expect(() => printLength(Number.NaN, { system: 'metric' })).toThrow('NaN');
  });
});

describe('millimetres on paper', () => {
  test.each([
    [25.5, 1, '648 mm'],
    [25.5, 0.1, '647.7 mm'],
    [25.5, 0.5, '647.5 mm'],
    [25.5, 5, '650 mm'],
    [25.5, 10, '650 mm'],
    [0.0039, 0.01, '0.10 mm'],
    [-0.001, 1, '0 mm'],
    [-1, 1, '-25 mm'],
    [999.6 / 25.4, 1, '1000 mm'],
  ])('%d in to the nearest %d mm prints as %s', (valueIn, roundToMm, text) => {
    expect(printLength(valueIn, { system: 'metric', roundToMm })).toBe(text);
  });
});

describe('any length', () => {
  const lengths = fc.double({ min: -2400, max: 2400, noNaN: true });

  test('reads back within half a step from inches, in either style and under either system', () => {
    const steps = fc.constantFrom(1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64);
    fc.assert(
      fc.property(lengths, steps, fc.constantFrom('inches', 'feet-inches'), (valueIn, roundToIn, style) => {
        const text = printLength(valueIn, { system: 'imperial', roundToIn, style });
        expect(text).not.toMatch(/^-0(?![-.]?\d)/);
        for (const system of ['imperial', 'metric'] as const) {
          expect(Math.abs(readIn(text, system) - valueIn)).toBeLessThanOrEqual(roundToIn / 2);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('reads back within half a step from millimetres', () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom(10, 5, 1, 0.5, 0.1, 0.01), (valueIn, roundToMm) => {
        const text = printLength(valueIn, { system: 'metric', roundToMm });
        expect(text).not.toMatch(/^-0(\.0+)? /);
        // 1e-9: the conversion to inches and back, at 60 m.
        expect(Math.abs(readIn(text, 'imperial') - valueIn) * 25.4).toBeLessThanOrEqual(roundToMm / 2 + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test('prints the same when printed, read and printed again', () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom('imperial', 'metric'), (valueIn, system) => {
        const text = printLength(valueIn, { system, style: 'feet-inches' });
        expect(printLength(readIn(text, system), { system, style: 'feet-inches' })).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });
});

function readIn(text: string, system: 'imperial' | 'metric'): number {
  const read = parseLength(text, system);
  if (!read.ok) throw new Error(`${text}: ${read.problem.sentence}`);
  return read.valueIn;
}

describe('printExactLength', () => {
  test.each([
    [25.5, '25-1/2 in', '647.7 mm'],
    [3 / 64, '3/64 in', '1.19 mm'],
    [0.08, '0.08 in', '2.03 mm'],
    [24.01, '24.01 in', '609.85 mm'],
    [0.75, '3/4 in', '19.05 mm'],
    [-5, '-5 in', '-127 mm'],
    [-0.00001, '0 in', '0 mm'],
    [2400, '2400 in', '60960 mm'],
  ])('%d in is %s or %s', (valueIn, imperial, metric) => {
    expect(printExactLength(valueIn, { system: 'imperial' })).toBe(imperial);
    expect(printExactLength(valueIn, { system: 'metric' })).toBe(metric);
  });

  test('no length that is not finite is printed', () => {
    expect(() => printExactLength(Number.NaN, { system: 'metric' })).toThrow('finite');
  });
});
