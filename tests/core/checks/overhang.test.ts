import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { overhang, ruleOfThumbOverhang } from '../../../src-core/checks/overhang';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';

/** 24 in long, tied on a wall 8 in wide at its back. */
function ledge(overhangIn: number, more: object[] = []): Job {
  return jobOf({
    corners: rectangle(24, overhangIn + 8),
    thicknessIn: 2,
    supports: [
      wallAlongX('wall', 0, 24, overhangIn + 4, 8, { hold: { kind: 'tied', ratingLbf: 2000 } }),
      ...more,
    ] as never,
  });
}

function arms(reachIn: number, wallFaceYIn: number): object {
  return {
    kind: 'bracket',
    id: 'arms',
    roots: [
      { xIn: 4, yIn: wallFaceYIn },
      { xIn: 20, yIn: wallFaceYIn },
    ],
    directionDeg: 270,
    reachIn,
    seatWidthIn: 2,
    heelIn: 8,
    arm: { kind: 'tube', widthIn: 2, depthIn: 2, wallIn: 0.125, yieldPsi: 46_000 },
    backing: 'timber-stud',
    fixing: { kind: 'rated', ratedLoadLbf: 500, ratedAtIn: 8, ratedBy: 'maker' },
  };
}

describe('overhang', () => {
  // Hand: 17.5 in deep, wall from 11 to 16.5 in: 11 in out; 11 / 16 = .6875.
  test('the ledge E1 reaches 11 in past its wall, .69 of the 16 in decided without brackets', () => {
    const [check] = runCheckCase(overhang, {
      says: 'E1',
      job: LEDGE_E1(),
      meshSizeIn: 3,
      level: 'holds',
      ratio: { near: 11 / 16, within: 1e-6 },
    });
    expect(check?.words).toContain('11 in, within the 16 in');
    // A third of 17.5 in is 5-13/16 in: common practice, no source.
    expect(check?.cautions[0]).toContain('rule of 5-13/16 in');
  });

  test('15-15/16 in without brackets is decided here, 16-1/16 in is for an engineer', () => {
    const at = (overhangIn: number, level: 'holds' | 'engineer') =>
      runCheckCase(overhang, {
        says: `${overhangIn} in`,
        job: ledge(overhangIn),
        meshSizeIn: 3,
        level,
        ratio: { near: overhangIn / 16, within: 1e-6 },
      });
    at(15.9375, 'holds');
    expect(at(16.0625, 'engineer')[0]?.words).toContain('16-1/16 in, more than the 16 in');
  });

  test('with brackets 15 in long 23 in out is decided here, 24-1/2 in is for an engineer', () => {
    const at = (overhangIn: number, level: 'holds' | 'engineer') =>
      runCheckCase(overhang, {
        says: `${overhangIn} in bracketed`,
        job: ledge(overhangIn, [arms(15, overhangIn)]),
        meshSizeIn: 3,
        level,
        ratio: { near: overhangIn / 24, within: 1e-6 },
      });
    at(23, 'holds');
    expect(at(24.5, 'engineer')[0]?.words).toContain('past its brackets');
  });

  test('arms that reach 16-1/2 in are for an engineer however short the overhang past them', () => {
    const [check] = runCheckCase(overhang, {
      says: 'long arms',
      job: ledge(18, [arms(16.5, 18)]),
      meshSizeIn: 3,
      level: 'engineer',
      ratio: { near: 16.5 / 16, within: 1e-6 },
    });
    expect(check?.where).toMatchObject({ kind: 'support', supportId: 'arms' });
  });

  test("the trade's rule is a third of the depth up to 10 in, a hint and never a check", () => {
    expect(ruleOfThumbOverhang({ depth: 24, share: 1 / 3, most: 10 }).value).toBe(8);
    expect(ruleOfThumbOverhang({ depth: 36, share: 1 / 3, most: 10 }).value).toBe(10);
  });

  // Edge of validity: nothing overhangs.
  test('a slab bedded all over has no overhang to check', () => {
    const job = jobOf({
      corners: rectangle(20, 20),
      thicknessIn: 2,
      supports: [{ kind: 'full-bed', id: 'bed' }],
    });
    expect(overhang.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS })).toEqual(
      [],
    );
  });
});
