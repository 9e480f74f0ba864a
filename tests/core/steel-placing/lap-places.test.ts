import { describe, expect, test } from 'vitest';
import { lapPlaces } from '../../../src-core/steel-placing';
import { seededRandom } from '../../support/seeded-random';

const PLAIN = { peaks: [], fullFrom: 'start' } as const;
const at = (xIn: number, words = 'peak') => ({ fromIn: xIn, toIn: xIn, words });

describe('laps along a line', () => {
  test('a line no longer than a sheet has none', () => {
    const places = lapPlaces({ ...PLAIN, spanIn: 96, mostIn: 96, lapIn: 6 });
    expect(places.lengths).toEqual([{ fromIn: 0, toIn: 96 }]);
    expect(places.laps).toEqual([]);
  });

  test('118 in of 96 in sheets with a 6 in lap is a full sheet and one of 28 in', () => {
    const { lengths } = lapPlaces({ ...PLAIN, spanIn: 118, mostIn: 96, lapIn: 6 });
    expect(lengths).toEqual([
      { fromIn: 0, toIn: 96 },
      { fromIn: 90, toIn: 118 },
    ]);
  });

  test('from the other end the full sheet comes last', () => {
    const { lengths } = lapPlaces({ ...PLAIN, fullFrom: 'end', spanIn: 118, mostIn: 96, lapIn: 6 });
    expect(lengths.map(({ fromIn, toIn }) => toIn - fromIn)).toEqual([28, 96]);
  });

  test('a lap moves off a peak at 93 in, by the 6 in that are worth seeking and no more', () => {
    const [lap] = lapPlaces({ ...PLAIN, spanIn: 118, mostIn: 96, lapIn: 6, peaks: [at(93)] }).laps;
    expect(lap!.atIn + 6).toBe(87);
    expect(lap!.clearIn).toBe(6);
    expect(lap!.nearestPeak).toBe('peak');
  });

  test('between peaks 15 in apart a 5 in lap lies midway, 5 in from both', () => {
    const peaks = Array.from({ length: 9 }, (_, k) => at(15 * k));
    const [lap] = lapPlaces({ ...PLAIN, spanIn: 120, mostIn: 96, lapIn: 5, peaks }).laps;
    expect(lap!.clearIn).toBe(5);
    expect((lap!.atIn - 5) % 15).toBe(0);
  });

  test('where two sheets just reach and their lap would lie over a support, a third sheet clears it', () => {
    const line = {
      ...PLAIN,
      spanIn: 185,
      mostIn: 96,
      lapIn: 6,
      peaks: [{ fromIn: 90, toIn: 95, words: 'over a wall' }],
    };
    const places = lapPlaces(line);
    expect(places.lengths).toHaveLength(3);
    for (const { clearIn } of places.laps) expect(clearIn).toBeGreaterThanOrEqual(0);
    expect(lapPlaces({ ...line, peaks: [] }).lengths).toHaveLength(2);
  });

  test('a lap that no place clears says by how much it lies over the peak', () => {
    const everywhere = { fromIn: -10, toIn: 200, words: 'over a bed' };
    const [lap] = lapPlaces({ ...PLAIN, spanIn: 118, mostIn: 96, lapIn: 6, peaks: [everywhere] }).laps;
    expect(lap!.clearIn).toBeLessThan(0);
  });

  test('sheets too short to lap are said to be, and the line is left whole', () => {
    const places = lapPlaces({ ...PLAIN, spanIn: 50, mostIn: 20, lapIn: 12 });
    expect(places.isTooLong).toBe(true);
    expect(places.lengths).toHaveLength(1);
  });

  test('300 random lines are covered by lengths within the stock, each lap as long as asked', () => {
    const random = seededRandom(11);
    for (let k = 0; k < 300; k++) {
      const lapIn = 6 + 14 * random();
      const mostIn = 3 * lapIn + 200 * random();
      const spanIn = 20 + 600 * random();
      const peaks = Array.from({ length: Math.floor(6 * random()) }, () => at(spanIn * random()));
      const { lengths, laps } = lapPlaces({
        spanIn,
        mostIn,
        lapIn,
        peaks,
        fullFrom: k % 2 ? 'start' : 'end',
      });
      expect(lengths[0]!.fromIn).toBe(0);
      expect(lengths.at(-1)!.toIn).toBe(spanIn);
      expect(laps).toHaveLength(lengths.length - 1);
      lengths.forEach(({ fromIn, toIn }, i) => {
        expect(toIn - fromIn).toBeLessThanOrEqual(mostIn + 1e-6);
        if (i > 0) expect(lengths[i - 1]!.toIn - fromIn).toBeCloseTo(lapIn, 6);
      });
      const fewest = spanIn <= mostIn ? 1 : Math.ceil((spanIn - lapIn) / (mostIn - lapIn) - 1e-9);
      expect(lengths.length - fewest).toBeLessThanOrEqual(1);
      expect(lengths.length).toBeGreaterThanOrEqual(fewest);
    }
  });

  test('of two lengths no place on the whole inches beats the one chosen', () => {
    const random = seededRandom(3);
    for (let k = 0; k < 100; k++) {
      const peaks = Array.from({ length: 1 + Math.floor(8 * random()) }, () => at(140 * random()));
      const places = lapPlaces({ ...PLAIN, spanIn: 140, mostIn: 96, lapIn: 6, peaks });
      if (places.lengths.length !== 2) continue;
      const clear = (xIn: number) =>
        Math.min(...peaks.map((p) => Math.max(p.fromIn - xIn - 6, xIn - p.toIn)));
      let best = Number.NEGATIVE_INFINITY;
      for (let xIn = 44; xIn <= 90; xIn++) best = Math.max(best, Math.min(6, clear(xIn)));
      expect(Math.min(6, places.laps[0]!.clearIn!)).toBeGreaterThanOrEqual(best - 1e-9);
    }
  });
});
