import { describe, expect, test } from 'vitest';
import type { PieceAnalysis } from '../../../src-core/analysis';
import type { Level } from '../../../src-core/checks';
import { checkAnalysis, DEFAULT_LIMITS, worse } from '../../../src-core/checks';
import type { Job, JobDraft } from '../../../src-core/job';
import { readJob } from '../../../src-core/job';
import { movedJob } from '../../support/moved-job';
import { analyse } from '../../support/pieces';
import { randomJob } from '../../support/random-job';
import { seededRandom } from '../../support/seeded-random';

const MESH_IN = 2;
const NEAR_LIMIT = 0.05;

function read(draft: JobDraft): Job {
  const reading = readJob(draft);
  if (!reading.ok) throw new Error(reading.problems[0]!.sentence);
  return reading.job;
}

/** Worst rung of each check, leaving out those too near their limit for two meshes to agree on. */
function rungs(job: Job, analysis: PieceAnalysis): Map<string, Level> {
  const found = new Map<string, Level>();
  for (const check of checkAnalysis(job, analysis, DEFAULT_LIMITS)) {
    if (Math.abs(check.ratio - 1) > NEAR_LIMIT)
      found.set(check.id, worse(found.get(check.id) ?? 'holds', check.level));
  }
  return found;
}

function tryAnalyse(job: Job): PieceAnalysis | null {
  try {
    return analyse(job, { meshSizeIn: MESH_IN });
  } catch {
    return null;
  }
}

const AS_DRAWN = Array.from({ length: 12 }, (_, k) => {
  const job = read(randomJob(seededRandom(7001 + k)));
  return { job, first: tryAnalyse(job) };
});

describe('a job turned or mirrored on the drawing stands as it did', () => {
  test.each([
    { says: 'turned by 90 degrees', turnDeg: 90, mirror: false },
    { says: 'turned by 33 degrees and moved', turnDeg: 33, mirror: false },
    { says: 'mirrored', turnDeg: 0, mirror: true },
  ])('$says: same rungs, same weight, governing moments within a twentieth', ({ turnDeg, mirror }) => {
    let compared = 0;
    for (const { job, first } of AS_DRAWN) {
      const other = read(movedJob(job, { turnDeg, mirror, xIn: 17, yIn: -5 }));
      const second = tryAnalyse(other);
      expect(second === null).toBe(first === null);
      if (first === null || second === null) continue;
      compared++;
      expect(second.weight.totalLb).toBeCloseTo(first.weight.totalLb, 6);
      expect(second.stability.kind).toBe(first.stability.kind);
      for (const bound of ['low', 'high'] as const)
        for (const sense of ['sagging', 'hogging'] as const) {
          const a = first.elastic[bound][sense].momentLbfInPerIn;
          const b = second.elastic[bound][sense].momentLbfInPerIn;
          expect(Math.abs(a - b)).toBeLessThan(0.05 * Math.max(a, b) + 2);
        }
      const before = rungs(job, first);
      const after = rungs(other, second);
      for (const [id, level] of before)
        if (after.has(id)) expect(`${id} ${after.get(id)}`).toBe(`${id} ${level}`);
    }
    expect(compared).toBeGreaterThan(6);
  });
});
