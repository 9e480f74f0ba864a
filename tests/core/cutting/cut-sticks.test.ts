import { describe, expect, test } from 'vitest';
import { cutSticks, stripCount } from '../../../src-core/cutting';
import { diceOf, seededRandom } from '../../support/seeded-random';
import { faultsOf, leastByTrying, pieces, stick } from './cutting-cases';

const MM = 25.4;

/** First-fit decreasing as the handbooks give it, for comparison: number of sticks. */
function longestFirstCount(lengthsIn: readonly number[], stickIn: number, kerfIn: number): number {
  const leftIn: number[] = [];
  for (const lengthIn of [...lengthsIn].sort((a, b) => b - a)) {
    const i = leftIn.findIndex((each) => each >= lengthIn);
    if (i < 0) leftIn.push(stickIn - lengthIn - kerfIn);
    else leftIn[i]! -= lengthIn + kerfIn;
  }
  return leftIn.length;
}

// Sums and optima by exhaustive hand and machine search in the engineering basis, section 13, and again by `leastByTrying`.
describe('sticks of one length', () => {
  test.each([
    ['13.1 without a kerf', 96, 0, [48, 48, 32, 32, 32], 2],
    ['13.1 with a kerf of 1/8 in', 96, 0.125, [48, 48, 32, 32, 32], 3],
    ['13.2', 96, 0.125, [52, 46, 38, 30, 25, 25, 24, 18, 14, 10], 3],
    ['13.3', 96, 0.125, [48, 33.5, 33, 30, 30, 29, 26.5, 21.5, 21], 3],
    ['13.4 in mm', 2400 / MM, 3 / MM, [1200, 1200, 900, 900, 700, 700, 600, 500].map((mm) => mm / MM), 3],
  ])('%s: %d in with a kerf of %d in gives the fewest, proved', (_, stickIn, kerfIn, lengthsIn, fewest) => {
    const asked = pieces(...lengthsIn);
    const list = cutSticks({ pieces: asked, stocks: [stick(stickIn)], kerfIn });
    expect(faultsOf(list, asked, kerfIn)).toEqual([]);
    expect(list.sticks).toHaveLength(fewest);
    expect(list).toMatchObject({ aim: 'count', leastSticks: fewest });
    expect(list.proof).toEqual({
      isProved: true,
      total: fewest,
      leastTotal: fewest,
      words: 'fewest sticks, proved',
    });
    const fits = (group: readonly number[]) =>
      group.reduce((sum, i) => sum + lengthsIn[i]!, 0) + kerfIn * (group.length - 1) <= stickIn + 1e-9;
    expect(leastByTrying(lengthsIn.length, (group) => (fits(group) ? 1 : Number.POSITIVE_INFINITY))).toBe(
      fewest,
    );
  });

  test('13.2 and 13.3: laying the longest first would take one stick more', () => {
    expect(longestFirstCount([52, 46, 38, 30, 25, 25, 24, 18, 14, 10], 96, 0.125)).toBe(4);
    expect(longestFirstCount([48, 33.5, 33, 30, 30, 29, 26.5, 21.5, 21], 96, 0.125)).toBe(4);
  });

  test('three of 800, 797 and 797 mm with 3 mm between fill 2400 mm to the end', () => {
    const asked = pieces(800 / MM, 797 / MM, 797 / MM);
    const list = cutSticks({ pieces: asked, stocks: [stick(2400 / MM)], kerfIn: 3 / MM });
    expect(list.sticks).toHaveLength(1);
    expect(list.sticks[0]!.offcutIn).toBe(0);
    const longer = pieces(800 / MM, 797 / MM, 797.01 / MM);
    expect(cutSticks({ pieces: longer, stocks: [stick(2400 / MM)], kerfIn: 3 / MM }).sticks).toHaveLength(2);
  });

  test('cuts are laid from the end with a kerf between, and the offcut begins behind the last kerf', () => {
    const list = cutSticks({ pieces: pieces(24, 40), stocks: [stick(96)], kerfIn: 0.125 });
    expect(list.sticks).toEqual([
      {
        stockId: '96',
        stockLengthIn: 96,
        price: null,
        cuts: [
          { id: 'p2', lengthIn: 40, atIn: 0 },
          { id: 'p1', lengthIn: 24, atIn: 40.125 },
        ],
        offcutIn: 31.75,
      },
    ]);
  });

  test('a piece longer than the stock is told apart, and one as long as it is cut', () => {
    const list = cutSticks({ pieces: pieces(96, 96.01), stocks: [stick(96)], kerfIn: 0.125 });
    expect(list.tooLong).toEqual([{ id: 'p2', lengthIn: 96.01 }]);
    expect(list.sticks).toHaveLength(1);
  });

  test('no pieces need no sticks', () => {
    const list = cutSticks({ pieces: [], stocks: [stick(96)], kerfIn: 0.125 });
    expect(list).toMatchObject({ sticks: [], leastSticks: 0, proof: { isProved: true, total: 0 } });
  });

  test('13.8: strips of 2-1/2 and 2 in from 48 in, and of 50 mm from 1220 mm, are 18, 22 and 23', () => {
    expect(stripCount(48, 2.5, 0.125)).toBe(18);
    expect(stripCount(48, 2, 0.125)).toBe(22);
    expect(stripCount(1220 / MM, 50 / MM, 3 / MM)).toBe(23);
  });
});

describe('200 small lists', () => {
  const cases = Array.from({ length: 200 }, (_, seed) => {
    const dice = diceOf(seededRandom(seed + 1));
    const kerfIn = dice.pick([0, 0.125, 3 / MM]);
    const longest = dice.pick([30, 50, 70, 96]);
    const lengthsIn = Array.from({ length: dice.whole(1, 9) }, () => dice.sixteenths(4, longest));
    return { seed, kerfIn, lengthsIn, prices: [dice.whole(5, 9), dice.whole(8, 13), dice.whole(12, 20)] };
  });
  const STOCKS_IN = [96, 120, 168];
  const runIn = (lengthsIn: readonly number[], group: readonly number[], kerfIn: number) =>
    group.reduce((sum, i) => sum + lengthsIn[i]!, 0) + kerfIn * (group.length - 1);

  test('come to as few sticks as trying every way gives, proved', () => {
    for (const { seed, kerfIn, lengthsIn } of cases) {
      const asked = pieces(...lengthsIn);
      const list = cutSticks({ pieces: asked, stocks: [stick(96)], kerfIn });
      const fewest = leastByTrying(lengthsIn.length, (group) =>
        runIn(lengthsIn, group, kerfIn) <= 96 + 1e-9 ? 1 : Number.POSITIVE_INFINITY,
      );
      expect([seed, faultsOf(list, asked, kerfIn), list.sticks.length]).toEqual([seed, [], fewest]);
      expect(list.proof.isProved).toBe(true);
    }
  });

  test('from three stocks come to the least price, and without prices to the least length', () => {
    for (const { seed, kerfIn, lengthsIn, prices } of cases) {
      const asked = pieces(...lengthsIn);
      const least = (costs: readonly number[]) =>
        leastByTrying(lengthsIn.length, (group) => {
          const able = STOCKS_IN.flatMap((lengthIn, i) =>
            runIn(lengthsIn, group, kerfIn) <= lengthIn + 1e-9 ? [costs[i]!] : [],
          );
          return Math.min(Number.POSITIVE_INFINITY, ...able);
        });
      for (const aim of ['price', 'length'] as const) {
        const stocks = STOCKS_IN.map((lengthIn, i) => ({
          ...stick(lengthIn),
          price: aim === 'price' ? prices[i]! : null,
        }));
        const list = cutSticks({ pieces: asked, stocks, kerfIn });
        const spent = list.sticks.reduce((sum, each) => sum + (each.price ?? each.stockLengthIn), 0);
        const wanted = least(aim === 'price' ? prices : STOCKS_IN);
        expect([seed, aim, faultsOf(list, asked, kerfIn), list.aim]).toEqual([seed, aim, [], aim]);
        expect(spent).toBeCloseTo(wanted, 9);
        expect(list.proof.total).toBeCloseTo(wanted, 6);
        expect(list.proof.isProved).toBe(true);
        expect(list.leastSticks).toBeLessThanOrEqual(list.sticks.length);
      }
    }
  });
});

describe('long lists', () => {
  const random200 = (seed: number, leastIn: number, mostIn: number) => {
    const dice = diceOf(seededRandom(seed));
    return pieces(...Array.from({ length: 200 }, () => dice.sixteenths(leastIn, mostIn)));
  };

  test.each([
    [1, 6, 60],
    [2, 10, 30],
    [3, 20, 90],
    [4, 24, 48],
  ])('200 pieces (seed %d, %d to %d in) come with a bound that no list can beat', (seed, leastIn, mostIn) => {
    const asked = random200(seed, leastIn, mostIn);
    const list = cutSticks({ pieces: asked, stocks: [stick(96)], kerfIn: 0.125 });
    expect(faultsOf(list, asked, 0.125)).toEqual([]);
    // Lengths with their kerfs fill at least so many sticks.
    const filled = asked.reduce((sum, { lengthIn }) => sum + lengthIn + 0.125, 0) / 96.125;
    expect(list.leastSticks).toBeGreaterThanOrEqual(Math.ceil(filled));
    expect(list.sticks.length - list.leastSticks).toBeLessThanOrEqual(1);
    expect(list.sticks.length).toBeLessThanOrEqual(
      longestFirstCount(
        asked.map(({ lengthIn }) => lengthIn),
        96,
        0.125,
      ),
    );
  });

  test('the same pieces always give the same list', () => {
    const order = { pieces: random200(2, 10, 30), stocks: [stick(96)], kerfIn: 0.125 };
    expect(cutSticks(order)).toEqual(cutSticks(order));
  });

  test('where the search stops, the words say how near it came', () => {
    // Three thirds to a stick, each a little off, so that only few triples fill one: hard for any search.
    const dice = diceOf(seededRandom(11));
    const asked = pieces(
      ...Array.from({ length: 40 }, () => {
        const firstIn = dice.whole(2500, 4500) / 100;
        const secondIn = dice.whole(2500, 4500) / 100;
        return [firstIn, secondIn, 100 - firstIn - secondIn];
      }).flat(),
    );
    const list = cutSticks({ pieces: asked, stocks: [stick(100)], kerfIn: 0 });
    expect(faultsOf(list, asked, 0)).toEqual([]);
    expect(list.proof).toMatchObject({ isProved: false, leastTotal: 40 });
    expect(list.proof.words).toBe(`within ${list.sticks.length - 40} of the proven least, 40 sticks`);
  });
});
