import { describe, expect, test } from 'vitest';
import { layOutSupports } from '../../../src-core/analysis';
import { checkPiece, DEFAULT_LIMITS } from '../../../src-core/checks';
import type { Job } from '../../../src-core/job';
import type { HeightLimits } from '../../../src-core/sequence';
import { heightLimits } from '../../../src-core/sequence';
import { rectangle } from '../../support/pieces';
import { counterJob, lateCabinet, prop } from './swap-jobs';

const DAY = 28;
const NO_RAILS = { frontRail: false, backRail: false };

/** A 72 in counter on panels as walls, so that one panel can be raised in a job file. */
function onPanels(xsIn: readonly number[], thicknessIn = 1.5): Job {
  return counterJob({
    corners: rectangle(72, 24),
    thicknessIn,
    supports: xsIn.map((xIn, i) => ({
      kind: 'wall' as const,
      build: 'stud' as const,
      id: `panel-${i + 1}`,
      from: { xIn, yIn: 0 },
      to: { xIn, yIn: 24 },
      widthIn: 0.75,
      stiffness: { low: 1_000, high: 20_000 },
    })),
  });
}

function limitsOf(
  job: Job,
  supportId: string,
  standing = job.pieces[0]!.supports.map(({ id }) => id),
): HeightLimits[] {
  const laidOut = layOutSupports(job, job.pieces[0]!, null);
  if (!laidOut.ok) throw new Error(laidOut.cannot.sentence);
  return heightLimits(laidOut.sets, { day: DAY, standing }, [supportId]);
}

/** Cracking ratio of a full check of its own mesh, with one support raised or short, under the working load. */
function freshRatio(job: Job, supportId: string, change: { raisedIn?: number; gapIn?: number }): number {
  const piece = job.pieces[0]!;
  const supports = piece.supports.map((support) => ({
    ...support,
    firstDay: 0,
    lastDay: 60,
    ...(support.id === supportId ? change : {}),
  }));
  const changed = { ...job, pieces: [{ ...piece, supports }] };
  const { checks } = checkPiece(changed, changed.pieces[0]!, { day: DAY, meshSizeIn: null }, DEFAULT_LIMITS);
  return checks.find(({ id }) => id === 'bending-plain')!.ratio;
}

describe('a panel in the middle of three', () => {
  const job = onPanels([0.5, 36, 71.5]);
  const [limits] = limitsOf(job, 'panel-2') as [HeightLimits];

  test('raised by the printed amount the slab stands at its cracking limit, within 2 %', () => {
    expect(limits.crackingRatio).toBeLessThan(1);
    expect(limits.raise.limitIn).toBeGreaterThan(0.005);
    const ratio = freshRatio(job, 'panel-2', { raisedIn: Number(limits.raise.limitIn!.toFixed(4)) });
    expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
  });

  test('the lower 64th is on the safe side of it, and the next one beyond', () => {
    const sixtyFourths = limits.raise.sixtyFourths!;
    expect(sixtyFourths).toBe(Math.floor(limits.raise.limitIn! * 64));
    expect(freshRatio(job, 'panel-2', { raisedIn: sixtyFourths / 64 })).toBeLessThan(1.01);
    expect(freshRatio(job, 'panel-2', { raisedIn: (sixtyFourths + 1) / 64 })).toBeGreaterThan(1);
  });

  test('short by the gap found the slab stands at its cracking limit, within 2 %', () => {
    expect(limits.gap.limitIn).not.toBeNull();
    expect(Math.abs(freshRatio(job, 'panel-2', { gapIn: limits.gap.limitIn! }) - 1)).toBeLessThan(0.02);
  });
});

describe('limits that are not reached', () => {
  test('a 3 in slab spans without its middle panel, and raised there it leaves its ends before it cracks', () => {
    const job = onPanels([0.5, 36, 71.5], 3);
    const [limits] = limitsOf(job, 'panel-2') as [HeightLimits];
    expect(limits.gap).toEqual({ limitIn: null, sixtyFourths: null });
    expect(limits.raise).toEqual({ limitIn: null, sixtyFourths: null });
    expect(freshRatio(job, 'panel-2', { raisedIn: 1 })).toBeLessThan(1);
  });

  test('a slab that cracks as it is has no room at all', () => {
    const job = onPanels([0.5, 71.5], 1);
    const [limits] = limitsOf(job, 'panel-1') as [HeightLimits];
    expect(limits.crackingRatio).toBeGreaterThan(1);
    expect(limits.raise).toEqual({ limitIn: 0, sixtyFourths: 0 });
    expect(limits.gap).toEqual({ limitIn: 0, sixtyFourths: 0 });
  });

  test('a support that does not stand then, or is not there, has none', () => {
    const job = onPanels([0.5, 36, 71.5]);
    expect(limitsOf(job, 'panel-2', ['panel-1', 'panel-3'])).toEqual([]);
    expect(limitsOf(job, 'nothing')).toEqual([]);
  });
});

describe('a cabinet', () => {
  // Panels of a cabinet 36 in wide without rails, set where the walls above stand.
  const cabinetJob = counterJob({
    corners: rectangle(72, 24),
    thicknessIn: 1.5,
    supports: [
      lateCabinet('cab', { xIn: 35.625, yIn: 0 }, 36.25, NO_RAILS),
      prop('front', 1, 2, { lastDay: null, firstDay: 0 }),
      prop('back', 1, 22, { lastDay: null, firstDay: 0 }),
    ],
  });
  const wallJob = counterJob({
    corners: rectangle(72, 24),
    thicknessIn: 1.5,
    supports: [
      ...onPanels([36, 71.5]).pieces[0]!.supports,
      prop('front', 1, 2, { lastDay: null, firstDay: 0 }),
      prop('back', 1, 22, { lastDay: null, firstDay: 0 }),
    ],
  });
  const [whole, left, right] = limitsOf(cabinetJob, 'cab') as [HeightLimits, HeightLimits, HeightLimits];

  test('has a limit for all its feet and for each side alone', () => {
    expect([whole, left, right].map(({ part }) => part)).toEqual(['whole', 'left-side', 'right-side']);
    expect(left.words).toContain('left side of cab alone');
  });

  test('raised at its left side alone is a panel raised there, within 2 %', () => {
    const [panel] = limitsOf(wallJob, 'panel-1') as [HeightLimits];
    expect(Math.abs(left.raise.limitIn! / panel.raise.limitIn! - 1)).toBeLessThan(0.02);
  });

  test('raised whole by the printed amount brings a fresh check to 1.00 within 2 %', () => {
    const { limitIn } = whole.raise;
    if (limitIn === null) {
      expect(freshRatio(cabinetJob, 'cab', { raisedIn: 1 })).toBeLessThan(1);
      return;
    }
    expect(Math.abs(freshRatio(cabinetJob, 'cab', { raisedIn: limitIn }) - 1)).toBeLessThan(0.02);
  });
});
