import { describe, expect, test } from 'vitest';
import type { Piece } from '../../../src-core/job';
import { slabVolumeIn3 } from '../../../src-core/solid';
import { edgeForms, sectionPanel } from '../../../src-renderer/model/edge-forms';
import { pieceOf, rectangle } from '../../core/drawing/pieces';

const plain: Piece = pieceOf({ corners: rectangle(10, 5, 40, 20), thicknessIn: 2 });

describe('boards round the edges', () => {
  test('a 40 x 20 in slab 2 in thick has a mitred ring of 1-1/2 in boards: (43 x 23 - 40 x 20) x 2 cu in', () => {
    expect(slabVolumeIn3(edgeForms(plain)!)).toBeCloseTo(189 * 2, 2);
  });

  test('an edge against a wall has no board, and those beside it end square', () => {
    const free = {
      kind: 'free',
      profile: { kind: 'eased', sizeIn: null, points: null },
      dripGroove: null,
    } as const;
    // edges from corner 0: front, right, back, left
    const walled: Piece = { ...plain, edges: [free, free, { kind: 'wall', gapIn: 0.125 }, free] };
    // front 43 x 1.5 with its mitres, and both sides 20 x 1.5
    expect(slabVolumeIn3(edgeForms(walled)!)).toBeCloseTo((43 * 1.5 + 2 * 20 * 1.5) * 2, 2);
  });

  test('a slab between walls all round has none', () => {
    const wall = { kind: 'wall', gapIn: 0.125 } as const;
    expect(edgeForms({ ...plain, edges: [wall, wall, wall, wall] })).toBeNull();
  });

  test('they reach from the soffit to the top', () => {
    const { positions } = edgeForms(plain)!;
    const heights = positions.filter((_, i) => i % 3 === 2);
    expect(Math.min(...heights)).toBeCloseTo(plain.topElevationIn - 2, 4);
    expect(Math.max(...heights)).toBeCloseTo(plain.topElevationIn, 4);
  });
});

describe('the panel of a falsework section', () => {
  const section = { id: 'a', pieceId: 'p', firstDay: 0, lastDay: null };

  test('a 24 x 20 in section is 3/4 in of panel under the soffit, whichever way round it is drawn', () => {
    const corners = rectangle(0, 0, 24, 20);
    for (const drawn of [corners, [...corners].reverse()]) {
      const panel = sectionPanel({ ...section, corners: drawn }, 34);
      expect(slabVolumeIn3(panel)).toBeCloseTo(24 * 20 * 0.75, 2);
    }
  });
});
