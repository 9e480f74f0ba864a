import { describe, expect, test } from 'vitest';
import { PLAN_SCALES, paperScale } from '../../../src-core/paper';

describe('standard scales', () => {
  // A counter of 121-1/2 x 85-1/2 in: 7.59 in at 3/4 in = 1 ft (1 : 16), 5.06 in at 1/2 in = 1 ft (1 : 24); worked by hand.
  const counter = { widthIn: 121.5, heightIn: 85.5 };

  test('a counter of 121-1/2 in goes on 7 in of paper at 1/2 in = 1 ft, and on 7.6 in at 3/4', () => {
    expect(paperScale(counter, { widthIn: 7, heightIn: 9 }, 'imperial').words).toBe('1/2 in = 1 ft');
    expect(paperScale(counter, { widthIn: 7.6, heightIn: 9 }, 'imperial').words).toBe('3/4 in = 1 ft');
  });

  test('the height counts as the width does: 85-1/2 in on 3 in of paper takes 3/8 in = 1 ft', () => {
    expect(paperScale(counter, { widthIn: 7.6, heightIn: 3 }, 'imperial').words).toBe('3/8 in = 1 ft');
  });

  test('in metric the same counter takes 1 : 20', () => {
    expect(paperScale(counter, { widthIn: 7, heightIn: 9 }, 'metric')).toEqual({
      ratio: 1 / 20,
      words: '1 : 20',
    });
  });

  test('a thing that fits to a hair takes the larger scale', () => {
    expect(paperScale({ widthIn: 24, heightIn: 4 }, { widthIn: 6, heightIn: 1 }, 'imperial').words).toBe(
      '3 in = 1 ft',
    );
  });

  test('nothing is drawn larger than the largest scale, nor to an odd one', () => {
    expect(paperScale({ widthIn: 1, heightIn: 1 }, { widthIn: 7, heightIn: 9 }, 'imperial').ratio).toBe(
      1 / 4,
    );
    expect(paperScale({ widthIn: 1, heightIn: 1 }, { widthIn: 7, heightIn: 9 }, 'metric').ratio).toBe(1);
    const longest = paperScale({ widthIn: 1e6, heightIn: 1 }, { widthIn: 7, heightIn: 9 }, 'metric');
    expect(PLAN_SCALES.metric).toContain(longest);
  });

  // The scales of a US architect's rule from 3 in to 1/8 in to the foot, and ISO 5455: 1 : 2, 5, 10, 20, 50, 100.
  test('hold the scales of an architect’s rule and of ISO 5455, largest first', () => {
    const parts = PLAN_SCALES.imperial.map(({ ratio }) => 1 / ratio);
    expect(parts.slice(0, 9).map(Math.round)).toEqual([4, 8, 12, 16, 24, 32, 48, 64, 96]);
    const metric = PLAN_SCALES.metric.map(({ ratio }) => Math.round(1 / ratio));
    expect(metric).toEqual(expect.arrayContaining([1, 2, 5, 10, 20, 50, 100]));
    for (const scales of Object.values(PLAN_SCALES)) {
      expect(scales.map(({ ratio }) => ratio)).toEqual(
        scales.map(({ ratio }) => ratio).sort((a, b) => b - a),
      );
    }
  });
});
