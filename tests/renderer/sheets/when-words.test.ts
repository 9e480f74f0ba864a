import { describe, expect, it } from 'vitest';
import { whenWords } from '../../../src-renderer/sheets/when-words';

/** Local times, so that the day changes where the reader's does. */
const now = new Date(2027, 4, 3, 16, 40, 0);
const at = (...parts: [number, number, number, number, number]) =>
  whenWords(new Date(...parts).toISOString(), now);

describe('whenWords', () => {
  it('counts minutes within the hour', () => {
    expect(at(2027, 4, 3, 16, 40)).toBe('less than a minute ago');
    expect(at(2027, 4, 3, 16, 39)).toBe('a minute ago');
    expect(at(2027, 4, 3, 15, 41)).toBe('59 minutes ago');
  });

  it('gives the clock today, and the date before and after', () => {
    expect(at(2027, 4, 3, 9, 5)).toBe('today at 9:05');
    expect(at(2027, 4, 2, 23, 59)).toBe('on 2 May 2027 at 23:59');
    expect(at(2027, 4, 4, 8, 0)).toBe('on 4 May 2027 at 8:00');
  });

  it('gives back a time that cannot be read', () => {
    expect(whenWords('last spring', now)).toBe('last spring');
  });
});
