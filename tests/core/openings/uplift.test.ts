import { describe, expect, test } from 'vitest';
import { formUplift } from '../../../src-core/openings';

describe('uplift of a form in wet concrete', () => {
  test('a weightless knock-out of 20 x 16 x 2 in wholly under concrete pulls with 55.6 lbf (basis 8.7)', () => {
    expect(formUplift.compute({ w: 150, V: 20 * 16 * 2, Wo: 0 })).toBeCloseTo(55.56, 2);
  });

  test('one that weighs more than the concrete it displaces stays down', () => {
    expect(formUplift.compute({ w: 150, V: 640, Wo: 60 })).toBeLessThan(0);
  });
});
