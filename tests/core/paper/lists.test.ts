import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src-core/figure';
import { pourClock, sheetDiagram, stickDiagram } from '../../../src-core/paper';
import { faultsOf } from './faults';
import { ROOM, wordsOf } from './jobs';

function boxes({ marks }: Figure, fill: string) {
  return marks.flatMap((mark) => {
    if (mark.kind !== 'area' || mark.fill !== fill) return [];
    const xs = mark.loops[0]!.map(({ x }) => x);
    const ys = mark.loops[0]!.map(({ y }) => y);
    return [
      {
        x: Math.min(...xs),
        y: Math.min(...ys),
        width: Math.max(...xs) - Math.min(...xs),
        height: Math.max(...ys) - Math.min(...ys),
      },
    ];
  });
}

describe('cut diagrams of sticks', () => {
  const cuts = (...lengths: number[]) => {
    let atIn = 0;
    return lengths.map((lengthIn, i) => {
      const cut = { label: `F${i + 1}`, atIn, lengthIn };
      atIn += lengthIn + 0.125;
      return cut;
    });
  };
  const sticks = [
    { lengthIn: 96, cuts: cuts(60, 27, 3), offcutIn: 5.625, count: 2 },
    { lengthIn: 96, cuts: cuts(48), offcutIn: 47.875, count: 1 },
    { lengthIn: 96, cuts: cuts(60, 27, 3), offcutIn: 5.625, count: 1 },
  ];
  const figure = stickDiagram({ id: 'strips', title: 'Form strips', sticks, system: 'imperial' }, ROOM)!;

  test('two sticks and one cut alike are one bar, "3 x"', () => {
    expect(wordsOf(figure)).toContain('3 x');
    expect(boxes(figure, 'none')).toHaveLength(2);
    expect(figure.words).toContain('3 of 96 cut to F1 60, F2 27, F3 3, 5-5/8 left');
  });

  // 96 in at 3/4 in = 1 ft is 6 in; at 1 in = 1 ft it would be 8, more than the page
  test('a 96 in stick is 6 in long on a 7.2 in page', () => {
    expect(boxes(figure, 'none').map(({ width }) => width)).toEqual(
      [6, 6].map((width) => expect.closeTo(width, 9)),
    );
    expect(boxes(figure, 'light').map(({ width }) => width)).toEqual(
      [5.625 / 16, 47.875 / 16].map((width) => expect.closeTo(width, 9)),
    );
  });

  test('every cut has its label and length, also one too short for words', () => {
    expect(wordsOf(figure)).toEqual(expect.arrayContaining(['F1: 60', 'F2: 27', 'F3: 3', 'F1: 48']));
    expect(faultsOf(figure)).toEqual([]);
  });

  test('thirty pieces of 3 in on a stick keep their words apart', () => {
    const many = [
      { lengthIn: 96, cuts: cuts(...Array.from({ length: 30 }, () => 3)), offcutIn: 2.25, count: 1 },
    ];
    const drawn = stickDiagram({ id: 'many', title: 'Blocks', sticks: many, system: 'metric' }, ROOM)!;
    expect(wordsOf(drawn).filter((words) => /^F\d+: 76$/.test(words))).toHaveLength(30);
    expect(faultsOf(drawn)).toEqual([]);
  });

  test('no sticks, no diagram', () => {
    expect(stickDiagram({ id: 'none', title: 'None', sticks: [], system: 'imperial' }, ROOM)).toBeNull();
  });
});

describe('cut diagrams of sheets', () => {
  const sheet = {
    widthIn: 96,
    depthIn: 48,
    count: 1,
    pieces: [
      { label: 'P1', xIn: 0, yIn: 0, widthIn: 60, depthIn: 24 },
      { label: 'P2', xIn: 60.125, yIn: 0, widthIn: 4, depthIn: 40 },
      { label: 'P3', xIn: 70, yIn: 0, widthIn: 2, depthIn: 2 },
    ],
  };
  const figure = sheetDiagram(
    { id: 'panels', title: 'Panels', sheets: [sheet, sheet], system: 'imperial' },
    ROOM,
  )!;

  test('two sheets cut alike are drawn once, at 3/4 in = 1 ft: 6 x 3 in', () => {
    expect(figure.scaleWords).toBe('3/4 in = 1 ft');
    expect(boxes(figure, 'light')).toEqual([
      expect.objectContaining({ width: expect.closeTo(6, 9), height: expect.closeTo(3, 9) }),
    ]);
    expect(wordsOf(figure)).toContain('2 sheets 96 x 48');
  });

  test('a piece at the front left of its sheet lies at the bottom left of the drawing', () => {
    const [whole] = boxes(figure, 'light');
    const first = boxes(figure, 'paper')[0]!;
    expect(first.x).toBeCloseTo(whole!.x, 9);
    expect(first.y + first.height).toBeCloseTo(whole!.y + whole!.height, 9);
    expect([first.width, first.height]).toEqual([expect.closeTo(60 / 16, 9), expect.closeTo(1.5, 9)]);
  });

  test('pieces have label and size, turned or on a leader where they are small', () => {
    expect(wordsOf(figure)).toEqual(expect.arrayContaining(['P1', '60 x 24', 'P3: 2 x 2']));
    expect(faultsOf(figure)).toEqual([]);
  });
});

describe('the pour against the clock', () => {
  const rows = [
    { label: 'Batch 1', fromMin: 0, toMin: 8, kind: 'mix' as const },
    { label: 'Batch 1', fromMin: 8, toMin: 16, kind: 'place' as const },
    { label: 'Batch 2', fromMin: 8, toMin: 16, kind: 'mix' as const },
    { label: 'Screed', fromMin: 40, toMin: 60, kind: 'work' as const },
  ];
  const figure = pourClock({ id: 'pour', title: 'The pour', rows }, ROOM)!;

  test('bars are as long as they last, and batch 2 begins where batch 1 is placed', () => {
    const [first, second] = boxes(figure, 'light').filter(({ width }) => width > 0.25);
    const [placed] = boxes(figure, 'dark').filter(({ width }) => width > 0.25);
    const [screed] = boxes(figure, 'ink').filter(({ width }) => width > 0.25);
    expect(screed!.width / first!.width).toBeCloseTo(20 / 8, 9);
    expect(second!.x).toBeCloseTo(placed!.x, 9);
    expect(second!.y).toBeGreaterThan(placed!.y);
    expect(first!.y).toBeCloseTo(placed!.y, 9);
  });

  test('the foot counts minutes in round steps to 60, each label stands once', () => {
    const words = wordsOf(figure);
    expect(words).toEqual(expect.arrayContaining(['0', '60', 'Batch 1', 'Batch 2', 'Screed']));
    expect(words.filter((each) => each === 'Batch 1')).toHaveLength(1);
    expect(faultsOf(figure)).toEqual([]);
    expect(figure.widthIn).toBeLessThanOrEqual(ROOM.widthIn);
  });

  test('a label longer than its room is cut short', () => {
    const long = [
      { ...rows[0]!, label: 'Screed, float and trowel the serving counter of the galley from the back' },
    ];
    const drawn = pourClock({ id: 'long', title: 'The pour', rows: long }, { widthIn: 4, heightIn: 4 })!;
    expect(wordsOf(drawn).some((words) => words.endsWith('…'))).toBe(true);
    expect(drawn.widthIn).toBeLessThanOrEqual(4);
  });

  test('nothing goes on, no chart', () => {
    expect(pourClock({ id: 'none', title: 'None', rows: [] }, ROOM)).toBeNull();
  });
});
