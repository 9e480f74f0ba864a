import { describe, expect, test } from 'vitest';
import { pieceRegion } from '../../../src-core/job';
import { fillPlan } from '../../../src-renderer/pour/fill-plan';
import { fillRows } from '../../../src-renderer/pour/fill-rows';
import { BAR_PX, timelineDrawing, timelineWords } from '../../../src-renderer/pour/timeline-drawing';
import { mixOf, slabJob } from '../../core/pour/pour-jobs';
import { rectangle } from '../../support/pieces';
import { GALLEY, planned, SLAB } from './pour-plans';

const WIDTH_PX = 344;

describe('the minutes as a drawing', () => {
  test('the counter has two mixers that take batches in turn, its form, and the ends of the working times', () => {
    const { rows } = timelineDrawing(GALLEY.pour, WIDTH_PX)!;
    expect(rows.map(({ kind, label }) => `${kind} ${label}`)).toEqual([
      'mixer Mixer 1',
      'mixer Mixer 2',
      'form Serving counter',
      'limit Stiff: end of the working time of each batch',
    ]);
    expect(rows[0]!.bars.map(({ batch }) => batch)).toEqual([1, 3, 5]);
    expect(rows[1]!.bars.map(({ batch }) => batch)).toEqual([2, 4]);
    expect(rows[2]!.bars).toHaveLength(GALLEY.pour.clock!.buckets.length);
  });

  test('a bar is as long as its minutes, and the first batch turns stiff 60 minutes from the start', () => {
    const { rows, ticks, firstLimitX } = timelineDrawing(GALLEY.pour, WIDTH_PX)!;
    const pxAMinute = (firstLimitX - ticks[0]!.x) / 60;
    expect(rows[0]!.bars[0]!.widthPx).toBeCloseTo(7 * pxAMinute, 6);
    expect(ticks[1]!.x - ticks[0]!.x).toBeCloseTo(ticks[1]!.minutes * pxAMinute, 6);
    expect(rows[3]!.bars[0]!.x).toBeCloseTo(firstLimitX, 9);
  });

  test.each(GALLEY.plan.pours.map((pour) => [pour.day, pour] as const))(
    'on day %d nothing lies outside the drawing, and no bar of a mixer over the one before it',
    (_, pour) => {
      for (const widthPx of [256, WIDTH_PX, 600]) {
        const { rows, heightPx, axisY } = timelineDrawing(pour, widthPx)!;
        expect(heightPx).toBeGreaterThan(axisY);
        for (const { bars, barY, kind } of rows) {
          expect(barY + BAR_PX).toBeLessThanOrEqual(axisY);
          for (const [k, { x, widthPx: wide }] of bars.entries()) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x + wide).toBeLessThanOrEqual(widthPx);
            const before = bars[k - 1];
            if (kind === 'mixer' && before !== undefined) {
              expect(x).toBeGreaterThanOrEqual(before.x + before.widthPx - 1e-9);
            }
          }
        }
      }
    },
  );

  test('numbers that would run into one another are left out', () => {
    const crew = { people: 8, mixers: 4, minutesABatch: 8, mixerBags: 1, placingFt3AnHour: 60 };
    const { pour } = planned(slabJob({ crew }, { corners: rectangle(120, 30) }));
    const limits = timelineDrawing(pour, 256)!.rows.at(-1)!.bars;
    const shown = limits.filter(({ label }) => label !== '');
    expect(shown.length).toBeLessThan(limits.length);
    for (const [k, { x }] of shown.entries())
      if (k > 0) expect(x - shown[k - 1]!.x).toBeGreaterThanOrEqual(20);
  });

  test('there is none without a bag, and none without a width', () => {
    expect(timelineDrawing(planned(slabJob({ mixes: [mixOf(null)] })).pour, WIDTH_PX)).toBeNull();
    expect(timelineDrawing(SLAB.pour, 0)).toBeNull();
  });

  test('in words it says when the last is placed and when the first is stiff', () => {
    expect(timelineWords(GALLEY.pour)).toBe(
      'Minute by minute: 5 batches in 2 mixers, the first water at minute 0, the last placed by minute 37. The first batch turns stiff at minute 60.',
    );
  });
});

describe('where the concrete goes', () => {
  test('an L is begun at its front left and filled on to the back right', () => {
    const [row] = fillRows(GALLEY.job, GALLEY.pour);
    expect(row!.words).toBe('Begin at the front left, and fill on to the back right.');
  });

  test('three caps are one row, filled alike', () => {
    const caps = GALLEY.plan.pours.find(({ day }) => day === 3)!;
    const rows = fillRows(GALLEY.job, caps);
    expect(rows).toHaveLength(1);
    expect(rows[0]!.words).toContain('All 3 alike, one after another.');
  });

  test('a slab that one bucket fills says so', () => {
    const { job, pour } = planned(slabJob({}, { corners: rectangle(12, 12) }));
    expect(fillRows(job, pour)[0]!.words).toBe('One bucket fills it.');
  });

  test('rows come in the order of pouring, each piece once', () => {
    for (const pour of GALLEY.plan.pours) {
      const order = [...new Set(pour.clock!.order.map(({ pieceId }) => pieceId))];
      expect(fillRows(GALLEY.job, pour).map(({ piece }) => piece.id)).toEqual(order);
    }
  });

  test('the plan numbers a dot where another batch begins, and keeps every dot on the slab', () => {
    const [{ piece, buckets }] = fillRows(GALLEY.job, GALLEY.pour) as [ReturnType<typeof fillRows>[number]];
    const rails = GALLEY.pour.screed[0]!.rails.map(({ line }) => line);
    const plan = fillPlan(piece, buckets, rails, WIDTH_PX)!;
    expect(plan.dots.filter(({ label }) => label !== '').map(({ label }) => label)).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
    ]);
    expect(plan.rails).toHaveLength(1);
    for (const { x, y } of plan.dots) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(plan.widthPx);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(plan.heightPx);
    }
  });

  // the front of a drawing is its low y, which is at the bottom of the screen
  test('the front is at the bottom: the first bucket of the L lies lowest', () => {
    const [{ piece, buckets }] = fillRows(GALLEY.job, GALLEY.pour) as [ReturnType<typeof fillRows>[number]];
    const { dots } = fillPlan(piece, buckets, [], WIDTH_PX)!;
    expect(Math.max(...dots.map(({ y }) => y))).toBe(dots[0]!.y);
  });

  test('sizes are true to one another, and a small slab is not blown up to the width', () => {
    const cap = GALLEY.job.pieces.find(({ id }) => id === 'gate-cap')!;
    const region = pieceRegion(cap);
    if (!region.ok) throw new Error('the cap cannot be drawn');
    const plan = fillPlan(cap, [], [], 1000)!;
    expect(plan.widthPx).toBeLessThan(200);
    expect(plan.way).toBe('');
  });
});
