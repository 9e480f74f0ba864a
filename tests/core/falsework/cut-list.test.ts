import { describe, expect, test } from 'vitest';
import { cutList, designFalsework } from '../../../src-core/falsework';
import { formJob } from './form-jobs';

/** A stick of a stock of 2x4, dressed 1-1/2 by 3-1/2 in. */
function lumber(id: string, lengthIn: number, price: number | null) {
  return { id, name: id, kind: 'lumber', lengthIn, widthIn: 3.5, thicknessIn: 1.5, price };
}

const joists = (...lengthsIn: readonly number[]) =>
  lengthsIn.map((lengthIn) => ({ what: 'joist', size: '2x4', lengthIn, count: 1 }) as const);

describe('cut list', () => {
  test('holds every stick and panel of the parts list once, none longer than its stock', () => {
    const { cuts, sections } = designFalsework(formJob(100, 24), 'counter');
    const asked = sections.flatMap(({ bill }) => bill.sticks).reduce((sum, { count }) => sum + count, 0);
    const cut = cuts.bySize.flatMap(({ sticks }) => sticks);
    expect(cut.reduce((sum, stick) => sum + stick.cuts.length, 0)).toBe(asked);
    for (const { cuts: pieces, stockLengthIn, offcutIn } of cut) {
      const used = pieces.reduce((sum, { lengthIn }) => sum + lengthIn, 0);
      expect(used + 0.125 * (pieces.length - 1)).toBeLessThanOrEqual(stockLengthIn + 1e-6);
      expect(offcutIn).toBeGreaterThanOrEqual(0);
    }
    expect(cuts.sheets.flatMap(({ pieces }) => pieces)).toHaveLength(3);
    for (const { found } of cuts.bySize) expect(found).toMatch(/proved$|of the proven least/);
    expect(cuts.sheetsFound).toBe('fewest sheets, proved');
  });

  // 13.2 of the engineering basis: the longest first, each into the first stick with room, takes four.
  test('13.2: ten joists of 282 in together come from three sticks of 96 in, the fewest', () => {
    const job = formJob(36, 24, {}, { stock: [lumber('eight', 96, null)] });
    const { bySize } = cutList(job, joists(52, 46, 38, 30, 25, 25, 24, 18, 14, 10), []);
    expect(bySize[0]).toMatchObject({ size: '2x4', found: 'fewest sticks, proved' });
    expect(bySize[0]!.sticks).toHaveLength(3);
    expect(Math.abs(bySize[0]!.wasteRatio - (1 - 282 / 288))).toBeLessThan(1e-9);
  });

  test('takes the cheaper of two lengths where both have a price', () => {
    const lengths = (tenPrice: number) => {
      const stock = [lumber('eight', 96, 4), lumber('ten', 120, tenPrice)];
      const { bySize } = cutList(formJob(36, 24, {}, { stock }), joists(48, 48, 20), []);
      expect(bySize[0]!.found).toBe('least price of sticks, proved');
      return bySize[0]!.sticks.map(({ stockLengthIn }) => stockLengthIn);
    };
    // 116-1/4 in with two kerfs: one of 120 in holds all; from 96 in it takes two for 8.00, since 48 + 48 + 1/8 is too long.
    expect(lengths(7)).toEqual([120]);
    expect(lengths(9)).toEqual([96, 96]);
  });

  test('tells apart what no stock is long enough for', () => {
    const job = formJob(36, 24, {}, { stock: [lumber('eight', 96, null)] });
    const [size] = cutList(job, joists(100, 40), []).bySize;
    expect(size!.tooLong).toEqual([{ what: 'joist', lengthIn: 100 }]);
    expect(size!.sticks).toHaveLength(1);
  });

  test('a deck of 100 by 60 in is cut in four of 50 by 30 in, which take a sheet each', () => {
    const cuts = cutList(formJob(36, 24), [], [{ what: 'deck panel', lengthIn: 100, widthIn: 60 }]);
    expect(cuts.sheets).toHaveLength(4);
    expect(cuts.sheetsFound).toBe('fewest sheets, proved');
  });
});
