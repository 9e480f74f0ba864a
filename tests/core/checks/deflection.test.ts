import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { deflection, longTermDeflection } from '../../../src-core/checks/deflection';
import { placeOfDeflection } from '../../../src-core/checks/deflection-place';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, COUNTER_E2, jobOf, LEDGE_E1, rectangle } from '../../support/pieces';
import { bars, plank, tiedLedge } from './plank';

const MESH_IN = 3;
const checkOf = (job: Job, meshSizeIn = 3) =>
  deflection.run({ job, analysis: analyse(job, { meshSizeIn }), limits: DEFAULT_LIMITS })[0]!;

/** 2 in counter over two 24 in cabinets with a gap between them. */
const overGap = (gapIn: number) =>
  jobOf({
    use: 'counter',
    corners: rectangle(48 + gapIn, 25.5),
    thicknessIn: 2,
    supports: [0, 24 + gapIn].map((xIn, i) => ({
      kind: 'cabinet' as const,
      id: `cabinet-${i + 1}`,
      corner: { xIn, yIn: 1.5 },
      widthIn: 24,
      depthIn: 24,
    })),
  });

describe('sag and drop of the edge', () => {
  test('a 2-1/2 in plank over 84 in sags 0.069 in at once and 0.121 in after five years', () => {
    // EI = 57000 sqrt(5000) * 2.5^3 / 12 = 5.248e6; 5 * 0.5570 * 84^4 / (384 * 5.248e6) = 0.0688; its lasting part
    // 0.0688 * 0.2098 / 0.5570 = 0.0259; 0.0688 + 2 * 0.0259 = 0.1206; L/360 = 83.25 / 360 = 0.2313; ratio 0.521
    const [check] = runCheckCase(deflection, {
      says: 'plank 84',
      job: plank({ spanIn: 84, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { near: 0.521, within: 0.02 },
    });
    expect(check!.words).toContain('a span of 83-1/4 in sags 0.069 in');
    expect(check!.cautions.some((caution) => caution.includes('whole slab'))).toBe(true);
    expect(check!.workings.filter(({ symbol }) => symbol === 'S')).toHaveLength(2);
  });

  test('just inside, over 103 in, it holds, and just outside, over 107 in, it sags too far', () => {
    // ratio grows with L^3: 0.521 (103/84)^3 = 0.961; (107/84)^3: 1.077
    const at = (spanIn: number, level: 'holds' | 'change', near: number) =>
      runCheckCase(deflection, {
        says: `${spanIn} in`,
        job: plank({ spanIn, thicknessIn: 2.5 }),
        meshSizeIn: MESH_IN,
        level,
        ratio: { near, within: 0.02 },
      })[0]!;
    at(103, 'holds', 0.961);
    expect(at(107, 'change', 1.077).needs[0]).toBe('support');
  });

  test('the worse of both stiffness bounds counts, whichever it is', () => {
    const worse = (job: Job, meshSizeIn: number) => {
      const check = checkOf(job, meshSizeIn);
      const of = (symbol: string) =>
        check.workings.filter((line) => line.symbol === symbol).map(({ value }) => value);
      const [S, D] = [of('S'), of('D')];
      // basis 4.11: what lasts trebles
      const inTime = S.map((atOnce, i) => atOnce + 2 * D[i]!);
      expect(inTime).toHaveLength(2);
      expect(check.demand.value).toBeCloseTo(Math.max(...inTime), 9);
      return inTime[0]! > inTime[1]! ? 'low' : 'high';
    };
    expect(worse(COUNTER_E2(), 2)).toBe('low');
    // Soft ends sink until the slab touches a middle wall that is 1/128 in short; stiff ends leave it hanging longer.
    const wall = (id: string, xIn: number, low: number, gapIn: number) => ({
      kind: 'wall' as const,
      build: 'block' as const,
      id,
      from: { xIn, yIn: 0 },
      to: { xIn, yIn: 18 },
      widthIn: 1.5,
      gapIn,
      stiffness: { low, high: 200_000 },
    });
    const shortMiddle = jobOf({
      use: 'bench',
      corners: rectangle(72, 18),
      thicknessIn: 2,
      loads: { roving: { setting: 'none' }, spreadPsf: 50 },
      supports: [wall('left', 1, 2000, 0), wall('middle', 36, 200_000, 1 / 128), wall('right', 71, 2000, 0)],
    });
    expect(worse(shortMiddle, 3)).toBe('high');
    const onWall = checkOf(shortMiddle, 3);
    expect(onWall.words).toContain('the slab sinks where it bears');
    expect(onWall.capacity.value).toBe(1 / 32);
  });

  test('a cracked plank sags more than a whole one and stands on its steel', () => {
    const cracked = checkOf(plank({ spanIn: 84, thicknessIn: 2.5, steel: [bars(1.8125, 4)] }));
    expect(cracked.level).toBe('steel');
    expect(cracked.demand.value).toBeGreaterThan(0.15);
  });

  test('beside a cabinet no step over 1/16 in is let pass, elsewhere L/360 alone counts', () => {
    expect(checkOf(overGap(46)).capacity.value).toBe(1 / 16);
    expect(checkOf(plank({ spanIn: 46, thicknessIn: 2 })).capacity.value).toBeCloseTo(45.25 / 360, 6);
    // 2 * 12 / 360 = 0.067 in would be the limit of a 12 in overhang
    const bar = jobOf({
      use: 'counter',
      corners: rectangle(48, 37),
      thicknessIn: 2,
      supports: [0, 24].map((xIn) => ({
        kind: 'cabinet' as const,
        id: `cabinet-${xIn}`,
        corner: { xIn, yIn: 12 },
        widthIn: 24,
        depthIn: 24,
      })),
    });
    const tip = checkOf(bar, 2);
    expect(tip.words).toContain('an edge that reaches 12 in');
    expect(tip.capacity.value).toBe(1 / 16);
  });

  test('a slab on four walls is measured by its shorter span', () => {
    const wall = (id: string, x0: number, y0: number, x1: number, y1: number) => ({
      kind: 'wall' as const,
      build: 'block' as const,
      id,
      from: { xIn: x0, yIn: y0 },
      to: { xIn: x1, yIn: y1 },
      widthIn: 1.5,
    });
    const check = checkOf(
      jobOf({
        use: 'other',
        corners: rectangle(60, 36),
        thicknessIn: 2,
        loads: { roving: { setting: 'none' }, spreadPsf: 50 },
        supports: [
          wall('left', 0.75, 0, 0.75, 36),
          wall('right', 59.25, 0, 59.25, 36),
          wall('front', 1.5, 0.75, 58.5, 0.75),
          wall('back', 1.5, 35.25, 58.5, 35.25),
        ],
      }),
      2,
    );
    expect(check.words).toContain('a span of 33 in');
    expect(check.capacity.value).toBeCloseTo(33 / 360, 6);
  });

  test('the edge of a 14 in overhang may drop 28/360 in', () => {
    const check = checkOf(tiedLedge(14, 2, []), 2);
    expect(check.capacity.value).toBeCloseTo(28 / 360, 6);
    expect(check.words).toContain('an edge that reaches 14 in');
  });

  test('a 1-1/2 in front overhang is not asked for less than 1/32 in', () => {
    // 2 * 1.5 / 360 = 0.0083 in would be finer than any support is stiff
    expect(checkOf(COUNTER_E2(), 2).capacity.value).toBe(1 / 32);
  });

  test('a ledge that turns over is worked as if held, and says so', () => {
    expect(checkOf(LEDGE_E1(), 2).cautions.some((caution) => caution.includes('as if it were held'))).toBe(
      true,
    );
  });

  test('a gap between bearings of two thicknesses or less is no span: the slab sinks where it bears', () => {
    const between = (gapIn: number) => {
      const job = jobOf({
        corners: rectangle(20 + gapIn, 12),
        thicknessIn: 2,
        supports: [5, 15 + gapIn].map((xIn, i) => ({
          kind: 'pier' as const,
          id: `pier-${i}`,
          build: 'block' as const,
          footprint: { kind: 'rectangle' as const, centre: { xIn, yIn: 6 }, widthIn: 10, depthIn: 12 },
        })),
      });
      return placeOfDeflection(analyse(job, { meshSizeIn: 2 }), { xIn: 10 + gapIn / 2, yIn: 6 });
    };
    expect(between(3.9)).toMatchObject({ kind: 'bearing', lengthIn: expect.closeTo(3.9, 6) });
    expect(between(4.1)).toMatchObject({ kind: 'span', lengthIn: expect.closeTo(4.1, 6) });
  });

  test('a slab on brackets alone is measured from the wall, arm and slab together', () => {
    const check = checkOf(
      jobOf({
        use: 'bar-ledge',
        corners: rectangle(64, 14),
        thicknessIn: 1.5,
        supports: [
          {
            kind: 'bracket',
            id: 'arms',
            roots: [8, 24, 40, 56].map((xIn) => ({ xIn, yIn: 14 })),
            directionDeg: -90,
            reachIn: 11,
            seatWidthIn: 1.5,
            heelIn: 10,
            arm: { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 46_000 },
            backing: 'timber-stud',
            fixing: { kind: 'rated', ratedLoadLbf: 400, ratedAtIn: 8, ratedBy: 'the maker' },
          },
        ],
      }),
      2,
    );
    expect(check.capacity.value).toBeCloseTo(28 / 360, 6);
    expect(check.cautions.some((caution) => caution.includes('Slab and arm are judged together'))).toBe(true);
  });

  test('after five years the lasting part has trebled: basis 4.11, lambda 2.0', () => {
    expect(longTermDeflection.compute({ S: 0.03, D: 0.01, lambdaDelta: 2 })).toBeCloseTo(0.05, 9);
  });
});
