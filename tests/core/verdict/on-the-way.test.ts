import { describe, expect, test } from 'vitest';
import { checkPiece, DEFAULT_LIMITS, governingCheck } from '../../../src-core/checks';
import type { Job } from '../../../src-core/job';
import { daysOnTheWay, jobResult, lookAtPiece } from '../../../src-core/verdict';
import { worstOnTheWay } from '../../../src-core/verdict/on-the-way';
import { jobOf, rectangle } from '../../support/pieces';

/** A wall under the plank at `xIn` from its first to its last day; for good where no last day is given. */
const wall = (id: string, xIn: number, firstDay = 0, lastDay: number | null = null) => ({
  kind: 'wall' as const,
  build: 'block' as const,
  id,
  from: { xIn, yIn: 0 },
  to: { xIn, yIn: 20 },
  widthIn: 1.5,
  firstDay,
  lastDay,
});

/** A plank 2 in thick, poured on day 10, on a wall at each end and what is given between. */
const plank = (spanIn: number, ...between: readonly ReturnType<typeof wall>[]): Job =>
  jobOf({
    corners: rectangle(spanIn, 20),
    thicknessIn: 2,
    pourDay: 10,
    supports: [wall('left', 1), wall('right', spanIn - 1), ...between],
  });

const worstOf = (job: Job) => worstOnTheWay(job, job.pieces[0]!, DEFAULT_LIMITS);

describe('the days on the way', () => {
  test('are the seventh after the pour, the first day of what comes after it and the day after what goes', () => {
    // no earlier strip than 7 days: common practice beside ACI 347
    expect(daysOnTheWay(plank(60).pieces[0]!)).toEqual([17]);
    const changing = plank(60, wall('prop', 30, 0, 20), wall('cabinet', 30, 31), wall('gone', 20, 0, 8));
    expect(daysOnTheWay(changing.pieces[0]!)).toEqual([17, 21, 31]);
  });
});

describe('the worst moment on the way', () => {
  test('is the day on which a prop is gone and the cabinet is not there yet, not the first nor the last', () => {
    const gap = plank(80, wall('prop', 40, 0, 20), wall('cabinet', 40, 31));
    expect(worstOf(gap)).toMatchObject({ day: 21, level: 'change' });
    const neverAgain = plank(80, wall('prop', 40, 0, 30), wall('second', 32, 0, 20));
    expect(worstOf(neverAgain)).toMatchObject({ day: 31, level: 'change' });
  });

  test('is the fullest of days that all hold, looked at on the piece’s own mesh where it comes near a limit', () => {
    const job = plank(60, wall('prop', 30, 0, 20), wall('cabinet', 30, 31));
    const worst = worstOf(job);
    expect(worst).toMatchObject({ day: 21, level: 'holds' });
    const { checks } = checkPiece(job, job.pieces[0]!, { day: 21, meshSizeIn: null }, DEFAULT_LIMITS);
    expect(worst!.ratio).toBeGreaterThan(0.95);
    expect(worst!.ratio).toBe(governingCheck(checks)?.ratio);
  });
});

describe('the verdict of the job', () => {
  const job = plank(30);
  const looked = lookAtPiece(job, job.pieces[0]!);
  const moment = { day: 21, level: 'change' as const, ratio: 1.2, words: 'A prop is gone.' };

  test('holds where every piece, every moment on the way and the site do', () => {
    const result = jobResult(job, null, [looked]);
    expect(result.verdict).toEqual({ level: 'holds', words: 'Every piece holds.' });
    expect(result.needsAttention).toBe(false);
  });

  test('is no better than the worst moment on the way', () => {
    const result = jobResult(job, null, [{ ...looked, result: { ...looked.result, worstOnTheWay: moment } }]);
    expect(result.verdict.level).toBe('change');
    expect(result.verdict.words).toContain('a moment on the way needs attention');
    expect(result.needsAttention).toBe(true);
  });

  test('is no better than the site', () => {
    // NFPA 211, from memory: 36 in to an unlisted solid-fuel stove
    const nearFire = { ...job, site: { ...job.site, combustiblesAtIn: 35 } };
    const result = jobResult(nearFire, null, [looked]);
    expect(result.verdict.level).toBe('engineer');
    expect(result.verdict.words).toContain('the site needs attention');
    expect(result.needsAttention).toBe(true);
  });
});
