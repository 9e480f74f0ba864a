import { describe, expect, it } from 'vitest';
import type { QuantityName } from '../../../src-renderer/forms/fields/quantity-names';
import { quantityWriting } from '../../../src-renderer/forms/fields/quantity-writing';

/** Printed and read back, with figures a job may hold. */
const FIGURES: { readonly [Q in QuantityName]: readonly number[] } = {
  length: [25.5, 0, -12.25, 0.0625, 0.08],
  area: [0.11, 0.44],
  angle: [0, 90, -45, 22.5],
  force: [250, 0, 12.5],
  spreadLoad: [50, 2.5],
  stress: [36000, 5000],
  density: [145, 150],
  mass: [80, 0.5],
  temperature: [20, -5],
  lineStiffness: [2000, 20000],
  pointStiffness: [5000, 100000],
  bedStiffness: [5000, 100000],
  percent: [0.03, 0.5, 0],
  count: [1, 12],
  day: [0, 28],
  minutes: [45, 8],
  plain: [0.42, 360],
  price: [12.5],
  windSpeed: [8],
  bagYield: [0.6],
  bucket: [5],
  placingRate: [10],
  dose: [1.5],
  fall: [0.125, 0.25],
};

describe.each(['imperial', 'metric'] as const)('in %s fields', (system) => {
  it.each(Object.keys(FIGURES) as QuantityName[])('a %s reads back as it was printed', (name) => {
    const writing = quantityWriting(name, system);
    for (const value of FIGURES[name]) {
      const read = writing.read(writing.print(value));
      expect(read.ok).toBe(true);
      // five figures are shown, and lengths to a hundredth of a millimetre
      const slackIn = name === 'length' ? 0.005 / 25.4 : 0;
      if (read.ok) {
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(Math.max(slackIn, Math.abs(value) * 6e-4));
      }
    }
  });
});

describe('figures without a reader of their own', () => {
  it('a fall of 1/8 in/ft is 10.417 mm/m', () => {
    expect(quantityWriting('fall', 'metric').print(0.125)).toBe('10.417 mm/m');
  });

  it('reads 1/8 in/ft and a bare 1/8 alike', () => {
    const { read } = quantityWriting('fall', 'imperial');
    expect(read('1/8 in/ft')).toEqual({ ok: true, value: 0.125 });
    expect(read('1/8')).toEqual({ ok: true, value: 0.125 });
  });

  it('reads a metric unit in an imperial job', () => {
    const read = quantityWriting('bucket', 'imperial').read('20 L');
    // NIST SP 811: a gallon is 3.785412 L
    expect(read.ok && read.value).toBeCloseTo(20 / 3.785412, 5);
  });

  it('takes 10 % and a bare 10 for a tenth', () => {
    const { read } = quantityWriting('percent', 'imperial');
    expect(read('10 %')).toEqual({ ok: true, value: 0.1 });
    expect(read('10')).toEqual({ ok: true, value: 0.1 });
  });

  it('refuses half a person', () => {
    const read = quantityWriting('count', 'imperial').read('2.5');
    expect(read).toEqual({ ok: false, sentence: 'Only whole numbers. Write a whole number such as 4.' });
  });

  it('refuses an unknown unit with an example', () => {
    expect(quantityWriting('windSpeed', 'metric').read('3 knots')).toEqual({
      ok: false,
      sentence: 'Write a wind speed such as 4 m/s.',
    });
  });

  it('steps shares without the dust of binary fractions', () => {
    const { step } = quantityWriting('percent', 'imperial');
    expect(step?.(0.07, 1)).toBe(0.08);
  });
});
