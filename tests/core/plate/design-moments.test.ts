import { describe, expect, test } from 'vitest';
import {
  applyAveragingWeights,
  averageMomentAcross,
  averagingWeights,
  principalMoments,
  turnMoments,
  woodArmer,
} from '../../../src-core/plate/design-moments';
import { evenLines, gridMesh, meshLocator } from '../../support/structured-mesh';

describe('turned and principal moments', () => {
  test('Mx 10, My 4, Mxy 4 has principal moments 12 and 2 at 26.57 degrees', () => {
    // Middle 7, radius sqrt(3^2 + 4^2) = 5, angle atan(4/3) / 2.
    const principal = principalMoments({ mx: 10, my: 4, mxy: 4 });
    expect(principal.majorLbfInPerIn).toBeCloseTo(12, 12);
    expect(principal.minorLbfInPerIn).toBeCloseTo(2, 12);
    expect((principal.angleRad * 180) / Math.PI).toBeCloseTo(26.565, 3);
  });

  test('in its principal axes it has no twist', () => {
    const moments = { mx: -3, my: 8, mxy: -2.5 };
    const { angleRad, majorLbfInPerIn, minorLbfInPerIn } = principalMoments(moments);
    const turned = turnMoments(moments, angleRad);
    expect(turned.mx).toBeCloseTo(majorLbfInPerIn, 12);
    expect(turned.my).toBeCloseTo(minorLbfInPerIn, 12);
    expect(turned.mxy).toBeCloseTo(0, 12);
  });

  test('pure twist bends the slab at 45 degrees by the twist, sagging one way and hogging the other', () => {
    const turned = turnMoments({ mx: 0, my: 0, mxy: 50 }, Math.PI / 4);
    expect(turned.mx).toBeCloseTo(50, 12);
    expect(turned.my).toBeCloseTo(-50, 12);
  });
});

// Wood 1968 and Armer 1968, worked by hand from the rules as textbooks on concrete slabs give them.
describe('Wood-Armer moments', () => {
  test('sagging both ways add the twist to both: 10, 4 and 3 need 13 and 7 below, none on top', () => {
    expect(woodArmer({ mx: 10, my: 4, mxy: -3 }, 0)).toEqual({
      bottomAlongLbfInPerIn: 13,
      bottomAcrossLbfInPerIn: 7,
      topAlongLbfInPerIn: 0,
      topAcrossLbfInPerIn: 0,
    });
  });

  test('with My -6 beside Mx 10 and twist 3: 10 + 9/6 = 11.5 below along, on top 6 + 9/10 = 6.9 across', () => {
    expect(woodArmer({ mx: 10, my: -6, mxy: 3 }, 0)).toEqual({
      bottomAlongLbfInPerIn: 11.5,
      bottomAcrossLbfInPerIn: 0,
      topAlongLbfInPerIn: 0,
      topAcrossLbfInPerIn: -6.9,
    });
  });

  test('hogging both ways need top bars alone', () => {
    expect(woodArmer({ mx: -10, my: -4, mxy: 3 }, 0)).toEqual({
      bottomAlongLbfInPerIn: 0,
      bottomAcrossLbfInPerIn: 0,
      topAlongLbfInPerIn: -13,
      topAcrossLbfInPerIn: -7,
    });
  });

  test('pure twist needs as much in all four layers', () => {
    expect(Object.values(woodArmer({ mx: 0, my: 0, mxy: 5 }, 0))).toEqual([5, 5, -5, -5]);
  });

  test('bars along the principal axes need just the principal moments', () => {
    const moments = { mx: 10, my: 4, mxy: 4 };
    const needed = woodArmer(moments, principalMoments(moments).angleRad);
    expect(needed.bottomAlongLbfInPerIn).toBeCloseTo(12, 9);
    expect(needed.bottomAcrossLbfInPerIn).toBeCloseTo(2, 9);
  });

  test('never leave a direction short: bars resist the moment in each of 36 directions', () => {
    for (const [mx, my, mxy] of [
      [10, 4, 3],
      [10, -6, 3],
      [2, -1, 8],
      [-5, -9, 4],
      [0, 3, -7],
    ] as const) {
      const needed = woodArmer({ mx, my, mxy }, 0);
      for (let step = 0; step < 36; step++) {
        const angle = (step * Math.PI) / 36;
        const c2 = Math.cos(angle) ** 2;
        const moment = turnMoments({ mx, my, mxy }, angle).mx;
        const below = needed.bottomAlongLbfInPerIn * c2 + needed.bottomAcrossLbfInPerIn * (1 - c2);
        const above = needed.topAlongLbfInPerIn * c2 + needed.topAcrossLbfInPerIn * (1 - c2);
        expect(moment).toBeLessThan(below + 1e-9);
        expect(moment).toBeGreaterThan(above - 1e-9);
      }
    }
  });
});

describe('moments averaged along a line', () => {
  const mesh = gridMesh(evenLines(0, 20, 20), evenLines(0, 10, 10));
  const locate = meshLocator(mesh);
  const field = { mx: mesh.yIn.map((y) => 3 * y), my: mesh.xIn.slice(), mxy: mesh.xIn.map(() => 2) };

  test('inside the slab take the mean of a field that changes evenly along it', () => {
    const line = { xIn: 8.3, yIn: 4.1, acrossRad: 0, widthIn: 4 };
    const mean = averageMomentAcross(mesh, locate, line, field);
    expect(mean?.widthIn).toBeCloseTo(4, 9);
    expect(mean?.moments.mx).toBeCloseTo(12.3, 9);
    expect(mean?.moments.my).toBeCloseTo(8.3, 9);
    expect(mean?.acrossLbfInPerIn).toBeCloseTo(12.3, 9);
  });

  test('at the free edge are clipped to one side: 2 in of 4, mean 1 in from the edge', () => {
    const mean = averageMomentAcross(mesh, locate, { xIn: 8, yIn: 0, acrossRad: 0, widthIn: 4 }, field);
    expect(mean?.widthIn).toBeCloseTo(2, 9);
    expect(mean?.moments.mx).toBeCloseTo(3, 9);
  });

  test('at 90 degrees run along x and read My', () => {
    const line = { xIn: 19, yIn: 5, acrossRad: Math.PI / 2, widthIn: 4 };
    const mean = averageMomentAcross(mesh, locate, line, field);
    // From x 17 to the edge at 20.
    expect(mean?.widthIn).toBeCloseTo(3, 9);
    expect(mean?.acrossLbfInPerIn).toBeCloseTo(18.5, 9);
  });

  test('stop at a cutout and do not jump it', () => {
    const slot = (x: number, y: number, into: Float64Array): number =>
      y > 5 && y < 6 ? -1 : locate(x, y, into);
    const mean = averageMomentAcross(mesh, slot, { xIn: 8, yIn: 4, acrossRad: 0, widthIn: 8 }, field);
    expect(mean?.widthIn).toBeCloseTo(5, 9);
    expect(mean?.moments.mx).toBeCloseTo(7.5, 9);
  });

  test('off the slab are none', () => {
    expect(
      averageMomentAcross(mesh, locate, { xIn: -1, yIn: 5, acrossRad: 0, widthIn: 4 }, field),
    ).toBeNull();
  });

  test('come from weights that sum to 1 and serve many solutions', () => {
    const weights = averagingWeights(mesh, locate, { xIn: 3.2, yIn: 9.5, acrossRad: 0.4, widthIn: 3 });
    if (weights === null) throw new Error('the line is on the slab');
    expect(weights.weight.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(applyAveragingWeights(weights, field).mxy).toBeCloseTo(2, 12);
  });
});
