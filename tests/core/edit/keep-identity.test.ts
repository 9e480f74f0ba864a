import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepIdentity } from '../../../src-core/edit/keep-identity';

describe('structural sharing', () => {
  test('equal data give the old object, whatever the order of their fields', () => {
    const before = { a: [1, { b: 2 }], c: null };
    expect(keepIdentity(before, { c: null, a: [1, { b: 2 }] })).toBe(before);
  });

  test('a change deep down makes new only what leads to it', () => {
    const before = { left: { deep: { x: 1 }, other: [1] }, right: [{ y: 2 }] };
    const after = keepIdentity(before, { left: { deep: { x: 3 }, other: [1] }, right: [{ y: 2 }] });
    expect(after).toEqual({ left: { deep: { x: 3 }, other: [1] }, right: [{ y: 2 }] });
    expect(after.left.other).toBe(before.left.other);
    expect(after.right).toBe(before.right);
    expect(after.left).not.toBe(before.left);
  });

  test('things with ids are found again where others were taken out before them', () => {
    const before = [{ id: 'a' }, { id: 'b', at: { x: 1 } }];
    const after = keepIdentity(before, [{ id: 'b', at: { x: 1 } }]);
    expect(after).toEqual([{ id: 'b', at: { x: 1 } }]);
    expect(after[0]).toBe(before[1]);
  });

  test.each([
    [
      [1, 2],
      [1, 2, 3],
    ],
    [{ a: 1 }, { a: 1, b: 2 }],
    [{ a: 1, b: 2 }, { a: 1 }],
    [{ 0: 1 }, [1]],
    [[1], { 0: 1 }],
    [null, {}],
    [{}, null],
    [0, -0],
  ])('%o before does not alter %o after', (before, after) => {
    expect(keepIdentity<unknown>(before, after)).toStrictEqual(after);
  });

  test('any plain data come out as they went in, whatever was before', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        expect(keepIdentity<unknown>(before, after)).toEqual(after);
        expect(keepIdentity<unknown>(after, structuredClone(after))).toBe(after);
      }),
      { seed: 20270426, numRuns: 300 },
    );
  });
});
