import { describe, expect, test } from 'vitest';
import type { PieceDraft } from './cases';
import { BARS, box, caseOf, L_SHAPE, placed, sink } from './cases';

const HOOK_IN = 13.498 * 0.375;
const bars = (more: object = {}, shape = box(96, 25.5), piece: Partial<PieceDraft> = {}, job: object = {}) =>
  placed(caseOf(shape, { ...piece, reinforcement: [{ ...BARS, ...more }] }, job)).bars[0]!;

describe('bars', () => {
  test('#3 at 6 in the long way of a 96 x 25-1/2 in counter are five of 94 in, 14.73 lb', () => {
    const placing = bars();
    // four would leave 3-3/4 in beside the outer ones, more than half a spacing: 25-1/2 / 6 asks for five
    expect(placing.bars).toHaveLength(5);
    // an inch of cover to the surface of the outer bars (ACI 318-19 2.3), and four spaces between
    expect(placing.pitchIn).toBeCloseTo((25.5 - 2 * 1.1875) / 4, 9);
    expect(placing.bars.map(({ from }) => from.yIn)).toEqual(
      [1.1875, 6.96875, 12.75, 18.53125, 24.3125].map((y) => expect.closeTo(y, 6)),
    );
    expect(placing.marks).toHaveLength(1);
    expect(placing.marks[0]).toMatchObject({ mark: 'A1', shape: 'straight', count: 5 });
    expect(placing.marks[0]!.cutLengthIn).toBeCloseTo(94, 6);
    // ASTM A615: .376 lb/ft
    expect(placing.massLb).toBeCloseTo((5 * 94 * 0.376) / 12, 1);
    expect(placing.lengthIn).toBeCloseTo(470, 5);
  });

  test('across they are sixteen of 23-1/2 in', () => {
    const placing = bars({ angleDeg: 90 });
    expect(placing.bars).toHaveLength(16);
    expect(placing.marks[0]!.cutLengthIn).toBeCloseTo(23.5, 6);
  });

  test('hooked ends add 13.5 diameters each, and are to lie flat in a 2 in slab', () => {
    const placing = bars({ hooked: true });
    expect(placing.marks[0]).toMatchObject({ shape: 'two-hooks', count: 5 });
    expect(placing.marks[0]!.cutLengthIn).toBeCloseTo(94 + 2 * HOOK_IN, 3);
    expect(placing.notes.join()).toContain('lay them flat');
    expect(bars({ hooked: true }, box(96, 25.5), { thicknessIn: 6, reinforcement: [] }).notes).toEqual([]);
  });

  test('round a sink they are cut an inch short of its lip', () => {
    const placing = bars({}, box(96, 25.5), { cutouts: [sink(48, 12.75, 30, 14)] });
    // three lines, 6.97 to 18.53 in from the front, meet the sink from 33 to 63 in
    const cut = placing.bars.filter(({ from }) => Math.abs(from.yIn - 12.75) < 6);
    expect(cut).toHaveLength(6);
    for (const { cutLengthIn } of cut) expect(cutLengthIn).toBeCloseTo(31, 5);
    expect(placing.marks.map(({ mark, count }) => [mark, count])).toEqual([
      ['A1', 2],
      ['A2', 6],
    ]);
  });

  test("longer than 240 in they lap 18.5 in for f'c 4000 (class B, ACI 318-19 25.5.2.1)", () => {
    const mixes = [{ id: 'mix', name: 'Mix', strengthPsi: 4000 }];
    const placing = bars({}, box(302, 25.5), {}, { mixes });
    expect(placing.lapIn).toBeCloseTo(18.5, 1);
    expect(placing.bars).toHaveLength(10);
    expect(placing.laps).toHaveLength(5);
    for (let k = 0; k < 10; k += 2) {
      const [one, other] = [placing.bars[k]!, placing.bars[k + 1]!];
      expect(one.to.xIn - other.from.xIn).toBeCloseTo(placing.lapIn, 6);
      expect(Math.max(one.cutLengthIn, other.cutLengthIn)).toBeLessThanOrEqual(240);
      expect(one.cutLengthIn + other.cutLengthIn).toBeCloseTo(300 + placing.lapIn, 6);
    }
    const middles = placing.laps.map(({ zones }) => zones[0]![0]!.xIn);
    expect(Math.abs(middles[0]! - middles[1]!)).toBeGreaterThan(placing.lapIn);
    expect(middles[0]).toBeCloseTo(middles[2]!, 6);
  });

  test('lapped and hooked, each length has a hook at its outer end and fits the stock', () => {
    const placing = bars({ hooked: true }, box(302, 25.5));
    expect(new Set(placing.bars.map(({ shape }) => shape))).toEqual(new Set(['one-hook']));
    for (const { cutLengthIn } of placing.bars) expect(cutLengthIn).toBeLessThanOrEqual(240 + 1e-6);
  });

  test('the longest bar of the stock of the same diameter is taken', () => {
    const stock = [
      { id: 'four', name: '#4', kind: 'bar', lengthIn: 480, thicknessIn: 0.5 },
      { id: 'three', name: '#3', kind: 'bar', lengthIn: 120, thicknessIn: 0.375 },
      { id: 'three-long', name: '#3', kind: 'bar', lengthIn: 144, thicknessIn: 0.375 },
    ];
    expect(bars({}, box(120, 25.5), {}, { stock }).stock).toEqual({
      stockId: 'three-long',
      lengthIn: 144,
      widthIn: 0,
    });
    expect(bars({ barIn: 0.625 }, box(120, 25.5), {}, { stock }).stock.stockId).toBeNull();
  });

  test('bars of a field lie in it alone, cut at the cover of the slab', () => {
    const field = [
      { xIn: 30, yIn: -5 },
      { xIn: 66, yIn: -5 },
      { xIn: 66, yIn: 40 },
      { xIn: 30, yIn: 40 },
    ];
    const placing = bars({ angleDeg: 90, corners: field });
    expect(placing.bars).toHaveLength(7);
    for (const { from, to, cutLengthIn } of placing.bars) {
      expect(cutLengthIn).toBeCloseTo(23.5, 6);
      for (const { xIn } of [from, to]) expect(Math.abs(xIn - 48)).toBeLessThanOrEqual(18 + 1e-6);
    }
  });

  test('stubs under 6 in are left out and counted', () => {
    const placing = bars({ angleDeg: 90 }, box(96, 25.5), { cutouts: [sink(48, 15, 30, 12)] });
    // behind the sink 21 to 25.5 in leave 2-1/2 in: five lines cross it
    expect(placing.notes.join()).toContain('left out');
    expect(Math.min(...placing.bars.map(({ cutLengthIn }) => cutLengthIn))).toBeGreaterThanOrEqual(6);
  });

  test('in an L each bar lies within its arm and two lengths make two marks', () => {
    const placing = bars({}, L_SHAPE);
    expect(placing.marks.map(({ cutLengthIn }) => Math.round(cutLengthIn * 100) / 100)).toEqual([
      119.5, 23.5,
    ]);
    expect(placing.marks.reduce((sum, { count }) => sum + count, 0)).toBe(placing.bars.length);
    for (const { mark, cutLengthIn } of placing.bars) {
      expect(placing.marks.find((each) => each.mark === mark)!.cutLengthIn).toBeCloseTo(cutLengthIn, 1);
    }
  });
});
