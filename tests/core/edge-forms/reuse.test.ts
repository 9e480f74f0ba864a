import { describe, expect, test } from 'vitest';
import type { EdgeForms } from '../../../src-core/edge-forms';
import { reusable, stripsOf } from '../../../src-core/edge-forms';
import { rectangle } from '../../support/pieces';
import { FREE, formsOf, type PieceDraft } from './form-pieces';

const chamfer = { ...FREE, profile: { kind: 'chamfer' as const } };

function slab(id: string, widthIn: number, pourDay: number, more: Partial<PieceDraft> = {}): EdgeForms {
  return formsOf({ id, name: id, corners: rectangle(widthIn, 20), thicknessIn: 2, pourDay, ...more });
}

/** Forms come off the day after the pour. */
const nextDay = (pours: Readonly<Record<string, number>>) => (pieceId: string) => pours[pieceId]! + 1;

describe('strips used again', () => {
  test('all four of a slab serve a like one that is poured after the first is stripped', () => {
    const reuses = reusable([slab('a', 40, 1), slab('b', 40, 4)], nextDay({ a: 1, b: 4 }));
    expect(reuses).toHaveLength(4);
    expect(reuses[0]).toEqual({
      id: 'b/edge/1/form/1/reuse',
      fromId: 'a/edge/1/form/1',
      toId: 'b/edge/1/form/1',
      strippedDay: 2,
      pourDay: 4,
    });
    expect(new Set(reuses.map(({ fromId }) => fromId)).size).toBe(4);
  });

  test('none is free on the day on which it is stripped, or before', () => {
    expect(reusable([slab('a', 40, 1), slab('b', 40, 2)], nextDay({ a: 1, b: 2 }))).toEqual([]);
    expect(reusable([slab('a', 40, 1), slab('b', 40, 1)], nextDay({ a: 1, b: 1 }))).toEqual([]);
  });

  test('a sixteenth of an inch more is the same length, a hair beyond is not', () => {
    const count = (widthIn: number) =>
      reusable([slab('a', 40, 1), slab('b', widthIn, 4)], nextDay({ a: 1, b: 4 })).length;
    expect(count(40.0625)).toBe(4);
    // The two ends, 20 in both, still serve.
    expect(count(40.07)).toBe(2);
  });

  test('another profile, height or end cut is another strip', () => {
    const count = (more: Partial<PieceDraft>) =>
      reusable([slab('a', 40, 1), slab('b', 40, 4, more)], nextDay({ a: 1, b: 4 })).length;
    expect(count({ edges: [chamfer, FREE, FREE, FREE] })).toBe(3);
    expect(count({ thicknessIn: 1.5 })).toBe(0);
    // A slab whose right end leans: only its left end is alike.
    const leaning = rectangle(40, 20).map((corner, i) => (i === 2 ? { ...corner, xIn: 45 } : corner));
    expect(count({ corners: leaning })).toBe(1);
  });

  test('copies of one piece are poured together and take a set each', () => {
    const caps = slab('cap', 20, 3, { copies: 3 });
    expect(stripsOf(caps)).toHaveLength(12);
    expect(new Set(stripsOf(caps).map(({ id }) => id)).size).toBe(12);
    expect(reusable([caps], nextDay({ cap: 3 }))).toEqual([]);
    expect(reusable([caps, slab('late', 20, 9, { copies: 4 })], nextDay({ cap: 3, late: 9 }))).toHaveLength(
      12,
    );
  });

  test('one strip goes through three pours, each time from where it stood last', () => {
    const reuses = reusable(
      [slab('c', 40, 8), slab('a', 40, 1), slab('b', 40, 4)],
      nextDay({ a: 1, b: 4, c: 8 }),
    );
    expect(reuses).toHaveLength(8);
    expect(
      reuses.filter(({ toId }) => toId.startsWith('c/')).every(({ fromId }) => fromId.startsWith('b/')),
    ).toBe(true);
  });

  test('three pours that each grow by 1/16 in do not creep: the third is cut anew', () => {
    const reuses = reusable(
      [slab('a', 40, 1), slab('b', 40.0625, 4), slab('c', 40.125, 8)],
      nextDay({ a: 1, b: 4, c: 8 }),
    );
    expect(reuses.filter(({ toId }) => toId === 'c/edge/1/form/1')).toEqual([]);
  });

  test('a piece whose strip day is not known lends nothing', () => {
    expect(reusable([slab('a', 40, 1), slab('b', 40, 4)], () => null)).toEqual([]);
  });

  test('isolation strips stay', () => {
    const walled = { edges: [FREE, FREE, { kind: 'wall' as const }, FREE] };
    const reuses = reusable([slab('a', 40, 1, walled), slab('b', 40, 4, walled)], nextDay({ a: 1, b: 4 }));
    expect(reuses).toHaveLength(3);
  });
});
