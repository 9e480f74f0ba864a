import { describe, expect, test } from 'vitest';
import {
  colourOfShare,
  cssOfShare,
  placeInTable,
  shareTable,
} from '../../../src-renderer/model/colour-of-share';

/** Luminance of a colour, 0 to 1 (WCAG 2.2, relative luminance). */
function luminance(share: number): number {
  const [r, g, b] = colourOfShare(share).map((value) => {
    const c = value / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

describe('colour of a share', () => {
  test('the scale runs from the dark blue of cividis to its yellow', () => {
    expect(colourOfShare(0)).toEqual([0, 32, 81]);
    expect(colourOfShare(1)).toEqual([253, 234, 69]);
  });

  test('below 0 and above 1 the ends of the scale stay', () => {
    expect(colourOfShare(-0.4)).toEqual(colourOfShare(0));
    expect(colourOfShare(2.7)).toEqual(colourOfShare(1));
  });

  test('a larger share is never darker, so that the map reads without colour', () => {
    for (let i = 1; i <= 40; i++) expect(luminance(i / 40)).toBeGreaterThan(luminance((i - 1) / 40));
  });

  test('a share without a value has no colour', () => {
    expect(() => colourOfShare(Number.NaN)).toThrow(/without a value/);
  });

  test('the page and the model are given the same numbers', () => {
    expect(cssOfShare(0.5)).toBe(`rgb(${colourOfShare(0.5).join(', ')})`);
  });

  test('the table read at a share gives its colour within one step of each channel', () => {
    const table = shareTable();
    const entries = table.length / 4;
    for (const share of [0, 0.123, 0.5, 0.8, 0.999, 1, 1.4]) {
      const at = placeInTable(share) * entries - 0.5;
      const [low, part] = [Math.floor(at), at - Math.floor(at)];
      const high = Math.min(entries - 1, low + 1);
      colourOfShare(share).forEach((value, channel) => {
        const read = table[low * 4 + channel]! * (1 - part) + table[high * 4 + channel]! * part;
        expect(Math.abs(read - value)).toBeLessThanOrEqual(1);
      });
    }
  });
});
