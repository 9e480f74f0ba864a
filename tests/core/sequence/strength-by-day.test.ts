import { describe, expect, test } from 'vitest';
import { equivalentAgeOf, gainedStrength } from '../../../src-core/concrete';
import type { Job, JobDraft } from '../../../src-core/job';
import { earliestDays, strengthByDay, strengthOn } from '../../../src-core/sequence';
import { strengthLookup } from '../../../src-core/sequence/strength-by-day';
import { analyse } from '../../support/pieces';
import { seededRandom } from '../../support/seeded-random';
import { expectWithin } from '../concrete/within';
import { SWAP_DAY, straightCounter } from './swap-jobs';

type MixDraft = JobDraft['mixes'][number];

/** The straight counter with 4000 psi concrete of a mix and weather. */
function poured(dailyC: number[], mix: Partial<MixDraft> = {}, more: Partial<JobDraft> = {}): Job {
  return straightCounter(2, {
    mixes: [{ id: 'mix', name: 'Mix', strengthPsi: 4000, strengthFrom: 'tested', ...mix }],
    site: { weather: { dailyC } },
    ...more,
  });
}

const ageWhen = (job: Job, id: string) => earliestDays(job, job.pieces[0]!).find((row) => row.id === id)!;

describe('strength of a slab day by day', () => {
  // ACI 209R-92 Table 2.2.1, from memory: basis 10.1 and 10.6.
  test('at 20 deg C it follows the curve: .206, .458, .704 and .881 of 4000 psi after 1, 3, 7 and 14 d', () => {
    const job = poured([20]);
    const series = strengthByDay(job, job.pieces[0]!, 28);
    expect(series).toHaveLength(28);
    for (const [age, ratio] of [
      [1, 0.2062],
      [3, 0.458],
      [7, 0.7035],
      [14, 0.8805],
    ] as const) {
      expectWithin(series[age - 1]!.strengthPsi, 4000 * ratio, 2e-3);
      expectWithin(series[age - 1]!.equivalentAgeDays, age, 1e-9);
    }
    expect(series[27]!.strengthPsi).toBe(4000);
  });

  // ASTM C1074 equivalent age, constants from memory: each day counts by its own temperature.
  test('days of 25, 5, 5 and 15 deg C count as much as the sum of each alone', () => {
    const job = poured([25, 5, 5, 15, 20]);
    const spells = [25, 5, 5, 15].map((temperatureC) => ({ temperatureC, durationDays: 1 }));
    const { equivalentAgeDays } = equivalentAgeOf(spells);
    const found = strengthOn(job, job.pieces[0]!, 4);
    expectWithin(found.equivalentAgeDays, equivalentAgeDays, 1e-9);
    const a = { f28: 4000, t: equivalentAgeDays, a: 4, b: 0.85 };
    expectWithin(found.strengthPsi, gainedStrength(a).value, 1e-9);
    expect(found.isCold).toBe(false);
    expect(strengthOn(job, job.pieces[0]!, 3).isCold).toBe(true);
  });

  test('never falls back from one day to the next, whatever the weather', () => {
    const random = seededRandom(11);
    for (let round = 0; round < 20; round++) {
      const job = poured(Array.from({ length: 40 }, () => Math.round(-15 + 45 * random())));
      const series = strengthByDay(job, job.pieces[0]!, 40);
      series.forEach((day, i) => {
        if (i > 0) expect(day.strengthPsi).toBeGreaterThanOrEqual(series[i - 1]!.strengthPsi - 1e-9);
      });
    }
  });

  test('a day of frost adds nothing', () => {
    const job = poured([20, 20, -5, -5, 20]);
    const [, two, three, four] = strengthByDay(job, job.pieces[0]!, 5);
    expectWithin(four!.strengthPsi, two!.strengthPsi, 1e-9);
    expectWithin(three!.strengthPsi, two!.strengthPsi, 1e-9);
  });

  test('is what the load check of that day takes', () => {
    const job = poured([8, 12, 9, 14, 18]);
    const { concrete } = analyse(job, { day: 9, meshSizeIn: 3 });
    const day = strengthOn(job, job.pieces[0]!, 9);
    expect(concrete.strengthPsi).toBe(day.strengthPsi);
    expect(concrete.modulusPsi).toBe(day.modulusPsi);
  });

  test('cylinder tests override the curve', () => {
    const job = poured([20], { cylinders: [{ ageDays: 7, strengthPsi: 2000 }] });
    expect(strengthOn(job, job.pieces[0]!, 7)).toMatchObject({ strengthPsi: 2000, isTested: true });
  });
});

test('looked up again, at any age and in any order, the concrete is that of the first look', () => {
  const job = poured([14, 6, 21, 18]);
  const [piece] = job.pieces as [Job['pieces'][number]];
  const strengthAt = strengthLookup(job, piece);
  for (const age of [7, 28, 1, 7, 28]) expect(strengthAt(age)).toEqual(strengthOn(job, piece, age));
});

describe('earliest days', () => {
  // Basis 10.3: 75 % after 8.28 d with ordinary cement, 5.56 d with rapid; no soffit before 7 d.
  test('at 20 deg C: forms off after 1 d, soffit out after 9, with rapid cement after 7, full strength and seal after 28', () => {
    const job = poured([20]);
    expect(ageWhen(job, 'edge-forms-off')).toMatchObject({ day: 1, governedBy: 'age' });
    expect(ageWhen(job, 'light-load')).toMatchObject({ day: 7, governedBy: 'age' });
    expect(ageWhen(job, 'soffit-supports-out')).toMatchObject({ day: 9, governedBy: 'strength' });
    expect(ageWhen(job, 'swap')).toMatchObject({ day: 9 });
    expect(ageWhen(job, 'full-strength')).toMatchObject({ day: 28, governedBy: 'age' });
    expect(ageWhen(job, 'seal')).toMatchObject({ day: 28 });
    const rapid = poured([20], { cement: 'rapid' });
    expect(ageWhen(rapid, 'soffit-supports-out')).toMatchObject({ day: 7, governedBy: 'age' });
  });

  test('a cold week delays strip and swap: at 5 deg C for 7 days the forms stay on 3 and the soffit supports 13', () => {
    // one day at 5 deg C counts .399 d: 3 d make 1.20 d; 7 d make 2.79 d, and 8.28 - 2.79 = 5.49 more at 20 deg C.
    const job = poured([5, 5, 5, 5, 5, 5, 5, 20]);
    expect(ageWhen(job, 'edge-forms-off')).toMatchObject({ day: 3, governedBy: 'strength' });
    expect(ageWhen(job, 'soffit-supports-out')).toMatchObject({ day: 13, governedBy: 'strength' });
    expect(ageWhen(job, 'swap').day).toBe(13);
    expect(ageWhen(job, 'swap').words).toContain('Its strength holds it back 6 days beyond that age');
  });

  test('days count from the pour: poured on day 3, the swap may start on day 12', () => {
    const job = poured([20]);
    const later = { ...job, pieces: [{ ...job.pieces[0]!, pourDay: 3 }] };
    expect(ageWhen(later, 'swap')).toMatchObject({ day: 12, ageDays: 9 });
  });

  test('a good cylinder test brings the soffit forward to 7 d and no sooner, a poor one puts it off', () => {
    const good = poured([20], { cylinders: [{ ageDays: 5, strengthPsi: 3200 }] });
    expect(ageWhen(good, 'soffit-supports-out')).toMatchObject({ day: 7, governedBy: 'age' });
    const poor = poured([20], { cylinders: [{ ageDays: 7, strengthPsi: 2400 }] });
    expect(ageWhen(poor, 'soffit-supports-out').day).toBeGreaterThan(9);
  });

  test('a plan that is sooner is let stand, with a caution', () => {
    const job = poured([20]);
    const supports = job.pieces[0]!.supports.map((support) =>
      support.kind === 'cabinet' ? { ...support, firstDay: 6 } : { ...support, lastDay: 6 },
    );
    const early = { ...job, pieces: [{ ...job.pieces[0]!, supports }] };
    const row = ageWhen(early, 'soffit-supports-out');
    expect(row.plannedDay).toBe(6);
    expect(row.caution).toContain('Planned on day 6, before day 9');
    expect(ageWhen(job, 'soffit-supports-out')).toMatchObject({ plannedDay: SWAP_DAY, caution: null });
  });

  test('supports of an overhang go last, not before 14 d', () => {
    const job = poured([20]);
    const piece = job.pieces[0]!;
    expect(earliestDays(job, piece).some(({ id }) => id === 'overhang-supports-out')).toBe(false);
    const leg = piece.supports.find(({ id }) => id === 'leg-1a')!;
    const out = { ...leg, id: 'tip', centre: { xIn: 147, yIn: 12 } } as typeof leg;
    const corners = piece.corners.map((corner) => (corner.xIn === 144 ? { ...corner, xIn: 150 } : corner));
    const overhung = { ...job, pieces: [{ ...piece, corners, supports: [...piece.supports, out] }] };
    expect(ageWhen(overhung, 'overhang-supports-out')).toMatchObject({ day: 14, plannedDay: SWAP_DAY });
  });

  test('in frost that does not end nothing may be taken away', () => {
    const row = ageWhen(poured([-5]), 'swap');
    expect(row).toMatchObject({ day: null, ageDays: null });
    expect(row.caution).toContain('not that far within a year');
  });
});
