import { describe, expect, test } from 'vitest';
import { factorPlate } from '../../../src-core/plate/band-factor';
import { solveMany } from '../../../src-core/plate/band-solve';
import { nodalMoments } from '../../../src-core/plate/moments';
import { addPatchLoad, addPointLoad } from '../../../src-core/plate/plate-loads';
import { assemblePlate, layOutPlate } from '../../../src-core/plate/plate-stiffness';
import { heldFreedoms, percentOff, unitBending } from '../../support/plate-case';
import {
  evenLines,
  gradedLines,
  gridMesh,
  joinLines,
  meshLocator,
  nearestNode,
} from '../../support/structured-mesh';

// Overhangs with a = 10 and D = 1, root at x = 0, free edge at x = 10. Mid-run: Jaramillo 1950, J. Appl. Mech.; Timoshenko
// & Woinowsky-Krieger, cantilever plate under a concentrated load; recomputed by Fourier integral. Near a free end: Ritz
// polynomials and bicubic elements.

const a = 10;

/** Root moments and deflections of an overhang under several unit loads. */
interface Overhang {
  /** Hogging moment at the root for load `load`, at y or averaged from 0 to `to`. */
  readonly rootAt: (load: number, y: number) => number;
  readonly rootMean: (load: number, to: number) => number;
  readonly rootPeak: (load: number) => number;
  readonly deflectionAt: (load: number, y: number) => number;
}

type PlaceLoad = (add: {
  readonly point: (y: number, lbf: number) => void;
  readonly patch: (y: number, sizeIn: number, lbf: number) => void;
}) => void;

function overhang(
  nu: number,
  lines: { readonly xs: readonly number[]; readonly ys: readonly number[] },
  mirrored: boolean,
  places: readonly PlaceLoad[],
): Overhang {
  const { xs, ys } = lines;
  const mesh = gridMesh(xs, ys);
  const n = 3 * mesh.xIn.length;
  const locate = meshLocator({ ...mesh, sizeIn: 1 });
  const loads = new Float64Array(places.length * n);
  places.forEach((place, i) => {
    const into = loads.subarray(i * n, (i + 1) * n);
    place({
      point: (y, loadLbf) => addPointLoad(mesh, locate, { xIn: a, yIn: y, loadLbf }, into),
      patch: (y, size, loadLbf) =>
        addPatchLoad(
          mesh,
          locate,
          {
            xIn: a - size / 2,
            yIn: y,
            lengthIn: size,
            widthIn: mirrored ? size / 2 : size,
            angleRad: 0,
            loadLbf,
          },
          into,
          16,
        ),
    });
  });
  const bending = unitBending(nu);
  const fixed = heldFreedoms(mesh, (x, y) => (x === 0 ? 'wxy' : mirrored && y === 0 ? 'y' : ''));
  const result = factorPlate(assemblePlate(mesh, bending, layOutPlate(mesh)), { fixed });
  if (!result.ok) throw new Error(`loose at ${result.row}`);
  const u = solveMany(result.factor, loads);
  const roots = places.map((_, i) =>
    nodalMoments(mesh, bending, u.subarray(i * n, (i + 1) * n)).mx.slice(0, ys.length),
  );
  const rootAt = (load: number, y: number): number => -(roots[load]?.[nearestNode(mesh, 0, y)] ?? Number.NaN);
  return {
    rootAt,
    rootPeak: (load) => Math.max(...ys.map((y) => rootAt(load, y))),
    rootMean: (load, to) => {
      let sum = 0;
      for (let j = 0; (ys[j + 1] ?? Number.POSITIVE_INFINITY) <= to + 1e-9; j++) {
        const [from, next] = [ys[j] ?? 0, ys[j + 1] ?? 0];
        sum += ((next - from) * (rootAt(load, from) + rootAt(load, next))) / 2;
      }
      return sum / to;
    },
    deflectionAt: (load, y) => u[load * n + 3 * nearestNode(mesh, a, y)] ?? Number.NaN,
  };
}

describe('an endless overhang with a point load P at its free edge', () => {
  // Half of a strip 14 a long, mirrored at the load: half the load on the half strip.
  const lines = {
    xs: evenLines(0, a, 24),
    ys: joinLines(evenLines(0, 20, 48), gradedLines(20, 70, 38, 1.05)),
  };

  test.each([
    [0.3, 0.5087, 0.1665, 0.389, 0.205, 0.037],
    [0.2, 0.4912, 0.1579, 0.377, 0.203, 0.043],
    [0, 0.4648, 0.1447, 0.358, 0.198, 0.051],
  ])(
    'at nu %f hogs %f P at its root and sinks %f P a^2/D at its tip (basis 1.11 to 1.13)',
    (nu, k, tip, half, one, two) => {
      const slab = overhang(nu, lines, true, [({ point }) => point(0, 0.5)]);
      expect(percentOff(slab.rootAt(0, 0), k)).toBeLessThan(0.5);
      expect(percentOff(slab.deflectionAt(0, 0) / a ** 2, tip)).toBeLessThan(2);
      expect(percentOff(slab.rootAt(0, a / 2), half)).toBeLessThan(2);
      expect(percentOff(slab.rootAt(0, a), one)).toBeLessThan(2);
      expect(percentOff(slab.rootAt(0, 2 * a), two)).toBeLessThan(2);
      // Along the whole root the slab must carry P a.
      expect(percentOff(2 * 70 * slab.rootMean(0, 70), a)).toBeLessThan(0.5);
    },
  );

  test('spread on 4 x 4 in it hogs 0.425 P, on 2 x 2 in 0.457 P at nu 0.2 (basis 1.18, 1.19 mid-edge)', () => {
    const slab = overhang(0.2, lines, true, [
      ({ patch }) => patch(1, 4, 0.5),
      ({ patch }) => patch(0.5, 2, 0.5),
    ]);
    expect(percentOff(slab.rootPeak(0), 0.425)).toBeLessThan(2);
    expect(percentOff(slab.rootPeak(1), 0.457)).toBeLessThan(2);
  });
});

describe('an overhang with a load by its free end at nu 0.2', () => {
  const lines = {
    xs: joinLines(gradedLines(0, 5, 15, 1.1), evenLines(5, 10, 15)),
    ys: joinLines(gradedLines(0, 5, 15, 1.1), evenLines(5, 20, 45), gradedLines(20, 80, 36, 1.08)),
  };
  const slab = overhang(0.2, lines, false, [
    ({ point }) => point(0, 1),
    ({ point }) => point(a / 2, 1),
    ({ point }) => point(a, 1),
    ({ point }) => point(2 * a, 1),
    ({ patch }) => patch(2, 4, 1),
    ({ patch }) => patch(1, 2, 1),
  ]);

  test('on its corner hogs 1.48 P near the end of the root (basis 1.14)', () => {
    expect(percentOff(slab.rootPeak(0), 1.48)).toBeLessThan(4);
  });

  test('on its corner hogs 1.09 P over the first 0.5 a and 0.796 P over the first a (basis 1.15)', () => {
    expect(percentOff(slab.rootMean(0, a / 2), 1.09)).toBeLessThan(2);
    expect(percentOff(slab.rootMean(0, a), 0.796)).toBeLessThan(2);
  });

  test('on its corner sinks 0.395 P a^2/D (basis 1.16)', () => {
    expect(percentOff(slab.deflectionAt(0, 0) / a ** 2, 0.395)).toBeLessThan(2);
  });

  test('0.5 a, 1 a and 2 a from the end hogs 0.76, 0.557 and 0.495 P (basis 1.17)', () => {
    [0.76, 0.557, 0.495].forEach((k, i) => {
      expect(percentOff(slab.rootPeak(i + 1), k)).toBeLessThan(3);
    });
  });

  test('spread on 4 x 4 in tight in the corner hogs 1.00 P, over 0.5 a 0.814 P (basis 1.18)', () => {
    expect(percentOff(slab.rootPeak(4), 1.0)).toBeLessThan(4);
    expect(percentOff(slab.rootMean(4, a / 2), 0.814)).toBeLessThan(2);
  });

  test('spread on 2 x 2 in tight in the corner hogs 1.22 P, over 0.5 a 0.953 P (basis 1.19)', () => {
    expect(percentOff(slab.rootPeak(5), 1.22)).toBeLessThan(4);
    expect(percentOff(slab.rootMean(5, a / 2), 0.953)).toBeLessThan(2);
  });

  test('on its corner at nu 0.3 hogs 1.47 P (basis 1.14)', () => {
    const stiffer = overhang(0.3, lines, false, [({ point }) => point(0, 1)]);
    expect(percentOff(stiffer.rootPeak(0), 1.47)).toBeLessThan(4);
  });
});
