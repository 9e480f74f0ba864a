import { describe, expect, it } from 'vitest';
import { tapeEndRatio, tapeOf } from '../../../src-renderer/verdict/tape';

describe('a ratio as a tape', () => {
  it('is 1.75 long where nothing passes 1.75, and ends on the quarter above the highest ratio', () => {
    expect(tapeEndRatio([])).toBe(1.75);
    expect(tapeEndRatio([0.2, 1.72])).toBe(1.75);
    expect(tapeEndRatio([0.2, 1.76])).toBe(2);
    expect(tapeEndRatio([2.2])).toBe(2.25);
  });

  it('is never longer than 2.5, so that a ratio of 9.99 leaves the limit in sight', () => {
    expect(tapeEndRatio([9.99])).toBe(2.5);
  });

  it('ends its fill at the ratio: 0.74 of 1.75', () => {
    const tape = tapeOf(0.74, 1.75);
    expect(tape.fillShare).toBeCloseTo(0.74 / 1.75, 12);
    expect(tape.limitShare).toBeCloseTo(1 / 1.75, 12);
    expect(tape.isCut).toBe(false);
  });

  it('stops its fill at the end and is cut where the ratio lies beyond', () => {
    expect(tapeOf(9.99, 2.5)).toMatchObject({ fillShare: 1, isCut: true });
    expect(tapeOf(2.5, 2.5)).toMatchObject({ fillShare: 1, isCut: false });
  });

  it('has a tick every tenth up to its end, every fifth a long one, and one on the limit', () => {
    const { ticks, limitShare } = tapeOf(0.5, 2.5);
    expect(ticks).toHaveLength(26);
    expect(ticks.filter(({ isLong }) => isLong).map(({ share }) => share * 2.5)).toEqual([
      0, 0.5, 1, 1.5, 2, 2.5,
    ]);
    expect(ticks[10]!.share).toBeCloseTo(limitShare, 12);
    expect(tapeOf(0.5, 1.75).ticks.at(-1)!.share).toBeLessThanOrEqual(1);
  });
});
