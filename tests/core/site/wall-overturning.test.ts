import { describe, expect, test } from 'vitest';
import type { BracketSupport, Job } from '../../../src-core/job';
import { wallMoments } from '../../../src-core/site/wall-moments';
import { SMALL_MOMENT_LBF_IN_PER_IN, wallOverturningFinding } from '../../../src-core/site/wall-overturning';
import { analyse, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';
import { recompute, recomputeTolerance } from '../../support/recompute';

function finding(job: Job) {
  const found = wallOverturningFinding(job, [analyse(job, { meshSizeIn: 3 })]);
  for (const line of found?.workings ?? []) {
    if (line.formula === '') continue;
    expect(Math.abs(recompute(line) - Number(line.result))).toBeLessThanOrEqual(recomputeTolerance(line));
  }
  return found;
}

function row(rootXIn: readonly number[], faceYIn: number, more: Partial<BracketSupport> = {}) {
  return {
    kind: 'bracket' as const,
    id: 'arms',
    roots: rootXIn.map((xIn) => ({ xIn, yIn: faceYIn })),
    directionDeg: 270,
    reachIn: 10,
    seatWidthIn: 1.5,
    heelIn: 12,
    arm: { kind: 'tube' as const, widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 36_000 },
    backing: 'timber-stud' as const,
    fixing: { kind: 'rated' as const, ratedLoadLbf: 500, ratedAtIn: 10, ratedBy: 'maker' },
    ...more,
  };
}

/** 16 in of ledge tied to a wall 16 in long, `overhangIn` out, self weight alone: every reaction falls on one share of it. */
function shortLedge(
  build: 'stud' | 'block',
  thicknessIn: number,
  overhangIn: number,
  more: object = {},
): Job {
  return jobOf({
    corners: rectangle(16, overhangIn + 3.5),
    thicknessIn,
    loads: { spreadPsf: 0, roving: { setting: 'none' } },
    supports: [
      wallAlongX('wall', 0.25, 15.75, overhangIn + 1.75, 3.5, {
        build,
        hold: { kind: 'tied', spacingIn: 8 },
        ...more,
      }),
    ],
  });
}

describe('what the wall must resist', () => {
  test('a loose ledge, which only rests on its wall, is no finding', () => {
    expect(finding(LEDGE_E1())).toBeNull();
  });

  // Hand: 16 x 15.5 x 2 in at 145 pcf weighs 41.62 lb; its middle 7.75 in from the front, the wall's 13.75 in: 6 in, 249.7 lb-in on
  // 16 in. A 2x4 takes 875 x 1.5 x 3.0625 = 4020 lb-in.
  test('a ledge tied down 12 in out turns its 2x4 stud wall with its weight times 6 in, 249.7 lb-in', () => {
    const found = finding(shortLedge('stud', 2, 12));
    expect(found?.level).toBe('holds');
    expect(found?.demand).toMatchObject({ unit: 'lbf-in/in' });
    expect(found!.demand!.value * 16).toBeCloseTo(249.7, 0);
    expect(found!.capacity!.value * 16).toBeCloseTo(4019.5, 0);
    expect(found?.words).toContain('of the 4020 lbf-in that a 2x4 may bend with');
  });

  // Statics: whatever the brackets take, wall and brackets together must hold the moment of the weight about the wall's middle.
  test('brackets do not change what the wall must resist, only how it comes there', () => {
    const bare = shortLedge('stud', 2, 12);
    const bracketed = jobOf({
      ...bare.pieces[0]!,
      supports: [...bare.pieces[0]!.supports, row([4, 12], 12)],
    });
    expect(finding(bracketed)!.demand!.value).toBeCloseTo(finding(bare)!.demand!.value, 3);
  });

  // Hand: h inches of 16 x 39.5 in weigh 53.03 h lb, 18 in from the middle of the wall: 954.6 h lb-in on a stud; 4020 at 4.211 in.
  test('4.2 in of slab 36 in out are within what a 2x4 takes, with a caution; 4.22 in are for an engineer', () => {
    const within = finding(shortLedge('stud', 4.2, 36));
    expect(within?.level).toBe('holds');
    expect(within?.cautions.join()).toContain('a toe-nailed plate holds no moment');
    const beyond = finding(shortLedge('stud', 4.22, 36));
    expect(beyond?.level).toBe('engineer');
    expect(beyond?.words).toContain('local code or an engineer');
  });

  // Hand: 249.7 h / 2 lb-in on 16 in: 7.80 h lb-ft a foot; 20 at 2.563 in.
  test('a block wall takes a small moment, 2.5 in of slab 12 in out, and not that of 2.6 in', () => {
    expect(SMALL_MOMENT_LBF_IN_PER_IN).toBe(20);
    expect(finding(shortLedge('block', 2.5, 12))).toMatchObject({ level: 'holds' });
    expect(finding(shortLedge('block', 2.6, 12))).toMatchObject({ level: 'engineer' });
  });

  // Hand: 30 x 10 x 2 in and 50 psf, 154.5 lb on two arms, 77.26 lb each at 5 in from the face: 386.3 lb-in on one stud.
  test('on a wall that is not drawn each bracket puts its own moment about the face on one stud', () => {
    const job = jobOf({
      corners: rectangle(30, 10),
      thicknessIn: 2,
      loads: { spreadPsf: 50, roving: { setting: 'none' } },
      supports: [row([5, 25], 10)],
    });
    const [moment] = wallMoments(analyse(job, { meshSizeIn: 2.5 }));
    expect(moment!.shareLbfIn).toBeCloseTo(386.3, 0);
    expect(moment!.wall).toMatchObject({ build: 'stud', widthIn: null });
    expect(finding(job)?.level).toBe('holds');
    const onVeneer = jobOf({ ...job.pieces[0]!, supports: [row([5, 25], 10, { backing: 'brick-veneer' })] });
    expect(finding(onVeneer)).toMatchObject({ level: 'engineer' });
    expect(finding(onVeneer)?.words).toContain('brick veneer behind the brackets arms');
  });

  test('of two pieces the wall nearest to its limit is shown, and the other is counted', () => {
    const job = jobOf(shortLedge('stud', 2, 12).pieces[0]!);
    const light = analyse(job, { meshSizeIn: 3 });
    const heavy = analyse(shortLedge('stud', 4.3, 36), { meshSizeIn: 3 });
    const found = wallOverturningFinding(job, [light, heavy]);
    expect(found?.level).toBe('engineer');
    expect(found?.cautions.at(-1)).toContain('2 walls carry brackets or ties');
  });
});
