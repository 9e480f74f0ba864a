import { expect, test } from 'vitest';
import { formula } from '../../../src-core/workings';

const momentAbout = formula<{ P: number; a: number }>({
  symbol: 'M',
  label: 'Moment',
  formula: 'P * a',
  units: { P: 'lbf', a: 'in' },
  unit: 'lbf-in',
  source: 'statics',
  compute: ({ P, a }) => P * a,
});

test.each([
  [7.000001, '7'],
  [5.9999999, '6'],
  [12.5000004, '12.5'],
  [4.44e-16, '0'],
  [0.8163163, '0.8163163'],
  [0.0006916038, '0.0006916038'],
  [9.9e-6, '0.0000099'],
  [1234.567, '1234.567'],
])(
  'an arm of %d in is put into the formula as %s: what rounding left is not printed, what was measured is',
  (a, printed) => {
    expect(momentAbout({ P: 250, a }).line.substituted).toBe(`250 * ${printed}`);
  },
);
