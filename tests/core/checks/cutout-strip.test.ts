import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { cutoutStrip, cutoutStripMoment } from '../../../src-core/checks/cutout-strip';
import { narrowStrips } from '../../../src-core/checks/narrow-strips';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, rectangle } from '../../support/pieces';
import { bars } from './plank';

const MESH_IN = 2;

interface SinkTop {
  readonly frontIn: number;
  readonly thicknessIn: number;
  readonly withBars?: boolean;
}

/** 60 by 25-1/2 in counter on four panels, an 18 by 14 in sink of 80 lb `frontIn` behind its front edge, and a tap hole. */
function sinkTop({ frontIn, thicknessIn, withBars }: SinkTop): Job {
  return jobOf({
    use: 'counter',
    corners: rectangle(60, 25.5),
    thicknessIn,
    reinforcement: withBars === true ? [bars(thicknessIn - 0.6875, 4)] : [],
    cutouts: [
      {
        id: 'sink',
        name: 'the sink',
        purpose: 'sink',
        shape: {
          kind: 'rectangle',
          centre: { xIn: 30, yIn: frontIn + 7 },
          widthIn: 18,
          depthIn: 14,
          radiusIn: 1,
        },
        sink: { mounting: 'dropped-in', emptyWeightLb: 20, contentsLb: 60 },
      },
      {
        id: 'tap',
        purpose: 'tap',
        shape: { kind: 'circle', centre: { xIn: 52, yIn: 22 }, diameterIn: 1.375 },
      },
    ],
    supports: [0.375, 15, 45, 59.625].map((xIn, i) => ({
      kind: 'wall' as const,
      build: 'stud' as const,
      id: `panel-${i}`,
      from: { xIn, yIn: 0 },
      to: { xIn, yIn: 25.5 },
      widthIn: 0.75,
    })),
  });
}

describe('strip beside a cutout', () => {
  test('a 4 in strip in front of an 18 in sink gives 244.8 lbf-in/in as a plank on its own', () => {
    // q = 145 / 1728 * 2 = 0.16782 psi; rim 2 (18 + 14) - 8 + 2 pi = 62.28 in; w = 0.16782 * 4 + 80 / 62.28 = 1.956 lbf/in
    // (1.956 * 18^2 / 8 + 200 * 18 / 4) / 4 = (79.2 + 900) / 4 = 244.8 lbf-in/in
    const byHand = cutoutStripMoment.compute({ q: 0.16782, b: 4, W: 80, p: 62.28, P: 200, L: 18 });
    expect(byHand).toBeCloseTo(244.8, 1);
    const [check] = runCheckCase(cutoutStrip, {
      says: '4 in strip',
      job: sinkTop({ frontIn: 4, thicknessIn: 2 }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { from: 1, to: 1.15 },
    });
    const line = check!.workings.find(({ symbol }) => symbol === 'Mstrip');
    expect(Math.abs(line!.value / byHand - 1)).toBeLessThan(0.001);
    expect(line!.label).toContain('the plate is');
    expect(check!.words).toContain('The 4 in strip in front of the sink');
  });

  test('just outside the limit bars make it stand on steel, and just inside, in 2-1/2 in, it holds', () => {
    runCheckCase(cutoutStrip, {
      says: 'with bars',
      job: sinkTop({ frontIn: 4, thicknessIn: 2, withBars: true }),
      meshSizeIn: MESH_IN,
      level: 'steel',
      ratio: { from: 1, to: 1.15 },
    });
    runCheckCase(cutoutStrip, {
      says: '2-1/2 in',
      job: sinkTop({ frontIn: 4, thicknessIn: 2.5 }),
      meshSizeIn: MESH_IN,
      level: 'holds',
      ratio: { from: 0.65, to: 0.9 },
    });
  });

  test('it never says worse than the moment that governs the whole piece', () => {
    const job = sinkTop({ frontIn: 3, thicknessIn: 2 });
    const analysis = analyse(job, { meshSizeIn: MESH_IN });
    const governing = Math.max(
      ...[analysis.elastic.low, analysis.elastic.high].flatMap(({ sagging, hogging }) => [
        sagging.momentLbfInPerIn,
        hogging.momentLbfInPerIn,
      ]),
    );
    for (const check of cutoutStrip.run({ job, analysis, limits: DEFAULT_LIMITS })) {
      expect(check.demand.value).toBeLessThanOrEqual(governing);
    }
  });

  test('of the two strips beside one sink the one that bends most is told', () => {
    const job = sinkTop({ frontIn: 5.6, thicknessIn: 2 });
    const analysis = analyse(job, { meshSizeIn: MESH_IN });
    const moments = narrowStrips(analysis, 6)
      .filter(({ opening }) => opening === 0)
      .map(({ momentLbfInPerIn }) => momentLbfInPerIn);
    expect(moments).toHaveLength(2);
    expect(Math.max(...moments)).toBeGreaterThan(1.02 * Math.min(...moments));
    const [check] = cutoutStrip.run({ job, analysis, limits: DEFAULT_LIMITS });
    expect(check?.demand.value).toBe(Math.max(...moments));
  });

  test('sagging and hogging count in both stiffness bounds, up to the moment that governs the piece', () => {
    const analysis = analyse(sinkTop({ frontIn: 4, thicknessIn: 2 }), { meshSizeIn: MESH_IN });
    const { low } = analysis.elastic;
    const even = (value: number) => new Float64Array(low.saggingEnvelope.length).fill(value);
    const bending = (governing: number, ...[a, b, c, d]: readonly [number, number, number, number]) => {
      const state = (sagging: number, hogging: number) => ({
        ...low,
        sagging: { ...low.sagging, momentLbfInPerIn: governing },
        saggingEnvelope: even(sagging),
        hoggingEnvelope: even(hogging),
      });
      const elastic = { ...analysis.elastic, low: state(a, b), high: state(c, d) };
      return narrowStrips({ ...analysis, elastic }, 6)[0]!.momentLbfInPerIn;
    };
    expect(bending(900, 100, 0, 0, 0)).toBeCloseTo(100, 9);
    expect(bending(900, 0, 100, 0, 0)).toBeCloseTo(100, 9);
    expect(bending(900, 0, 0, 100, 0)).toBeCloseTo(100, 9);
    expect(bending(900, 0, 0, 0, 100)).toBeCloseTo(100, 9);
    expect(bending(900, 1000, 0, 0, 0)).toBeCloseTo(900, 9);
  });

  test('a strip narrower than the slab is thick is told to be fragile', () => {
    const [check] = runCheckCase(cutoutStrip, {
      says: '1-3/4 in strip',
      job: sinkTop({ frontIn: 1.75, thicknessIn: 2 }),
      meshSizeIn: MESH_IN,
      level: 'change',
      ratio: { from: 1, to: 3 },
    });
    expect(check!.cautions.some((caution) => caution.includes('narrower than the slab is thick'))).toBe(true);
  });

  test('a strip of 6 in or more, and the hole of a tap, are not asked', () => {
    // the sink's back strip is 25.5 - 6 - 14 = 5.5 in, so only that one counts; the tap hole is shorter than its strip is wide
    const job = sinkTop({ frontIn: 6, thicknessIn: 2 });
    const analysis = analyse(job, { meshSizeIn: MESH_IN });
    const asked = narrowStrips(analysis, DEFAULT_LIMITS.narrowStripIn).map(({ side }) => side);
    expect(asked).toEqual(['back']);
    const checks = cutoutStrip.run({ job, analysis, limits: DEFAULT_LIMITS });
    expect(checks).toHaveLength(1);
    expect(checks[0]!.words).toContain('The 5-1/2 in strip behind the sink');
  });
});
