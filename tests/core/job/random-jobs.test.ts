import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SupportKind } from '../../../src-core/job';
import { pieceRegion, readJob } from '../../../src-core/job';
import { polygonAreaIn2, signedAreaIn2 } from '../../../src-core/outline';
import { jobArbitrary, randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';

describe('random jobs', () => {
  test('are read without problems, and every piece can be drawn counter-clockwise', () => {
    fc.assert(
      fc.property(jobArbitrary, ({ job }) => {
        const reading = readJob(job);
        if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
        for (const piece of reading.job.pieces) {
          const region = pieceRegion(piece);
          if (!region.ok) throw new Error(JSON.stringify(region.problems));
          expect(signedAreaIn2(region.outer)).toBeGreaterThan(100);
          expect(region.edgeOfPoint).toHaveLength(region.outer.length);
          const openingsIn2 = region.holes.reduce((sum, hole) => sum + polygonAreaIn2(hole), 0);
          expect(openingsIn2).toBeLessThan(polygonAreaIn2(region.outer));
        }
      }),
      { numRuns: 400, seed: 20270426 },
    );
  });

  test('cover every kind of support, cutout, steel and outline', () => {
    const kinds = new Set<string>();
    for (let seed = 0; seed < 200; seed++) {
      for (const piece of randomJob(seededRandom(seed), 2).pieces) {
        kinds.add(`${piece.corners.length} corners`);
        for (const support of piece.supports ?? [])
          kinds.add(support.kind).add(support.hold?.kind ?? 'resting');
        for (const cutout of piece.cutouts ?? []) kinds.add(cutout.shape.kind);
        for (const steel of piece.reinforcement ?? []) kinds.add(steel.kind);
      }
    }
    const supports: SupportKind[] = ['cabinet', 'wall', 'ledger', 'pier', 'leg', 'bracket', 'full-bed'];
    const rest = [
      'resting',
      'tied',
      'rectangle',
      'circle',
      'polygon',
      'mesh',
      'bars',
      'fibre',
      '4 corners',
      '6 corners',
    ];
    expect([...kinds].sort()).toEqual([...supports, ...rest].sort());
  });

  test('are the same for the same seed', () => {
    expect(randomJob(seededRandom(5), 2)).toEqual(randomJob(seededRandom(5), 2));
  });
});
