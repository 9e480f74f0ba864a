import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Corner, RoundedOutline } from '../../../src-core/outline';
import {
  cornerArea,
  distanceIn,
  polygonAreaIn2,
  polygonPerimeterIn,
  roundCorners,
  roundedAreaIn2,
  roundedPerimeterIn,
} from '../../../src-core/outline';
import { lastDigit, recompute } from '../../support/recompute';
import { anyL, anyMotion, points } from './motions';

function withRadius(pairs: readonly (readonly [number, number])[], radiusIn: number): Corner[] {
  return points(...pairs).map((p) => ({ ...p, radiusIn }));
}

function rounded(corners: readonly Corner[], toleranceIn: number): RoundedOutline {
  const rounding = roundCorners(corners, toleranceIn);
  if (!rounding.ok) throw new Error(rounding.problems.map(({ sentence }) => sentence).join(' '));
  return rounding.outline;
}

const square = (radiusIn: number) =>
  withRadius(
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
    radiusIn,
  );

const ell = (radiusIn: number) =>
  withRadius(
    [
      [0, 0],
      [9, 0],
      [9, 3],
      [3, 3],
      [3, 9],
      [0, 9],
    ],
    radiusIn,
  );

describe('exact sizes with true arcs', () => {
  test('a 10 in square with 2 in corners has 96.566 in2 and 36.566 in of edge', () => {
    // 100 - (4 - pi) * 2^2; 40 - 8 * 2 + 2 * pi * 2
    expect(roundedAreaIn2(square(2))).toBeCloseTo(100 - (4 - Math.PI) * 4, 10);
    expect(roundedPerimeterIn(square(2))).toBeCloseTo(24 + 4 * Math.PI, 10);
  });

  test('a 10 in square with 5 in corners is a circle of 10 in', () => {
    expect(roundedAreaIn2(square(5))).toBeCloseTo(25 * Math.PI, 10);
    expect(roundedPerimeterIn(square(5))).toBeCloseTo(10 * Math.PI, 10);
  });

  test('the inside corner of an L gives back what one of its five outside corners takes', () => {
    // 9 * 3 + 3 * 6 = 45; four corners net of (1 - pi / 4) * 1.5^2
    expect(roundedAreaIn2(ell(1.5))).toBeCloseTo(45 - 4 * (1 - Math.PI / 4) * 2.25, 10);
    expect(roundedAreaIn2(ell(1.5).reverse())).toBeCloseTo(45 - 4 * (1 - Math.PI / 4) * 2.25, 10);
  });

  test('rounding a 60 degree corner by 1 in takes 0.6849 in2', () => {
    // turn 120 degrees: 1^2 * (tan 60 - pi / 3) = 1.73205 - 1.04720
    const { value, line } = cornerArea({ r: 1, t: (2 * Math.PI) / 3 });
    expect(value).toBeCloseTo(Math.sqrt(3) - Math.PI / 3, 12);
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(lastDigit(line.result));
  });
});

describe('rounding into chords', () => {
  test('the chords of a quarter circle lose the area of their circle segments', () => {
    const outline = rounded(square(2), 0.01);
    const chords = outline.arcCorners.filter((corner) => corner === 0).length;
    // chord count: quarter turn / (2 acos(1 - .01 / 2)) = 1.5708 / .20008 = 7.85, next even 8
    expect(chords).toBe(8);
    // a circle segment of sweep s has r^2 (s - sin s) / 2
    const s = Math.PI / 2 / chords;
    const lostIn2 = (4 * chords * 4 * (s - Math.sin(s))) / 2;
    expect(polygonAreaIn2(outline.points)).toBeCloseTo(roundedAreaIn2(square(2)) - lostIn2, 9);
  });

  test('every chord stays within the tolerance of its arc', () => {
    for (const toleranceIn of [0.2, 0.05, 0.002]) {
      const { points: chain, arcCorners } = rounded(square(3), toleranceIn);
      for (const [k, corner] of arcCorners.entries()) {
        if (corner !== 0) continue;
        const a = chain[k]!;
        const b = chain[(k + 1) % chain.length]!;
        const middle = { xIn: (a.xIn + b.xIn) / 2, yIn: (a.yIn + b.yIn) / 2 };
        const sagIn = 3 - distanceIn(middle, { xIn: 3, yIn: 3 });
        expect(sagIn).toBeGreaterThan(0);
        expect(sagIn).toBeLessThanOrEqual(toleranceIn);
      }
    }
  });

  test('straight edges keep their number and each arc is shared between its two edges', () => {
    const outline = rounded(square(2), 0.5);
    // two chords a corner, one straight edge a side
    expect(outline.points).toHaveLength(12);
    expect(outline.sourceEdges).toEqual([3, 0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3]);
    expect(outline.arcCorners).toEqual([0, 0, null, 1, 1, null, 2, 2, null, 3, 3, null]);
    expect(distanceIn(outline.points[2]!, { xIn: 2, yIn: 0 })).toBeLessThan(1e-12);
    expect(distanceIn(outline.points[3]!, { xIn: 8, yIn: 0 })).toBeLessThan(1e-12);
  });

  test('a square with full radii has no straight edge and no edge without length', () => {
    const outline = rounded(square(5), 0.05);
    expect(outline.arcCorners).not.toContain(null);
    for (const [k, p] of outline.points.entries()) {
      expect(distanceIn(p, outline.points[(k + 1) % outline.points.length]!)).toBeGreaterThan(0.5);
    }
  });

  test('square corners and a straight corner stay as drawn', () => {
    const drawn = withRadius(
      [
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
      0,
    ).map((corner, i) => (i === 1 ? { ...corner, radiusIn: 1 } : corner));
    const outline = rounded(drawn, 0.01);
    expect(outline.points).toEqual(drawn.map(({ xIn, yIn }) => ({ xIn, yIn })));
    expect(outline.sourceEdges).toEqual([0, 1, 2, 3, 4]);
  });

  test('chords approach the exact area and perimeter in any place, turned or mirrored', () => {
    fc.assert(
      fc.property(
        anyL,
        anyMotion,
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        (region, motion, radiusIn) => {
          const corners = region.outer.map((p) => ({ ...motion(p), radiusIn }));
          const outline = rounded(corners, 0.001);
          // at most two thirds of tolerance times arc length is lost or won
          const arcIn = 6 * (Math.PI / 2) * radiusIn;
          expect(Math.abs(polygonAreaIn2(outline.points) - roundedAreaIn2(corners))).toBeLessThan(
            0.001 * arcIn,
          );
          expect(polygonPerimeterIn(outline.points)).toBeLessThan(roundedPerimeterIn(corners));
          expect(polygonPerimeterIn(outline.points)).toBeGreaterThan(roundedPerimeterIn(corners) - 0.05);
        },
      ),
    );
  });
});

describe('radii that do not fit', () => {
  test('a 5.1 in radius on a 10 in square is refused at every corner, with 5 in offered', () => {
    const rounding = roundCorners(square(5.1), 0.01);
    expect(rounding.ok).toBe(false);
    if (rounding.ok) return;
    expect(rounding.problems.map(({ path }) => path[1])).toEqual([0, 1, 2, 3]);
    expect(rounding.problems[0]?.sentence).toBe('The radius at corner 1 does not fit its edges.');
    expect(rounding.problems[0]?.radius).toEqual({ askedIn: 5.1, largestIn: 5 });
  });

  test('of an 8 in and a 3 in radius on a 10 in edge the 8 in one is named, with 7 in offered', () => {
    const corners = square(0).map((corner, i) => ({ ...corner, radiusIn: i === 1 ? 8 : i === 2 ? 3 : 0 }));
    const rounding = roundCorners(corners, 0.01);
    expect(rounding).toEqual({
      ok: false,
      problems: [
        {
          code: 'radius-does-not-fit',
          path: ['corners', 1, 'radiusIn'],
          sentence: 'The radius at corner 2 does not fit its edges.',
          radius: { askedIn: 8, largestIn: 7 },
        },
      ],
    });
    expect(
      roundCorners(
        corners.map((c, i) => (i === 1 ? { ...c, radiusIn: 7 } : c)),
        0.01,
      ).ok,
    ).toBe(true);
  });

  test('the inside corner of an L takes 6 in along its 6 in legs and not 6.1 in', () => {
    const inside = (radiusIn: number) => ell(0).map((c, i) => (i === 3 ? { ...c, radiusIn } : c));
    expect(roundCorners(inside(6), 0.01).ok).toBe(true);
    const rounding = roundCorners(inside(6.1), 0.01);
    expect(rounding.ok ? [] : rounding.problems.map(({ path }) => path)).toEqual([
      ['corners', 3, 'radiusIn'],
    ]);
  });

  test('a radius that fits its edges yet cuts through a notch behind the corner is named', () => {
    const notched = withRadius(
      [
        [0, 0],
        [20, 0],
        [20, 20],
        [1.9, 20],
        [1.9, 19.9],
        [2, 2],
        [0, 19],
      ],
      0,
    ).map((c, i) => (i === 0 ? { ...c, radiusIn: 15 } : c));
    const rounding = roundCorners(notched, 0.01);
    expect(rounding.ok ? [] : rounding.problems.map(({ code, path }) => [code, path[1]])).toEqual([
      ['rounding-crosses', 0],
    ]);
  });

  test('an outline that crosses itself is refused before any rounding', () => {
    const bowTie = withRadius(
      [
        [0, 0],
        [10, 0],
        [0, 5],
        [10, 5],
      ],
      1,
    );
    const rounding = roundCorners(bowTie, 0.01);
    expect(rounding.ok ? [] : rounding.problems.map(({ code }) => code)).toEqual(['edges-cross']);
  });
});
