import { describe, expect, test } from 'vitest';
import {
  concreteBearing,
  criticalPerimeter,
  designOneWayShear,
  maximumMainSpacing,
  maximumShrinkageSpacing,
  oneWayShear,
  PHI_BEARING_RATIO,
  PHI_SHEAR_RATIO,
  punchingStrength,
  punchingStress,
  sizeEffect,
  steelPerWidth,
  steelRatio,
} from '../../../src-core/concrete';
import { expectWithin } from './within';

function oneWay(areaIn2PerFt: number, d: number): number {
  const rhow = steelRatio({ As: areaIn2PerFt / 12, d }).value;
  return oneWayShear({ lambdas: sizeEffect({ d }).value, lambda: 1, rhow, fc: 4000, d }).value;
}

function punching(sideXIn: number, sideYIn: number, depthIn: number): { bo: number; phiVn: number } {
  const around = criticalPerimeter({ sideXIn, sideYIn, depthIn, gapXIn: null, gapYIn: null });
  const bo = around.perimeter.value;
  const vc = punchingStress({
    beta: around.betaRatio,
    alphas: around.alphasRatio,
    d: depthIn,
    bo,
    lambdas: 1,
    lambda: 1,
    fc: 4000,
  }).value;
  return { bo, phiVn: punchingStrength({ phi: PHI_SHEAR_RATIO, vc, bo, d: depthIn }).value };
}

describe('shear of a reinforced slab', () => {
  // ACI 318-19 Table 22.5.5.1(c), 22.5.5.1.3.
  test('basis 4.8: a foot of slab with #3 at 6 in, 2-1/16 in deep, carries 2594 lbf, light mesh 1225', () => {
    expectWithin(12 * oneWay(0.22, 2.0625), 2594, 2e-3);
    expectWithin(12 * oneWay(0.063, 1.25), 1225, 2e-3);
    const design = (Vc: number) => designOneWayShear({ phi: PHI_SHEAR_RATIO, Vc }).value;
    expectWithin(12 * design(oneWay(0.22, 2.0625)), 1946, 2e-3);
    expectWithin(12 * design(oneWay(0.063, 1.25)), 918, 2e-3);
  });

  test('basis 4.8: depth takes nothing off up to 10 in and 18 % at 20 in', () => {
    expect(sizeEffect({ d: 2 }).value).toBe(1);
    expect(sizeEffect({ d: 10 }).value).toBe(1);
    expect(sizeEffect({ d: 10.1 }).value).toBeLessThan(1);
    expectWithin(sizeEffect({ d: 20 }).value, 0.8165, 1e-3);
  });

  // ACI 318-19 Table 22.6.5.2: the flat 4 governs the square patch, 2 + 4/beta the long one.
  test('basis 4.9: a 4 x 4 in pad punches at 9490 lbf, a 4 x 1 in pad at 5356', () => {
    const square = punching(4, 4, 2.0625);
    expectWithin(square.bo, 24.25, 1e-9);
    expectWithin(square.phiVn / PHI_SHEAR_RATIO, 12_653, 2e-3);
    expectWithin(square.phiVn, 9490, 2e-3);
    expectWithin(punching(4, 1, 2.0625).phiVn, 5356, 2e-3);
  });

  // ACI 318-19 Table 22.6.5.2: 2 + 40 d / bo governs once bo is over 20 d; 2 + 40 / 44 = 2.909.
  test('a 10 x 10 in pad on 1 in of depth is held to 2 + 40 d/bo', () => {
    const vc = punchingStress({ beta: 1, alphas: 40, d: 1, bo: 44, lambdas: 1, lambda: 1, fc: 4000 }).value;
    expectWithin(vc, 2.90909 * 63.2456, 1e-4);
  });

  // ACI 318-19 22.5.3.1, 22.6.3.1.
  test('concrete over 10 000 psi counts in shear as 10 000 psi', () => {
    const at = (fc: number) => oneWayShear({ lambdas: 1, lambda: 1, rhow: 0.01, fc, d: 2 }).value;
    expect(at(12_000)).toBe(at(10_000));
    expect(at(9900)).toBeLessThan(at(10_000));
  });

  // ACI 318-19 22.6.4.1; by hand: corner (4 + 1 + 0) + (4 + 1 + 0) = 10, edge 2 (4 + 1) + 6 = 16, inside 24 in.
  test('a 4 x 4 in patch on 2 in of depth has 24 in around it inside, 16 at an edge, 10 in a corner', () => {
    const patch = { sideXIn: 4, sideYIn: 4, depthIn: 2 };
    const inside = criticalPerimeter({ ...patch, gapXIn: null, gapYIn: null });
    const edge = criticalPerimeter({ ...patch, gapXIn: 0, gapYIn: null });
    const edgeAcross = criticalPerimeter({ ...patch, gapXIn: null, gapYIn: 0 });
    const corner = criticalPerimeter({ ...patch, gapXIn: 0, gapYIn: 0 });
    expect([inside.perimeter.value, inside.alphasRatio]).toEqual([24, 40]);
    expect([edge.perimeter.value, edge.alphasRatio]).toEqual([16, 30]);
    expect(edgeAcross.perimeter.value).toBe(16);
    expect([corner.perimeter.value, corner.alphasRatio]).toEqual([10, 20]);
  });

  // By hand: edge 2 (4 + 1 + g) + 6 = 16 + 2 g equals 24 in at g = 4 in.
  test('a patch more than 4 in from the edge punches as if inside', () => {
    const patch = { sideXIn: 4, sideYIn: 4, depthIn: 2, gapYIn: null };
    expect(criticalPerimeter({ ...patch, gapXIn: 3.9 }).place).toBe('edge');
    expect(criticalPerimeter({ ...patch, gapXIn: 4.1 }).place).toBe('inside');
  });

  // ACI 318-19 Table 22.8.3.2: .65 .85 4000 16 = 35 360 lbf, doubled at most by spread.
  test('a 4 x 4 in foot bears 35 360 lbf, and twice that at most where the load spreads', () => {
    const foot = { phi: PHI_BEARING_RATIO, fc: 4000, A1: 16 };
    expectWithin(concreteBearing({ ...foot, A2: 16 }).value, 35_360, 1e-9);
    expectWithin(concreteBearing({ ...foot, A2: 36 }).value, 1.5 * 35_360, 1e-9);
    expectWithin(concreteBearing({ ...foot, A2: 400 }).value, 2 * 35_360, 1e-9);
  });
});

describe('spacing of bars', () => {
  // ACI 318-19 7.7.2.3, 24.4.3.3.
  test('main bars lie within 3 h and 18 in, shrinkage bars within 5 h and 18 in', () => {
    expect(maximumMainSpacing({ h: 2 }).value).toBe(6);
    expect(maximumMainSpacing({ h: 7 }).value).toBe(18);
    expect(maximumShrinkageSpacing({ h: 2 }).value).toBe(10);
    expect(maximumShrinkageSpacing({ h: 4 }).value).toBe(18);
  });

  test('#3 at 6 in is 0.22 in2 a foot', () => {
    expectWithin(12 * steelPerWidth({ Ab: 0.11, s: 6 }).value, 0.22, 1e-12);
  });
});
