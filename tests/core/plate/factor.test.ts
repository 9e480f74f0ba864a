import { describe, expect, test } from 'vitest';
import { factorPlate, type PlateFactor } from '../../../src-core/plate/band-factor';
import {
  backwardMany,
  bankIndex,
  createBanks,
  forwardMany,
  packLoads,
  solveMany,
  unpackLanes,
} from '../../../src-core/plate/band-solve';
import { factorWork, nodeGraph, orderNodes } from '../../../src-core/plate/ordering';
import { addPointLoad } from '../../../src-core/plate/plate-loads';
import { solvePlate } from '../../../src-core/plate/plate-solve';
import { assemblePlate, layOutPlate, plateForces } from '../../../src-core/plate/plate-stiffness';
import { concreteBending } from '../../support/plate-case';
import {
  evenLines,
  gridMesh,
  meshLocator,
  movedMesh,
  nodesWhere,
  type StructuredMesh,
  shakenMesh,
} from '../../support/structured-mesh';

const bending = concreteBending(2, 0.2);
const slab = shakenMesh(gridMesh(evenLines(0, 48, 24), evenLines(0, 24, 12)), 0.25);
const n = 3 * slab.xIn.length;
const matrix = assemblePlate(slab, bending, layOutPlate(slab));
const springs = new Float64Array(n);
for (const node of nodesWhere(slab, (x, y) => x === 0 || x === 48 || y === 0)) springs[3 * node] = 500;

function mustFactor(): PlateFactor {
  const result = factorPlate(matrix, { springs });
  if (!result.ok) throw new Error(`loose at ${result.row}`);
  return result.factor;
}

/** Loads scattered by a fixed rule, one after another. */
function scatteredLoads(count: number): Float64Array {
  return Float64Array.from({ length: count * n }, (_, i) => ((i * 7919) % 101 < 3 ? Math.sin(i) * 100 : 0));
}

/** Largest of |K u + springs u - f| against the largest |f|. */
function residual(u: Float64Array, loads: Float64Array): number {
  const forces = plateForces(matrix, u);
  let largest = 0;
  for (let i = 0; i < n; i++) {
    const rest = (forces[i] ?? 0) + (springs[i] ?? 0) * (u[i] ?? 0) - (loads[i] ?? 0);
    largest = Math.max(largest, Math.abs(rest));
  }
  return largest / loads.reduce((top, load) => Math.max(top, Math.abs(load)), 0);
}

describe('the order of the nodes', () => {
  const rowLength = (mesh: StructuredMesh): number => {
    const graph = nodeGraph(mesh.xIn.length, mesh.triangles);
    return Math.sqrt(factorWork(graph, orderNodes(graph, mesh.xIn, mesh.yIn)) / mesh.xIn.length);
  };

  test('of a long worktop keeps rows of about as many nodes as it has across: 27', () => {
    const strip = gridMesh(evenLines(0, 144, 144), evenLines(0, 25.5, 26));
    expect(rowLength(strip)).toBeLessThan(30);
  });

  test('is as good on a worktop turned by 40 degrees with its nodes renumbered at random', () => {
    const strip = gridMesh(evenLines(0, 96, 96), evenLines(0, 24, 12));
    const turned = movedMesh(strip, (x, y) => [0.766 * x - 0.643 * y, 0.643 * x + 0.766 * y]);
    const label = Array.from(turned.xIn.keys()).sort((i, j) => Math.sin(i * 12.9898) - Math.sin(j * 12.9898));
    const place = new Map(label.map((node, at) => [node, at]));
    const shuffled = {
      ...turned,
      xIn: Float64Array.from(label, (node) => turned.xIn[node] ?? 0),
      yIn: Float64Array.from(label, (node) => turned.yIn[node] ?? 0),
      triangles: turned.triangles.map((node) => place.get(node) ?? 0),
    };
    expect(rowLength(shuffled)).toBeLessThan(16);
  });

  test('of an L-shaped worktop goes round the corner: rows of about as many nodes as a leg has across: 21', () => {
    const full = gridMesh(evenLines(0, 72, 72), evenLines(0, 72, 72));
    const inLeg = (t: number): boolean => {
      const corners = [0, 1, 2].map((c) => full.triangles[3 * t + c] ?? 0);
      return corners.every((i) => (full.xIn[i] ?? 0) <= 20) || corners.every((i) => (full.yIn[i] ?? 0) <= 20);
    };
    const kept = Array.from({ length: full.triangles.length / 3 }, (_, t) => t).filter(inLeg);
    const old = kept.flatMap((t) => Array.from(full.triangles.subarray(3 * t, 3 * t + 3)));
    const nodes = [...new Set(old)].sort((i, j) => i - j);
    const place = new Map(nodes.map((node, at) => [node, at]));
    const ell = {
      xIn: Float64Array.from(nodes, (i) => full.xIn[i] ?? 0),
      yIn: Float64Array.from(nodes, (i) => full.yIn[i] ?? 0),
      triangles: Uint32Array.from(old, (i) => place.get(i) ?? 0),
      sizeIn: 1,
    };
    expect(rowLength(ell)).toBeLessThan(26);
  });

  test('numbers every node once, two separate slabs too', () => {
    const two = gridMesh(evenLines(0, 4, 4), evenLines(0, 2, 2));
    const triangles = two.triangles.filter((_, i) => ![1, 2].includes(Math.floor(i / 12)));
    const order = orderNodes(nodeGraph(15, triangles), two.xIn, two.yIn);
    expect(Array.from(order.nodeAt).sort((i, j) => i - j)).toEqual(Array.from({ length: 15 }, (_, i) => i));
    order.nodeAt.forEach((node, position) => {
      expect(order.positionOf[node]).toBe(position);
    });
  });
});

describe('the factor', () => {
  const factor = mustFactor();

  test.each([1, 3, 4, 5, 8, 9, 21])('solves %i loads at a time to 1e-8 of the load', (count) => {
    const loads = scatteredLoads(count);
    const u = solveMany(factor, loads);
    for (let lane = 0; lane < count; lane++) {
      const span = [lane * n, (lane + 1) * n] as const;
      expect(residual(u.subarray(...span), loads.subarray(...span))).toBeLessThan(1e-8);
    }
  });

  test('gives each load the same displacements alone as among eight others', () => {
    const loads = scatteredLoads(9);
    const together = solveMany(factor, loads);
    for (let lane = 0; lane < 9; lane++) {
      const alone = solveMany(factor, loads.slice(lane * n, (lane + 1) * n));
      expect(alone).toEqual(together.slice(lane * n, (lane + 1) * n));
    }
  });

  test('skips the rows before a unit load and loses nothing: y1 . y2 is the deflection at 1 under a load at 2', () => {
    const nodes = [5, 60, 111, 200, 240, 290, 300, 310, 320];
    const loads = new Float64Array(nodes.length * n);
    nodes.forEach((node, lane) => {
      loads[lane * n + 3 * node] = 1;
    });
    const banks = createBanks(factor, nodes.length);
    const startRows = packLoads(factor, loads, banks);
    forwardMany(factor, banks, nodes.length, startRows);
    const whole = createBanks(factor, nodes.length);
    packLoads(factor, loads, whole);
    forwardMany(factor, whole, nodes.length);
    expect(banks).toEqual(whole);
    const u = solveMany(factor, loads);
    for (let i = 0; i < nodes.length; i++) {
      for (let j = 0; j < nodes.length; j++) {
        let product = 0;
        for (let row = startRows[i] ?? 0; row < n; row++) {
          product += (banks[bankIndex(factor, i, row)] ?? 0) * (banks[bankIndex(factor, j, row)] ?? 0);
        }
        expect(product / (u[j * n + 3 * (nodes[i] ?? 0)] ?? 0)).toBeCloseTo(1, 8);
      }
    }
    backwardMany(factor, banks, nodes.length);
    const unpacked = new Float64Array(loads.length);
    unpackLanes(factor, banks, unpacked);
    expect(unpacked).toEqual(u);
  });

  test('made in the array of an old factor is the same', () => {
    const used = new Float64Array(matrix.values.length).fill(Number.NaN);
    const again = factorPlate(matrix, { springs, into: used });
    expect(again.ok && again.factor.values).toBe(used);
    expect(used).toEqual(factor.values);
  });

  test('holds a held freedom at zero whatever is put on it', () => {
    const fixed = new Uint8Array(n);
    for (const node of nodesWhere(slab, (x) => x === 0)) fixed.fill(1, 3 * node, 3 * node + 3);
    const result = factorPlate(matrix, { fixed });
    if (!result.ok) throw new Error(`loose at ${result.row}`);
    const u = solveMany(result.factor, new Float64Array(n).fill(1));
    const forces = plateForces(matrix, u);
    for (let i = 0; i < n; i++) {
      if (fixed[i] === 1) expect(u[i]).toBe(0);
      else expect(forces[i]).toBeCloseTo(1, 5);
    }
  });
});

describe('a slab with nothing to stop it', () => {
  const loads = new Float64Array(n);
  const none = new Uint8Array(n);

  test('is told by value, not by an exception: a free slab sinks', () => {
    expect(factorPlate(matrix)).toEqual({ ok: false, row: 0 });
  });

  test.each([
    [[], 0],
    [[100], 1],
    [[0, 12], 1],
    [[0, 312], 2],
    [[12, 162, 312], 2],
  ] as const)('held down at %j in a line or less is loose in freedom %i', (nodes, row) => {
    const fine = gridMesh(evenLines(0, 48, 24), evenLines(0, 24, 12));
    const supports = nodes.map((node) => ({ node, stiffnessLbfPerIn: 1000 }));
    const result = solvePlate({ mesh: fine, bending, fixed: none, springs: supports, loads });
    expect(result).toEqual({ ok: false, row });
  });

  test('is loose in its second part when only the first stands', () => {
    const two = gridMesh(evenLines(0, 6, 6), evenLines(0, 2, 2));
    const apart = { ...two, triangles: two.triangles.filter((_, i) => Math.floor(i / 12) !== 2) };
    const held = new Uint8Array(63);
    for (const node of [6, 7, 8]) held.fill(1, 3 * node, 3 * node + 3);
    const problem = { mesh: apart, bending, fixed: held, springs: [], loads: new Float64Array(63) };
    const result = solvePlate(problem);
    expect(result).toEqual({ ok: false, row: 27 });
  });

  test('on three soft feet out of line stands, and each foot takes a third of a load at their middle', () => {
    const feet = [0, 12, 24 * 13 + 6];
    const supports = feet.map((node) => ({ node, stiffnessLbfPerIn: 10 }));
    const pushed = new Float64Array(n);
    addPointLoad(slab, meshLocator(slab), { xIn: 16, yIn: 12, loadLbf: 90 }, pushed);
    const result = solvePlate({ mesh: slab, bending, fixed: none, springs: supports, loads: pushed });
    if (!result.ok) throw new Error(`loose at ${result.row}`);
    for (const node of feet) expect(result.supportForces[3 * node]).toBeCloseTo(-30, 4);
  });
});
