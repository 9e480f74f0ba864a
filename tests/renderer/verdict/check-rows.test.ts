import { describe, expect, it } from 'vitest';
import { checkRows, comparedWords } from '../../../src-renderer/verdict/check-rows';
import { counter, sampleCheck } from './sample-checks';

const at = { xIn: 8, yIn: 12 };
const onPier = (supportId: string, ratio: number, level: 'holds' | 'change' = 'holds') =>
  sampleCheck({ id: 'support-load', ratio, level, where: { kind: 'support', supportId, at } });

describe('the checks of a piece as rows', () => {
  it('stand worst first, by rung and then by ratio, with keys of piece, check and place', () => {
    const { rows } = checkRows(counter(), [
      sampleCheck({ id: 'span', ratio: 0.3 }),
      sampleCheck({ id: 'bending-plain', ratio: 1.28, level: 'steel' }),
      sampleCheck({ id: 'tipping', ratio: 1.1, level: 'change' }),
      sampleCheck({ id: 'overhang', ratio: 0.9 }),
    ]);
    expect(rows.map(({ key, ratio, level }) => [key, ratio, level])).toEqual([
      ['counter/tipping/0', '1.10', 'needs a change'],
      ['counter/bending-plain/1', '1.28', 'holds with steel'],
      ['counter/overhang/2', '0.90', 'holds'],
      ['counter/span/3', '0.30', 'holds'],
    ]);
  });

  it('fold away a check that compares nothing, or takes less than 0.005 of its limit', () => {
    const { rows, alsoLookedAt } = checkRows(counter(), [
      sampleCheck({ id: 'weight', ratio: 0 }),
      sampleCheck({ id: 'tipping', ratio: 0.0049 }),
      sampleCheck({ id: 'span', ratio: 0.005 }),
    ]);
    expect(rows.map(({ check }) => check.id)).toEqual(['span']);
    expect(alsoLookedAt.map(({ check, ratio }) => [check.id, ratio])).toEqual([
      ['tipping', '0.00'],
      ['weight', ''],
    ]);
  });

  it('keep one without a ratio that asks for an engineer in sight', () => {
    const { rows, alsoLookedAt } = checkRows(counter(), [
      sampleCheck({ id: 'bracket', ratio: 0, level: 'engineer' }),
    ]);
    expect(rows.map(({ ratio, level }) => [ratio, level])).toEqual([['', 'needs an engineer']]);
    expect(alsoLookedAt).toEqual([]);
  });

  it('show the worst support, fold away those with more to spare, and fold away none that fails', () => {
    const { rows, atOtherSupports } = checkRows(counter(), [
      onPier('pier-left', 0.5),
      onPier('pier-right', 0.4),
      onPier('leg', 1.2, 'change'),
    ]);
    expect(rows.map(({ about }) => about)).toEqual(['leg']);
    expect(atOtherSupports.map(({ about }) => about)).toEqual(['pier-left', 'pier-right']);
    const both = checkRows(counter(), [onPier('leg', 1.2, 'change'), onPier('pier-left', 1.1, 'change')]);
    expect(both.rows.map(({ about }) => about)).toEqual(['leg', 'pier-left']);
    expect(both.atOtherSupports).toEqual([]);
  });

  it('lose no check, wherever it stands', () => {
    const checks = [onPier('leg', 0.5), onPier('pier-left', 0.4), sampleCheck(), sampleCheck({ ratio: 0 })];
    const { rows, atOtherSupports, alsoLookedAt } = checkRows(counter(), checks);
    const keys = [...rows, ...atOtherSupports, ...alsoLookedAt].map(({ key }) => key);
    expect(new Set(keys).size).toBe(4);
  });

  it('fly to the point of a check, and nowhere for a check of the piece as a whole', () => {
    const { rows } = checkRows(counter(), [
      sampleCheck({ id: 'span', ratio: 0.9, where: { kind: 'piece' } }),
      onPier('leg', 0.2),
    ]);
    expect(rows.map((row) => row.at)).toEqual([null, at]);
  });
});

describe('demand and capacity of a check', () => {
  it('are printed in the units of the job', () => {
    const check = sampleCheck({
      demand: { value: 164.6, unit: 'lbf' },
      capacity: { value: 300, unit: 'lbf' },
    });
    expect(comparedWords(check, 'imperial')).toEqual({ demand: '164.6 lbf', capacity: '300 lbf' });
    // 164.6 lbf x 4.44822 N/lbf = 732.2 N
    expect(comparedWords(check, 'metric')).toEqual({ demand: '732.2 N', capacity: '1334 N' });
  });

  it('are left out where the check compares nothing', () => {
    expect(comparedWords(sampleCheck({ ratio: 0 }), 'imperial')).toBeNull();
  });
});
