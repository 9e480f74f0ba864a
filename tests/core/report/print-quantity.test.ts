import { describe, expect, it } from 'vitest';
import { printQuantity, printRatio } from '../../../src-core/report';

describe('a quantity printed for the window', () => {
  it('is a tape length where it lies on a sixteenth, and a decimal elsewhere', () => {
    expect(printQuantity({ value: 34.5, unit: 'in' }, 'imperial')).toBe('34-1/2 in');
    expect(printQuantity({ value: 0.0125, unit: 'in' }, 'imperial')).toBe('0.0125 in');
    expect(printQuantity({ value: 34.5, unit: 'in' }, 'metric')).toBe('876.3 mm');
  });

  it('follows the system of the job: 300 psi is 2.068 MPa', () => {
    expect(printQuantity({ value: 300, unit: 'psi' }, 'imperial')).toBe('300 psi');
    expect(printQuantity({ value: 300, unit: 'psi' }, 'metric')).toBe('2.068 MPa');
  });

  it('keeps the name of a unit without a printer', () => {
    expect(printQuantity({ value: 0.0432, unit: 'in2/ft' }, 'imperial')).toBe('0.0432 in2/ft');
    expect(printQuantity({ value: 1.5, unit: '' }, 'imperial')).toBe('1.5');
  });
});

describe('a ratio printed for the window', () => {
  it('has two decimals and never reads 1.00 beyond the limit', () => {
    expect(printRatio(0.744)).toBe('0.74');
    expect(printRatio(1)).toBe('1.00');
    expect(printRatio(1.004)).toBe('1.01');
    expect(printRatio(1200)).toBe('over 999');
  });
});
