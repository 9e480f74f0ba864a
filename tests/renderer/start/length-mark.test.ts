import { describe, expect, it } from 'vitest';
import { lengthMark } from '../../../src-renderer/start/length-mark';

const level = { key: 'a', from: { x: 10, y: 40 }, to: { x: 110, y: 40 }, lengthIn: 11 };
const upright = { key: 'b', from: { x: 20, y: 10 }, to: { x: 20, y: 50 }, lengthIn: 17.5 };

describe('lengthMark', () => {
  it('writes an overhang above the middle of its line and the whole length below it', () => {
    const above = lengthMark({ ...level, of: 'overhang' });
    expect(above.at).toEqual({ x: 60, y: 31 });
    // clear of the ticks, which may be nearer together than the words are long
    expect(above.at.y).toBeLessThan(Math.min(...above.ticks[0]!.map(({ y }) => y)) - 2);
    expect(lengthMark({ ...level, of: 'length' }).at.y).toBeGreaterThan(40);
    expect(above.ticks[0]![0].x).toBe(above.ticks[0]![1].x);
  });

  it('writes a depth to the left of its line and a thickness to the right', () => {
    const depth = lengthMark({ ...upright, of: 'depth' });
    const thickness = lengthMark({ ...upright, of: 'thickness' });
    expect(depth.at.x).toBeLessThan(20);
    expect(depth.anchor).toBe('end');
    expect(thickness.at.x).toBeGreaterThan(20);
    expect(thickness.anchor).toBe('start');
    expect(depth.ticks[0]![0].y).toBe(depth.ticks[0]![1].y);
  });
});
