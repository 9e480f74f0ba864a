import { describe, expect, test } from 'vitest';
import { bendingMatrix, crackedBendingMatrix, plateRigidity } from '../../../src-core/plate/bending-matrix';
import { createDktRoom, dktCurvature, dktStiffness, triangleGeometry } from '../../../src-core/plate/dkt';
import { centroidMoments, dktMoments, nodalMoments } from '../../../src-core/plate/moments';
import { assemblePlate, layOutPlate, plateForces } from '../../../src-core/plate/plate-stiffness';
import { concreteBending, fieldOf, percentOff, solveCase } from '../../support/plate-case';
import {
  evenLines,
  gradedLines,
  gridMesh,
  movedMesh,
  nearestNode,
  shakenMesh,
} from '../../support/structured-mesh';

const nu = 0.2;
const elasticPsi = 57_000 * Math.sqrt(4000);
const bending = concreteBending(2, nu);
const rigidity = plateRigidity.compute({ E: elasticPsi, h: 2, nu });

const square = gridMesh(evenLines(0, 24, 6), evenLines(0, 18, 5));
const meshes = [
  ['one-way diagonals', gridMesh(evenLines(0, 24, 6), evenLines(0, 18, 5), 'forward')],
  ['graded lines', gridMesh(gradedLines(0, 24, 6, 1.4), gradedLines(0, 18, 5, 0.7))],
  ['shaken nodes', shakenMesh(square, 0.3)],
  ['a skewed and turned plate', movedMesh(square, (x, y) => [0.8 * x - 0.9 * y, 0.5 * x + 0.7 * y])],
] as const;

describe.each(meshes)('patch tests on %s', (_, mesh) => {
  test('a rigid plate, tilted, has no moment', () => {
    const u = fieldOf(mesh, (x, y) => [0.3 + 0.02 * x - 0.01 * y, 0.02, -0.01]);
    const { mx, my, mxy } = nodalMoments(mesh, bending, u);
    const bentMoment = rigidity * 0.02; // of the curvature of 0.02 over an inch, as a scale
    for (const field of [mx, my, mxy]) {
      for (const moment of field) expect(Math.abs(moment) / bentMoment).toBeLessThan(1e-9);
    }
  });

  test('w = k x^2 / 2 gives Mx = -D k, My = -nu D k and no twist at every node and centroid', () => {
    const k = 1e-4;
    const u = fieldOf(mesh, (x) => [(k * x * x) / 2, k * x, 0]);
    for (const moments of [nodalMoments(mesh, bending, u), centroidMoments(mesh, bending, u)]) {
      for (const moment of moments.mx) expect(moment / (-rigidity * k)).toBeCloseTo(1, 9);
      for (const moment of moments.my) expect(moment / (-nu * rigidity * k)).toBeCloseTo(1, 9);
      for (const moment of moments.mxy) expect(moment / (rigidity * k)).toBeCloseTo(0, 9);
    }
  });

  test('w = t x y gives Mxy = -D (1 - nu) t and no bending', () => {
    const t = 1e-4;
    const u = fieldOf(mesh, (x, y) => [t * x * y, t * y, t * x]);
    const { mx, my, mxy } = nodalMoments(mesh, bending, u);
    for (const moment of mxy) expect(moment / (-rigidity * (1 - nu) * t)).toBeCloseTo(1, 9);
    for (const field of [mx, my])
      for (const moment of field) expect(moment / (rigidity * t)).toBeCloseTo(0, 9);
  });

  test('constant curvature needs no force on a node inside the plate', () => {
    const u = fieldOf(mesh, (x, y) => [1e-4 * (x * x - 0.4 * x * y + 0.7 * y * y), 0, 0]);
    for (let i = 0; i < mesh.xIn.length; i++) {
      const x = mesh.xIn[i] ?? 0;
      const y = mesh.yIn[i] ?? 0;
      u[3 * i + 1] = 1e-4 * (2 * x - 0.4 * y);
      u[3 * i + 2] = 1e-4 * (-0.4 * x + 1.4 * y);
    }
    const forces = plateForces(assemblePlate(mesh, bending, layOutPlate(mesh)), u);
    const largest = forces.reduce((top, force) => Math.max(top, Math.abs(force)), 0);
    expect(largest).toBeGreaterThan(1);
    // Nodes off the rim are those of square's inner lines, whatever the mesh was moved to.
    for (let i = 0; i < mesh.xIn.length; i++) {
      const line = Math.floor(i / 6);
      const row = i % 6;
      if (line === 0 || line === 6 || row === 0 || row === 5) continue;
      for (let f = 0; f < 3; f++) expect(Math.abs(forces[3 * i + f] ?? 1) / largest).toBeLessThan(1e-9);
    }
  });
});

describe('the triangle', () => {
  const geometry = triangleGeometry(square, 3);
  const stiffness = dktStiffness(geometry, bending, 0, createDktRoom());

  test('is symmetric and resists nine less three rigid motions', () => {
    for (let i = 0; i < 9; i++) {
      for (let j = 0; j < 9; j++) expect(stiffness[9 * i + j]).toBe(stiffness[9 * j + i]);
    }
    expect(positivePivots(stiffness)).toBe(6);
  });

  test('stores the energy D area k^2 / 2 of a plate bent to a curvature k one way with nu 0', () => {
    const mesh = meshes[3][1];
    const flat = bendingMatrix(elasticPsi, 2, 0);
    const u = fieldOf(mesh, (x) => [(1e-4 * x * x) / 2, 1e-4 * x, 0]);
    const forces = plateForces(assemblePlate(mesh, flat, layOutPlate(mesh)), u);
    const energy = forces.reduce((sum, force, i) => sum + (force * (u[i] ?? 0)) / 2, 0);
    const area = 24 * 18 * (0.8 * 0.7 + 0.9 * 0.5);
    expect(percentOff(energy, (((elasticPsi * 8) / 12) * area * 1e-8) / 2)).toBeLessThan(1e-6);
  });

  test('bends linearly: the moment at its centroid is the mean of its corners', () => {
    const u = Float64Array.from({ length: 3 * square.xIn.length }, (_, i) => Math.sin(7 * i));
    const at = (l: readonly [number, number, number]): number[] => dktMoments(square, 3, l, { u, bending });
    const [a, b, c] = [at([1, 0, 0]), at([0, 1, 0]), at([0, 0, 1])];
    at([1 / 3, 1 / 3, 1 / 3]).forEach((moment, i) => {
      expect(moment / (((a?.[i] ?? 0) + (b?.[i] ?? 0) + (c?.[i] ?? 0)) / 3)).toBeCloseTo(1, 9);
    });
  });

  test('reads the curvatures kxx, kyy and twice kxy', () => {
    const u = fieldOf(square, (x, y) => [x * x + 3 * x * y + 2 * y * y, 2 * x + 3 * y, 3 * x + 4 * y]);
    const k = dktCurvature(square, 5, [0.2, 0.3, 0.5], u);
    [2, 4, 6].forEach((expected, i) => {
      expect(k[i]).toBeCloseTo(expected, 9);
    });
  });

  test('turned inside out is a fault of the mesh that names the triangle', () => {
    const clockwise = { ...square, triangles: Uint32Array.from([0, 1, 6]) };
    expect(() => triangleGeometry(clockwise, 0)).toThrow(/triangle 0 .* -/);
  });
});

/** Pivots above rounding in a symmetric 9 x 9, largest first. */
function positivePivots(matrix: Float64Array): number {
  const m = Array.from({ length: 9 }, (_, i) => Array.from(matrix.subarray(9 * i, 9 * i + 9)));
  const top = Math.max(...m.map((row, i) => row[i] ?? 0));
  const left = new Set(m.keys());
  let count = 0;
  while (left.size > 0) {
    const pivot = [...left].reduce((best, i) => ((m[i]?.[i] ?? 0) > (m[best]?.[best] ?? 0) ? i : best));
    const value = m[pivot]?.[pivot] ?? 0;
    if (value < 1e-10 * top) break;
    count++;
    left.delete(pivot);
    for (const i of left) {
      for (const j of left) {
        const row = m[i];
        if (row) row[j] = (row[j] ?? 0) - ((row[pivot] ?? 0) * (m[pivot]?.[j] ?? 0)) / value;
      }
    }
  }
  return count;
}

describe('stiffness of the slab', () => {
  test('D of a 2 in slab of 4000 psi concrete is 2.5035e6 lbf-in (basis 1.23)', () => {
    expect(percentOff(rigidity, 2.5035e6)).toBeLessThan(0.1);
    expect(bending[0]).toBe(rigidity);
    expect(percentOff(bending[8] ?? 0, (rigidity * (1 - nu)) / 2)).toBeLessThan(1e-9);
  });

  test('an uncracked slab is as stiff whichever way it is turned', () => {
    const turned = crackedBendingMatrix({ rigidityLbfIn: rigidity, poisson: nu }, 0.7, 1);
    turned.forEach((entry, i) => {
      expect((entry - (bending[i] ?? 0)) / rigidity).toBeCloseTo(0, 12);
    });
  });

  test('a crack along y leaves 9 % of the stiffness across it, all of it along it and 30 % of the twist', () => {
    const whole = { rigidityLbfIn: 1000, poisson: 0.2 };
    const expected = [90, 60, 0, 60, 1000, 0, 0, 0, 120];
    crackedBendingMatrix(whole, 0, 0.09).forEach((entry, i) => {
      expect(entry).toBeCloseTo(expected[i] ?? Number.NaN, 9);
    });
    const turned = [1000, 60, 0, 60, 90, 0, 0, 0, 120];
    crackedBendingMatrix(whole, Math.PI / 2, 0.09).forEach((entry, i) => {
      expect(entry).toBeCloseTo(turned[i] ?? Number.NaN, 9);
    });
  });

  test('a crack at 30 degrees feels a curvature across it with s D and one along it with D', () => {
    const angle = Math.PI / 6;
    const db = crackedBendingMatrix({ rigidityLbfIn: 1000, poisson: 0 }, angle, 0.02);
    const energy = (direction: number): number => {
      const c = Math.cos(direction);
      const s = Math.sin(direction);
      const k = [c * c, s * s, 2 * c * s];
      return k.reduce(
        (sum, ki, i) => sum + ki * k.reduce((row, kj, j) => row + (db[3 * i + j] ?? 0) * kj, 0),
        0,
      );
    };
    expect(energy(angle)).toBeCloseTo(20, 9);
    expect(energy(angle + Math.PI / 2)).toBeCloseTo(1000, 9);
  });
});

describe('a plate twisted by its corner', () => {
  // Closed form: uniform Mxy = P/2, w4 = P a b / [2 D (1 - nu)]; Timoshenko & Woinowsky-Krieger, pure twist.
  test.each(meshes.slice(0, 3))(
    'of 24 x 24 in, three corners held, 100 lbf on the fourth, sinks 0.01438 in (basis 1.25) with %s',
    (_, plate) => {
      const mesh = movedMesh(plate, (x, y) => [x, (y * 24) / 18]);
      const loads = new Float64Array(3 * mesh.xIn.length);
      const corner = nearestNode(mesh, 24, 24);
      loads[3 * corner] = 100;
      const hold = (x: number, y: number): string =>
        (x === 0 || x === 24) && (y < 1e-9 || (y > 24 - 1e-9 && x === 0)) ? 'w' : '';
      const { u, moments } = solveCase(mesh, bending, hold, loads);
      const exact = (100 * 24 * 24) / (2 * rigidity * (1 - nu));
      expect(percentOff(exact, 0.01438)).toBeLessThan(0.1);
      expect(percentOff(u[3 * corner] ?? 0, exact)).toBeLessThan(1e-4);
      for (const twist of moments.mxy) expect(percentOff(Math.abs(twist), 50)).toBeLessThan(1e-4);
    },
  );
});
