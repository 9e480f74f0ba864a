import { describe, expect, test } from 'vitest';
import { DEFAULT_LIMITS } from '../../../src-core/checks';
import { punchingShear } from '../../../src-core/checks/punching-shear';
import type { Job, JobDraft } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, rectangle } from '../../support/pieces';
import { lightMesh } from './plank';

type PieceDraft = JobDraft['pieces'][number];

/** 40 by 24 in on four legs, 8 in from the ends and 6 in from front and back; f'c 4000. */
function onLegs(headIn: number, piece: Partial<PieceDraft> = {}): Job {
  return jobOf(
    {
      use: 'other',
      corners: rectangle(40, 24),
      thicknessIn: 2,
      loads: { roving: { setting: 'none' }, spreadPsf: 50 },
      supports: [
        [8, 6],
        [32, 6],
        [8, 18],
        [32, 18],
      ].map(([xIn, yIn], i) => ({
        kind: 'leg' as const,
        id: `leg-${i + 1}`,
        centre: { xIn: xIn!, yIn: yIn! },
        widthIn: headIn,
        depthIn: headIn,
      })),
      ...piece,
    },
    { mixes: [{ id: 'mix', name: 'Mix', strengthPsi: 4000, strengthFrom: 'tested' }] },
  );
}

/** Legs with heads of 2 by 2 in. */
const legsAt = (...centres: readonly (readonly [number, number])[]) =>
  centres.map(([xIn, yIn], i) => ({
    kind: 'leg' as const,
    id: `leg-${i + 1}`,
    centre: { xIn, yIn },
    widthIn: 2,
    depthIn: 2,
  }));

const own = (forceLbf: number, widthIn = 2, depthIn = 2): Partial<PieceDraft> => ({
  loads: { roving: { setting: 'own', forceLbf, widthIn, depthIn, source: '' }, spreadPsf: 0 },
});

const checksOf = (job: Job) =>
  punchingShear.run({ job, analysis: analyse(job, { meshSizeIn: 2 }), limits: DEFAULT_LIMITS });

describe('punching through', () => {
  test('a 2 in leg head in the middle of a 2 in slab carries 3238 lb', () => {
    // basis 3.10: bo = 4 (2 + 2) = 16; 0.6 * 2 * 4/3 * sqrt(4000) * 16 * 2 = 3238 lbf
    // weight 161.1 lb / 4 = 40.3, spread 333.3 / 4 = 83.3; Vu = 1.2 * 40.3 + 1.6 * 83.3 = 181.7; ratio 0.0561
    const checks = runCheckCase(punchingShear, {
      says: 'legs',
      job: onLegs(2),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 0.0561, within: 0.01 },
    });
    expect(checks).toHaveLength(4);
    expect(Math.abs(checks[0]!.capacity.value / 3238 - 1)).toBeLessThan(0.001);
    expect(checks[0]!.where).toMatchObject({ kind: 'support' });
    expect(checks[0]!.workings.filter(({ symbol }) => symbol === 'R')).toHaveLength(2);
  });

  test('just inside, 740 lb on 2 by 2 in at a free corner holds, and just outside, 780 lb punches through', () => {
    // corner: bo = 2 (2 + 1) = 6; 0.6 * 2 * 4/3 * sqrt(4000) * 6 * 2 = 1214 lbf; 1.6 * 740 / 1214 = 0.975; 780: 1.028
    runCheckCase(punchingShear, {
      says: '740 lb',
      job: onLegs(2, own(740)),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 0.975, within: 0.002 },
    });
    const [check] = runCheckCase(punchingShear, {
      says: '780 lb',
      job: onLegs(2, own(780)),
      meshSizeIn: 2,
      level: 'change',
      ratio: { near: 1.028, within: 0.002 },
    });
    expect(check!.words).toContain('at a corner');
    expect(check!.needs).toEqual(['thickness', 'support']);
  });

  test('a long thin patch counts less for its perimeter: 4 by 1 in takes 1.5 instead of 2', () => {
    // beta 4: min(1 + 2 / 4, 2) = 1.5; corner bo = (4 + 1) + (1 + 1) = 7; 0.6 * 1.5 * 4/3 * 63.25 * 7 * 2 = 1063 lbf
    const [check] = checksOf(onLegs(2, own(100, 4, 1)));
    expect(check!.capacity.value).toBeCloseTo(1063, 0);
  });

  test('with bars both ways over its leg a 3 in slab carries 9490 lb on 4 by 4 in', () => {
    // basis 4.9: mean depth 2.0625 in: bo 24.25; 4 sqrt(4000) * 24.25 * 2.0625 = 12 653; phi 0.75: 9490 lbf
    const top = (id: string, depthIn: number, angleDeg: number) => ({
      kind: 'bars' as const,
      id,
      barIn: 0.375,
      areaIn2: 0.11,
      spacingIn: 6,
      depthIn,
      angleDeg,
    });
    const job = onLegs(4, {
      corners: rectangle(80, 48),
      thicknessIn: 3,
      reinforcement: [top('along', 0.75, 0), top('across', 1.125, 90)],
      supports: [
        [16, 12],
        [64, 12],
        [16, 36],
        [64, 36],
      ].map(([xIn, yIn], i) => ({
        kind: 'leg' as const,
        id: `leg-${i + 1}`,
        centre: { xIn: xIn!, yIn: yIn! },
        widthIn: 4,
        depthIn: 4,
      })),
    });
    const [check] = checksOf(job);
    // plain concrete alone would do for this load, so the slab does not stand because of its steel
    expect(check?.level).toBe('holds');
    expect(Math.abs(check!.capacity.value / 9490 - 1)).toBeLessThan(0.002);
  });

  test('over a leg where it has cracked the slab counts by its mesh, although plain concrete would carry more', () => {
    // mean depth (1 + 0.8365) / 2 = 0.918 in from the underside: bo = 4 (2 + 0.918) = 11.67;
    // 4 sqrt(4000) * 11.67 * 0.918 * 0.75 = 2034 lbf (ACI 318-19 22.6.5.2); plain 3238 lbf (basis 3.10)
    const [check] = checksOf(
      onLegs(2, {
        corners: rectangle(64, 40),
        loads: { roving: { setting: 'none' }, spreadPsf: 100 },
        reinforcement: [lightMesh(1)],
        supports: legsAt([16, 10], [48, 10], [16, 30], [48, 30]),
      }),
    );
    expect(check!.level).toBe('steel');
    expect(Math.abs(check!.capacity.value / 2034 - 1)).toBeLessThan(0.002);
  });

  test('each head is judged under its greatest push of all states: the middle legs take more once the spans have cracked', () => {
    // Over three rows of legs, with mesh in the top alone, the spans crack underneath and hang on the middle row.
    const checks = checksOf(
      onLegs(2, {
        corners: rectangle(98, 16),
        loads: { roving: { setting: 'none' }, spreadPsf: 150 },
        reinforcement: [lightMesh(0.5)],
        supports: legsAt([5, 4], [5, 12], [49, 4], [49, 12], [93, 4], [93, 12]),
      }),
    );
    expect(checks).toHaveLength(6);
    const governing = checks.map(({ workings }) => {
      const pushes = workings.filter(({ symbol }) => symbol === 'R');
      expect(pushes).toHaveLength(4);
      const most = pushes.reduce((a, b) => (b.value > a.value ? b : a));
      const service = workings
        .find(({ symbol }) => symbol === 'Vu')
        ?.inputs.find(({ symbol }) => symbol === 'S');
      expect(Number(service?.printed)).toBeCloseTo(most.value, 3);
      return most.label.includes('after cracking');
    });
    expect(governing).toEqual([false, false, true, true, false, false]);
  });

  test('a slab on walls with nothing roving has no patch to punch, and is not asked', () => {
    const job = jobOf({
      corners: rectangle(20, 20),
      thicknessIn: 2,
      loads: { roving: { setting: 'none' } },
      supports: [{ kind: 'full-bed', id: 'bed' }],
    });
    expect(checksOf(job)).toEqual([]);
  });

  test('an arm punches on what the slab covers of it, along its own direction', () => {
    const job = jobOf({
      use: 'bar-ledge',
      corners: rectangle(64, 14),
      thicknessIn: 2,
      loads: { roving: { setting: 'none' }, spreadPsf: 50 },
      supports: [
        {
          kind: 'bracket',
          id: 'arms',
          roots: [8, 24, 40, 56].map((xIn) => ({ xIn, yIn: 14 })),
          directionDeg: -90,
          reachIn: 11,
          seatWidthIn: 1.5,
          heelIn: 10,
          arm: { kind: 'tube', widthIn: 1.5, depthIn: 1.5, wallIn: 0.12, yieldPsi: 46_000 },
          backing: 'timber-stud',
          fixing: { kind: 'rated', ratedLoadLbf: 400, ratedAtIn: 8, ratedBy: 'the maker' },
        },
      ],
    });
    const checks = checksOf(job);
    expect(checks).toHaveLength(1);
    expect(checks[0]!.words).toContain('11 in by 1-1/2 in');
    // beta 11 / 1.5 = 7.33: 1 + 2 / 7.33 = 1.273
    const strength = checks[0]!.workings.find(({ symbol }) => symbol === 'phiVn');
    expect(strength?.inputs.find(({ symbol }) => symbol === 'beta')?.printed).toBe('7.333333');
  });
});
