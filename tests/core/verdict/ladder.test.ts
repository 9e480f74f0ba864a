import { describe, expect, test } from 'vitest';
import type { Check, Level } from '../../../src-core/checks';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { judge, needWords } from '../../../src-core/verdict';

function check(id: string, level: Level, ratio: number): Check {
  return {
    id,
    title: id,
    pieceId: 'ledge',
    where: { kind: 'piece' },
    demand: { value: ratio, unit: '' },
    capacity: { value: 1, unit: '' },
    ratio,
    level,
    words: `Words of ${id}.`,
    needs: level === 'change' ? ['tie'] : [],
    workings: [],
    cautions: [],
  };
}

describe('the ladder from checks to one verdict', () => {
  test('a piece whose checks all hold, holds', () => {
    const verdict = judge(
      [check('span', 'holds', 0.4), check('bending-plain', 'holds', 0.7)],
      DEFAULT_LIMITS,
      null,
    );
    expect(verdict).toEqual({ level: 'holds', words: 'Holds', why: 'Words of bending-plain.', flags: [] });
  });

  test('a ratio of 0.85 is amber, one of 0.98 says that it is near the limit', () => {
    expect(judge([check('span', 'holds', 0.85)], DEFAULT_LIMITS, null).flags).toEqual(['amber']);
    expect(judge([check('span', 'holds', 0.98)], DEFAULT_LIMITS, null).flags).toEqual([
      'near-limit',
      'amber',
    ]);
    expect(judge([check('span', 'holds', 0.79)], DEFAULT_LIMITS, null).flags).toEqual([]);
  });

  test('a ratio a little over 1 says that it is near the limit too, and one that fails is not amber beside', () => {
    expect(judge([check('span', 'change', 1.02)], DEFAULT_LIMITS, undefined).flags).toEqual(['near-limit']);
    expect(judge([check('span', 'change', 1.04)], DEFAULT_LIMITS, undefined).flags).toEqual([]);
  });

  test('a slab that cracks and whose steel passes, holds with steel', () => {
    const verdict = judge(
      [check('bending-plain', 'steel', 1.4), check('bending-reinforced', 'steel', 0.6)],
      DEFAULT_LIMITS,
      null,
    );
    expect(verdict.words).toBe('Holds with steel');
    // What cracks and is carried is neither amber nor near a limit: its steel answers for it.
    expect(verdict.flags).toEqual(['cracks']);
    const near = [check('bending-plain', 'steel', 1.01), check('bending-reinforced', 'steel', 0.6)];
    expect(judge(near, DEFAULT_LIMITS, null).flags).toEqual(['cracks']);
  });

  test('a failing check with a change that passes names the change; a corbel among them is flagged', () => {
    const checks = [check('tipping', 'change', 2.1), check('span', 'holds', 0.2)];
    expect(judge(checks, DEFAULT_LIMITS, ['tie'])).toMatchObject({ level: 'change', words: 'Needs a tie' });
    const corbel = judge(checks, DEFAULT_LIMITS, ['corbel', 'tie']);
    expect(corbel.words).toBe('Needs a corbel and a tie');
    expect(corbel.flags).toEqual(['corbel', 'tips']);
  });

  test('a failing check that nothing tried can mend needs an engineer, and says so', () => {
    const verdict = judge([check('tipping', 'change', 2.1)], DEFAULT_LIMITS, null);
    expect(verdict.level).toBe('engineer');
    expect(verdict.why).toContain('Nothing that was tried makes the whole piece pass.');
  });

  test('an engineer check outranks everything, even where a change is known', () => {
    const verdict = judge(
      [check('overhang', 'engineer', 1.2), check('tipping', 'change', 3)],
      DEFAULT_LIMITS,
      ['tie'],
    );
    expect(verdict.words).toBe('Needs an engineer');
  });

  test('a failing check for which nothing was tried is only said to need a change', () => {
    const verdict = judge([check('tipping', 'change', 2.1)], DEFAULT_LIMITS, undefined);
    expect(verdict).toMatchObject({ level: 'change', words: 'Needs a change' });
  });

  test('a piece without any check needs an engineer', () => {
    expect(judge([], DEFAULT_LIMITS, null).level).toBe('engineer');
  });
});

describe('words of a change', () => {
  test.each([
    { needs: ['tie'] as const, words: 'Needs a tie' },
    { needs: ['support'] as const, words: 'Needs support' },
    { needs: ['steel', 'thickness'] as const, words: 'Needs steel and thickness' },
    { needs: ['tie', 'steel', 'thickness'] as const, words: 'Needs a tie, steel and thickness' },
  ])('$words', ({ needs, words }) => {
    expect(needWords(needs)).toBe(words);
  });
});
