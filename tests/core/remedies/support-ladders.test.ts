import { describe, expect, test } from 'vitest';
import type { BracketSupport, Job, WallSupport } from '../../../src-core/job';
import { bearingLadder } from '../../../src-core/remedies/bearing-ladder';
import { corbelLadder } from '../../../src-core/remedies/corbel-ladder';
import { supportLadder } from '../../../src-core/remedies/support-ladder';
import { tieLadder } from '../../../src-core/remedies/tie-ladder';
import { HEARTH_E3, jobOf, LEDGE_E1, rectangle, wallAlongX } from '../../support/pieces';
import { contextOf, titlesOf } from './ladder-context';

const rowOf = (supports: readonly unknown[]) =>
  (supports as BracketSupport[]).find(({ kind }) => kind === 'bracket')!;

const onBlock = (): Job =>
  jobOf({
    corners: rectangle(96, 17.5),
    thicknessIn: 1.5,
    supports: [wallAlongX('wall', 0, 96, 13.75, 5.5, { build: 'block' })],
  });

describe('ties of a 96 in ledge', () => {
  test('are tried 48, 32, 24, 16 and 12 in apart, unrated until the pull is known', () => {
    const [[run]] = tieLadder(contextOf(LEDGE_E1())).groups as [
      [ReturnType<typeof tieLadder>['groups'][0][0]],
    ];
    const spacings = run.map(({ piece }) => piece.supports[0]!.hold);
    expect(spacings.map((hold) => hold.kind === 'tied' && hold.spacingIn)).toEqual([48, 32, 24, 16, 12]);
    expect(spacings.every((hold) => hold.kind === 'tied' && hold.ratingLbf === null)).toBe(true);
    expect(run.every(({ ratedSupportIds }) => ratedSupportIds.includes('wall'))).toBe(true);
  });

  test('on a 30 in wall are two 24 in apart, then three: wider spacings set the same two', () => {
    const job = jobOf({
      corners: rectangle(30, 17.5),
      thicknessIn: 1.5,
      supports: [wallAlongX('wall', 0, 30, 13.75, 5.5)],
    });
    expect(titlesOf(tieLadder(contextOf(job)).groups[0]![0]!)).toEqual(['Ties at 24 in', 'Ties at 12 in']);
  });
});

describe('brackets of a ledge 11 in out', () => {
  test('on a stud wall hang at the wall face, at studs 48, 32 and 16 in apart, first 7 then 10 in long', () => {
    const { groups } = corbelLadder(contextOf(LEDGE_E1()));
    const rows = groups.map((runs) => runs.map(([step]) => rowOf(step!.piece.supports)));
    expect(rows.map((runs) => runs.map(({ roots, reachIn }) => [roots.length, reachIn]))).toEqual([
      [
        [3, 7],
        [4, 7],
        [7, 7],
      ],
      [
        [3, 10],
        [4, 10],
        [7, 10],
      ],
    ]);
    const { roots, directionDeg, backing } = rows[0]![1]!;
    expect(roots.map(({ xIn }) => xIn)).toEqual([1.5, 32, 64, 94.5]);
    expect(roots.every(({ yIn }) => Math.abs(yIn - 11) < 1e-9)).toBe(true);
    expect([directionDeg, backing]).toEqual([-90, 'timber-stud']);
  });

  test('start with the limpest arm and end with the stiffest', () => {
    const run = corbelLadder(contextOf(LEDGE_E1())).groups[0]![0]!;
    expect(run[0]!.shortTitle).toMatch(/flat bar 2 x 1\/2/);
    expect(run.length).toBeGreaterThanOrEqual(5);
  });

  test('on a block wall are not tried: anchors there are for an engineer', () => {
    expect(corbelLadder(contextOf(onBlock())).excuse).toMatch(/block; anchors there are for an engineer/);
  });

  test('that stand there already get other arms, then one more between each two', () => {
    const job = LEDGE_E1();
    const piece = job.pieces[0]!;
    const fresh = corbelLadder(contextOf(job)).groups[0]![0]![0]!.piece.supports.at(-1)!;
    const bracketed = { ...job, pieces: [{ ...piece, supports: [...piece.supports, fresh] }] };
    const [same, closer] = corbelLadder(contextOf(bracketed)).groups[0]!;
    expect(rowOf(same![0]!.piece.supports).roots).toHaveLength(3);
    expect(rowOf(closer![0]!.piece.supports).roots).toHaveLength(5);
    expect(same!.every(({ piece: { supports } }) => supports.length === 2)).toBe(true);
  });
});

describe('a wider bearing', () => {
  test('of a 5-1/2 in wall goes towards the overhang, its back face staying', () => {
    const run = bearingLadder(contextOf(LEDGE_E1())).groups[0]![0]!;
    const walls = run.map(({ piece }) => piece.supports[0] as WallSupport);
    expect(walls.map(({ widthIn }) => widthIn)).toEqual([7, 8.5, 11]);
    for (const wall of walls) expect(wall.from.yIn + wall.widthIn / 2).toBeCloseTo(16.5, 9);
  });
});

describe('another support', () => {
  test('of a ledge is a post or a row of them 2-1/2 in inside the free edge', () => {
    const { groups, givesLess } = supportLadder(contextOf(LEDGE_E1()));
    const run = groups[0]![0]!;
    expect(run.map(({ piece }) => piece.supports.length - 1)).toEqual([1, 2, 3, 4, 5, 6]);
    const posts = run[1]!.piece.supports.slice(1);
    expect(posts.map((post) => post.kind === 'leg' && [post.centre.xIn, post.centre.yIn])).toEqual([
      [4, 2.5],
      [92, 2.5],
    ]);
    expect(givesLess).toBe(true);
  });

  test('of a hearth on two piers is a post mid-span, or a panel across', () => {
    const titles = supportLadder(contextOf(HEARTH_E3())).groups.map(([run]) => titlesOf(run!)[0]);
    expect(titles).toEqual(['A post under the middle of the span', 'A panel across the middle of the span']);
  });
});
