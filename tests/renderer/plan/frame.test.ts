import { describe, expect, test } from 'vitest';
import type { Frame } from '../../../src-renderer/plan/frame';
import {
  fitted,
  isSeen,
  panned,
  pinched,
  planTransform,
  toPixel,
  toPlan,
  zoomed,
} from '../../../src-renderer/plan/frame';
import { arrowStep, gridSteps } from '../../../src-renderer/plan/plan-steps';

const frame: Frame = { centre: { xIn: 50, yIn: 20 }, pxPerIn: 4, widthPx: 800, heightPx: 600 };

describe('the frame of the plan', () => {
  test('has the front at the bottom: 10 in towards it lies 40 px lower', () => {
    expect(toPixel(frame, { xIn: 50, yIn: 10 })).toEqual({ xPx: 400, yPx: 340 });
  });

  test('reads a place on the screen back to the point that is shown there', () => {
    const point = { xIn: -3.25, yIn: 61.5 };
    const back = toPlan(frame, toPixel(frame, point));
    expect(back.xIn).toBeCloseTo(point.xIn, 9);
    expect(back.yIn).toBeCloseTo(point.yIn, 9);
  });

  test('gives the same as an SVG transform', () => {
    const [a, b, c, d, e, f] = planTransform(frame).slice(7, -1).split(' ').map(Number);
    const { xPx, yPx } = toPixel(frame, { xIn: 7, yIn: 9 });
    expect(a! * 7 + c! * 9 + e!).toBeCloseTo(xPx, 9);
    expect(b! * 7 + d! * 9 + f!).toBeCloseTo(yPx, 9);
  });

  test('fitted to 120 x 25 in with 100 px of margin shows 5 px an inch and the middle of the box', () => {
    const fit = fitted(frame, { minXIn: 0, minYIn: 0, maxXIn: 120, maxYIn: 25 }, 100);
    expect(fit.pxPerIn).toBe(5);
    expect(fit.centre).toEqual({ xIn: 60, yIn: 12.5 });
  });

  test('zoomed twice as large about the pointer keeps the point under it', () => {
    const about = { xPx: 123, yPx: 456 };
    const held = toPlan(frame, about);
    const larger = zoomed(frame, about, 2);
    expect(larger.pxPerIn).toBe(8);
    expect(toPixel(larger, held).xPx).toBeCloseTo(123, 9);
    expect(toPixel(larger, held).yPx).toBeCloseTo(456, 9);
  });

  test('panned 40 px right and 20 px down moves every point so', () => {
    const at = toPixel(panned(frame, 40, 20), { xIn: 50, yIn: 20 });
    expect(at).toEqual({ xPx: 440, yPx: 320 });
  });

  test('two fingers that part to twice their distance double it and carry their middle along', () => {
    const from = [
      { xPx: 100, yPx: 100 },
      { xPx: 200, yPx: 100 },
    ] as const;
    const to = [
      { xPx: 150, yPx: 140 },
      { xPx: 350, yPx: 140 },
    ] as const;
    const held = toPlan(frame, { xPx: 150, yPx: 100 });
    const after = pinched(frame, from, to);
    expect(after.pxPerIn).toBe(8);
    expect(toPixel(after, held).xPx).toBeCloseTo(250, 9);
    expect(toPixel(after, held).yPx).toBeCloseTo(140, 9);
  });

  test('a box is seen when the whole of it is: 200 x 150 in fits at 4 px an inch, an inch more does not', () => {
    const box = { minXIn: -50, minYIn: -55, maxXIn: 150, maxYIn: 95 };
    expect(isSeen(frame, box)).toBe(true);
    expect(isSeen(frame, { ...box, maxXIn: 151 })).toBe(false);
    expect(isSeen(frame, { ...box, minYIn: -56 })).toBe(false);
  });
});

describe('steps', () => {
  test('at 4 px an inch the grid shows 6 in and 12 in, at 100 px an inch eighths', () => {
    expect(gridSteps(4, 'imperial')).toEqual({ fineIn: 6, coarseIn: 12 });
    expect(gridSteps(100, 'imperial')).toEqual({ fineIn: 1 / 8, coarseIn: 1 });
  });

  test('metric at 4 px an inch shows 100 mm and 500 mm', () => {
    const { fineIn, coarseIn } = gridSteps(4, 'metric');
    expect(fineIn * 25.4).toBeCloseTo(100, 9);
    expect(coarseIn * 25.4).toBeCloseTo(500, 9);
  });

  test('an arrow moves 1/8 in, 1-1/4 in with Shift, 1/16 in with Alt; in metric 5, 50 and 1 mm', () => {
    const press = (shiftKey: boolean, altKey: boolean) => ({ key: 'ArrowLeft', shiftKey, altKey });
    expect(arrowStep(press(false, false), 'imperial')?.dxIn).toBe(-1 / 8);
    expect(arrowStep(press(true, false), 'imperial')?.dxIn).toBe(-1.25);
    expect(arrowStep(press(false, true), 'imperial')?.dxIn).toBe(-1 / 16);
    expect(arrowStep(press(false, false), 'metric')!.dxIn * 25.4).toBeCloseTo(-5, 9);
    expect(arrowStep(press(true, false), 'metric')!.dxIn * 25.4).toBeCloseTo(-50, 9);
    expect(arrowStep(press(false, true), 'metric')!.dxIn * 25.4).toBeCloseTo(-1, 9);
    expect(arrowStep({ ...press(false, false), key: 'ArrowUp' }, 'imperial')?.dyIn).toBe(1 / 8);
    expect(arrowStep({ ...press(false, false), key: 'Tab' }, 'imperial')).toBeNull();
  });
});
