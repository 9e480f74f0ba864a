import { describe, expect, test } from 'vitest';
import type { Check, Level } from '../../../src-core/checks';
import { governingCheck, rank, sortChecks, stands, worse, worstLevel } from '../../../src-core/checks';

const RUNGS: readonly Level[] = ['holds', 'steel', 'change', 'engineer'];

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
    needs: [],
    workings: [],
    cautions: [],
  };
}

const idOf = (...checks: readonly Check[]) => governingCheck(checks)?.id;

describe('the four rungs', () => {
  test('go from holds over steel and change to engineer, and of two the worse counts, in either order', () => {
    expect(RUNGS.map(rank)).toEqual([0, 1, 2, 3]);
    RUNGS.forEach((better, i) => {
      for (const other of RUNGS.slice(i)) {
        expect(worse(better, other)).toBe(other);
        expect(worse(other, better)).toBe(other);
      }
    });
  });

  test('stand on concrete alone or on steel, and no further', () => {
    expect(RUNGS.map(stands)).toEqual([true, true, false, false]);
  });

  test('of several checks the worst counts; of none it holds', () => {
    expect(worstLevel([])).toBe('holds');
    expect(worstLevel(RUNGS.map((level) => ({ level })))).toBe('engineer');
    expect(worstLevel([{ level: 'steel' }, { level: 'holds' }])).toBe('steel');
  });

  test('lead the list of checks, and within a rung the fuller ratio does', () => {
    const checks = [check('a', 'holds', 0.9), check('b', 'change', 1.1), check('c', 'steel', 0.2)];
    const more = [check('d', 'change', 1.4), check('e', 'engineer', 0), check('f', 'holds', 0.9)];
    expect(sortChecks([...checks, ...more]).map(({ id }) => id)).toEqual(['e', 'd', 'b', 'c', 'a', 'f']);
  });
});

describe('the check that a margin is read from', () => {
  test('is the worst that fails, by its rung before its ratio', () => {
    expect(idOf(check('a', 'change', 3), check('b', 'engineer', 1.1), check('c', 'holds', 0.9))).toBe('b');
    expect(idOf(check('a', 'change', 1.1), check('b', 'change', 3))).toBe('b');
  });

  test('is the nearest to its limit where all stand; a crack that steel carries is answered by the steel', () => {
    expect(idOf(check('a', 'holds', 0.4), check('b', 'holds', 0.9), check('c', 'steel', 0.2))).toBe('b');
    expect(idOf(check('plain', 'steel', 1.6), check('steel', 'steel', 0.7), check('c', 'holds', 0.3))).toBe(
      'steel',
    );
  });

  test('is the one that there is, or none', () => {
    expect(idOf(check('plain', 'steel', 1.6))).toBe('plain');
    expect(governingCheck([])).toBeNull();
  });
});
