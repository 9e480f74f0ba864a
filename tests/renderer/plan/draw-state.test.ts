import { describe, expect, test } from 'vitest';
import type { DrawState } from '../../../src-renderer/plan/draw-state';
import {
  EMPTY_DRAWING,
  enter,
  placeCorner,
  pointTo,
  stepBack,
  typeCharacter,
} from '../../../src-renderer/plan/draw-state';

const at = (xIn: number, yIn: number) => ({ xIn, yIn });

function drawn(...corners: readonly (readonly [number, number])[]): DrawState {
  return corners.reduce((state, [x, y]) => placeCorner(pointTo(state, at(x, y), false), 0.5), EMPTY_DRAWING);
}

function typed(state: DrawState, text: string): DrawState {
  return [...text].reduce(typeCharacter, state);
}

describe('drawing a piece', () => {
  test('three corners and a click 0.4 in from the first close it', () => {
    const state = drawn([0, 0], [96, 0], [96, 25], [0.4, 0]);
    expect(state.isClosed).toBe(true);
    expect(state.corners).toEqual([at(0, 0), at(96, 0), at(96, 25)]);
  });

  test('a click on the first of two corners closes nothing', () => {
    expect(drawn([0, 0], [96, 0], [0, 0]).isClosed).toBe(false);
  });

  test('two clicks in one place are one corner', () => {
    expect(drawn([0, 0], [96, 0], [96, 0]).corners).toHaveLength(2);
  });

  test('Shift keeps a side straight across, or straight up', () => {
    const state = drawn([10, 10]);
    expect(pointTo(state, at(40, 13), true).cursor).toEqual(at(40, 10));
    expect(pointTo(state, at(12, -20), true).cursor).toEqual(at(10, -20));
  });

  test('25-1/2 typed while pointing nearly up makes a side of 25-1/2 in straight up', () => {
    const pointed = pointTo(drawn([0, 0]), at(1, 30), false);
    const state = enter(typed(pointed, '25-1/2'), 'imperial');
    expect(state.corners[1]?.xIn).toBeCloseTo(0, 9);
    expect(state.corners[1]?.yIn).toBeCloseTo(25.5, 9);
    expect(state.typed).toBe('');
  });

  test('pointing at 45 degrees the side runs at 45 degrees', () => {
    const state = enter(typed(pointTo(drawn([0, 0]), at(20, 20), false), '10'), 'imperial');
    expect(state.corners[1]?.xIn).toBeCloseTo(Math.SQRT1_2 * 10, 9);
  });

  test('600 under metric is 600 mm', () => {
    const state = enter(typed(pointTo(drawn([0, 0]), at(20, 0), false), '600'), 'metric');
    expect(state.corners[1]!.xIn * 25.4).toBeCloseTo(600, 9);
  });

  test('nonsense is refused with a sentence, and the corners stay', () => {
    const state = enter(typed(pointTo(drawn([0, 0]), at(20, 0), false), '1/0'), 'imperial');
    expect(state.sentence).toMatch(/\S/);
    expect(state.corners).toHaveLength(1);
    expect(state.typed).toBe('1/0');
  });

  test('a letter begins no length, but may be its unit', () => {
    expect(typed(drawn([0, 0]), 'q').typed).toBe('');
    expect(typed(drawn([0, 0]), '60cm').typed).toBe('60cm');
  });

  test('Enter with two corners says that three are needed, with three it closes', () => {
    expect(enter(drawn([0, 0], [9, 0]), 'imperial')).toMatchObject({
      isClosed: false,
      sentence: expect.stringMatching(/three/),
    });
    expect(enter(drawn([0, 0], [9, 0], [9, 9]), 'imperial').isClosed).toBe(true);
  });

  test('Backspace takes the last character, then the last corner', () => {
    const state = stepBack(typed(drawn([0, 0], [9, 0]), '12'));
    expect(state.typed).toBe('1');
    expect(stepBack(stepBack(state)).corners).toEqual([at(0, 0)]);
  });
});
