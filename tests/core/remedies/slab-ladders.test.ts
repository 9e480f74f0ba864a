import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src-core/job';
import { edgesMovedIn, overhangLadder } from '../../../src-core/remedies/overhang-ladder';
import { depthRange, overlaps } from '../../../src-core/remedies/steel-depth';
import { crackedFaces, steelLadder } from '../../../src-core/remedies/steel-ladder';
import { thicknessLadder } from '../../../src-core/remedies/thickness-ladder';
import { CAP_E4, HEARTH_E3, jobOf, LEDGE_E1 } from '../../support/pieces';
import { contextOf, titlesOf } from './ladder-context';

/** A hearth so thin on piers so far apart that it cracks underneath, with mesh at mid-depth. */
const thinHearth = (): Job => {
  const job = HEARTH_E3();
  const wire = { wireIn: 0.08, spacingIn: 2, crossWireIn: 0.08, crossSpacingIn: 2 };
  return jobOf({
    ...job.pieces[0]!,
    thicknessIn: 1.5,
    reinforcement: [{ kind: 'mesh', id: 'mesh', label: 'light mesh', ...wire, depthIn: 0.75 }],
  });
};

describe('a thicker slab', () => {
  test('grows by half inches to 6 in, the top coming up', () => {
    const run = thicknessLadder(contextOf(LEDGE_E1())).groups[0]![0]!;
    expect(run.map(({ piece }) => piece.thicknessIn)).toEqual([2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6]);
    expect(run[0]!.piece.topElevationIn).toBe(36.5);
  });

  test('keeps the cover below its lower steel and above its upper steel', () => {
    const job = LEDGE_E1();
    const bars = { kind: 'bars' as const, barIn: 0.375, areaIn2: 0.11, spacingIn: 6 };
    const steel = jobOf({
      ...job.pieces[0]!,
      reinforcement: [
        { ...bars, id: 'upper', depthIn: 0.6875 },
        { ...bars, id: 'lower', depthIn: 0.8125 },
      ],
    });
    const thicker = thicknessLadder(contextOf(steel)).groups[0]![0]![0]!.piece;
    expect(thicker.reinforcement.map((one) => one.kind === 'bars' && one.depthIn)).toEqual([0.6875, 1.3125]);
  });
});

describe('a shorter overhang', () => {
  test('of a ledge 11 in out moves its free edge in by 1, 2, 3, 4 and 6 in', () => {
    const run = overhangLadder(contextOf(LEDGE_E1())).groups[0]![0]!;
    const edges = run.map(({ piece: { corners } }) => corners.map(({ yIn }) => yIn));
    expect(edges).toEqual([1, 2, 3, 4, 6].map((byIn) => [byIn, byIn, 17.5, 17.5]));
    expect(run[0]!.piece.corners.map(({ xIn }) => xIn)).toEqual([0, 96, 96, 0]);
  });

  test('of a cap that overhangs its pier by 2 in all round moves all four edges in', () => {
    const run = overhangLadder(contextOf(CAP_E4())).groups[0]![0]!;
    expect(run[0]!.piece.corners.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [1, 1],
      [19, 1],
      [19, 19],
      [1, 19],
    ]);
  });

  test('of a slab with a sloping end keeps the slope', () => {
    const job = jobOf({
      corners: [
        { xIn: 0, yIn: 0 },
        { xIn: 84, yIn: 0 },
        { xIn: 96, yIn: 18 },
        { xIn: 0, yIn: 18 },
      ],
      thicknessIn: 2,
    });
    const corners = edgesMovedIn(job.pieces[0]!, [{ edge: 0, byIn: 3 }])!;
    expect(corners.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 3],
      [86, 3],
      [96, 18],
      [0, 18],
    ]);
  });

  test('that would eat the slab up is not drawn', () => {
    const cap = CAP_E4().pieces[0]!;
    expect(
      edgesMovedIn(cap, [
        { edge: 0, byIn: 10 },
        { edge: 2, byIn: 9.5 },
      ]),
    ).toBeNull();
  });
});

describe('steel', () => {
  test('of a hearth that cracks underneath goes there: what is there moved, mesh, bars, hooked bars', () => {
    const context = contextOf(thinHearth());
    expect(crackedFaces(context.analysis)).toEqual(['bottom']);
    const groups = steelLadder(context).groups.map(([run]) => titlesOf(run!)[0]);
    expect(groups.slice(0, 4)).toEqual([
      'Move light mesh to 1/2 in above the underside',
      '4x4-W1.4 welded mesh, 1/2 in above the underside, in place of light mesh',
      '#3 at 12 in both ways, 1/2 in above the underside, in place of light mesh',
      '#3 at 12 in both ways, ends hooked, 1/2 in above the underside, in place of light mesh',
    ]);
  });

  test('lies with its cover and never in the way of other steel', () => {
    const { groups } = steelLadder(contextOf(thinHearth()));
    for (const step of groups.flat(2)) {
      const ranges = step.piece.reinforcement.map(depthRange);
      for (const { fromIn, toIn } of ranges) {
        expect(fromIn).toBeGreaterThanOrEqual(0.25 - 1e-9);
        expect(toIn).toBeLessThanOrEqual(1.25 + 1e-9);
      }
      expect(ranges.some((a, i) => ranges.some((b, j) => i < j && overlaps(a, b)))).toBe(false);
    }
  });

  test('for a cracking soffit runs its outer bars along the span, close to the face', () => {
    const bars = steelLadder(contextOf(thinHearth())).groups[2]![0]![0]!.piece.reinforcement;
    expect(bars.map((one) => one.kind === 'bars' && [one.angleDeg % 180, one.depthIn])).toEqual([
      [0, 0.8125],
      [90, 0.4375],
    ]);
  });

  test('in a metric job comes in metric sizes', () => {
    const job = { ...thinHearth(), shownIn: 'metric' as const };
    const groups = steelLadder(contextOf(job)).groups.map(([run]) => titlesOf(run!)[0]!);
    expect(groups[1]).toMatch(/^A98 welded mesh, 13 mm above the underside/);
    expect(groups[2]).toMatch(/^8 mm at 300 mm both ways/);
  });
});
