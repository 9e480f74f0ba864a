import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bearing } from '../../../src-core/outline';
import { measureOverhangs } from '../../../src-core/outline';
import { anyBearings, anyL, anyMotion, at, movedBearing, movedRegion, points, rectangle } from './motions';

const line = (ax: number, ay: number, bx: number, by: number): Bearing => ({
  kind: 'line',
  a: at(ax, ay),
  b: at(bx, by),
});
const strip = (x0: number, y0: number, x1: number, y1: number): Bearing => ({
  kind: 'polygon',
  points: rectangle(x0, y0, x1, y1),
});
const ledge = { outer: rectangle(0, 0, 96, 17.5), holes: [] };

describe('measured overhangs', () => {
  test('a 17.5 in ledge on a 5.5 in wall from y 11 to 16.5 hangs over 11 in at the front and 1 in at the back', () => {
    const [front, right, back, left] = measureOverhangs({
      region: ledge,
      bearings: [strip(0, 11, 96, 16.5)],
      sampleIn: 1,
    });
    // 11 - 0; 17.5 - 16.5
    expect(front).toMatchObject({ edge: 0, overhangIn: 11, at: at(48, 0), bearing: 0, unmetDepthIn: null });
    expect(back).toMatchObject({ edge: 2, overhangIn: 1, startCantileverIn: 0, endCantileverIn: 0 });
    // the ends bear on the strip itself where they cross it, and nowhere else
    expect(right).toMatchObject({
      overhangIn: 0,
      startCantileverIn: 11,
      endCantileverIn: 1,
      unmetDepthIn: 96,
    });
    expect(left).toMatchObject({ overhangIn: 0, startCantileverIn: 1, endCantileverIn: 11 });
  });

  test('a wall that stops 7 in short of the right end leaves 7 in of front edge with nothing behind it', () => {
    const [front, right] = measureOverhangs({
      region: ledge,
      bearings: [strip(0, 11, 89, 16.5)],
      sampleIn: 4,
    });
    expect(front?.overhangIn).toBe(11);
    expect(front?.startCantileverIn).toBe(0);
    expect(front?.endCantileverIn).toBeCloseTo(7, 12);
    expect(front?.unmetDepthIn).toBeCloseTo(17.5, 12);
    expect(right?.overhangIn).toBeCloseTo(7, 12);
  });

  test('a wall askew from y 8 to y 12 gives its deepest place, 12 in at the right end', () => {
    const [front] = measureOverhangs({ region: ledge, bearings: [line(0, 8, 96, 12)], sampleIn: 5 });
    expect(front?.overhangIn).toBeCloseTo(12, 12);
    expect(front?.at?.xIn).toBeCloseTo(96, 4);
  });

  test('of two bearings the nearer one counts, and where it ends the farther one does', () => {
    const bearings = [line(0, 14, 96, 14), line(0, 6, 50.3, 6)];
    const [front] = measureOverhangs({ region: ledge, bearings, sampleIn: 1 });
    expect(front).toMatchObject({ overhangIn: 14, bearing: 0 });
    const [left] = measureOverhangs({ region: ledge, bearings: [bearings[1]!], sampleIn: 1 });
    expect(left?.overhangIn).toBe(6);
  });

  test('the last hundredth of an inch past the end of a bearing is found at any sample step', () => {
    const bearings = [line(0, 11, 96, 11), line(0, 6, 95.99, 6)];
    expect(measureOverhangs({ region: ledge, bearings, sampleIn: 40 })[0]?.overhangIn).toBe(11);
    // a bearing that reaches past the end leaves no place for the farther one
    const whole = [line(0, 11, 96, 11), line(-1, 6, 97, 6)];
    expect(measureOverhangs({ region: ledge, bearings: whole, sampleIn: 40 })[0]?.overhangIn).toBe(6);
  });

  test('the strip in front of cabinets set back 1.5 in hangs over 1.5 in at its end, not to the far cabinet', () => {
    const counter = { outer: rectangle(0, 0, 96, 25.5), holes: [] };
    // the far run stands forward, so a ray along the front strip meets it 80 in away
    const bearings = [strip(0, 1.5, 60, 25.5), strip(80, -10, 96, 25.5)];
    const end = measureOverhangs({ region: counter, bearings, sampleIn: 0.5 })[3];
    expect(end?.edge).toBe(3);
    expect(end?.overhangIn).toBeCloseTo(1.5, 9);
  });

  test('an edge point 8 in from each of two arms hangs over 8 in, though the wall is 26 in back', () => {
    const arms = [strip(7, 4, 9, 26), strip(23, 4, 25, 26), strip(0, 26, 32, 30)];
    const shelf = { outer: rectangle(8, 0, 24, 30), holes: [] };
    const [front] = measureOverhangs({ region: shelf, bearings: arms, sampleIn: 1 });
    // midway: hypot(7, 4) to the corner of the nearest arm
    expect(front?.overhangIn).toBeCloseTo(Math.hypot(7, 4), 9);
  });

  test('a bearing across the ray is met, one that only runs along it is met at its near end', () => {
    const [front] = measureOverhangs({ region: ledge, bearings: [line(48, 5, 48, 15)], sampleIn: 1 });
    expect(front).toMatchObject({ overhangIn: 5, at: at(48, 0) });
    expect(front?.startCantileverIn).toBeCloseTo(48, 4);
    expect(front?.endCantileverIn).toBeCloseTo(48, 4);
  });

  test('a bearing beyond the slab or beyond a cutout is not met', () => {
    const [beyond] = measureOverhangs({ region: ledge, bearings: [line(0, 18, 96, 18)], sampleIn: 1 });
    expect(beyond).toMatchObject({ overhangIn: null, at: null, startCantileverIn: null, unmetDepthIn: 17.5 });
    const withSink = { outer: rectangle(0, 0, 96, 25), holes: [rectangle(30, 3, 60, 20)] };
    const [front] = measureOverhangs({ region: withSink, bearings: [line(32, 22, 58, 22)], sampleIn: 1 });
    expect(front).toMatchObject({ overhangIn: null });
    const [whole] = measureOverhangs({ region: withSink, bearings: [line(0, 22, 96, 22)], sampleIn: 1 });
    // 22 beside the sink; before it the rays leave the slab after 3 in
    expect(whole).toMatchObject({ overhangIn: 22, unmetDepthIn: 3 });
  });

  test('an edge that lies on its bearing overhangs nothing, and a bearing on the far edge is still met', () => {
    const [front] = measureOverhangs({ region: ledge, bearings: [line(0, 0, 96, 0)], sampleIn: 8 });
    expect(front?.overhangIn).toBe(0);
    const [far] = measureOverhangs({ region: ledge, bearings: [line(0, 17.5, 96, 17.5)], sampleIn: 8 });
    expect(far?.overhangIn).toBe(17.5);
  });

  test('a ray along the leg of an L passes its inside corner', () => {
    const ell = { outer: points([0, 0], [40, 0], [40, 10], [10, 10], [10, 30], [0, 30]), holes: [] };
    const left = measureOverhangs({ region: ell, bearings: [line(35, 0, 35, 10)], sampleIn: 5, edges: [5] });
    expect(left).toHaveLength(1);
    expect(left[0]?.overhangIn).toBe(35);
    // from y 30 down to y 10, where the leg begins
    expect(left[0]?.startCantileverIn).toBeCloseTo(20, 12);
  });

  test('overhangs are the same when the drawing is turned, moved and mirrored', () => {
    fc.assert(
      fc.property(anyL, anyBearings, anyMotion, (region, bearings, motion) => {
        const before = measureOverhangs({ region, bearings, sampleIn: 3 });
        const after = measureOverhangs({
          region: movedRegion(region, motion),
          bearings: bearings.map((bearing) => movedBearing(bearing, motion)),
          sampleIn: 3,
        });
        for (const [
          i,
          { edge, overhangIn, startCantileverIn, endCantileverIn, unmetDepthIn },
        ] of before.entries()) {
          const image = after[i]!;
          expect(image.edge).toBe(edge);
          expectSame(image.overhangIn, overhangIn);
          expectSame(image.startCantileverIn, startCantileverIn);
          expectSame(image.endCantileverIn, endCantileverIn);
          expectSame(image.unmetDepthIn, unmetDepthIn);
        }
      }),
      { numRuns: 200 },
    );
  });
});

function expectSame(image: number | null, original: number | null) {
  if (original === null) expect(image).toBeNull();
  else expect(image).toBeCloseTo(original, 5);
}
