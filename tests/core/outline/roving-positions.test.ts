import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point, Region, RovingPositions } from '../../../src-core/outline';
import {
  circlePoints,
  differenceAreaIn2,
  distanceIn,
  patchFits,
  patchOutline,
  rovingPositions,
} from '../../../src-core/outline';
import { anyL, anyMotion, at, movedRegion, points, rectangle } from './motions';

const counter: Region = { outer: rectangle(0, 0, 96, 25), holes: [] };

function leaning(region: Region, more: { angleRad?: number; extraPoints?: readonly Point[] } = {}) {
  return rovingPositions({
    region,
    patchWidthIn: 4,
    patchDepthIn: 4,
    spacingIn: 8,
    angleRad: more.angleRad ?? 0,
    extraPoints: more.extraPoints ?? [],
  });
}

function hasCentre(result: RovingPositions, x: number, y: number): boolean {
  return result.positions.some(({ centre }) => distanceIn(centre, at(x, y)) < 1e-5);
}

/** An independent check by the clipping library: nothing of any patch lies off the slab. */
function expectAllOnSlab(result: RovingPositions, region: Region, angleRad: number) {
  for (const { centre, widthIn, depthIn } of result.positions) {
    const outer = patchOutline(centre, widthIn, depthIn, angleRad);
    expect(differenceAreaIn2({ outer, holes: [] }, region)).toBeLessThan(1e-4);
  }
}

describe('a patch on the slab', () => {
  test('a 4 x 4 in patch fits tight in the corner and not 0.001 in farther out', () => {
    expect(patchFits(counter, at(2, 2), 4, 4, 0)).toBe(true);
    expect(patchFits(counter, at(1.999, 2), 4, 4, 0)).toBe(false);
    expect(patchFits(counter, at(48, 23), 4, 4, 0)).toBe(true);
    expect(patchFits(counter, at(200, 12), 4, 4, 0)).toBe(false);
  });

  test('turned by 45 degrees it needs 2.828 in from the edge', () => {
    expect(patchFits(counter, at(48, 2.83), 4, 4, Math.PI / 4)).toBe(true);
    expect(patchFits(counter, at(48, 2.82), 4, 4, Math.PI / 4)).toBe(false);
  });

  test('a tap hole within the patch, round it or cut by it keeps it off', () => {
    const withTap = (sizeIn: number) => ({
      outer: counter.outer,
      holes: [rectangle(48 - sizeIn, 12 - sizeIn, 48 + sizeIn, 12 + sizeIn)],
    });
    expect(patchFits(withTap(0.5), at(48.9, 12.9), 4, 4, 0)).toBe(false);
    expect(patchFits(withTap(8), at(48, 12), 4, 4, 0)).toBe(false);
    expect(patchFits(withTap(1), at(50.9, 12), 4, 4, 0)).toBe(false);
    expect(patchFits(withTap(1), at(51, 12), 4, 4, 0)).toBe(true);
  });

  test('it may not bridge the notch of an L', () => {
    const ell = { outer: points([0, 0], [9, 0], [9, 3], [3, 3], [3, 9], [0, 9]), holes: [] };
    expect(patchFits(ell, at(2, 2), 4, 4, 0)).toBe(false);
    expect(patchFits(ell, at(1.5, 1.5), 3, 3, 0)).toBe(true);
  });

  test('it fits exactly where the clipping library finds nothing of it off the slab', () => {
    const quarter = fc.integer({ min: 0, max: 400 }).map((n) => n / 4);
    fc.assert(
      fc.property(
        anyL,
        anyMotion,
        quarter,
        quarter,
        fc.constantFrom(0, 0.3, 1.2),
        (region, motion, x, y, angleRad) => {
          const image = movedRegion(region, motion);
          const centre = motion(at(x, y));
          const outer = patchOutline(centre, 5, 3, angleRad);
          const offIn2 = differenceAreaIn2({ outer, holes: [] }, image);
          fc.pre(offIn2 < 1e-5 || offIn2 > 1e-3);
          expect(patchFits(image, centre, 5, 3, angleRad)).toBe(offIn2 < 1e-4);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('positions of the roving load', () => {
  test('a 96 x 25 in counter is loaded in its corners, along its edges and within', () => {
    const result = leaning(counter);
    expect(result).toMatchObject({ isShrunk: false, patchWidthIn: 4, patchDepthIn: 4 });
    for (const [x, y] of [
      [2, 2],
      [94, 2],
      [94, 23],
      [2, 23],
      [48, 2],
      [48, 23],
      [2, 12.5],
      [48, 12.5],
    ] as const) {
      expect(hasCentre(result, x, y)).toBe(true);
    }
    // front edge: from 2 to 94 in 12 equal steps of 7.667 in
    expect(result.positions.filter(({ centre }) => Math.abs(centre.yIn - 2) < 1e-9)).toHaveLength(13);
    expectAllOnSlab(result, counter, 0);
  });

  test('no two positions lie within half an inch, and a second run gives the same list', () => {
    const result = leaning(counter, { extraPoints: [at(2.3, 2.3), at(30.2, 11.1)] });
    for (const [i, { centre }] of result.positions.entries()) {
      for (const other of result.positions.slice(i + 1)) {
        expect(distanceIn(centre, other.centre)).toBeGreaterThanOrEqual(0.5 - 1e-6);
      }
    }
    expect(hasCentre(result, 30.2, 11.1)).toBe(true);
    expect(hasCentre(result, 2.3, 2.3)).toBe(false);
    expect(leaning(counter, { extraPoints: [at(2.3, 2.3), at(30.2, 11.1)] })).toEqual(result);
  });

  test('an extra point on the edge or half off it is moved in until the patch fits', () => {
    const result = leaning(counter, { extraPoints: [at(37.3, 0), at(96.5, 7.9)] });
    expect(hasCentre(result, 37.3, 2)).toBe(true);
    expect(hasCentre(result, 94, 7.9)).toBe(true);
  });

  test('the lips of a sink are loaded tight on all four sides', () => {
    const region = { outer: counter.outer, holes: [rectangle(30, 6, 60, 19)] };
    const result = leaning(region);
    for (const [x, y] of [
      [45, 4],
      [45, 21],
      [28, 12.5],
      [62, 12.5],
    ] as const) {
      expect(hasCentre(result, x, y)).toBe(true);
    }
    expectAllOnSlab(result, region, 0);
  });

  test('a 2.5 in strip before a sink is loaded over its 2.5 in, and says so', () => {
    const region = { outer: counter.outer, holes: [rectangle(30, 2.5, 60, 19)] };
    const result = leaning(region);
    const narrow = result.positions.filter(({ isShrunk }) => isShrunk);
    expect(result.isShrunk).toBe(false);
    expect(narrow).toContainEqual({
      centre: at(48, 1.25),
      widthIn: 4,
      depthIn: 2.5,
      isShrunk: true,
      from: 'edge',
    });
    expectAllOnSlab(result, region, 0);
  });

  test('a diagonal corner is loaded off the edge by as little as the patch needs', () => {
    // corner cut at 45 degrees from (86, 0) to (96, 10)
    const region = { outer: points([0, 0], [86, 0], [96, 10], [96, 25], [0, 25]), holes: [] };
    const result = leaning(region);
    // the middle of the cut is (91, 5); the patch reaches 2 * sqrt 2 along the normal, so its centre is at (89, 7)
    expect(hasCentre(result, 89, 7)).toBe(true);
    expectAllOnSlab(result, region, 0);
  });

  test('round a 20 in disc the patch touches the rim all round', () => {
    const region = { outer: circlePoints(at(0, 0), 10, 0.005), holes: [] };
    const result = leaning(region);
    expectAllOnSlab(result, region, 0);
    const rim = result.positions.filter(({ from }) => from === 'edge');
    // 62.8 in of rim at 8 in or less
    expect(rim.length).toBeGreaterThanOrEqual(8);
    for (const { centre } of rim) {
      const offIn = distanceIn(centre, at(0, 0));
      // flat side to the rim: sqrt(100 - 4) - 2 = 7.798; corner to the rim: 10 - 2 sqrt 2 = 7.172
      expect(offIn).toBeGreaterThan(7.16);
      expect(offIn).toBeLessThan(7.8);
      const out = 1 + 0.01 / offIn;
      expect(patchFits(region, at(centre.xIn * out, centre.yIn * out), 4, 4, 0)).toBe(false);
    }
  });

  test('a 3 in shelf takes the patch at 4 x 3 in, a 3 x 2 in block at 3 x 2, and both say so', () => {
    const shelf = leaning({ outer: rectangle(0, 0, 40, 3), holes: [] });
    expect(shelf).toMatchObject({ isShrunk: true, patchWidthIn: 4, patchDepthIn: 3 });
    expect(hasCentre(shelf, 2, 1.5)).toBe(true);
    expect(shelf.positions.every(({ isShrunk }) => isShrunk)).toBe(true);
    const block = leaning({ outer: rectangle(0, 0, 3, 2), holes: [] });
    expect(block).toMatchObject({ isShrunk: true, patchWidthIn: 3, patchDepthIn: 2 });
    expect(block.positions).toHaveLength(1);
  });

  test('a turned piece with the patch turned alike has the same positions, turned', () => {
    fc.assert(
      fc.property(anyL, fc.double({ min: -3, max: 3, noNaN: true }), (region, angleRad) => {
        const turn = (p: Point) => ({
          xIn: Math.cos(angleRad) * p.xIn - Math.sin(angleRad) * p.yIn,
          yIn: Math.sin(angleRad) * p.xIn + Math.cos(angleRad) * p.yIn,
        });
        const before = leaning(region);
        const image = movedRegion(region, turn);
        const after = leaning(image, { angleRad });
        expect(after.positions).toHaveLength(before.positions.length);
        for (const [i, { centre }] of before.positions.entries()) {
          expect(distanceIn(after.positions[i]!.centre, turn(centre))).toBeLessThan(1e-4);
        }
        expectAllOnSlab(after, image, angleRad);
      }),
      { numRuns: 40 },
    );
  });
});
