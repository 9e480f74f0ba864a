import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { oneWayShearRule } from '../../../src-core/checks/one-way-shear';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, rectangle } from '../../support/pieces';
import { bars, lightMesh, plank, tiedLedge } from './plank';

const MESH_IN = 3;

describe('shear across the slab', () => {
  test('a 2-1/2 in plank over 84 in uses about a fifth of its plain strength', () => {
    // 2-1/2 in from the wall: V = q (42 - 2.5) with D 0.2098 and L 0.3472 psi: 8.29 + 13.72
    // Vu = 1.2 * 8.29 + 1.6 * 13.72 = 31.9; the mean over four thicknesses and off the very line reads some 10 % less
    // phi Vn = 0.6 * 4/3 * sqrt(5000) * 2.5 = 141.4 lbf/in; ratio 0.226 at the most
    const [check] = runCheckCase(oneWayShearRule, {
      says: 'plank 84',
      job: plank({ spanIn: 84, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { from: 0.19, to: 0.228 },
    });
    expect(check!.capacity.value).toBeCloseTo(141.4, 1);
    expect(check!.workings.filter(({ symbol }) => symbol === 'V')).toHaveLength(2);
  });

  test('just inside, under 330 psf, it holds, and just outside, under 345 psf, it may shear through', () => {
    const at = (spreadPsf: number, level: 'holds' | 'change', from: number, to: number) =>
      runCheckCase(oneWayShearRule, {
        says: `${spreadPsf} psf`,
        job: plank({ spanIn: 84, thicknessIn: 2.5, spreadPsf }),
        meshSizeIn: MESH_IN,
        level,
        ratio: { from, to },
      })[0]!;
    // Vu grows by 1.6 * 36.8 / 144 = 0.41 lbf/in a psf
    at(330, 'holds', 0.96, 1);
    expect(at(345, 'change', 1, 1.05).needs).toContain('thickness');
  });

  test('#3 bars at 6 in, 2-1/16 in deep in 3 in, carry 162 lbf/in', () => {
    // basis 4.8: rho = 0.01833 / 2.0625 = 0.00889; 8 * 0.00889^(1/3) * sqrt(4000) * 2.0625 = 216.2; phi 0.75: 162.1
    const [check] = runCheckCase(oneWayShearRule, {
      says: 'basis 4.8',
      job: plank({ spanIn: 96, thicknessIn: 3, strengthPsi: 4000, spreadPsf: 100, steel: [bars(2.0625, 6)] }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { from: 0.25, to: 0.4 },
    });
    expect(Math.abs(check!.capacity.value / (1946 / 12) - 1)).toBeLessThan(0.002);
  });

  test('bars both ways count by the shallower ones, and where plain concrete would not do it stands on its steel', () => {
    // d 1.4375 in: rho = 0.0275 / 1.4375 = 0.01913; 8 * 0.01913^(1/3) * sqrt(5000) * 1.4375 = 217.5; phi 0.75: 163.1 lbf/in
    // plain: 141.4 lbf/in. Hand, 3-1/2 in from the middle of the wall: Vu = (1.2 * 0.21 + 1.6 p / 144) * 8.5, 134 for 1400 psf
    // and 144 for 1500 psf, of which the mean over four thicknesses reads some per cent off
    const steel = [bars(1.8125, 4), { ...bars(1.4375, 4, { angleDeg: 90 }), id: 'across' }];
    const under = (spreadPsf: number, level: 'holds' | 'steel') =>
      runCheckCase(oneWayShearRule, {
        says: `${spreadPsf} psf`,
        job: plank({ spanIn: 24, thicknessIn: 2.5, spreadPsf, steel }),
        meshSizeIn: 1.5,
        level,
        ratio: { from: 0.8, to: 0.97 },
      })[0]!;
    expect(under(1400, 'holds').capacity.value).toBeCloseTo(163.1, 1);
    expect(under(1500, 'steel').capacity.value).toBeCloseTo(163.1, 1);
  });

  test('a slab that has cracked counts by its mesh there, although plain concrete would carry more', () => {
    // at the free edge, which sags: cross wires 0.6635 in below the pressed top: rho = 0.005249 / 0.6635 = 0.00791;
    // 8 * 0.00791^(1/3) * sqrt(5000) * 0.6635 = 74.8; phi 0.75: 56.1 lbf/in; plain 0.6 * 4/3 * sqrt(5000) * 1.5 = 84.9
    const [check] = runCheckCase(oneWayShearRule, {
      says: 'cracked ledge',
      job: tiedLedge(12, 1.5, [lightMesh(0.5)]),
      meshSizeIn: 2,
      level: 'steel',
      ratio: { from: 0.75, to: 0.85 },
    });
    expect(check!.capacity.value).toBeCloseTo(56.1, 1);
  });

  test('light mesh never makes whole concrete weaker than plain concrete', () => {
    const [check] = runCheckCase(oneWayShearRule, {
      says: 'mesh at mid-depth',
      job: plank({ spanIn: 70, thicknessIn: 2.5, strengthPsi: 4000, steel: [lightMesh(1.25)] }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { from: 0.15, to: 0.25 },
    });
    // 0.6 * 4/3 * sqrt(4000) * 2.5 = 126.5 lbf/in
    expect(check!.capacity.value).toBeCloseTo(126.5, 1);
  });

  test('a slab that is bedded all over has no open stretch to shear, and is not asked', () => {
    const job = jobOf({
      corners: rectangle(6, 6),
      thicknessIn: 4,
      supports: [{ kind: 'full-bed', id: 'bed' }],
    });
    const analysis = analyse(job, { meshSizeIn: 1 });
    expect(oneWayShearRule.run({ job, analysis, limits: DEFAULT_LIMITS })).toEqual([]);
  });
});
