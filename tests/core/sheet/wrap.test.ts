import { describe, expect, test } from 'vitest';
import type { TextStyle } from '../../../src-core/sheet';
import { textWidthPt } from '../../../src-core/sheet';
import type { Words } from '../../../src-core/sheet/words';
import { wrapWords } from '../../../src-core/sheet/wrap';
import { wholeFigures } from '../../../src-core/units';

const BODY: TextStyle = { face: 'text', sizePt: 10, linePt: 14 };
/** Width that just holds a text with the 2 % that lines are reckoned longer. */
const widthOf = (words: string) => textWidthPt(words, BODY) * 1.02 + 1e-9;
const wrap = (words: Words, widthPt: number) =>
  wrapWords(words, BODY, widthPt, ({ to }) => `page\u00a0${to}`);
const linesOf = (words: Words, widthPt: number) =>
  wrap(words, widthPt).lines.map((line) =>
    line.words.map((word) => word.map(({ text }) => text).join('')).join(' '),
  );

describe('lines of a paragraph', () => {
  test('end where the next word would not fit', () => {
    expect(linesOf('cut each leg to its mark', widthOf('cut each leg'))).toEqual([
      'cut each leg',
      'to its mark',
    ]);
  });

  test('end a word earlier where the room is a hundredth of a point less', () => {
    expect(linesOf('cut each leg to its mark', widthOf('cut each leg') - 0.01)).toEqual([
      'cut each',
      'leg to its',
      'mark',
    ]);
  });

  test('take line breaks and runs of blanks as one blank', () => {
    expect(linesOf('cut\n  each\tleg ', 1000)).toEqual(['cut each leg']);
  });

  test('count strong words by the wider face', () => {
    const room = widthOf('nobody below');
    expect(linesOf('nobody below', room)).toHaveLength(1);
    expect(linesOf([{ kind: 'strong', words: 'nobody below' }], room)).toHaveLength(2);
  });

  test('are one, and empty, for no words', () => {
    expect(linesOf('', 100)).toEqual(['']);
  });
});

describe('a word longer than its line', () => {
  test('is broken between letters, each line as full as it goes', () => {
    const lines = linesOf('if iiiiiiiiii', widthOf('iiii'));
    expect(lines).toEqual(['if', 'iiii', 'iiii', 'ii']);
  });

  test('is broken after its hyphen where that is enough', () => {
    expect(linesOf('formwork-underside', widthOf('formwork-'))).toEqual(['formwork-', 'underside']);
  });

  test('goes on without a blank, and the next word begins with one', () => {
    const { lines } = wrap('iiiiiiiiii if', widthOf('iiii'));
    expect(lines.map(({ isJoined }) => isJoined)).toEqual([false, true, true, false]);
  });
});

describe('a figure with its unit', () => {
  test('stays on one line', () => {
    expect(linesOf('cut it to 25-1/2 in', widthOf('cut it to 25-1/2'))).toEqual(['cut it to', '25-1/2 in']);
  });

  test('that is longer than its line is left whole and reported', () => {
    const { lines, tooWide } = wrap('25-1/2 in', widthOf('25-1/2'));
    expect(lines).toHaveLength(1);
    expect(tooWide).toBe('25-1/2 in');
  });

  test('is told from part numbers and plain words', () => {
    const whole = (words: string) =>
      wholeFigures(words)
        .filter(({ isWhole }) => isWhole)
        .map(({ text }) => text);
    expect(whole(`Two 2' 1-1/2" legs, 8 in apart, at 1,500 psi and 20 °C`)).toEqual([
      `2' 1-1/2"`,
      '8 in',
      '1,500 psi',
      '20 °C',
    ]);
    expect(whole('4-W1.4 mesh, batch 3 of 5')).toEqual([]);
  });
});

test('a reference is never broken, and keeps its full stop', () => {
  expect(linesOf(['see ', { kind: 'page', to: '12' }, '.'], widthOf('see page'))).toEqual([
    'see',
    'page\u00a012.',
  ]);
});
