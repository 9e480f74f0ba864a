import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { factoredTie, tieForce, tieRatio, tieTotal } from '../../../src-core/checks/tie-force';
import type { Job } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';

/** E1 tied at 16 in on the middle of its wall. */
function tiedLedge(ratingLbf: number | null, loads: object = {}): Job {
  return jobOf({
    use: 'bar-ledge',
    corners: rectangle(96, 17.5),
    thicknessIn: 1.5,
    loads,
    supports: [wallAlongX('wall', 0, 96, 13.75, 5.5, { hold: { kind: 'tied', spacingIn: 16, ratingLbf } })],
  });
}

const UNLOADED = { roving: { setting: 'none' as const }, spreadPsf: 0 };

function wantedLbf(job: Job): number {
  return tieForce.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS })[0]!.demand
    .value;
}

describe('pull on the ties', () => {
  // Derived.
  test('basis 2.2: ties 5 in behind the pivot must pull 276 lb for a factor of 1.5', () => {
    expect(Math.abs(tieTotal({ FS: 1.5, Mo: 1500, Mr: 870, z: 5 }).value - 276)).toBeLessThan(276 * 0.005);
  });

  test('the engine’s pull counts with its factor of 1.5, the hand’s as it is, and the larger of both decides', () => {
    expect(factoredTie.compute({ T: 100, FS: 1.5 })).toBe(150);
    expect(tieRatio.compute({ Te: 300, Th: 200, rating: 250 })).toBeCloseTo(1.2, 9);
    expect(tieRatio.compute({ Te: 200, Th: 300, rating: 250 })).toBeCloseTo(1.2, 9);
  });

  test('a tie rated for nothing holds nothing', () => {
    const [check] = runCheckCase(tieForce, {
      says: 'rated 0',
      job: tiedLedge(0),
      meshSizeIn: 3,
      level: 'change',
      ratio: { from: 2, to: 10 },
    });
    expect(check?.needs).toEqual(['tie']);
  });

  // Hand: 211.46 lb 2.25 in past the wall, ties 2.75 in behind its face: no fewer than 475.8 / 2.75 = 173 lbf in service for
  // seven ties (no more than 16 in apart), and 1.5 times that by hand.
  test('without a person seven ties share the 173 lbf that keep E1 from tipping by itself', () => {
    const job = tiedLedge(200, UNLOADED);
    const analysis = analyse(job, { meshSizeIn: 3 });
    const self = analysis.elastic.high.cases[0]!;
    expect(self.reactions[0]!.tieLbf).toBeGreaterThan(173);
    expect(self.reactions[0]!.tieLbf).toBeLessThan(173 * 1.5);
    const [check] = runCheckCase(tieForce, {
      says: 'E1 tied',
      job,
      meshSizeIn: 3,
      level: 'holds',
      ratio: { from: (1.5 * 173) / 7 / 200, to: 0.75 },
    });
    const hand = check?.workings.find(({ symbol }) => symbol === 'Tall')?.value ?? Number.NaN;
    expect(Math.abs(hand - (1.5 * 475.78) / 2.75)).toBeLessThan(0.1);
    expect(check?.words).toContain('7 ties at 16 in');
  });

  test('a tie just strong enough passes, one a hundredth weaker does not', () => {
    const wanted = wantedLbf(tiedLedge(1000));
    runCheckCase(tieForce, {
      says: 'just enough',
      job: tiedLedge(wanted * 1.005),
      meshSizeIn: 3,
      level: 'holds',
      ratio: { near: 1 / 1.005, within: 1e-6 },
    });
    const [check] = runCheckCase(tieForce, {
      says: 'too weak',
      job: tiedLedge(wanted * 0.995),
      meshSizeIn: 3,
      level: 'change',
      ratio: { near: 1 / 0.995, within: 1e-6 },
    });
    expect(check?.needs).toEqual(['tie']);
    expect(check?.words).toContain('set them closer or take a stronger one');
  });

  test('a tie without a rating asks for one, and says how strong', () => {
    const wanted = Math.round(wantedLbf(tiedLedge(1000)));
    const [check] = runCheckCase(tieForce, {
      says: 'no rating',
      job: tiedLedge(null),
      meshSizeIn: 3,
      level: 'change',
      ratio: { from: 0, to: 0 },
    });
    expect(check?.words).toBe(
      `Ask for ties at stud wall wall that are rated for ${wanted} lbf each in pull; the job states no rating.`,
    );
    expect(check?.cautions[0]).toContain('Adhesive, mortar and grout are never counted');
  });

  // Edge of validity: tied, but nothing pulls.
  test('ties of a slab that cannot lift have nothing to do, rated or not', () => {
    const job = jobOf({
      corners: rectangle(24, 12),
      thicknessIn: 2,
      loads: UNLOADED,
      supports: [wallAlongX('wall', 0, 24, 6, 12, { hold: { kind: 'tied', ratingLbf: null } })],
    });
    const [check] = runCheckCase(tieForce, {
      says: 'idle ties',
      job,
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0, to: 0 },
    });
    expect(check?.words).toContain('No load pulls on the ties');
  });

  test('a loose ledge has no ties to check', () => {
    const job = LEDGE_E1();
    expect(tieForce.run({ job, analysis: analyse(job, { meshSizeIn: 3 }), limits: DEFAULT_LIMITS })).toEqual(
      [],
    );
  });
});
