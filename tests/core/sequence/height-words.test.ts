import { describe, expect, test } from 'vitest';
import { heightWords } from '../../../src-core/sequence';

describe('heights of a foot', () => {
  test('round down, so that the limit is never passed', () => {
    // 0.05 in is 3.2 sixty-fourths and 1.27 mm.
    const limit = { limitIn: 0.05, sixtyFourths: 3 };
    expect(heightWords(limit, 'imperial', 'any')).toBe('3/64 in');
    expect(heightWords({ limitIn: 0.0314, sixtyFourths: 2 }, 'imperial', 'any')).toBe('1/32 in');
    expect(heightWords(limit, 'metric', 'any')).toBe('1.2 mm');
    expect(heightWords({ limitIn: 0.01, sixtyFourths: 0 }, 'imperial', 'any')).toBe('less than 1/64 in');
    expect(heightWords({ limitIn: null, sixtyFourths: null }, 'imperial', 'any')).toBe('any');
  });
});
