import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BookedPoint, reduceLevels, rise } from '../../../src-core/levels';
import { recompute } from '../../support/recompute';

const back = (name: string, backsightIn: number): BookedPoint => ({
  name,
  backsightIn,
  intermediateIn: null,
  foresightIn: null,
});
const between = (name: string, intermediateIn: number): BookedPoint => ({
  name,
  backsightIn: null,
  intermediateIn,
  foresightIn: null,
});
const change = (name: string, foresightIn: number, backsightIn: number): BookedPoint => ({
  name,
  backsightIn,
  intermediateIn: null,
  foresightIn,
});
const fore = (name: string, foresightIn: number): BookedPoint => ({
  name,
  backsightIn: null,
  intermediateIn: null,
  foresightIn,
});

const LINE = [
  back('bench mark', 4.325),
  between('A', 4.61),
  between('B', 3.985),
  between('C', 4.25),
  change('change point', 5.105, 3.54),
  between('D', 3.86),
  fore('bench mark', 2.76),
];

function reduced(firstLevelIn: number, points: readonly BookedPoint[]) {
  const found = reduceLevels(firstLevelIn, points);
  if (!found.ok) throw new Error(found.problems.map(({ sentence }) => sentence).join(' '));
  return found;
}

describe('rise and fall', () => {
  // Any surveying text; the readings are those of the basis.
  test('basis 14.1: A 99.715, B 100.340, C 100.075, change point 99.220, D 98.900, back on 100.000', () => {
    const found = reduced(100, LINE);
    const expected = [100, 99.715, 100.34, 100.075, 99.22, 98.9, 100];
    for (const [i, levelIn] of expected.entries()) {
      expect(Math.abs(found.points[i]!.levelIn - levelIn)).toBeLessThanOrEqual(0.0005);
    }
    expect(Math.abs(found.backsightsIn - 7.865)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(found.foresightsIn - 7.865)).toBeLessThanOrEqual(0.0005);
    expect(found.checkIn).toBeLessThan(1e-12);
  });

  test('each rise prints the two readings it comes from', () => {
    const { points } = reduced(100, LINE);
    expect(points[0]!.line).toBeNull();
    expect(points[1]!.line!.substituted).toBe('4.325 - 4.61');
    for (const { line, riseIn } of points.slice(1)) {
      expect(Math.abs(recompute(line!) - riseIn)).toBeLessThan(1e-9);
    }
    expect(rise({ r1: 3.54, r2: 3.86 }).value).toBeCloseTo(-0.32, 12);
  });

  test('whatever is read, backsights less foresights, rises less falls and the gain agree', () => {
    const reading = fc.double({ min: -50, max: 150, noNaN: true });
    const middle = fc.oneof(
      reading.map((r) => between('p', r)),
      fc.tuple(reading, reading).map(([f, b]) => change('p', f, b)),
    );
    fc.assert(
      fc.property(reading, reading, fc.array(middle, { maxLength: 12 }), reading, (datum, b, points, f) => {
        const found = reduced(datum, [back('first', b), ...points, fore('last', f)]);
        expect(found.checkIn).toBeLessThan(1e-9);
      }),
    );
  });

  test('a line that does not begin with a backsight, end with a foresight or has a point of neither kind is refused', () => {
    const paths = (points: readonly BookedPoint[]) => {
      const found = reduceLevels(0, points);
      return found.ok ? [] : found.problems.map(({ path }) => path);
    };
    expect(paths(LINE)).toEqual([]);
    expect(paths(LINE.slice(1))).toEqual(['points[0]']);
    expect(paths(LINE.slice(0, -1))).toEqual(['points[5]']);
    expect(paths([back('a', 1), back('b', 2), fore('c', 3)])).toEqual(['points[1]']);
    expect(paths([back('a', 1)])).toEqual(['points']);
  });
});
