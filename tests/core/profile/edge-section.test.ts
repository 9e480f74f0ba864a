import { describe, expect, test } from 'vitest';
import type { PieceEdge } from '../../../src-core/job';
import { deepestInsetIn, edgeSection } from '../../../src-core/profile';

function free(
  kind: 'square' | 'chamfer' | 'bullnose',
  dripGroove: { widthIn: number; depthIn: number; setbackIn: number } | null,
): PieceEdge {
  return { kind: 'free', profile: { kind, sizeIn: null, points: null }, dripGroove };
}

describe('an edge in section', () => {
  test('a wall edge and a butted edge are square and have no groove', () => {
    for (const edge of [
      { kind: 'wall', gapIn: 0.125 },
      { kind: 'butted', toPieceId: 'other', gapIn: 0.125 },
    ] as const) {
      const { face, groove } = edgeSection(edge, 1.5);
      expect(face).toEqual([
        { outIn: 0, upIn: 0 },
        { outIn: 0, upIn: 1.5 },
      ]);
      expect(groove).toBeNull();
    }
  });

  test('a 1/4 x 1/4 in groove 3/4 in back is walked from its far lip to the face', () => {
    const section = edgeSection(free('square', { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.75 }), 1.5);
    expect(section.groove).toEqual({ setbackIn: 0.75, widthIn: 0.25, depthIn: 0.25 });
    expect(section.line.slice(0, 5)).toEqual([
      { outIn: -1, upIn: 0 },
      { outIn: -1, upIn: 0.25 },
      { outIn: -0.75, upIn: 0.25 },
      { outIn: -0.75, upIn: 0 },
      { outIn: 0, upIn: 0 },
    ]);
  });

  test('a groove 2 in deep in a slab of 1-1/2 in is cut down to 1-1/8 in', () => {
    const { groove } = edgeSection(free('square', { widthIn: 0.25, depthIn: 2, setbackIn: 0.75 }), 1.5);
    expect(groove!.depthIn).toBe(1.125);
  });

  test('a groove 1/2 in back on a bullnose that starts 3/4 in back moves in behind it', () => {
    const { groove } = edgeSection(free('bullnose', { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.5 }), 1.5);
    expect(groove!.setbackIn).toBeCloseTo(0.8125, 9);
  });

  test('half way up a chamfer of 1/4 in the face stands 1/8 in back', () => {
    const { face } = edgeSection(free('chamfer', null), 1.5);
    expect(deepestInsetIn(face, 1.375)).toBeCloseTo(0.125, 12);
    expect(deepestInsetIn(face, 1)).toBe(0);
    expect(deepestInsetIn(face, 1.5)).toBe(0.25);
  });
});
