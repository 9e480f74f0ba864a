import { describe, expect, test } from 'vitest';
import { fittingText, textWidthPt } from '../../../src-core/sheet';
import type { FontFace } from '../../../src-core/sheet/font-metrics';
import { ADVANCES } from '../../../src-core/sheet/font-metrics';
import { readFontFile } from './font-file';

const FILES: { readonly [F in FontFace]: string } = {
  text: 'barlow/files/barlow-latin-400-normal.woff',
  strong: 'barlow/files/barlow-latin-600-normal.woff',
  narrow: 'barlow-condensed/files/barlow-condensed-latin-600-normal.woff',
};
const DIGIT_NAMES = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

describe.each(Object.keys(FILES) as FontFace[])('widths of the %s face', (face) => {
  const font = readFontFile(new URL(`../../../node_modules/@fontsource/${FILES[face]}`, import.meta.url));
  const letters = Object.entries(ADVANCES[face]).flatMap(([advance, listed]) =>
    [...listed].map((letter) => ({ letter, advance: Number(advance) })),
  );

  test('are those of the font file, letter by letter, and none of latin 1 is left out', () => {
    expect(font.unitsPerEm).toBe(1000);
    expect(letters.length).toBeGreaterThan(200);
    const wrong = letters.filter(
      ({ letter, advance }) => !/\d/.test(letter) && font.advance(letter) !== advance,
    );
    expect(wrong).toEqual([]);
    const listed = new Set(letters.map(({ letter }) => letter));
    const printable = Array.from({ length: 0x100 }, (_, code) => String.fromCharCode(code)).filter(
      (letter) => !/\p{Cc}/u.test(letter) && font.advance(letter) !== null,
    );
    expect(printable.length).toBeGreaterThan(180);
    expect(printable.filter((letter) => !listed.has(letter))).toEqual([]);
  });

  test('take digits by their tabular forms, all of one width', () => {
    const advances = new Map(letters.map(({ letter, advance }) => [letter, advance]));
    DIGIT_NAMES.forEach((name, digit) => {
      expect(advances.get(String(digit))).toBe(font.advanceOfName(`${name}.tf`));
    });
    expect(new Set(DIGIT_NAMES.map((_, digit) => advances.get(String(digit)))).size).toBe(1);
  });

  test('add up to the width of a sentence at 10.5 pt', () => {
    const words = 'Screw each wedge pair from the side.';
    const sum = [...words].reduce((total, letter) => total + font.advance(letter)!, 0);
    expect(textWidthPt(words, { face, sizePt: 10.5 })).toBeCloseTo((sum * 10.5) / 1000, 9);
  });
});

test('a letter that the font lacks is counted as an em, more than any letter that it has', () => {
  expect(textWidthPt('漢', { face: 'text', sizePt: 10 })).toBe(10);
  expect(textWidthPt('@', { face: 'text', sizePt: 10 })).toBeLessThan(10);
});

describe('a running line', () => {
  const style = { face: 'text', sizePt: 10 } as const;

  test('keeps what fits', () => {
    expect(fittingText('Bar ledge', style, textWidthPt('Bar ledge', style))).toBe('Bar ledge');
  });

  test('loses letters from its end until it fits with its ellipsis', () => {
    const short = fittingText('Bar ledge over the boat hall', style, 60);
    expect(short).toMatch(/^Bar ledge.*\S…$/);
    expect(textWidthPt(short, style)).toBeLessThanOrEqual(60);
    expect(textWidthPt(`${short.slice(0, -1)}mm…`, style)).toBeGreaterThan(60);
  });
});
