import { describe, expect, test } from 'vitest';
import type { FontFaceRule } from '../../../src-renderer/book/font-faces';
import { bookFaces } from '../../../src-renderer/book/font-faces';

const rule = (family: string, weight: string, own: Partial<FontFaceRule> = {}): FontFaceRule => ({
  family,
  weight,
  source: 'url("./barlow.woff2") format("woff2"), url("./barlow.woff") format("woff")',
  range: 'U+0000-00FF',
  base: 'http://127.0.0.1:4000/assets/main.css',
  ...own,
});

describe('font faces for a document that leaves', () => {
  test('are the three that the book is set in, whatever the quotes of the browser', () => {
    const rules = [
      rule('Barlow', '400'),
      rule('"Barlow"', '500'),
      rule("'Barlow'", '600'),
      rule('"Barlow Condensed"', '600'),
      rule('Other', '400'),
    ];
    expect(bookFaces(rules).map(({ rule: written }) => written('x'))).toEqual([
      "@font-face { font-family: 'Barlow'; font-style: normal; font-weight: 400; src: url(x) format('woff2'); unicode-range: U+0000-00FF; }",
      "@font-face { font-family: 'Barlow'; font-style: normal; font-weight: 600; src: url(x) format('woff2'); unicode-range: U+0000-00FF; }",
      "@font-face { font-family: 'Barlow Condensed'; font-style: normal; font-weight: 600; src: url(x) format('woff2'); unicode-range: U+0000-00FF; }",
    ]);
  });

  test('take the newer of their files, meant from the style sheet', () => {
    expect(bookFaces([rule('Barlow', '400')])[0]?.file).toBe('http://127.0.0.1:4000/assets/barlow.woff2');
    expect(bookFaces([rule('Barlow', '400', { source: 'local("Barlow")' })])).toEqual([]);
  });
});
