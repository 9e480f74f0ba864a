import { describe, expect, test } from 'vitest';
import {
  bearingStress,
  factoredPressure,
  MASONRY_STRENGTH_PSI,
  masonryBearing,
  SPF_ACROSS_GRAIN_PSI,
} from '../../../src-core/checks/bearing-stress';
import type { Job, JobDraft } from '../../../src-core/job';
import { runCheckCase } from '../../support/check-harness';
import { analyse, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';

/** Contact points and loaded nodes do not share the area alike, so an even pressure comes out even within this. */
const EVEN = 0.05;

const STILL = { roving: { setting: 'none' as const }, spreadPsf: 0 };

function pile(sideIn: number, weightLb: number) {
  const centre = { xIn: sideIn / 2, yIn: sideIn / 2 };
  return {
    ...STILL,
    fixed: [{ id: 'pile', name: 'Pile', centre, widthIn: sideIn, depthIn: sideIn, weightLb }],
  };
}

/** 24 x 24 x 2 in, 96.67 lb, under a pile, on four legs of 1.5 x 1.5 in. */
function onLegs(weightLb: number, more: Partial<JobDraft['pieces'][number]> = {}, strengthPsi = 5000): Job {
  return jobOf(
    {
      corners: rectangle(24, 24),
      thicknessIn: 2,
      loads: pile(24, weightLb),
      supports: [4, 20].flatMap((xIn) =>
        [4, 20].map((yIn) => ({
          kind: 'leg' as const,
          id: `leg-${xIn}-${yIn}`,
          centre: { xIn, yIn },
          widthIn: 1.5,
          depthIn: 1.5,
        })),
      ),
      ...more,
    },
    { mixes: [{ id: 'mix', name: 'Mix', strengthPsi, strengthFrom: 'tested' }] },
  );
}

/** 20 x 20 x 2 in wholly on a pier, under a pile of 10,000 lb. */
function onPier(build: 'block' | 'concrete'): Job {
  return jobOf({
    corners: rectangle(20, 20),
    thicknessIn: 2,
    loads: pile(20, 10_000),
    supports: [
      {
        kind: 'pier',
        id: 'pier',
        build,
        footprint: { kind: 'rectangle', centre: { xIn: 10, yIn: 10 }, widthIn: 20, depthIn: 20 },
      },
    ],
  });
}

describe('pressure on the bearings', () => {
  // ASCE 7-22 2.3.1, derived: basis 5.1, 5.2, 5.3.
  test('basis 5.1 to 5.3: 42 and 100 from 30 and 40; 110 from 25 and 50; 400 from 250', () => {
    expect(factoredPressure({ pD: 30, p: 30 }).value).toBeCloseTo(42, 9);
    expect(factoredPressure({ pD: 30, p: 70 }).value).toBeCloseTo(100, 9);
    expect(factoredPressure({ pD: 25, p: 75 }).value).toBeCloseTo(110, 9);
    expect(factoredPressure({ pD: 0, p: 250 }).value).toBeCloseTo(400, 9);
  });

  // Hand: 10,000 lb and 67.1 lb of slab on 400 in2 press 25.17 psi all over; block may take .33 x 1500 = 495 psi (from memory).
  test('a block pier under an even load is pressed evenly, 25.17 of 495 psi', () => {
    expect(masonryBearing({ fm: MASONRY_STRENGTH_PSI }).value).toBe(495);
    runCheckCase(bearingStress, {
      says: 'even load',
      job: onPier('block'),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 25.168 / 495, within: EVEN },
    });
  });

  // Hand: 1.4 x 25.17 psi against .65 x .85 x 5000 = 2762.5 psi, all of it dead load.
  test('on a concrete pier the slab itself is judged, at its factored pressure', () => {
    const [check] = runCheckCase(bearingStress, {
      says: 'concrete pier',
      job: onPier('concrete'),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: (1.4 * 25.168) / 2762.5, within: EVEN },
    });
    expect(check?.words).toContain('the slab itself may take 2763 psi');
  });

  // Basis 6.9: a 1.5 x 1.5 in leg of spruce-pine-fir crushes at 956 lb; four of them at 3825 lb.
  test('four 1-1/2 in legs carry 3817 lb, not 3837 lb', () => {
    expect(SPF_ACROSS_GRAIN_PSI * 2.25).toBeCloseTo(956.25, 9);
    runCheckCase(bearingStress, {
      says: 'inside',
      job: onLegs(3720),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 3816.67 / 3825, within: 0.001 },
    });
    const [check] = runCheckCase(bearingStress, {
      says: 'outside',
      job: onLegs(3740),
      meshSizeIn: 2,
      level: 'change',
      ratio: { near: 3836.67 / 3825, within: 0.001 },
    });
    expect(check?.needs).toEqual(['support']);
    expect(check?.words).toContain("more than the 425 psi that the leg's head may take");
  });

  // Hand: 24 x 24 x 2 in under 300 psf, 96.67 and 1200 lb, on 9 in2: 10.74 and 133.33 psi; 1.2 * 10.74 + 1.6 * 133.33 = 226.2 psi
  // against .65 x .85 x 1000 = 552.5 psi, .4095; the timber below takes 144.07 of 425 psi, .339.
  test('weak concrete crushes before the timber below it: the slab itself is judged then', () => {
    const job = onLegs(0, { loads: { roving: { setting: 'none' }, spreadPsf: 300 } }, 1000);
    const [check] = runCheckCase(bearingStress, {
      says: 'weak concrete',
      job,
      meshSizeIn: 2,
      level: 'holds',
      ratio: { near: 0.4095, within: 0.001 },
    });
    expect(check?.words).toContain('the slab itself may take 553 psi');
  });

  // Common practice, no source: 300 psi on the edge of a panel.
  test('a cabinet takes 300 psi on the edge of its panels', () => {
    const [check] = runCheckCase(bearingStress, {
      says: 'cabinet',
      job: jobOf({
        corners: rectangle(24, 24),
        thicknessIn: 2,
        supports: [{ kind: 'cabinet', id: 'c', corner: { xIn: 0, yIn: 0 }, widthIn: 24, depthIn: 24 }],
      }),
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0, to: 1 },
    });
    expect(check?.capacity.value).toBe(300);
  });

  // NDS wet service factor 0.67, from memory: 0.67 x 425 = 285 psi.
  test('timber outdoors is told to take 285 psi where it stays wet, and masonry is not', () => {
    const cautionsOf = (job: Job) =>
      runCheckCase(bearingStress, {
        says: 'outdoors',
        job,
        meshSizeIn: 2,
        level: 'holds',
        ratio: { from: 0, to: 1 },
      })[0]!.cautions;
    expect(cautionsOf(onLegs(100, { exposure: 'outdoors' }))[0]).toContain('takes 285 psi');
    expect(cautionsOf(onLegs(100))).toEqual([]);
    const pier = onPier('block');
    expect(cautionsOf({ ...pier, pieces: [{ ...pier.pieces[0]!, exposure: 'outdoors' }] })).toEqual([]);
  });

  // Edge of validity: the wall alone under a weight outside its middle third; 80.56 lb, 3 in off the middle of 14 in.
  test('a wall that one face of the slab leaves is pressed by the middle-third rule as well', () => {
    const job = jobOf({
      corners: rectangle(24, 20),
      thicknessIn: 2,
      loads: STILL,
      supports: [wallAlongX('wall', 0, 24, 13, 14)],
    });
    const [check] = runCheckCase(bearingStress, {
      says: 'off the middle',
      job,
      meshSizeIn: 2,
      level: 'holds',
      ratio: { from: 0, to: 0.01 },
    });
    const qmax = check?.workings.find(({ symbol }) => symbol === 'qmax')?.value ?? Number.NaN;
    const byHand = (2 * (80.556 / 24)) / (3 * (7 - 3));
    expect(Math.abs(qmax - byHand)).toBeLessThan(0.001 * byHand);
  });

  test('cases under which the ledge turns over are no bearing of their own', () => {
    const [check] = runCheckCase(bearingStress, {
      says: 'E1',
      job: { ...LEDGE_E1() },
      meshSizeIn: 3,
      level: 'holds',
      ratio: { from: 0, to: 0.2 },
    });
    expect(check?.words).toContain("the wall's plate may take 425 psi");
    const { elastic } = analyse(LEDGE_E1(), { meshSizeIn: 3 });
    const mostOf = (turnsOver: boolean) =>
      Math.max(
        ...[elastic.low, elastic.high].flatMap(({ cases }) =>
          cases
            .filter(({ asIfHeld }) => asIfHeld === turnsOver)
            .map(({ reactions }) => reactions[0]!.peakPressurePsi),
        ),
      );
    expect(mostOf(true)).toBeGreaterThan(mostOf(false));
    expect(check?.demand.value).toBe(mostOf(false));
  });
});
