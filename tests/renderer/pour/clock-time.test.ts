import { describe, expect, test } from 'vitest';
import { clockTime, TIME_WRITING, USUAL_START_MINUTES } from '../../../src-renderer/pour/clock-time';

describe('minutes from the first water as times of day', () => {
  test.each([
    [USUAL_START_MINUTES, 0, '08:00'],
    [USUAL_START_MINUTES, 7.4, '08:07'],
    [USUAL_START_MINUTES, 7.5, '08:08'],
    [23 * 60 + 50, 25, '00:15'],
    [0, 60 * 24, '00:00'],
    [13 * 60 + 30, 59.6, '14:30'],
  ])('%d minutes after midnight and %d more are %s', (start, after, time) => {
    expect(clockTime(start, after)).toBe(time);
  });
});

describe('a time of day that somebody types', () => {
  test.each([
    ['8', 480],
    ['8:30', 510],
    ['08.30', 510],
    ['0830', 510],
    [' 17:05 ', 1025],
    ['00:00', 0],
  ])('%j is %d minutes after midnight', (text, minutes) => {
    expect(TIME_WRITING.read(text)).toEqual({ ok: true, value: minutes });
  });

  test.each(['', 'noon', '24:00', '8:60', '8:3', '-1'])('%j is refused with an example', (text) => {
    expect(TIME_WRITING.read(text)).toMatchObject({ ok: false, sentence: expect.stringContaining('13:30') });
  });

  test('an arrow key moves it by five minutes, through midnight and back', () => {
    expect(TIME_WRITING.step?.(0, -1)).toBe(23 * 60 + 55);
    expect(TIME_WRITING.step?.(23 * 60 + 55, 1)).toBe(0);
  });

  test('what is printed is read back', () => {
    expect(TIME_WRITING.read(TIME_WRITING.print(487))).toEqual({ ok: true, value: 487 });
  });
});
