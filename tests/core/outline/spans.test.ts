import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bearing } from '../../../src-core/outline';
import { measureSpans } from '../../../src-core/outline';
import { anyBearings, anyL, anyMotion, at, movedBearing, movedRegion, points, rectangle } from './motions';

const line = (ax: number, ay: number, bx: number, by: number): Bearing => ({
  kind: 'line',
  a: at(ax, ay),
  b: at(bx, by),
});

describe('measured free spans', () => {
  const counter = { outer: rectangle(0, 0, 96, 25), holes: [] };

  test('panels at 0, 24, 60 and 96 in span 36 in at the most', () => {
    const bearings = [0, 24, 60, 96].map((x) => line(x, 0, x, 25));
    const span = measureSpans({ region: counter, bearings, sampleIn: 2 });
    // 60 - 24 = 96 - 60 = 36; the bay nearer the middle is named
    expect(span?.spanIn).toBeCloseTo(36, 9);
    expect(span?.direction).toEqual({ x: 1, y: 0 });
    expect(span?.from.xIn).toBeCloseTo(24, 9);
    expect(span?.to.xIn).toBeCloseTo(60, 9);
    expect(span?.at).toEqual(at(48, expect.closeTo(12.5, 9) as unknown as number));
  });

  test('a counter with rails 22 in apart leans across, not along its 96 in', () => {
    const bearings = [line(0, 0, 0, 25), line(96, 0, 96, 25), line(0, 1, 96, 1), line(0, 23, 96, 23)];
    const span = measureSpans({ region: counter, bearings, sampleIn: 1 });
    // between the rails 22 across beats 96 along; before the front rail only 96 along counts
    expect(span?.spanIn).toBeCloseTo(96, 9);
    const railed = [line(0, 0, 0, 25), line(96, 0, 96, 25), line(0, 0, 96, 0), line(0, 25, 96, 25)];
    expect(measureSpans({ region: counter, bearings: railed, sampleIn: 1 })?.spanIn).toBeCloseTo(25, 9);
  });

  test('two 8 in piers under a 46 in hearth leave 30 in clear', () => {
    const pier = (x: number): Bearing => ({ kind: 'polygon', points: rectangle(x, 0, x + 8, 20) });
    const span = measureSpans({
      region: { outer: rectangle(0, 0, 46, 20), holes: [] },
      bearings: [pier(0), pier(38)],
      sampleIn: 1,
    });
    // 46 - 2 * 8
    expect(span?.spanIn).toBeCloseTo(30, 9);
  });

  test('one wall under one edge spans nothing, and neither does a slab wholly bedded', () => {
    expect(measureSpans({ region: counter, bearings: [line(-1, 25.5, 97, 25.5)], sampleIn: 2 })).toBeNull();
    const bed: Bearing = { kind: 'polygon', points: rectangle(-1, -1, 97, 26) };
    expect(measureSpans({ region: counter, bearings: [bed], sampleIn: 2 })?.spanIn).toBe(0);
  });

  test('a bearing beyond the notch of an L or beyond a cutout does not end a span', () => {
    const ell = { outer: points([0, 0], [40, 0], [40, 10], [10, 10], [10, 30], [0, 30]), holes: [] };
    const bearings = [line(2, 11, 2, 29), line(38, 11, 38, 29)];
    expect(measureSpans({ region: ell, bearings, sampleIn: 1 })?.spanIn ?? 0).toBe(0);
    const withSink = { outer: rectangle(0, 0, 60, 20), holes: [rectangle(20, 0.5, 40, 19.5)] };
    const ends = [line(0, 0, 0, 20), line(60, 0, 60, 20)];
    // only the ribs before and behind the sink reach from end to end
    const span = measureSpans({ region: withSink, bearings: ends, sampleIn: 2 });
    expect(span?.spanIn).toBeCloseTo(60, 9);
    expect([0, 20]).toContain(Math.round(span?.at.yIn ?? -1));
  });

  test('the span is the same when the drawing is turned, moved and mirrored', () => {
    fc.assert(
      fc.property(anyL, anyBearings, anyMotion, (region, bearings, motion) => {
        const before = measureSpans({ region, bearings, sampleIn: 4 });
        const after = measureSpans({
          region: movedRegion(region, motion),
          bearings: bearings.map((bearing) => movedBearing(bearing, motion)),
          sampleIn: 4,
        });
        if (before === null) expect(after).toBeNull();
        else expect(after?.spanIn).toBeCloseTo(before.spanIn, 5);
      }),
      { numRuns: 200 },
    );
  });
});
