import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FloorPoint,
  fallRatio,
  fallWords,
  floorAt,
  floorHeights,
  floorRange,
  floorSurface,
} from '../../../src-core/levels';

const at = (xIn: number, yIn: number, heightIn: number): FloorPoint => ({ xIn, yIn, heightIn });
const codes = (points: readonly FloorPoint[]) => floorSurface(points).remarks.map(({ code }) => code);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const place = fc.record({ xIn: number(-50, 250), yIn: number(-50, 150) });
const reading = fc.record({ xIn: number(0, 200), yIn: number(0, 100), heightIn: number(-2, 2) });

describe('heights of a floor', () => {
  const rod = {
    convention: 'rod' as const,
    readings: [
      { id: 'a', xIn: 0, yIn: 0, valueIn: 41 },
      { id: 'b', xIn: 96, yIn: 0, valueIn: 41.75 },
    ],
  };

  test('a rod reading 3/4 in longer is a floor 3/4 in lower', () => {
    expect(floorHeights(rod, { kind: 'highest' }).map(({ heightIn }) => heightIn)).toEqual([0, -0.75]);
    expect(floorHeights(rod, { kind: 'as-read' }).map(({ heightIn }) => heightIn)).toEqual([-41, -41.75]);
    const known = floorHeights(rod, { kind: 'reading', id: 'b', heightIn: 10 });
    expect(known.map(({ heightIn }) => heightIn)).toEqual([10.75, 10]);
  });

  test('heights stay as written, or are taken from the highest', () => {
    const levels = { ...rod, convention: 'height' as const };
    expect(floorHeights(levels, { kind: 'as-read' })[1]!.heightIn).toBe(41.75);
    expect(floorHeights(levels, { kind: 'highest' })[0]!.heightIn).toBe(-0.75);
    expect(() => floorHeights(levels, { kind: 'reading', id: 'c', heightIn: 0 })).toThrow(/no level/i);
    expect(floorHeights({ convention: 'rod', readings: [] }, { kind: 'highest' })).toEqual([]);
  });
});

describe('a floor from few readings', () => {
  test('none is level at 0 and says so; one is level at its height', () => {
    expect(codes([])).toEqual(['no-readings']);
    expect(floorAt(floorSurface([]), { xIn: 5, yIn: 5 })).toMatchObject({ heightIn: 0, isBeyond: true });
    expect(floorRange(floorSurface([]))).toBeNull();
    const one = floorSurface([at(10, 10, -0.5)]);
    expect(codes([at(10, 10, -0.5)])).toEqual(['one-reading']);
    expect(floorAt(one, { xIn: 10, yIn: 10 })).toMatchObject({ heightIn: -0.5, isBeyond: false });
    expect(floorAt(one, { xIn: 90, yIn: 40 })).toMatchObject({ heightIn: -0.5, isBeyond: true });
  });

  test('two are a line, level across it, that goes on at its slope', () => {
    const floor = floorSurface([at(0, 0, 0), at(96, 0, -0.75)]);
    expect(floor.kind).toBe('line');
    expect(floor.remarks.map(({ code }) => code)).toEqual(['readings-in-line']);
    expect(floorAt(floor, { xIn: 48, yIn: 0 }).heightIn).toBeCloseTo(-0.375, 12);
    expect(floorAt(floor, { xIn: 48, yIn: 0 }).isBeyond).toBe(false);
    expect(floorAt(floor, { xIn: 48, yIn: 25 }).heightIn).toBeCloseTo(-0.375, 12);
    expect(floorAt(floor, { xIn: 48, yIn: 25 }).isBeyond).toBe(true);
    expect(floorAt(floor, { xIn: 128, yIn: 0 }).heightIn).toBeCloseTo(-1, 12);
    expect(floorAt(floor, { xIn: 128, yIn: 0 }).isBeyond).toBe(true);
  });

  test('readings along a slanting wall are a line through each of them, a little out of line or not', () => {
    for (const out of [0, 0.3]) {
      const readings = [0, 1, 2, 3].map((i) => at(24 * i, 10 * i + (i % 2) * out, [0, -0.5, -0.25, -1][i]!));
      const floor = floorSurface(readings);
      expect(floor.kind).toBe('line');
      for (const point of readings) {
        const found = floorAt(floor, point);
        expect(found.heightIn).toBeCloseTo(point.heightIn, 9);
        expect(found.isBeyond).toBe(false);
      }
    }
  });

  test('two readings side by side across a line are one station of it', () => {
    const floor = floorSurface([at(0, 0, 0), at(40, 0, -0.2), at(40, 1.5, -0.4), at(80, 0, -0.6)]);
    expect(floor.kind).toBe('line');
    expect(floorAt(floor, { xIn: 40, yIn: 0.4 }).heightIn).toBeCloseTo(-0.3, 2);
  });

  test('readings at one place are averaged, with a word where they differ by more than 1/16 in', () => {
    const twice = (second: number) => [at(0, 0, 0), at(0.5, 0, second), at(60, 0, 0), at(30, 40, 0)];
    expect(codes(twice(0.05))).toEqual([]);
    expect(codes(twice(0.2))).toEqual(['readings-disagree']);
    expect(floorSurface(twice(0.2)).points).toHaveLength(3);
    expect(floorAt(floorSurface(twice(0.2)), { xIn: 0.25, yIn: 0 }).heightIn).toBeCloseTo(0.1, 12);
  });
});

describe('a floor from many readings', () => {
  const PYRAMID = [at(0, 0, 0), at(40, 0, 0), at(40, 40, 0), at(0, 40, 0), at(20, 20, 1)];

  test('a hump in the middle of a square is a pyramid: half way up its sides it is half as high', () => {
    const floor = floorSurface(PYRAMID);
    expect(floorAt(floor, { xIn: 20, yIn: 10 }).heightIn).toBeCloseTo(0.5, 12);
    expect(floorAt(floor, { xIn: 20, yIn: 10 }).slope.x).toBeCloseTo(0, 12);
    expect(floorAt(floor, { xIn: 20, yIn: 10 }).slope.y).toBeCloseTo(0.05, 12);
    expect(floorAt(floor, { xIn: 35, yIn: 20 }).slope.x).toBeCloseTo(-0.05, 12);
    expect(floorRange(floor)).toEqual({ highest: at(20, 20, 1), lowest: at(0, 0, 0) });
  });

  test('a true plane is found everywhere, between the readings and beyond them', () => {
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 3, maxLength: 30 }),
        place,
        fc.tuple(number(-0.05, 0.05), number(-0.05, 0.05), number(-3, 3)),
        (readings, where, [a, b, c]) => {
          const plane = (p: { xIn: number; yIn: number }) => a * p.xIn + b * p.yIn + c;
          const floor = floorSurface(readings.map((p) => ({ ...p, heightIn: plane(p) })));
          fc.pre(floor.kind === 'triangles');
          const found = floorAt(floor, where);
          expect(found.heightIn).toBeCloseTo(plane(where), 6);
          expect(floor.meanSlope.x).toBeCloseTo(a, 6);
          expect(floor.meanSlope.y).toBeCloseTo(b, 6);
        },
      ),
    );
  });

  test('passes through every reading that stands alone, and is nowhere higher or lower between them', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 3, maxLength: 25 }), place, (readings, where) => {
        const floor = floorSurface(readings);
        fc.pre(floor.kind === 'triangles');
        for (const point of floor.points) {
          const found = floorAt(floor, point);
          expect(found.heightIn).toBeCloseTo(point.heightIn, 6);
          expect(found.isBeyond).toBe(false);
        }
        const range = floorRange(floor)!;
        const found = floorAt(floor, where);
        if (found.isBeyond) return;
        // An inch beyond the outermost readings still counts as read.
        const slack = fallRatio(floor.meanSlope) + 1e-6;
        expect(found.heightIn).toBeLessThanOrEqual(range.highest.heightIn + slack);
        expect(found.heightIn).toBeGreaterThanOrEqual(range.lowest.heightIn - slack);
      }),
    );
  });

  test('has no step where the readings end', () => {
    const floor = floorSurface([
      at(0, 0, 0),
      at(60, 5, -0.4),
      at(70, 50, 0.3),
      at(10, 45, -0.8),
      at(30, 20, 0.5),
    ]);
    for (let i = 0; i < 4; i++) {
      const corners = [at(0, 0, 0), at(60, 5, 0), at(70, 50, 0), at(10, 45, 0), at(0, 0, 0)];
      const [a, b] = [corners[i]!, corners[i + 1]!];
      const middle = { xIn: (a.xIn + b.xIn) / 2, yIn: (a.yIn + b.yIn) / 2 };
      const [outX, outY] = [b.yIn - a.yIn, a.xIn - b.xIn];
      const by = (step: number) =>
        floorAt(floor, { xIn: middle.xIn + step * outX, yIn: middle.yIn + step * outY }).heightIn;
      expect(Math.abs(by(1e-6) - by(-1e-6))).toBeLessThan(1e-4);
    }
  });

  test('says where a place is more than an inch beyond the readings', () => {
    const floor = floorSurface(PYRAMID);
    expect(floorAt(floor, { xIn: 40.9, yIn: 20 }).isBeyond).toBe(false);
    expect(floorAt(floor, { xIn: 41.1, yIn: 20 }).isBeyond).toBe(true);
  });
});

describe('a fall in words', () => {
  test('1/4 in a foot to the front left, 10 mm in a metre to the back, or level', () => {
    const quarter = 1 / 48 / Math.SQRT2;
    expect(fallWords({ x: quarter, y: quarter }, 'imperial')).toBe(
      'falls 1/4 in in a foot to the front left',
    );
    expect(fallWords({ x: 0, y: -0.01 }, 'metric')).toBe('falls 10 mm in a metre to the back');
    expect(fallWords({ x: -0.02, y: 0 }, 'imperial')).toBe('falls 1/4 in in a foot to the right');
    expect(fallWords({ x: 0.02, y: 0 }, 'imperial')).toBe('falls 1/4 in in a foot to the left');
    expect(fallWords({ x: 0.001, y: 0 }, 'imperial')).toBe('is level');
  });
});
