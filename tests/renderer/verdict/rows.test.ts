import { describe, expect, it } from 'vitest';
import type { Change } from '../../../src-core/remedies';
import type { SiteFinding } from '../../../src-core/site';
import { formula, readingLine } from '../../../src-core/workings';
import { changeRows, vainWords, weightChange } from '../../../src-renderer/verdict/change-rows';
import { reactionRows } from '../../../src-renderer/verdict/reaction-rows';
import { siteRows } from '../../../src-renderer/verdict/site-rows';
import { workingsRows } from '../../../src-renderer/verdict/workings-rows';

const tie: Change = {
  id: 'ledge-tie',
  pieceId: 'ledge',
  kinds: ['tie'],
  needs: ['tie'],
  title: 'Tie it: 4 ties at 24 in',
  patch: [],
  cost: { weightLb: 0, concreteIn3: 0, parts: 4, partsWords: ['4 ties, each rated 400 lbf'] },
  worstRatio: 0.738,
  worstCheckId: 'bending-plain',
  level: 'holds',
};

describe('changes as rows', () => {
  it('carry their price and their new worst ratio', () => {
    const [row] = changeRows([tie], 'imperial');
    expect(row).toMatchObject({
      title: 'Tie it: 4 ties at 24 in',
      worst: 'worst then 0.74 of its limit',
      weight: 'no heavier',
      parts: ['4 ties, each rated 400 lbf'],
    });
  });

  it('count parts that have no words', () => {
    const cost = { ...tie.cost, partsWords: [] };
    expect(changeRows([{ ...tie, cost }], 'imperial')[0]!.parts).toEqual(['4 parts']);
    expect(changeRows([{ ...tie, cost: { ...cost, parts: 0 } }], 'imperial')[0]!.parts).toEqual([]);
  });

  it('say heavier and lighter in the units of the job', () => {
    expect(weightChange(141.2, 'imperial')).toBe('141 lb heavier');
    expect(weightChange(-22, 'metric')).toBe('9.98 kg lighter');
    expect(weightChange(0.4, 'imperial')).toBe('no heavier');
  });

  it('are said to be none only once the search is over and was in vain', () => {
    const triedInVain = ['A wider bearing: not enough.'];
    const nothing = { changes: [], triedInVain };
    expect(vainWords(nothing, false)).toBe('Nothing that was tried makes the whole piece pass.');
    expect(vainWords(nothing, true)).toBeNull();
    expect(vainWords({ changes: [tie], triedInVain }, false)).toBeNull();
    expect(vainWords({ changes: [], triedInVain: [] }, false)).toBeNull();
  });
});

describe('what the supports carry', () => {
  const low = { supportId: 'wall', words: 'stud wall', deadLbf: 211.4, mostLbf: 794.8, leastLbf: 211.4 };

  it('stands under each support, once for soft and once for stiff supports, in whole pounds', () => {
    const rows = reactionRows(
      [
        { ...low, bound: 'low', tieLbf: 0 },
        { ...low, supportId: 'pier', words: 'pier A', bound: 'low', tieLbf: 0 },
        { ...low, bound: 'high', tieLbf: 96.2 },
      ],
      'imperial',
    );
    expect(rows.map(({ words }) => words)).toEqual(['stud wall', 'pier A']);
    expect(rows[0]!.rows).toEqual([
      { bound: 'soft', dead: '211 lbf', most: '795 lbf', least: '211 lbf', tie: 'none' },
      { bound: 'stiff', dead: '211 lbf', most: '795 lbf', least: '211 lbf', tie: '96 lbf' },
    ]);
  });
});

describe('findings about the site', () => {
  const finding = (id: string, level: SiteFinding['level'], demand: SiteFinding['demand'] = null) => ({
    id,
    title: id,
    level,
    words: '',
    demand,
    capacity: demand === null ? null : { value: 50, unit: 'psf' },
    workings: [],
    source: 'local code',
    cautions: [],
  });

  it('stand worst first, with their numbers and their page of the manual', () => {
    const rows = siteRows(
      [finding('guard', 'holds'), finding('floor-load', 'change', { value: 61, unit: 'psf' })],
      'imperial',
    );
    expect(rows.map(({ manualId, numbers }) => [manualId, numbers])).toEqual([
      ['site-floor-load', '61 psf against 50 psf'],
      ['site-guard', ''],
    ]);
  });
});

describe('workings as they are set', () => {
  const moment = formula<{ W: number; x: number }>({
    symbol: 'Mr',
    label: 'Righting moment',
    formula: 'W * x',
    units: { W: 'lbf', x: 'in' },
    unit: 'lbf-in',
    source: 'statics',
    fromMemory: true,
    compute: ({ W, x }) => W * x,
  });

  it('show the formula, the numbers put in, the result with its unit, and that the source is recalled', () => {
    expect(workingsRows([moment({ W: 211.5, x: 2 }).line])).toEqual([
      {
        key: '0-Mr',
        symbol: 'Mr',
        label: 'Righting moment',
        steps: ['W * x', '211.5 * 2'],
        result: '423 lbf-in',
        source: 'statics; from memory, verify',
      },
    ]);
  });

  it('show a number of the plate engine without steps', () => {
    const line = readingLine({
      symbol: 'm',
      label: 'Moment',
      value: 88,
      unit: 'lbf in/in',
      from: 'plate engine',
    });
    expect(workingsRows([line])[0]).toMatchObject({
      steps: [],
      result: '88 lbf in/in',
      source: 'plate engine',
    });
  });
});
