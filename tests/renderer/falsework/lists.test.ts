import { describe, expect, test } from 'vitest';
import type { FalseworkDesign, Fastening } from '../../../src-core/falsework';
import { sheetRows, sheetWords, sizeRows, stockWords } from '../../../src-renderer/falsework/cut-rows';
import { fasteningGroups } from '../../../src-renderer/falsework/fastening-rows';
import { countWords, floorWords, inventedWords } from '../../../src-renderer/falsework/head-words';
import { legGroups } from '../../../src-renderer/falsework/leg-rows';
import { wallCounter } from './form-designs';

const { design } = wallCounter();

describe('screws', () => {
  const screw = (sectionId: string, count: number, more: Partial<Fastening> = {}): Fastening => ({
    id: `${sectionId}-${count}`,
    sectionId,
    from: 'joists',
    into: 'ledger',
    count,
    screw: '#10 x 3 in wood screws',
    reachedFrom: 'below',
    mustComeOut: true,
    throughWhatStays: false,
    intoConcreteIn: 0,
    ...more,
  });
  const [a, b] = design.sections.map(({ section }) => section.id) as [string, string];
  const listed = (fastenings: readonly Fastening[]) => fasteningGroups({ ...design, fastenings });

  test('that are alike in two sections are one row with their count in each', () => {
    const [group] = listed([screw(a, 6), screw(b, 10)]);
    expect(group!.rows).toMatchObject([
      { joins: 'joists into ledger', total: 16, where: '6 in A; 10 in B', reached: 'below' },
    ]);
    expect(listed([screw(a, 6), screw(b, 6)])[0]!.rows[0]!.where).toBe('6 in A, B');
  });

  test('reached from elsewhere are a row of their own', () => {
    const [group] = listed([screw(a, 6), screw(b, 6, { reachedFrom: 'side' })]);
    expect(group!.rows.map(({ reached }) => reached)).toEqual(['below', 'the side']);
  });

  test('that stay follow those that come out, and an empty group is left out', () => {
    const staying = screw(a, 9, { mustComeOut: false });
    expect(listed([staying, screw(b, 6)]).map(({ mustComeOut }) => mustComeOut)).toEqual([true, false]);
    expect(listed([staying])).toHaveLength(1);
  });
});

describe('stock', () => {
  const cuts: FalseworkDesign['cuts'] = {
    bySize: [
      {
        size: '2x4',
        sticks: [0, 1].map(() => ({
          stockLengthIn: 96,
          cuts: [
            { what: 'joist', lengthIn: 25.25, atIn: 0 },
            { what: 'joist', lengthIn: 25.25, atIn: 25.375 },
            { what: 'sole', lengthIn: 12, atIn: 50.75 },
          ],
          offcutIn: 33.125,
        })),
        wasteRatio: 0.349,
        found: 'fewest sticks, proved',
        tooLong: [{ what: 'ledger', lengthIn: 200 }],
      },
    ],
    sheets: [
      {
        lengthIn: 96,
        widthIn: 48,
        pieces: [{ what: 'deck panel', xIn: 0, yIn: 0, lengthIn: 36, widthIn: 25.5 }],
        cuts: [],
        offcuts: [],
      },
    ],
    sheetWasteRatio: 0.8,
    sheetsFound: 'within 1 of the proven least, 1 sheet',
  };
  const held = { ...design, cuts };

  test('sticks that are cut alike are one row, and parts alike are counted in it', () => {
    const [size] = sizeRows(held, 'imperial');
    expect(size).toMatchObject({
      words: '2 sticks, 35 % waste; fewest sticks, proved',
      rows: [{ count: 2, stock: '96 in', cuts: '2 × joist 25-1/4 in, sole 12 in', left: '33-1/8 in' }],
      tooLong: ['A ledger of 200 in is longer than any stock.'],
    });
  });

  test('sheets are named by both measures, in millimetres where the job is metric', () => {
    expect(sheetRows(held, 'imperial')).toMatchObject([
      { count: 1, stock: '96 in by 48 in', cuts: '36 in by 25-1/2 in' },
    ]);
    expect(sheetRows(held, 'metric')[0]!.cuts).toBe('914 mm by 648 mm');
  });

  test('says of the sheets how much is wasted and what is proved', () => {
    expect(sheetWords(held)).toBe(
      'Deck panels, 80 % waste; within 1 of the proven least, 1 sheet. The first measure runs along the sheet.',
    );
  });

  test('is counted as sticks and sheets', () => {
    expect(stockWords(held)).toBe('2 sticks and 1 sheet');
  });
});

describe('the head', () => {
  test('counts sections and gives the price of lumber and panel', () => {
    expect(countWords({ ...design, price: 88.356 })).toBe(
      '2 sections, lumber and panel for 88.36, screws and offcuts left out.',
    );
    expect(countWords({ ...design, sections: [] })).toBe('No section to build.');
  });

  test('says which of the prices that are used are invented', () => {
    expect(inventedWords(design)).toBe('The prices are invented: good for comparing, not for buying.');
    const own = { price: 1, from: 'own', stockId: 'x' } as const;
    const { prices } = design;
    const bought = { ...prices, boardFoot: { ...prices.boardFoot, '2x4': own } };
    expect(inventedWords({ ...design, prices: bought })).toContain('The prices of deck panel are invented');
    expect(inventedWords({ ...design, prices: { ...bought, panelFt2: own } })).toBeNull();
  });
});

describe('legs on a floor', () => {
  const print = (valueIn: number) => `${valueIn} in`;

  test('that was not read say so', () => {
    expect(floorWords(design, print)).toContain('was not read');
    expect(legGroups(design, 'imperial')[0]!.rows[0]!.floor).toBe('not read');
  });

  test('that was read have its highest and lowest place and the fall', () => {
    const floor = { highestIn: 0, lowestIn: -0.5, fallIn: 0.5 };
    expect(floorWords({ ...design, floor }, print)).toBe(
      'Floor read: the highest place at 0 in, the lowest at -0.5 in, a fall of 0.5 in.',
    );
    expect(floorWords({ ...design, floor: { ...floor, lowestIn: 0, fallIn: 0 } }, print)).toContain('level');
  });

  test('without room for them have no length', () => {
    const [first] = design.sections;
    const [leg] = first!.legs;
    const none = { ...leg!, leg: { ...leg!.leg, cutIn: 0 } };
    const [group] = legGroups({ ...design, sections: [{ ...first!, legs: [none] }] }, 'imperial');
    expect(group!.rows[0]).toMatchObject({ cut: 'no room', shim: 'none' });
  });
});
