import { describe, expect, test } from 'vitest';
import type { Change } from '../../../src-core/remedies';
import { applyChange, applyPatch, undoPatch } from '../../../src-core/remedies';
import { piecePatch } from '../../../src-core/remedies/patch';
import { LEDGE_E1 } from '../../support/pieces';

const thicker = () => piecePatch(LEDGE_E1(), { ...LEDGE_E1().pieces[0]!, thicknessIn: 2 });

describe('a job patch', () => {
  test('of a ledge made 2 in thick tests the piece and the old thickness, then replaces it', () => {
    expect(thicker()).toEqual([
      { op: 'test', path: '/pieces/0/id', value: 'piece' },
      { op: 'test', path: '/pieces/0/thicknessIn', value: 1.5 },
      { op: 'replace', path: '/pieces/0/thicknessIn', value: 2 },
    ]);
  });

  test('leaves the job that it is applied to as it was', () => {
    const job = LEDGE_E1();
    const patched = applyPatch(job, thicker());
    expect(patched.ok && patched.job.pieces[0]!.thicknessIn).toBe(2);
    expect(job).toEqual(LEDGE_E1());
  });

  test('is undone by its inverse', () => {
    const job = LEDGE_E1();
    const wall = job.pieces[0]!.supports[0]!;
    const piece = {
      ...job.pieces[0]!,
      thicknessIn: 2.5,
      supports: [
        {
          ...wall,
          hold: { kind: 'tied' as const, spacingIn: 16, ratingLbf: 300, stiffness: { low: 2e3, high: 2e4 } },
        },
        { ...wall, id: 'second-wall', gapIn: 0.125 },
      ],
    };
    const patch = piecePatch(job, piece);
    const patched = applyPatch(job, patch);
    if (!patched.ok) throw new Error(patched.problems[0]!.sentence);
    expect(patched.job.pieces[0]).toEqual(piece);
    const back = applyPatch(patched.job, undoPatch(job, patch));
    expect(back.ok && back.job).toEqual(job);
  });

  test('does not fit a job whose thickness has changed since', () => {
    const job = LEDGE_E1();
    const other = { ...job, pieces: [{ ...job.pieces[0]!, thicknessIn: 1.75 }] };
    const patched = applyPatch(other, thicker());
    expect(patched.ok).toBe(false);
    expect(patched.ok ? [] : patched.problems).toEqual([
      {
        path: '/pieces/0/thicknessIn',
        sentence: 'The change cannot be made here: the job has changed since the patch was made.',
      },
    ]);
  });

  test('that names nothing in the job is refused with its path', () => {
    const patched = applyPatch(LEDGE_E1(), [{ op: 'remove', path: '/pieces/7' }]);
    expect(patched.ok ? '' : patched.problems[0]!.sentence).toMatch(/does not fit this job/);
    expect(patched.ok ? '' : patched.problems[0]!.path).toBe('/pieces/7');
  });

  test('that makes the slab 30 in thick is refused as a job file is', () => {
    const patched = applyPatch(LEDGE_E1(), [{ op: 'replace', path: '/pieces/0/thicknessIn', value: 30 }]);
    expect(patched.ok ? [] : patched.problems.map(({ path }) => path)).toEqual(['pieces[0].thicknessIn']);
  });

  test('of an offered change that belongs to another job is a mistake of the caller, told with its reason', () => {
    const change: Change = {
      id: 'piece-thickness',
      pieceId: 'piece',
      kinds: ['thickness'],
      needs: ['thickness'],
      title: '2 in thick',
      patch: thicker(),
      cost: { weightLb: 0, concreteIn3: 0, parts: 0, partsWords: [] },
      worstRatio: 0.5,
      worstCheckId: 'bending-plain',
      level: 'holds',
    };
    expect(applyChange(LEDGE_E1(), change).pieces[0]!.thicknessIn).toBe(2);
    const other = { ...LEDGE_E1(), id: 'other', pieces: [{ ...LEDGE_E1().pieces[0]!, id: 'shelf' }] };
    expect(() => applyChange(other, change)).toThrow(/piece-thickness does not fit job other/);
  });
});
