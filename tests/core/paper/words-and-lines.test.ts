import { describe, expect, test } from 'vitest';
// words and lines are looked at from inside: every drawing rests on them
import { newBoard, placeWords } from '../../../src-core/paper/board';
import { drawLane, placeLoose } from '../../../src-core/paper/dimension-line';
import { linesOnce } from '../../../src-core/paper/lines-once';
import { boxesOverlap, lineInBoxIn, wordsWidthIn } from '../../../src-core/paper/words-box';

const box = (x: number, y: number, halfWidth: number, halfHeight: number, turnDeg = 0) => ({
  centre: { x, y },
  halfWidth,
  halfHeight,
  turnDeg,
});

describe('the room of words', () => {
  test('six letters of 7.2 pt at .55 em are 0.33 in wide', () => {
    expect(wordsWidthIn('25-1/2', 7.2)).toBeCloseTo(0.33, 12);
  });

  test('boxes 1 wide overlap when 0.9 apart, and not when they touch', () => {
    expect(boxesOverlap(box(0, 0, 0.5, 0.1), box(0.9, 0, 0.5, 0.1))).toBe(true);
    expect(boxesOverlap(box(0, 0, 0.5, 0.1), box(1, 0, 0.5, 0.1))).toBe(false);
  });

  // a unit square turned by 45 degrees reaches sqrt(2)/2 = 0.707 from its middle
  test('a square turned by 45 degrees reaches 0.707 along the axes, and less between them', () => {
    expect(boxesOverlap(box(0, 0, 0.5, 0.5, 45), box(1.2, 0, 0.5, 0.5))).toBe(true);
    expect(boxesOverlap(box(0, 0, 0.5, 0.5, 45), box(1.21, 0, 0.5, 0.5))).toBe(false);
    expect(boxesOverlap(box(0, 0, 0.5, 0.5, 45), box(0.9, 0.9, 0.5, 0.5))).toBe(false);
  });

  test('of a line through a 2 x 1 box its diagonal is inside, sqrt(5) long, and none of a line past it', () => {
    expect(lineInBoxIn({ from: { x: -2, y: -1 }, to: { x: 2, y: 1 } }, box(0, 0, 1, 0.5))).toBeCloseTo(
      Math.sqrt(5),
      12,
    );
    expect(lineInBoxIn({ from: { x: -2, y: 0.6 }, to: { x: 2, y: 0.6 } }, box(0, 0, 1, 0.5))).toBe(0);
    expect(lineInBoxIn({ from: { x: 0, y: -2 }, to: { x: 0, y: 2 } }, box(0, 0, 1, 0.5, 90))).toBeCloseTo(
      2,
      12,
    );
  });
});

describe('placing words', () => {
  test('twenty names of one place find twenty places', () => {
    const board = newBoard();
    for (let k = 0; k < 20; k++) {
      placeWords(board, { words: `a name ${k}`, sizePt: 8 }, [], { x: 0, y: 0 });
    }
    const { boxes } = board;
    expect(boxes).toHaveLength(20);
    expect(boxes.every((one, i) => boxes.slice(0, i).every((other) => !boxesOverlap(one, other)))).toBe(true);
  });

  test('a named spot is taken while it is free, and has no leader', () => {
    const board = newBoard();
    const spot = { centre: { x: 1, y: 1 }, turnDeg: 0, leaderTo: null, cost: 0 };
    expect(placeWords(board, { words: 'pier', sizePt: 8 }, [spot], { x: 1, y: 1 }).centre).toEqual({
      x: 1,
      y: 1,
    });
    expect(board.marks).toEqual([]);
    expect(placeWords(board, { words: 'pier', sizePt: 8 }, [spot], { x: 1, y: 1 }).centre).not.toEqual({
      x: 1,
      y: 1,
    });
    expect(board.marks.filter(({ kind }) => kind === 'line')).toHaveLength(1);
  });
});

describe('dimension lines', () => {
  const up = { x: 0, y: -1 };
  const span = (from: number, to: number, words: string) => ({
    from: { x: from, y: 0 },
    to: { x: to, y: 0 },
    words,
  });

  test('a chain has its figures over its line; the whole goes a lane farther out', () => {
    const board = newBoard();
    const chain = drawLane(board, [span(0, 1, '24'), span(1, 3, '48')], up, 0);
    const whole = drawLane(board, [span(0, 3, '72')], up, chain.lane);
    expect(chain).toEqual({ lane: 0, loose: [] });
    expect(whole.lane).toBeGreaterThan(chain.lane);
    const heights = board.texts.map((mark) => (mark.kind === 'text' ? mark.at.y : 0));
    expect(heights[0]).toBeCloseTo(heights[1]!, 12);
    expect(heights[2]).toBeLessThan(heights[0]!);
  });

  test('witness lines leave a gap at the thing and run past the dimension line', () => {
    const board = newBoard();
    drawLane(board, [span(0, 2, '48')], up, 0);
    const lines = board.marks.flatMap((mark) =>
      mark.kind === 'line' && mark.pen === 'dimension' ? [mark] : [],
    );
    const level = lines.find(({ from, to }) => Math.abs(from.y - to.y) < 1e-9)!;
    const witness = lines.filter(({ from, to }) => Math.abs(from.x - to.x) < 1e-9);
    expect(witness).toHaveLength(2);
    for (const { from, to } of witness) {
      expect(Math.max(from.y, to.y)).toBeLessThan(0);
      expect(Math.min(from.y, to.y)).toBeLessThan(level.from.y);
    }
  });

  test('a figure too wide for its line is moved beside it', () => {
    const board = newBoard();
    const { loose } = drawLane(board, [span(0, 1, '24'), span(1, 1.1, '2-3/8'), span(1.1, 2, '21')], up, 0);
    expect(loose.map(({ words }) => words)).toEqual(['2-3/8']);
    placeLoose(board, loose);
    expect(board.texts).toHaveLength(3);
    expect(
      board.boxes.every((one, i) => board.boxes.slice(0, i).every((other) => !boxesOverlap(one, other))),
    ).toBe(true);
  });
});

describe('broken lines', () => {
  const square = (x: number, size: number) => [
    { x, y: 0 },
    { x: x + size, y: 0 },
    { x: x + size, y: size },
    { x, y: size },
  ];
  const total = (lines: ReturnType<typeof linesOnce>) =>
    lines.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);

  test('of two unit squares side by side the shared side is drawn once: 7 in all', () => {
    expect(total(linesOnce([square(0, 1), square(1, 1)]))).toBeCloseTo(7, 9);
  });

  test('of a side half as long the rest is still drawn: 4 and 8 less 1 shared', () => {
    expect(total(linesOnce([square(0, 1), square(1, 2)]))).toBeCloseTo(11, 9);
  });

  test('a loop drawn twice is drawn once', () => {
    expect(total(linesOnce([square(0, 1), square(0, 1)]))).toBeCloseTo(4, 9);
  });
});
