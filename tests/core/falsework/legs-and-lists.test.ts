import { describe, expect, test } from 'vitest';
import { designFalsework, falseworkPatch } from '../../../src-core/falsework';
import { readJob } from '../../../src-core/job';
import { applyPatch } from '../../../src-core/remedies';
import { cabinet, formJob, WALL_BEHIND } from './form-jobs';

const MM = 25.4;

/** Readings that make the floor flat under each of four legs, at given heights. */
function readingsAt(places: readonly { xIn: number; yIn: number }[], valuesIn: readonly number[]) {
  return places.flatMap(({ xIn, yIn }, leg) =>
    [
      [-3, -3],
      [3, -3],
      [3, 3],
      [-3, 3],
    ].map(([dx, dy], i) => ({
      id: `r-${leg}-${i}`,
      xIn: xIn + dx!,
      yIn: yIn + dy!,
      valueIn: valuesIn[leg]!,
    })),
  );
}

/** A free 36 x 24 in slab with its legs so long on the highest floor, in. */
function standing(legIn: number, shimIn: number, levels: object, shownIn: 'imperial' | 'metric') {
  // Panel 15/32, joist and stringer 3-1/2, sole 1-1/2, slab 2 in.
  const topElevationIn = legIn + shimIn + 1.5 + 3.5 + 3.5 + 0.46875 + 2;
  const job = formJob(
    36,
    24,
    { topElevationIn },
    { shownIn, falsework: { backingBoardIn: 0, shimIn }, site: { standsOn: { kind: 'ground' }, levels } },
  );
  return designFalsework(job, 'counter').sections[0]!.legs;
}

describe('legs', () => {
  test('14.2: on a deck at 0, -3/8, -3/16 and -3/4 in are 28.031, 28.406, 28.219 and 28.781 in', () => {
    const places = standing(28.03125, 0.25, {}, 'imperial').map(({ at }) => at);
    expect(places).toHaveLength(4);
    const floor = [0, -0.375, -0.1875, -0.75];
    const legs = standing(28.03125, 0.25, { readings: readingsAt(places, floor) }, 'imperial');
    for (const [i, wanted] of [28.031, 28.406, 28.219, 28.781].entries()) {
      expect(Math.abs(legs[i]!.leg.lengthIn - wanted)).toBeLessThan(0.001);
    }
    expect(legs[0]!.leg).toMatchObject({ cutIn: 28, words: '28 in, shim 9/32 in' });
    expect(legs[0]!.leg.shimIn).toBeCloseTo(0.28125, 9);
    for (const { leg } of legs) expect(leg.lengthIn - leg.cutIn).toBeLessThan(1 / 16);
  });

  test('14.3: on a deck at 0, -10, -5 and -19 mm are 714, 724, 719 and 733 mm', () => {
    const shimIn = 6 / MM;
    const places = standing(714 / MM, shimIn, {}, 'metric').map(({ at }) => at);
    const floor = [0, -10, -5, -19].map((mm) => mm / MM);
    const legs = standing(714 / MM, shimIn, { readings: readingsAt(places, floor) }, 'metric');
    expect(legs.map(({ leg }) => Math.round(leg.cutIn * MM * 1000) / 1000)).toEqual([714, 724, 719, 733]);
  });

  test('are the same from rod readings as from heights', () => {
    const places = standing(28, 0.25, {}, 'imperial').map(({ at }) => at);
    const floor = [0, -0.375, -0.1875, -0.75];
    const heights = standing(28, 0.25, { readings: readingsAt(places, floor) }, 'imperial');
    const rod = readingsAt(
      places,
      floor.map((valueIn) => 52 - valueIn),
    );
    const rods = standing(28, 0.25, { convention: 'rod', readings: rod }, 'imperial');
    expect(rods.map(({ leg }) => leg.words)).toEqual(heights.map(({ leg }) => leg.words));
  });

  test('say that the floor was not read where it was not', () => {
    const { remarks, cautions, floor } = designFalsework(formJob(36, 24), 'counter');
    expect(remarks.join(' ')).toContain('The floor has not been read');
    expect(cautions.join(' ')).toContain('Nobody stands or works under a fresh slab');
    expect(floor).toBeNull();
  });

  test('taller than 8 ft are for an engineer', () => {
    const design = designFalsework(formJob(36, 24, { topElevationIn: 112 }), 'counter');
    expect(design.level).toBe('engineer');
    expect(design.refusals[0]).toContain('lies 110 in above the floor');
    expect(designFalsework(formJob(36, 24, { topElevationIn: 60 }), 'counter').level).toBe('holds');
  });
});

describe('patch', () => {
  const supports = [
    cabinet('b1', 0, 36, 30),
    cabinet('b2', 36, 36, 33),
    { kind: 'leg', id: 'old-leg', centre: { xIn: 20, yIn: 3 }, lastDay: 30 },
  ];
  const job = formJob(
    72,
    25.5,
    { edges: WALL_BEHIND, supports },
    {
      falsework: {
        sections: [
          {
            id: 'old',
            pieceId: 'counter',
            corners: [
              { xIn: 0, yIn: 0 },
              { xIn: 20, yIn: 0 },
              { xIn: 20, yIn: 20 },
            ],
            firstDay: 0,
          },
        ],
      },
      swap: {
        steps: [
          { id: 'first', day: 31, sectionsOut: ['old'], supportsOut: ['old-leg'], supportsIn: ['b1'] },
          { id: 'second', day: 33, supportsIn: ['b2'] },
          { id: 'empty', day: 40, supportsOut: ['old-leg'] },
        ],
      },
    },
  );

  test('writes sections, legs and ledgers with their days in place of the old ones, and reads back', () => {
    const design = designFalsework(job, 'counter');
    const patched = applyPatch(job, falseworkPatch(job, design));
    if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
    expect(readJob(patched.job).ok).toBe(true);
    const { falsework, pieces, swap } = patched.job;
    expect(falsework.sections.map(({ id, firstDay, lastDay }) => [id, firstDay, lastDay])).toEqual([
      ['counter-fw-1', 1, 31],
      ['counter-fw-2', 1, 33],
    ]);
    const temporary = pieces[0]!.supports.filter(({ kind }) => kind !== 'cabinet');
    expect(temporary.map(({ kind }) => kind).sort()).toEqual([
      'ledger',
      'ledger',
      'leg',
      'leg',
      'leg',
      'leg',
    ]);
    expect(temporary.every(({ lastDay }) => lastDay === 31 || lastDay === 33)).toBe(true);
    expect(swap.steps.map(({ id }) => id)).toEqual(['first', 'second']);
    expect(swap.steps[0]).toMatchObject({ sectionsOut: ['counter-fw-1'], supportsIn: ['b1'] });
    expect(swap.steps[0]!.supportsOut).toHaveLength(3);
  });

  test('leaves a prop that is set for the swap, after the pour', () => {
    const later = { ...supports[2]!, id: 'swap-prop', firstDay: 31, lastDay: 33 };
    const propped = formJob(72, 25.5, { edges: WALL_BEHIND, supports: [...supports, later] });
    const patched = applyPatch(propped, falseworkPatch(propped, designFalsework(propped, 'counter')));
    if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
    const ids = patched.job.pieces[0]!.supports.map(({ id }) => id);
    expect(ids).toContain('swap-prop');
    expect(ids).not.toContain('old-leg');
  });

  test('made again from the patched job gives the same falsework', () => {
    const first = designFalsework(job, 'counter');
    const patched = applyPatch(job, falseworkPatch(job, first));
    if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
    const again = designFalsework(patched.job, 'counter');
    expect(falseworkPatch(patched.job, again)).toEqual(falseworkPatch(job, first));
  });

  test('fits no other job', () => {
    const design = designFalsework(job, 'counter');
    const other = formJob(72, 25.5, { id: 'bench' });
    expect(applyPatch(other, falseworkPatch(job, design))).toMatchObject({ ok: false });
  });
});
