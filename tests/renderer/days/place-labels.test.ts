import { describe, expect, test } from 'vitest';
import type { LabelRoom, LabelWish } from '../../../src-renderer/days/place-labels';
import { leaderFromPx, placeLabels } from '../../../src-renderer/days/place-labels';

const room: LabelRoom = { fromPx: 0, toPx: 400, levels: 2, widthOf: (text) => text.length * 6 };

function wish(xPx: number, ...texts: string[]): LabelWish {
  return { xPx, texts, count: 1 };
}

describe('words beside the knots of the day line', () => {
  test('words with room stand over the middle of their knots, next to the string', () => {
    const placed = placeLabels([wish(100, 'pour'), wish(200, 'strip')], room);
    expect(placed).toEqual([
      { text: 'pour', leftPx: 88, widthPx: 24, level: 0, knotsPx: [100] },
      { text: 'strip', leftPx: 185, widthPx: 30, level: 0, knotsPx: [200] },
    ]);
  });

  test('of two knots 20 px apart the second has its words a level higher', () => {
    const placed = placeLabels([wish(100, 'swap 1'), wish(120, 'swap 2')], room);
    expect(placed.map(({ level, leftPx }) => ({ level, leftPx }))).toEqual([
      { level: 0, leftPx: 82 },
      { level: 1, leftPx: 102 },
    ]);
  });

  test('a third one 20 px on moves aside by the room of the first and no more', () => {
    const placed = placeLabels([wish(100, 'swap 1'), wish(120, 'swap 2'), wish(140, 'swap 3')], room);
    // the first ends at 118, and 8 px are left clear
    expect(placed[2]).toMatchObject({ level: 0, leftPx: 126, text: 'swap 3' });
  });

  test('five knots 4 px apart share their words, and every event is counted', () => {
    const wishes = [100, 104, 108, 112, 116].map((xPx) => ({ xPx, texts: ['take it out'], count: 2 }));
    const placed = placeLabels(wishes, room);
    expect(placed.length).toBeLessThan(5);
    expect(placed.flatMap(({ knotsPx }) => knotsPx)).toEqual([100, 104, 108, 112, 116]);
    expect(placed.at(-1)!.text).toMatch(/^\d+ events$/);
  });

  test('words too long for the string give way to the shorter ones', () => {
    const [label] = placeLabels([wish(50, 'x'.repeat(90), '4 events')], room);
    expect(label!.text).toBe('4 events');
  });

  test('words at either end stay within the string', () => {
    const placed = placeLabels([wish(0, 'falsework, forms'), wish(400, 'hand over')], room);
    expect(placed.map(({ leftPx }) => leftPx)).toEqual([0, 400 - 54]);
  });

  test('long words at the beginning stand above those of the next knot, whose leader would run through them', () => {
    const placed = placeLabels([wish(0, 'falsework, forms, steel, pour'), wish(40, 'strip')], room);
    expect(placed).toMatchObject([
      { text: 'falsework, forms, steel, pour', level: 1, leftPx: 0 },
      { text: 'strip', level: 0, leftPx: 25 },
    ]);
  });

  test('words make way for a leader that comes down beside them rather than sharing their knot', () => {
    const placed = placeLabels([wish(100, 'swap 1-2'), wish(143, 'swap 3-4'), wish(164, 'swap 5-7')], room);
    expect(placed.map(({ text }) => text)).toEqual(['swap 1-2', 'swap 3-4', 'swap 5-7']);
    expect(placed[1]!.level).toBe(1);
    expect(placed[2]!.leftPx).toBeGreaterThan(143);
  });

  test('a knot without words takes no room', () => {
    expect(placeLabels([wish(100)], room)).toEqual([]);
  });

  test('no two words ever lie over one another, nor a leader over words, however the knots lie', () => {
    let seed = 7;
    const next = () => {
      seed = (seed * 16807) % 2147483647;
      return seed / 2147483647;
    };
    for (let round = 0; round < 200; round++) {
      const wishes = Array.from({ length: 1 + Math.floor(next() * 14) }, () =>
        wish(Math.round(next() * 400), 'x'.repeat(1 + Math.floor(next() * 20)), '3 events'),
      );
      const placed = placeLabels(wishes, room);
      for (const [i, one] of placed.entries()) {
        expect(one.leftPx).toBeGreaterThanOrEqual(0);
        expect(one.leftPx + one.widthPx).toBeLessThanOrEqual(400);
        for (const other of placed.slice(i + 1)) {
          const isClear =
            one.level !== other.level ||
            one.leftPx + one.widthPx <= other.leftPx ||
            other.leftPx + other.widthPx <= one.leftPx;
          expect(isClear).toBe(true);
        }
        for (const below of placed.filter(({ level }) => level < one.level)) {
          for (const knotPx of one.knotsPx) {
            const [leftPx, rightPx] = [leaderFromPx(one, knotPx), knotPx].sort((a, b) => a - b);
            expect(rightPx! <= below.leftPx || leftPx! >= below.leftPx + below.widthPx).toBe(true);
          }
        }
      }
      expect(placed.flatMap(({ knotsPx }) => knotsPx).length).toBe(wishes.length);
    }
  });
});
