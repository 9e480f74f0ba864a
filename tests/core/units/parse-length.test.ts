import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ProblemCode, parseLength, type UnitSystem } from '../../../src-core/units';

const MM = 1 / 25.4;

/** Text, inches under imperial, inches under metric. */
const ACCEPTED: readonly (readonly [string, number, number])[] = [
  // Bare numbers follow the system of the job.
  ['25', 25, 25 * MM],
  ['25.', 25, 25 * MM],
  ['.5', 0.5, 0.5 * MM],
  ['1/2', 0.5, 0.5 * MM],
  ['-1/4', -0.25, -0.25 * MM],
  ['- 1/4', -0.25, -0.25 * MM],
  ['+3', 3, 3 * MM],
  ['-0', 0, 0],
  ['25-1/2', 25.5, 25.5 * MM],
  ['25 1/2', 25.5, 25.5 * MM],
  ['25½', 25.5, 25.5 * MM],
  ['25-½', 25.5, 25.5 * MM],
  ['25 ½', 25.5, 25.5 * MM],
  ['25–1/2', 25.5, 25.5 * MM],
  ['25 1⁄2', 25.5, 25.5 * MM],
  ['-25-1/2', -25.5, -25.5 * MM],
  ['1500,5', 1500.5, 1500.5 * MM],
  // Units as written.
  ['25 1/2"', 25.5, 25.5],
  ['25-1/2 in', 25.5, 25.5],
  ['25-1/2 IN.', 25.5, 25.5],
  ['7/8”', 0.875, 0.875],
  ["10''", 10, 10],
  ['5 inches', 5, 5],
  ['648 mm', 648 / 25.4, 648 / 25.4],
  ['648mm', 648 / 25.4, 648 / 25.4],
  ['648\u00a0mm', 648 / 25.4, 648 / 25.4],
  ['64.8 cm', 648 / 25.4, 648 / 25.4],
  ['64,8 cm', 648 / 25.4, 648 / 25.4],
  ['0.648m', 648 / 25.4, 648 / 25.4],
  ['0,648 m', 648 / 25.4, 648 / 25.4],
  ['2 metres', 2000 / 25.4, 2000 / 25.4],
  ['1 yd', 36, 36],
  // Feet, with inches or without.
  ["2'", 24, 24],
  ['2 feet', 24, 24],
  ['1 1/2 ft', 18, 18],
  ["1-1/2'", 18, 18],
  ['½ ft', 6, 6],
  ['2.5 ft', 30, 30],
  ['2\' 1-1/2"', 25.5, 25.5],
  ['2\' 1 1/2"', 25.5, 25.5],
  ['2\'1-1/2"', 25.5, 25.5],
  ['2’ 1½”', 25.5, 25.5],
  ['2′ 1½″', 25.5, 25.5],
  ["2' 1''", 25, 25],
  ['2\'-1 1/2"', 25.5, 25.5],
  ['2ft 1.5in', 25.5, 25.5],
  ['2ft1.5in', 25.5, 25.5],
  ['2 ft. 6 in.', 30, 30],
  ["2' 6", 30, 30],
  ["2' 1/2", 24.5, 24.5],
  ['-2\' 6"', -30, -30],
  ['2\' 14"', 38, 38],
  // Sums.
  ['=24+1.5', 25.5, 25.5 * MM],
  ['=24+1 1/2', 25.5, 25.5 * MM],
  ['= 24 - 1/2', 23.5, 23.5 * MM],
  ['=2*(24+1/2)', 49, 49 * MM],
  ['=2 x 24 1/2', 49, 49 * MM],
  ['=3 × 8 ÷ 4', 6, 6 * MM],
  ['=-24 + 30', 6, 6 * MM],
  ['=3 - -2', 5, 5 * MM],
  ['=3*-2', -6, -6 * MM],
  ['=6/(1/2)', 12, 12 * MM],
  ['=1/2 - 1/4', 0.25, 0.25 * MM],
  ['=1/2-1/4', 0.25, 0.25 * MM],
  ['=24-1.5', 22.5, 22.5 * MM],
  ['=24-3/2', 22.5, 22.5 * MM],
  ['=1 m - 25 mm', 975 / 25.4, 975 / 25.4],
  ['=(24/2) ft', 144, 144],
  ['=1/2 ft', 6, 6],
  ['=(24+1/2) ft', 294, 294],
  ['=-(1 ft)', -12, -12],
  ['=2\' 6-1/2" + 3"', 33.5, 33.5],
  ['=24"-1/2"', 23.5, 23.5],
  ['=2ft-10mm', 24 - 10 / 25.4, 24 - 10 / 25.4],
  ['=3mm*(1m/25mm)', 120 / 25.4, 120 / 25.4],
  // Beside a measure, a bare number is in the unit of the field.
  ['=2 ft + 6', 30, 24 + 6 / 25.4],
];

const REFUSED: readonly (readonly [string, ProblemCode, string])[] = [
  ['', 'empty', 'No length is given'],
  ['   ', 'empty', 'No length is given'],
  ['9'.repeat(201), 'too-long', 'too long'],
  ['9'.repeat(150), 'too-large', 'too large'],
  ['Infinity', 'not-understood', 'Infinity'],
  ['=Infinity', 'not-understood', 'Infinity'],
  ['NaN', 'not-understood', 'NaN'],
  ['twelve', 'not-understood', 'twelve'],
  ['$5', 'not-understood', '$5'],
  ['1.2.3', 'not-understood', '1.2.3'],
  ['--1', 'not-understood', '-1'],
  ['==1', 'not-understood', '=1'],
  ['12 1/2 1/2', 'not-understood', '1/2'],
  ['1 500 mm', 'not-understood', '500 mm'],
  ['6" 2\'', 'not-understood', "2'"],
  ["2' 6 mm", 'not-understood', '6 mm'],
  ['1 m 25 mm', 'not-understood', '25 mm'],
  ['2ft.5in', 'not-understood', 'ft.5in'],
  ['0.6 m²', 'not-understood', '²'],
  ['=2(3)', 'not-understood', '(3)'],
  ['feet', 'no-number', 'feet'],
  ['"', 'no-number', '"'],
  ['24 furlongs', 'unknown-unit', 'furlongs'],
  ['24 lb', 'unknown-unit', 'in, ft, yd, mm, cm and m'],
  ['1e3', 'no-exponent', '1e3'],
  ['1.5E-3 m', 'no-exponent', '1.5E-3'],
  ['1,500 mm', 'unclear-comma', '1,500'],
  ['1,500,000', 'unclear-comma', '1,500,000'],
  ['1,500.5', 'unclear-comma', '1,500.5'],
  ['24,', 'unclear-comma', '24,'],
  ['25 - 1/2', 'unclear-minus', '25 - 1/2'],
  ['25 -1/2', 'unclear-minus', '25 -1/2'],
  ['2\' - 6"', 'unclear-minus', '2\' - 6"'],
  ['=24-1/2', 'unclear-minus', '24-1/2'],
  ['=24 -1/2', 'unclear-minus', '24 -1/2'],
  ['=24- 1/2', 'unclear-minus', '24- 1/2'],
  ['=24-½', 'unclear-minus', '24-½'],
  ['=2\'-6"', 'unclear-minus', "2'-6"],
  ["=2'-6", 'unclear-minus', "2'-6"],
  ['=2\' 6 -1/2"', 'unclear-minus', '6 -1/2'],
  ["=2' 6-1/2", 'unclear-minus', '6-1/2'],
  ['=6 / 1/2', 'unclear-division', '6 / 1/2'],
  ['=1/2/2', 'unclear-division', '1/2/2'],
  ['=24/2 ft', 'unclear-division', '24/2 ft'],
  ['=2/1m', 'unclear-division', '2/1m'],
  ["=2' 6 + 3", 'unmarked-inches', "2' 6"],
  ['2.5\' 6"', 'split-feet', '2.5\' 6"'],
  ['1-1/2\' 6"', 'split-feet', '1-1/2\' 6"'],
  ['11/2', 'improper-fraction', '11/2'],
  ['25 3/2', 'improper-fraction', '25 3/2'],
  ['25-4/4', 'improper-fraction', '25-4/4'],
  ['1/0', 'divide-by-zero', '1/0'],
  ['25-1/0', 'divide-by-zero', '25-1/0'],
  ['=5/(2-2)', 'divide-by-zero', '5/(2-2)'],
  ['25-1/2-1/4', 'needs-equals', '25-1/2-1/4'],
  ['24+1.5', 'needs-equals', '=24 + 1 1/2'],
  ['2 x 4', 'needs-equals', '2 x 4'],
  ['24.5/2', 'needs-equals', '24.5/2'],
  ['(24)', 'needs-equals', '(24)'],
  ['=', 'unfinished', '='],
  ['-', 'unfinished', '-'],
  ['=24+', 'unfinished', '=24+'],
  ['=(2+3', 'unmatched-bracket', '(2+3'],
  ['=2+3)', 'unmatched-bracket', ')'],
  ['=1m*1m', 'wrong-kind', '1m*1m'],
  ['=1m/1m', 'wrong-kind', '1m/1m'],
  ['=2 / 1m', 'wrong-kind', '2 / 1m'],
  ['=1m/1m + 1m', 'wrong-kind', '1m/1m + 1m'],
  ['=(1 ft) in', 'wrong-kind', '(1 ft) in'],
];

describe('a length as people write it', () => {
  test.each(ACCEPTED)('%s is read', (text, imperialIn, metricIn) => {
    expect(readIn(text, 'imperial')).toBeCloseTo(imperialIn, 10);
    expect(readIn(text, 'metric')).toBeCloseTo(metricIn, 10);
  });

  test.each(REFUSED)('%s is refused as %s, and the sentence names the part', (text, code, part) => {
    for (const system of ['imperial', 'metric'] as const) {
      const read = parseLength(text, system);
      expect(read.ok ? read.valueIn : read.problem.code).toBe(code);
      expect(read.ok ? '' : read.problem.sentence).toContain(part);
      expect(read.ok ? '' : read.problem.sentence).toMatch(/ Write a length such as .+\.$/);
    }
  });

  test('every example in a refusal is itself read', () => {
    for (const text of [
      '25-1/2',
      '2\' 1-1/2"',
      '648 mm',
      '648',
      '64.8 cm',
      '25-1/2 in',
      '=24 + 1 1/2',
      '=6 / (1/2)',
    ]) {
      expect(parseLength(text, 'imperial').ok, text).toBe(true);
    }
  });

  test('minus nothing is nothing, without a sign that would print', () => {
    expect(readIn('-0', 'imperial')).toBe(0);
    expect(readIn('=-(1 - 1) mm', 'metric')).toBe(0);
  });

  test('63.5 mm is 2-1/2 in without rounding, so a metric job loses nothing', () => {
    expect(readIn('63.5 mm', 'metric')).toBe(2.5);
    expect(readIn('6.35 cm', 'metric')).toBe(2.5);
  });
});

const mixed = fc
  .tuple(fc.integer({ min: 1, max: 200 }), fc.constantFrom(2, 4, 8, 16, 3), fc.nat(15))
  .map(([whole, bottom, top]) => ({ whole, bottom, top: (top % (bottom - 1)) + 1 }));

/** An expression with its own value in inches, and the sum of the sizes that went into it. */
interface Sum {
  readonly text: string;
  readonly value: number;
  readonly size: number;
}

const bareNumber = fc.oneof(
  fc.integer({ min: 0, max: 5000 }).map((n) => ({ text: `${n / 8}`, value: n / 8 })),
  mixed.map(({ whole, top, bottom }) => ({ text: `${whole} ${top}/${bottom}`, value: whole + top / bottom })),
);
const units = fc.constantFrom(
  { unit: 'in', inches: 1 },
  { unit: '"', inches: 1 },
  { unit: "'", inches: 12 },
  { unit: 'mm', inches: MM },
  { unit: ' m', inches: 1000 * MM },
);
const measure: fc.Arbitrary<Sum> = fc.tuple(bareNumber, units).map(([number, { unit, inches }]) => ({
  text: `${number.text}${unit}`,
  value: number.value * inches,
  size: number.value * inches,
}));

const sums = fc.letrec<{ sum: Sum }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 4 },
    measure,
    fc.tuple(tie('sum'), tie('sum'), fc.constantFrom(1, -1)).map(([a, b, sign]) => ({
      text: `${a.text} ${sign > 0 ? '+' : '-'} (${b.text})`,
      value: a.value + sign * b.value,
      size: a.size + b.size,
    })),
    fc.tuple(tie('sum'), bareNumber).map(([a, k]) => ({
      text: `(${a.text}) * ${k.text}`,
      value: a.value * k.value,
      size: a.size * k.value,
    })),
    fc.tuple(tie('sum'), fc.integer({ min: 1, max: 40 })).map(([a, k]) => ({
      text: `(${a.text}) / ${k}`,
      value: a.value / k,
      size: a.size / k,
    })),
  ),
})).sum;

describe('any length', () => {
  test('a mixed number reads alike with a hyphen, a space or feet before it', () => {
    fc.assert(
      fc.property(mixed, fc.integer({ min: 0, max: 40 }), ({ whole, top, bottom }, feet) => {
        const inches = whole + top / bottom;
        expect(readIn(`${whole}-${top}/${bottom}`, 'imperial')).toBeCloseTo(inches, 10);
        expect(readIn(`${whole} ${top}/${bottom} in`, 'metric')).toBeCloseTo(inches, 10);
        expect(readIn(`${feet}' ${whole}-${top}/${bottom}"`, 'metric')).toBeCloseTo(12 * feet + inches, 10);
        expect(parseLength(`=${whole}-${top}/${bottom}`, 'imperial').ok).toBe(false);
        expect(readIn(`=${whole} - ${top}/${bottom}`, 'imperial')).toBeCloseTo(whole - top / bottom, 10);
      }),
    );
  });

  test('a sum of measures gives what its parts give', () => {
    fc.assert(
      fc.property(sums, ({ text, value, size }) => {
        fc.pre(text.length < 199 && Math.abs(value) < 1e12);
        expect(Math.abs(readIn(`=${text}`, 'metric') - value)).toBeLessThanOrEqual(1e-13 * size);
      }),
      { numRuns: 500 },
    );
  });

  test('no typing makes it throw or give a length that is not finite', () => {
    const keys = fc.constantFrom(
      ...'0123456789.,-+*/()="\'½ ⅞’″×÷mcinftydex√²°'.split(''),
      ' ft',
      ' mm',
      '1/2',
      "2'",
    );
    const typing = fc.oneof(
      fc.array(keys, { maxLength: 24 }).map((list) => list.join('')),
      fc.array(keys, { maxLength: 24 }).map((list) => `=${list.join('')}`),
      fc.string({ unit: 'binary', maxLength: 40 }),
    );
    fc.assert(
      fc.property(typing, fc.constantFrom<UnitSystem>('imperial', 'metric'), (text, system) => {
        const read = parseLength(text, system);
        if (read.ok) expect(Number.isFinite(read.valueIn) && !Object.is(read.valueIn, -0)).toBe(true);
        else expect(read.problem.sentence).toMatch(/^[A-Z].+\.$/su);
      }),
      { numRuns: 2000 },
    );
  });

  test('the deepest brackets that fit in a field are read', () => {
    expect(readIn(`=${'('.repeat(99)}5${')'.repeat(99)}`, 'imperial')).toBe(5);
  });
});

function readIn(text: string, system: UnitSystem): number {
  const read = parseLength(text, system);
  if (!read.ok) throw new Error(`${text}: ${read.problem.sentence}`);
  return read.valueIn;
}
