import { describe, expect, test } from 'vitest';
import type { HandleSpot } from '../../../src-renderer/plan/thin-handles';
import { thinHandles } from '../../../src-renderer/plan/thin-handles';

function spot(
  key: string,
  role: HandleSpot['role'],
  xPx: number,
  more: Partial<HandleSpot> = {},
): HandleSpot {
  return { key, role, at: { xPx, yPx: 0 }, isPicked: false, lengthPx: null, ...more };
}

describe('handles that crowd', () => {
  test('of a support 6 px from a corner the corner is drawn and the support hidden', () => {
    const sizes = thinHandles([spot('leg', 'support', 6), spot('corner', 'corner', 0)]);
    expect(sizes.get('corner')).toBe('full');
    expect(sizes.get('leg')).toBe('hidden');
  });

  test('the support that is picked is drawn whole there, and the corner gives way', () => {
    const sizes = thinHandles([spot('leg', 'support', 6, { isPicked: true }), spot('corner', 'corner', 0)]);
    expect(sizes.get('leg')).toBe('full');
    expect(sizes.get('corner')).toBe('hidden');
  });

  test('two that are 18 px apart are drawn small, 40 px apart whole', () => {
    const at = (xPx: number) => [...thinHandles([spot('a', 'corner', 0), spot('b', 'corner', xPx)]).values()];
    expect(at(18)).toEqual(['small', 'small']);
    expect(at(40)).toEqual(['full', 'full']);
  });

  test('an edge 20 px long has no handle of its own, one of 200 px has', () => {
    const edge = (lengthPx: number) => thinHandles([spot('edge', 'edge', 0, { lengthPx })]).get('edge');
    expect(edge(20)).toBe('hidden');
    expect(edge(200)).toBe('full');
  });
});
