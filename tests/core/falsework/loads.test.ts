import { describe, expect, test } from 'vitest';
import { designFalsework } from '../../../src-core/falsework';
import type { Job } from '../../../src-core/job';
import { recompute, recomputeTolerance } from '../../support/recompute';
import { cabinet, formJob, sink, WALL_BEHIND } from './form-jobs';

const JOBS: readonly (readonly [string, Job])[] = [
  ['on a ledger', formJob(36, 25.5, { edges: WALL_BEHIND })],
  [
    'with a sink and a tap',
    formJob(36, 25.5, {
      edges: WALL_BEHIND,
      cutouts: [
        sink(18, 11),
        {
          id: 'tap',
          purpose: 'tap',
          shape: { kind: 'circle', centre: { xIn: 18, yIn: 22 }, diameterIn: 1.5 },
        },
      ],
    }),
  ],
  ['free on four sides', formJob(60, 30)],
  ['turned and thick', formJob(24, 70, { thicknessIn: 4 })],
  [
    'under two cabinets',
    formJob(72, 25.5, { supports: [cabinet('b1', 0, 36, 30), cabinet('b2', 36, 36, 30)] }),
  ],
];

describe('load of a section', () => {
  test.each(JOBS)('%s comes down on its legs and ledger to the last pound', (_, job) => {
    const { sections } = designFalsework(job, 'counter');
    expect(sections.length).toBeGreaterThan(0);
    for (const { worked } of sections) {
      const { legs, ledger, totalLbf, stringers } = worked.carried;
      const standing = [...legs, ...ledger].reduce((sum, { loadLbf }) => sum + loadLbf, 0);
      expect(Math.abs(standing - totalLbf) / totalLbf).toBeLessThan(1e-9);
      expect(legs.every(({ loadLbf }) => loadLbf >= 0)).toBe(true);
      for (const { beam } of stringers) {
        const points = beam.input.points.reduce((sum, { loadLbf }) => sum + loadLbf, 0);
        const reactions = beam.supports.reduce((sum, { reactionLbf }) => sum + reactionLbf, 0);
        expect(reactions).toBeCloseTo(points, 6);
      }
    }
  });

  test.each(JOBS)('%s: every line of every check works out again from its printed numbers', (_, job) => {
    const lines = designFalsework(job, 'counter')
      .sections.flatMap(({ checks }) => checks.flatMap(({ workings }) => workings))
      .filter(({ formula }) => formula !== '');
    expect(lines.length).toBeGreaterThan(40);
    for (const line of lines) {
      expect(Math.abs(recompute(line) - line.value), line.substituted).toBeLessThanOrEqual(
        recomputeTolerance(line),
      );
    }
  });

  test('of a 36 x 25-1/2 in deck under 2 in of concrete is 637.5 lb, of which statics gives each of two legs 169.1', () => {
    const [designed] = designFalsework(formJob(36, 25.5, { edges: WALL_BEHIND }), 'counter').sections;
    const { carried, framing } = designed!.worked;
    // 25 psf of concrete, 5 of form and 50 of people are under the least of 100 psf: 100 x 6.375 ft2.
    expect(carried.design.value).toBe(100);
    expect(carried.totalLbf).toBeCloseTo(637.5, 9);
    expect(framing.arrangement).toMatchObject({ ledgerSide: 'back', joistRun: 'back', legsALine: 2 });
    // Joists 25.5 in long bear 2.125 in from the front and on the ledger 0.75 in from the back:
    // 637.5 x (25.5 / 2 - 0.75) / (25.5 - 2.125 - 0.75) / 2.
    expect(carried.legs.map(({ loadLbf }) => loadLbf)).toEqual([
      expect.closeTo(169.06, 2),
      expect.closeTo(169.06, 2),
    ]);
  });

  test('counts a sink by its bowl full of sand on top of the slab beside it', () => {
    const plain = designFalsework(formJob(36, 25.5, { edges: WALL_BEHIND }), 'counter').sections[0]!;
    const fitted = designFalsework(
      formJob(36, 25.5, { edges: WALL_BEHIND, cutouts: [sink(18, 12)] }),
      'counter',
    ).sections[0]!;
    const { openings, headers, joists } = fitted.worked.framing;
    expect(headers).toHaveLength(2);
    expect(joists.filter(({ kind }) => kind === 'trimmer')).toHaveLength(2);
    // 20 lb of bowl, 279.1 in2 x 8 in of sand at 100 lb/ft3.
    expect(openings[0]!.opening.weightLb).toBeCloseTo(20 + (279.14 * 8 * 100) / 1728, 0);
    // The slab and people that the opening replaces are 100 psf, the people in it 50.
    const openFt2 = (20 * 14) / 144;
    const more = openings[0]!.opening.weightLb - 50 * openFt2;
    expect(fitted.worked.carried.totalLbf - plain.worked.carried.totalLbf).toBeCloseTo(more, 6);
  });

  test('is held down at its feet where it stands free, and by its ledger where it has one', () => {
    const free = designFalsework(formJob(40, 24), 'counter');
    expect(free.sections[0]!.worked.lateral.kind).toBe('braces');
    expect(free.sections[0]!.worked.lateral.holdDownLbf).toBeGreaterThan(0);
    expect(free.cautions.join(' ')).toMatch(/hold every foot down against \d+ lbf/);
    const tied = designFalsework(formJob(40, 24, { edges: WALL_BEHIND }), 'counter');
    expect(tied.sections[0]!.worked.lateral).toMatchObject({ kind: 'ledger', holdDownLbf: 0 });
  });
});

describe('floor below', () => {
  test('takes 80 psf of a 2 in slab, over the 40 psf of the example on a deck that nobody has looked at', () => {
    const job = formJob(60, 24, {}, { site: { standsOn: { kind: 'timber-deck' } } });
    const { floorLoad, level } = designFalsework(job, 'counter');
    expect(floorLoad).toMatchObject({ isExample: true, allowancePsf: 40, level: 'engineer' });
    expect(floorLoad!.perAreaPsf).toBeCloseTo(80, 6);
    // 80 psf over 10 ft2 needs 20 ft2 of a 40 psf deck.
    expect(floorLoad!.neededFt2).toBeCloseTo(20, 6);
    expect(floorLoad!.words).toMatch(/example .*local code/);
    expect(level).toBe('engineer');
  });

  test('of 60 psf as stated is too little, of 100 psf enough', () => {
    const at = (allowancePsf: number) =>
      designFalsework(
        formJob(60, 24, {}, { site: { standsOn: { kind: 'timber-deck', allowancePsf } } }),
        'counter',
      ).floorLoad!.level;
    expect([at(60), at(100)]).toEqual(['change', 'holds']);
  });
});
