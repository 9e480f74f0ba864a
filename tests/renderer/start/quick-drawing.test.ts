import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import type { DrawnLength, DrawnPoint, DrawnView } from '../../../src-renderer/start/quick-drawing';
import { DRAWN_WIDTH_PX, quickDrawing, svgPoints } from '../../../src-renderer/start/quick-drawing';

/** 96 x 17.5 x 1.5 in on a 5-1/2 in stud wall whose front face is 1 in behind the front edge: 1 in and 11 in out. */
function barLedge(): Piece {
  const reading = readJobText(readFileSync('assets/jobs/bar-ledge.json', 'utf8'));
  if (!reading.ok) throw new Error('the bar ledge is sound');
  return reading.job.pieces[0]!;
}

const width = (corners: readonly DrawnPoint[]) =>
  Math.max(...corners.map(({ x }) => x)) - Math.min(...corners.map(({ x }) => x));
const height = (corners: readonly DrawnPoint[]) =>
  Math.max(...corners.map(({ y }) => y)) - Math.min(...corners.map(({ y }) => y));
const long = ({ from, to }: DrawnLength) => Math.hypot(to.x - from.x, to.y - from.y);
const overhangs = ({ lengths }: DrawnView) => lengths.filter(({ of }) => of === 'overhang');

describe('quickDrawing', () => {
  it('cuts the bar ledge true to scale: depth 17-1/2 in to wall 5-1/2 in to overhangs of 11 in and 1 in', () => {
    const { section } = quickDrawing(barLedge());
    const perIn = width(section.slab) / 17.5;
    expect(width(section.supports[0]!.corners)).toBeCloseTo(5.5 * perIn, 9);
    const drawn = overhangs(section).sort((a, b) => a.lengthIn - b.lengthIn);
    expect(drawn.map(({ lengthIn }) => lengthIn)).toEqual([expect.closeTo(1, 6), expect.closeTo(11, 6)]);
    for (const length of drawn) expect(long(length)).toBeCloseTo(length.lengthIn * perIn, 4);
    expect(height(section.slab)).toBeCloseTo(1.5 * perIn, 9);
  });

  it('stands the wall under the slab, touching it', () => {
    const { section } = quickDrawing(barLedge());
    const soffit = Math.max(...section.slab.map(({ y }) => y));
    expect(Math.min(...section.supports[0]!.corners.map(({ y }) => y))).toBe(soffit);
  });

  it('puts the front at the left of the cut and at the foot of the plan', () => {
    const { section, plan } = quickDrawing(barLedge());
    const front = overhangs(section).find(({ lengthIn }) => lengthIn < 2)!;
    expect(front.from.x).toBeCloseTo(Math.min(...section.slab.map(({ x }) => x)), 6);
    const bar = overhangs(plan).find(({ lengthIn }) => lengthIn > 2)!;
    const back = Math.min(...plan.slab.map(({ y }) => y));
    expect(Math.min(bar.from.y, bar.to.y)).toBeCloseTo(back, 6);
  });

  it('leaves the 1 in overhang out of the plan, where there is no room to write it', () => {
    const { plan } = quickDrawing(barLedge());
    expect(overhangs(plan).map(({ lengthIn }) => lengthIn)).toEqual([expect.closeTo(11, 6)]);
  });

  it('keeps the plan in its shape and writes 96 in and 17-1/2 in on it', () => {
    const { plan } = quickDrawing(barLedge());
    expect(width(plan.slab) / height(plan.slab)).toBeCloseTo(96 / 17.5, 9);
    const sizes = plan.lengths
      .filter(({ of }) => of !== 'overhang')
      .map(({ of, lengthIn }) => [of, lengthIn]);
    expect(sizes).toEqual([
      ['length', 96],
      ['depth', 17.5],
    ]);
  });

  it('keeps both views inside their frames for a 20 in cap, a 20 ft counter and a 6 in shelf, 4 in thick', () => {
    const base = barLedge();
    for (const [lengthIn, depthIn] of [
      [20, 20],
      [240, 25.5],
      [60, 6],
      [20, 48],
    ] as const) {
      const corners = [
        { xIn: 0, yIn: 0, radiusIn: 0 },
        { xIn: lengthIn, yIn: 0, radiusIn: 0 },
        { xIn: lengthIn, yIn: depthIn, radiusIn: 0 },
        { xIn: 0, yIn: depthIn, radiusIn: 0 },
      ];
      const { section, plan } = quickDrawing({ ...base, corners, thicknessIn: 4 });
      const soffit = Math.max(...section.slab.map(({ y }) => y));
      expect(soffit, 'room for what it stands on').toBeLessThan(section.heightPx * 0.75);
      for (const { slab, lengths, heightPx } of [section, plan]) {
        for (const { x, y } of [...slab, ...lengths.flatMap(({ from, to }) => [from, to])]) {
          expect(x, `${lengthIn} x ${depthIn}`).toBeGreaterThanOrEqual(0);
          expect(x, `${lengthIn} x ${depthIn}`).toBeLessThanOrEqual(DRAWN_WIDTH_PX);
          expect(y, `${lengthIn} x ${depthIn}`).toBeGreaterThanOrEqual(0);
          expect(y, `${lengthIn} x ${depthIn}`).toBeLessThanOrEqual(heightPx);
        }
      }
    }
  });
});

describe('svgPoints', () => {
  it('rounds to a hundredth of a px', () => {
    expect(
      svgPoints([
        { x: 1 / 3, y: 2 },
        { x: 0, y: 10.005 },
      ]),
    ).toMatch(/^0\.33,2 0,10\.0[01]$/);
  });
});
