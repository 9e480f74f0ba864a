import { describe, expect, test } from 'vitest';
import { slabWeight, spreadWeight, weight } from '../../../src-core/checks/weight';
import { runCheckCase } from '../../support/check-harness';
import { jobOf, rectangle, wallAlongX } from '../../support/pieces';

const INFORMS = { from: 0, to: 0 } as const;

function counter(widthIn: number, depthIn: number, thicknessIn: number, more: object = {}) {
  return jobOf({
    corners: rectangle(widthIn, depthIn),
    thicknessIn,
    supports: [wallAlongX('wall', 0, widthIn, depthIn / 2, depthIn - 1)],
    ...more,
  });
}

describe('weight and centre of gravity', () => {
  // Hand: 96 x 18 x 2 in is 2 ft3; 2 x 145 = 290 lb, its middle at 48, 9 in. Basis 2.1.
  test('an 8 ft bar top 18 in deep and 2 in thick weighs 290 lb, its weight in its middle', () => {
    const [check] = runCheckCase(weight, {
      says: 'basis 2.1',
      job: counter(96, 18, 2),
      meshSizeIn: 3,
      level: 'holds',
      ratio: INFORMS,
    });
    expect(check?.demand).toEqual({ value: 290, unit: 'lb' });
    expect(check?.words).toBe(
      'It weighs 290 lb; the centre of gravity is 48 in from the left, 9 in from the front.',
    );
    expect(check?.cautions).toEqual([]);
  });

  // Derived: basis 2.8 and 5.5, 2400 x 450 x 50 mm at 2320 kg/m3; 2 in at 150 pcf; 50 mm at 26 kN/m3.
  test('basis 2.8 and 5.5: 1229 N of metric top, 25 psf of wet concrete, 1.30 kPa', () => {
    const mm = (value: number) => value / 25.4;
    const lb = slabWeight({ A: mm(2400) * mm(450), h: mm(50), w: 2320 / 16.018463 }).value;
    expect(Math.abs(lb * 4.4482216 - 1229) / 1229).toBeLessThan(0.005);
    expect(spreadWeight({ h: 2, w: 150 }).value).toBe(25);
    const kPa = spreadWeight({ h: mm(50), w: 26_000 / 9.80665 / 16.018463 }).value * 0.04788026;
    expect(Math.abs(kPa - 1.3)).toBeLessThan(0.0013);
  });

  // Hand: 30 x 18 x 9 in of water at 62.4 pcf is 175.5 lb, bowl 20 lb; slab 60 x 25 less 30 x 18 in, 2 in: 161.1 lb.
  test('a full sink counts with its bowl and its water, and moves the centre of gravity toward it', () => {
    const sink = {
      id: 'sink',
      purpose: 'sink' as const,
      shape: { kind: 'rectangle' as const, centre: { xIn: 20, yIn: 12.5 }, widthIn: 30, depthIn: 18 },
      sink: { mounting: 'dropped-in' as const, bowlDepthIn: 9 },
    };
    const [check] = runCheckCase(weight, {
      says: 'a sink',
      job: counter(60, 25, 2, { cutouts: [sink] }),
      meshSizeIn: 3,
      level: 'holds',
      ratio: INFORMS,
    });
    const slabLb = ((60 * 25 - 30 * 18) * 2 * 145) / 1728;
    const sinkLb = 20 + (30 * 18 * 9 * 62.4) / 1728;
    expect(check?.demand.value).toBeCloseTo(slabLb + sinkLb, 6);
    const slabXIn = (60 * 25 * 30 - 30 * 18 * 20) / (60 * 25 - 30 * 18);
    const xIn = (slabLb * slabXIn + sinkLb * 20) / (slabLb + sinkLb);
    expect(check?.where.kind === 'point' && Math.abs(check.where.at.xIn - xIn)).toBeLessThan(1e-6);
  });

  test('1000 lb is where the caution about lifting starts', () => {
    const heavy = (weightLb: number) =>
      counter(30, 20, 2, {
        loads: {
          fixed: [
            { id: 'safe', name: 'Safe', centre: { xIn: 15, yIn: 10 }, widthIn: 10, depthIn: 10, weightLb },
          ],
        },
      });
    // The slab alone weighs 100.69 lb.
    const cautions = (weightLb: number) =>
      runCheckCase(weight, {
        says: `${weightLb} lb on the slab`,
        job: heavy(weightLb),
        meshSizeIn: 3,
        level: 'holds',
        ratio: INFORMS,
      })[0]?.cautions;
    expect(cautions(899)).toEqual([]);
    expect(cautions(900)?.[0]).toContain('never lift');
  });

  test('1 in and 6 in are still decided here; 15/16 in and 6-1/8 in are for an engineer', () => {
    const at = (thicknessIn: number, level: 'holds' | 'engineer', near: number) =>
      runCheckCase(weight, {
        says: `${thicknessIn} in`,
        job: counter(24, 18, thicknessIn),
        meshSizeIn: 3,
        level,
        ratio: level === 'holds' ? INFORMS : { near, within: 1e-9 },
      });
    at(1, 'holds', 0);
    at(6, 'holds', 0);
    at(0.9375, 'engineer', 1 / 0.9375);
    expect(at(6.125, 'engineer', 6.125 / 6)[0]?.words).toContain('6-1/8 in is outside the thicknesses');
  });
});
